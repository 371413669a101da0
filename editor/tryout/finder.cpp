#include "editor/tryout/finder.hpp"

#include <algorithm>

namespace wrenlet::desk {

Finder::Finder(OpenUnit& unit, Aside& finding, std::function<void()> wake)
    : unit_(unit), newest_(finding, std::move(wake)), topics_(topicsOf(unit.bench().known)) {}

void Finder::lookFor(exercise::Skill skill) {
    if (skill_ != skill) {
        skill_ = skill;
        topic_.clear();
        sound_.clear();
        sounds_ = soundsOf(unit_.bench().known, skill);
        offers_.reset();
        asked_.reset();
        chosen_ = 0;
    }
    const UnitLook& look = unit_.look();
    Asked now{look.changes, topic_, sound_};
    if (asked_ == now) return;
    asked_ = std::move(now);
    FindCall call{skill, look.vocabulary, topic_, sound_, ++calls_};
    newest_.ask(
        [call = std::move(call), &known = unit_.bench().known, &blocked = unit_.bench().blocked] {
            return std::make_shared<const Offers>(findMore(call, known, blocked));
        });
}

void Finder::setTopic(const std::string& topic) {
    topic_ = topic_ == topic ? "" : topic;
    chosen_ = 0;
}

void Finder::setSound(const std::string& sound) {
    sound_ = sound_ == sound ? "" : sound;
    chosen_ = 0;
}

const Offers* Finder::offers() const {
    return offers_ && asked_ && offers_->number == calls_ ? offers_.get() : nullptr;
}

void Finder::move(int by) {
    if (offers() == nullptr || offers()->offers.empty()) return;
    const auto last = std::int64_t(offers()->offers.size()) - 1;
    chosen_ = std::size_t(std::clamp<std::int64_t>(std::int64_t(chosen_) + by, 0, last));
}

void Finder::add() {
    if (offers() == nullptr || chosen_ >= offers()->offers.size()) return;
    const std::string id = offers()->offers[chosen_].id;
    unit_.change([&](UnitAtWork& work) { work.addListed({id}, unit_.bench().known); });
}

void Finder::addAll() {
    if (offers() == nullptr) return;
    std::vector<std::string> ids;
    for (const Offer& offer : offers()->offers) ids.push_back(offer.id);
    unit_.change([&](UnitAtWork& work) { work.addListed(ids, unit_.bench().known); });
}

void Finder::step() {
    if (auto newest = newest_.take()) {
        offers_ = std::move(*newest);
        chosen_ = std::min(chosen_, offers_->offers.empty() ? 0 : offers_->offers.size() - 1);
    }
}

}  // namespace wrenlet::desk
