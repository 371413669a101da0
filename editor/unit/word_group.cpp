#include "editor/unit/word_group.hpp"

namespace wrenlet::desk {

using exercise::Task;

std::string_view groupName(WordGroup group) {
    constexpr std::array<std::string_view, kWordGroups> kNames{"Rhyme", "First", "Last", "Vowel",
                                                               "Join",  "Part",  "Swap"};
    return kNames[static_cast<std::size_t>(group)];
}

std::optional<WordGroup> groupOf(exercise::Skill skill) {
    if (skill.unit == exercise::Unit::letter || skill.unit == exercise::Unit::sentence) return {};
    switch (skill.task) {
        case Task::rhyme_judge:
        case Task::rhyme_sort:
        case Task::odd_one_out:
        case Task::rhyme_pick:
            return WordGroup::rhyme;
        case Task::first:
            return WordGroup::first;
        case Task::last:
            return WordGroup::last;
        case Task::middle:
        case Task::long_short:
            return WordGroup::vowel;
        case Task::blend:
            return WordGroup::join;
        case Task::count:
        case Task::segment:
            return WordGroup::part;
        case Task::add:
        case Task::remove:
        case Task::substitute:
            return WordGroup::swap;
        default:
            return {};
    }
}

std::vector<std::string> skillsOf(WordGroup group) {
    std::vector<std::string> ids;
    for (const exercise::SkillRow& row : exercise::skillTable())
        if (groupOf(row.skill) == group) ids.emplace_back(row.id);
    return ids;
}

}  // namespace wrenlet::desk
