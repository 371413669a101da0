#include "game/session/turn.hpp"

#include <algorithm>
#include <utility>

#include "content/exercise/change_tiles.hpp"
#include "game/session/day.hpp"

namespace wrenlet::game {
namespace {

constexpr Millis kPauseMillis = 30'000;

std::optional<std::size_t> indexOf(const pack::Pack& pack, std::string_view item) {
    for (std::size_t i = 0; i < pack.items.size(); ++i)
        if (pack.items[i].id == item) return i;
    return std::nullopt;
}

std::vector<std::uint8_t> orderOf(const exercise::Item& item,
                                  const std::vector<std::string>& choices) {
    std::vector<std::uint8_t> order;
    for (const auto& id : choices)
        for (std::size_t i = 0; i < item.choices.size(); ++i)
            if (item.choices[i].id == id) order.push_back(static_cast<std::uint8_t>(i));
    return order;
}

}  // namespace

Turn::Turn(TurnParts parts, std::string child, std::uint64_t seed)
    : parts_(std::move(parts)), child_(std::move(child)), bank_(parts_.pack.items) {
    const std::int64_t day = localDay(parts_.clock.unixMillis());
    const std::string pack = parts_.pack.name();
    session_ = {0, child_, pack, seed, day, 0, false};
    if (const auto open = parts_.store.openSession(child_, pack, day)) {
        session_ = *open;
    } else {
        auto begun = parts_.store.beginSession(child_, pack, seed, day);
        if (begun.ok()) session_ = begun.value();
        note(begun.problems());
    }
    played_ms_ = session_.played_ms;
    history_ = parts_.store.history(child_);
    const auto is_earlier = [this](const practice::Response& response) {
        return response.session != session_.id || response.tablet != parts_.store.tablet();
    };
    std::stable_partition(history_.begin(), history_.end(), is_earlier);
    earlier_ =
        static_cast<std::size_t>(std::count_if(history_.begin(), history_.end(), is_earlier));
    for (std::size_t i = 0; i < earlier_; ++i) learner_.add(history_[i]);
    focus_ = practice::focusSkills(bank_, learner_.mastery(), parts_.pinned);
    for (const auto& response : today()) learn(response);
    resume();
}

void Turn::resume() {
    if (!today().empty() && !today().back().isRight()) askAgain(today().back());
    if (!question_) goOn();
}

void Turn::askAgain(const practice::Response& last) {
    const auto index = indexOf(parts_.pack, last.item);
    if (!index) return;
    const auto& item = parts_.pack.items[*index];
    auto order = orderOf(item, last.choices);
    if (order.size() != item.choices.size()) return;
    question_.emplace(item, std::move(order), last.try_number);
}

bool Turn::isNewSkill() const {
    const exercise::Skill skill = question_->item().skill;
    const std::string_view id = exercise::rowOf(skill).id;
    const auto mechanic = exercise::mechanicOf(question_->item());
    return std::none_of(history_.begin(), history_.end(), [&](const auto& response) {
        return response.skill == id && exercise::mechanicOf(skill, response.asked) == mechanic;
    });
}

std::vector<std::vector<std::string>> Turn::sorted() const {
    const std::size_t cards = runningSort(today());
    if (cards == 0 || !question_) return {};
    std::vector<std::vector<std::string>> homes(question_->places());
    std::size_t left = cards;
    for (auto i = today().rbegin(); i != today().rend() && left > 0; ++i) {
        if (!i->isRight()) continue;
        --left;
        if (i->skill != exercise::rowOf(question_->item().skill).id ||
            i->choices.size() != homes.size())
            return {};
        for (std::size_t place = 0; place < homes.size(); ++place) {
            if (question_->item().choices[question_->choiceAt(place)].id != i->choices[place])
                return {};
            if (i->choices[place] == i->right) homes[place].insert(homes[place].begin(), i->asked);
        }
    }
    return homes;
}

std::vector<std::string> Turn::chain() const {
    auto words = runningChain(today());
    if (words.empty() || !question_ || !exercise::makesChains(question_->item().skill) ||
        question_->item().subject != words.back())
        return {};
    words.pop_back();  // the question's own
    return words;
}

void Turn::record(const Given& given) {
    const auto& item = question_->item();
    practice::Response response;
    response.tablet = parts_.store.tablet();
    response.child = child_;
    response.session = session_.id;
    response.pack = parts_.pack.name();
    response.item = item.id;
    response.skill = exercise::rowOf(item.skill).id;
    response.asked = item.subject;
    response.turns_on = item.turns_on;
    response.chosen = item.choices[given.choice].id;
    response.right = item.choices[item.answer].id;
    std::vector<std::string> listed;
    for (const auto choice : question_->order()) listed.push_back(item.choices[choice].id);
    response.choices = std::move(listed);
    response.means = item.choices[given.choice].means;
    response.try_number = question_->tryNumber();
    response.hearings = std::max(1, given.hearings);
    response.took_ms = std::max<Millis>(0, given.took_ms);
    response.at_ms = parts_.clock.unixMillis();
    response.day = session_.day;

    history_.push_back(std::move(response));
    ++unwritten_;
    flush();
    learn(history_.back());
    question_->answer(given.choice);
    question_->explained();
}

void Turn::learn(const practice::Response& response) {
    learner_.add(response);
    if (!response.isEvidence()) return;
    ++asked_;
    if (!learner_.attention().hadEnough())
        enough_at_.reset();
    else if (!enough_at_)
        enough_at_ = asked_;
}

void Turn::flush() {
    if (session_.id == 0) {
        auto begun = parts_.store.beginSession(child_, session_.pack, session_.seed, session_.day);
        note(begun.problems());
        if (!begun.ok()) return;
        session_.id = begun.value().id;
        for (auto i = earlier_; i < history_.size(); ++i) history_[i].session = session_.id;
    }
    while (unwritten_ > 0) {
        auto& response = history_[history_.size() - unwritten_];
        auto written = parts_.store.append(response, played_ms_);
        note(written.problems());
        if (!written.ok()) return;
        response = std::move(written.value());
        --unwritten_;
    }
}

void Turn::goOn() {
    question_.reset();
    // A session does not end on an item that was missed, though it was put right afterwards.
    bool last_right = true;
    for (const practice::Response& response : today())
        if (response.isEvidence()) last_right = response.isRight();
    if (parts_.plan.isOver(played_ms_, asked_, last_right)) return;
    if (enough_at_ && parts_.plan.isWoundDown(asked_ - *enough_at_, last_right)) return;

    practice::Situation situation;
    situation.bank = &bank_;
    situation.history = history_;
    situation.mastery = &learner_.mastery();
    situation.pinned = parts_.pinned;
    situation.focus = focus_;
    situation.session = session_.id;
    situation.day = session_.day;
    situation.seed = session_.seed;
    situation.asked_so_far = asked_;
    situation.last_ones = enough_at_ || parts_.plan.isClosing(played_ms_, asked_);
    situation.sure_one = asked_ > 0 && learner_.attention().wantsSureOne();
    reminds_ = asked_ > 0 && learner_.attention().reminds();
    const auto chain = runningChain(today());
    situation.chain = chain;
    if (runningSort(today()) > 0 || !chain.empty())
        situation.stay_with = indexOf(parts_.pack, today().back().item);
    const auto next = parts_.scheduler.next(situation);
    if (next)
        question_.emplace(parts_.pack.items[next->item], next->order);
    else
        note({{parts_.pack.name(), "There is no item that could be asked.",
               "Add words to the unit at the desk and hand it out again."}});
}

void Turn::beat(Millis now) {
    if (last_beat_ && now - *last_beat_ <= kPauseMillis)
        played_ms_ += std::max<Millis>(0, now - *last_beat_);
    last_beat_ = now;
}

int Turn::roundsToday() const {
    return roundsDone(today());
}

Growth Turn::growth(bool with_this) const {
    return growthAfter(roundsDone(history_),
                       parts_.store.endedSessions(child_) + (with_this ? 1 : 0));
}

void Turn::end() {
    flush();
    if (session_.id == 0 || session_.ended) return;
    const auto ended = parts_.store.endSession(session_.id, played_ms_);
    note(ended.problems());
    session_.ended = ended.ok();
}

void Turn::note(const std::vector<Problem>& problems) {
    for (const auto& problem : problems) {
        const auto said = std::any_of(problems_.begin(), problems_.end(), [&](const Problem& p) {
            return p.where == problem.where && p.what == problem.what;
        });
        if (!said) problems_.push_back(problem);
    }
}

std::span<const practice::Response> Turn::today() const {
    return std::span(history_).subspan(earlier_);
}

}  // namespace wrenlet::game
