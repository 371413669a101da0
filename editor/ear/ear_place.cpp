#include "editor/ear/ear_place.hpp"

#include <algorithm>

#include "content/pack/pack_file.hpp"
#include "editor/tomorrow/lesson.hpp"

namespace wrenlet::desk {

namespace {

using practice::Heard;

/// Of the class's pack, what the child misses first.
std::vector<AskedAloud> fromPack(const pack::Pack& pack, const practice::ChildProgress& child,
                                 const std::string& skill) {
    const practice::SmallGroup alone{skill, {child.child.id}, {}};
    const LessonTask task = tableTaskFor(alone, pack, std::span(&child, 1), kAskedAloud);
    std::vector<AskedAloud> asked;
    for (const LessonItem& item : task.items) {
        const auto found = std::find_if(pack.items.begin(), pack.items.end(),
                                        [&](const auto& one) { return one.id == item.item; });
        if (found != pack.items.end())
            asked.push_back({skill, found->turns_on, found->subject, item.said, false});
    }
    return asked;
}

}  // namespace

void EarPlace::open(const OpenedClass& opened, std::size_t child, const std::string& skill,
                    EarWords words, const Workbench& bench, std::uint64_t seed) {
    const practice::ChildProgress& progress = opened.children[child];
    open_ = true;
    words_ = words;
    child_ = progress.child.id;
    skill_ = skill;
    items_.clear();
    problems_.clear();
    at_ = 0;
    const auto known = exercise::skillFromId(skill);
    if (words == EarWords::fresh && known) {
        std::set<std::string> practised = practisedWords(opened.responses);
        items_ =
            probeFor(*known, bench.known.classroom(), practised, bench.blocked, seed, kAskedAloud);
    } else if (words == EarWords::practised && !opened.list.pack.empty()) {
        const auto pack = pack::readPackFile(opened.classroom.packFile(opened.list.pack));
        problems_ = pack.problems();
        if (pack.ok()) items_ = fromPack(pack.value(), progress, skill);
    }
    marks_.assign(items_.size(), std::nullopt);
    order_.clear();
}

void EarPlace::moveTo(std::size_t item) {
    if (!items_.empty()) at_ = std::min(item, items_.size() - 1);
}

void EarPlace::mark(practice::HeardAs mark, const pack::Classroom& classroom, std::int64_t day) {
    if (at_ >= items_.size()) return;
    const AskedAloud& item = items_[at_];
    Given given{at_,
                {child_, day, item.skill, item.turns_on, item.asked, mark, item.is_new_word},
                std::nullopt};
    if (marks_[at_])
        for (auto before = order_.rbegin(); before != order_.rend() && !given.instead_of; ++before)
            if (before->item == at_) given.instead_of = before->heard;
    std::vector<Heard> instead;
    if (given.instead_of) instead.push_back(*given.instead_of);
    const auto kept = changeEar(classroom, std::span(&given.heard, 1), instead);
    problems_ = kept.problems();
    if (!kept.ok()) return;
    marks_[at_] = mark;
    order_.push_back(std::move(given));
    if (at_ + 1 < items_.size()) ++at_;
}

bool EarPlace::undo(const pack::Classroom& classroom) {
    if (order_.empty()) return false;
    const Given& last = order_.back();
    std::vector<Heard> back;
    if (last.instead_of) back.push_back(*last.instead_of);
    const auto kept = changeEar(classroom, back, std::span(&last.heard, 1));
    problems_ = kept.problems();
    if (!kept.ok()) return true;
    at_ = last.item;
    marks_[at_] = last.instead_of ? std::optional(last.instead_of->mark) : std::nullopt;
    order_.pop_back();
    return true;
}

}  // namespace wrenlet::desk
