#include "content/exercise/item_maker.hpp"

#include "content/exercise/skill_makers.hpp"

namespace wrenlet::exercise {

std::uint32_t stableHash(std::string_view text) {
    std::uint32_t hash = 2166136261u;  // FNV-1a
    for (const char letter : text) hash = (hash ^ static_cast<unsigned char>(letter)) * 16777619u;
    return hash;
}

std::vector<Item> makeItems(const Vocabulary& vocabulary, Skill skill) {
    if (skill.unit == Unit::letter) return makeLetterItems(vocabulary, skill.task);
    switch (skill.task) {
        case Task::count:
            return skill.unit == Unit::sentence ? makeWordCounts(vocabulary)
                                                : makeSyllableCounts(vocabulary);
        case Task::tune:
            return makeTunes(vocabulary);
        case Task::blend:
            return makeBlends(vocabulary, skill.unit);
        case Task::segment:
            return makeSplits(vocabulary, skill.unit);
        case Task::add:
        case Task::remove:
        case Task::substitute:
            return makeChanges(vocabulary, skill);
        case Task::rhyme_sort:
            return makeRhymeSorts(vocabulary);
        case Task::rhyme_judge:
        case Task::odd_one_out:
        case Task::rhyme_pick:
            return makeRhymePicks(vocabulary, skill.task);
        case Task::first:
        case Task::last:
        case Task::middle:
            return makeIsolations(vocabulary, skill.task);
        case Task::long_short:
            return makeLongShorts(vocabulary);
        default:
            return {};
    }
}

}  // namespace wrenlet::exercise
