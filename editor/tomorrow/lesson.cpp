#include "editor/tomorrow/lesson.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "content/exercise/in_accents.hpp"
#include "content/practice/feature.hpp"
#include "content/practice/mastery.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

using practice::ChildProgress;
using practice::SoundLine;
using practice::Standing;

/// Who misses what: ids by skill and by cell.
struct Missed {
    std::map<std::string, std::set<std::string>> in_skill;
    std::map<practice::Cell, std::vector<std::string>> at;

    explicit Missed(std::span<const ChildProgress> children) {
        for (const ChildProgress& child : children)
            for (const SoundLine& line : child.lines) {
                if (line.said != Standing::missed) continue;
                in_skill[line.cell.skill].insert(child.child.id);
                at[line.cell].push_back(child.child.id);
            }
    }
    std::size_t in(const std::string& skill) const {
        const auto found = in_skill.find(skill);
        return found == in_skill.end() ? 0 : found->second.size();
    }
    std::vector<std::string> who(const practice::Cell& cell) const {
        const auto found = at.find(cell);
        return found == at.end() ? std::vector<std::string>{} : found->second;
    }
};

double expectedOf(const exercise::Item& item, const practice::Mastery& nothing_known) {
    const std::string skill(exercise::rowOf(item.skill).id);
    const practice::Known known = nothing_known.known(practice::featuresOf(skill, item.turns_on));
    return practice::chanceOfRight(known, practice::answeringAmong(item.choices.size()));
}

/// The words that an item is about, so that two items are not of the same.
std::set<std::string> wordsOf(const exercise::Item& item) {
    std::set<std::string> words{item.choices[item.answer].id};
    if (!exercise::isSoundClip(item.subject)) words.insert(item.subject);
    return words;
}

std::vector<LessonItem> itemsFor(std::string_view skill, const pack::Pack& pack,
                                 const Missed& missed, std::size_t most,
                                 std::span<const LessonItem> already = {}) {
    struct Candidate {
        const exercise::Item* item;
        std::vector<std::string> who;
        double expected;
    };
    const practice::Mastery nothing_known;
    std::vector<Candidate> candidates;
    for (const exercise::Item& item : pack.items)
        if (exercise::rowOf(item.skill).id == skill)
            candidates.push_back({&item, missed.who({std::string(skill), item.turns_on}),
                                  expectedOf(item, nothing_known)});
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) {
                         if (a.who.size() != b.who.size()) return a.who.size() > b.who.size();
                         return a.expected > b.expected;
                     });
    std::vector<LessonItem> items;
    std::set<std::string> used, asked;
    std::map<std::string, std::size_t> on_sound;
    for (const LessonItem& item : already) {
        asked.insert(item.said.ask);
        const exercise::Item* known = pack.item(item.item);
        if (known != nullptr) used.merge(wordsOf(*known));
    }
    // in passes, so that no one sound takes all the places while there are others; twice as many
    // of what somebody misses
    for (std::size_t may = 1; may <= 3 && items.size() < most; ++may)
        for (const Candidate& candidate : candidates) {
            if (items.size() == most) break;
            const exercise::Item& item = *candidate.item;
            if (on_sound[item.turns_on.sound] >= (candidate.who.empty() ? may : 2 * may)) continue;
            const std::set<std::string> words = wordsOf(item);
            if (std::any_of(words.begin(), words.end(),
                            [&](const std::string& word) { return used.count(word) != 0; }))
                continue;
            if (!exercise::holdsIn(speech::allAccents(), item, pack.vocabulary)) continue;
            Aloud said = asking(item, pack.vocabulary).aloud;
            if (!asked.insert(said.ask).second) continue;
            used.insert(words.begin(), words.end());
            ++on_sound[item.turns_on.sound];
            items.push_back({item.id, std::move(said), candidate.who, candidate.expected});
        }
    std::stable_sort(items.begin(), items.end(), [](const LessonItem& a, const LessonItem& b) {
        return a.expected > b.expected;
    });
    return items;
}

}  // namespace

Lesson lessonFor(const pack::Pack& pack, std::span<const ChildProgress> children) {
    const Missed missed(children);
    Lesson lesson{pack.name(), {}};
    std::vector<std::string_view> skills;
    for (const exercise::SkillRow& row : exercise::skillTable()) skills.push_back(row.id);
    std::stable_sort(skills.begin(), skills.end(), [&](std::string_view a, std::string_view b) {
        return missed.in(std::string(a)) > missed.in(std::string(b));
    });
    for (const std::string_view skill : skills) {
        if (lesson.tasks.size() == kLessonTasks) break;
        LessonTask task{std::string(skill), missed.in(std::string(skill)),
                        itemsFor(skill, pack, missed, kLessonItems)};
        if (!task.items.empty()) lesson.tasks.push_back(std::move(task));
    }
    const auto place = [](const LessonTask& task) {
        const auto table = exercise::skillTable();
        return std::find_if(table.begin(), table.end(),
                            [&](const exercise::SkillRow& row) { return row.id == task.skill; }) -
               table.begin();
    };
    std::stable_sort(lesson.tasks.begin(), lesson.tasks.end(),
                     [&](const LessonTask& a, const LessonTask& b) { return place(a) < place(b); });
    return lesson;
}

LessonTask tableTaskFor(const practice::SmallGroup& group, const pack::Pack& pack,
                        std::span<const ChildProgress> children, std::size_t most) {
    std::vector<ChildProgress> members;
    for (const ChildProgress& child : children)
        if (std::find(group.children.begin(), group.children.end(), child.child.id) !=
            group.children.end())
            members.push_back(child);
    const Missed missed(members);
    return {group.skill, missed.in(group.skill), itemsFor(group.skill, pack, missed, most)};
}

std::string sharedIn(const practice::SmallGroup& group) {
    std::vector<std::string> places;
    for (const practice::SharedSound& sound : group.sounds) {
        exercise::TurnsOn plain = sound.turns_on;
        if (plain.position == exercise::Position::first ||
            plain.position == exercise::Position::middle ||
            plain.position == exercise::Position::last ||
            plain.position == exercise::Position::rime)
            plain.sound = inPlainLetters(plain.sound);
        places.push_back(wording::place(plain) + " (" + std::to_string(sound.children.size()) +
                         ")");
    }
    return wording::names(places, 4);
}

std::vector<LessonItem> moreItemsFor(std::string_view skill, const pack::Pack& pack,
                                     std::span<const ChildProgress> children,
                                     std::span<const LessonItem> already, std::size_t most) {
    return itemsFor(skill, pack, Missed(children), most, already);
}

std::vector<std::string> skillsAsked(const pack::Pack& pack) {
    std::set<std::string_view> there;
    for (const exercise::Item& item : pack.items) there.insert(exercise::rowOf(item.skill).id);
    std::vector<std::string> skills;
    for (const exercise::SkillRow& row : exercise::skillTable())
        if (there.count(row.id) != 0) skills.emplace_back(row.id);
    return skills;
}

void hearThemIn(std::vector<LessonItem>& items, const pack::Pack& pack,
                std::span<const ChildProgress> children) {
    const Missed missed(children);
    for (LessonItem& item : items)
        if (const exercise::Item* known = pack.item(item.item))
            item.listen_to =
                missed.who({std::string(exercise::rowOf(known->skill).id), known->turns_on});
}

}  // namespace wrenlet::desk
