#include "content/exercise/item_maker.hpp"

#include "content/exercise/skill_makers.hpp"

namespace wrenlet::exercise {

std::uint32_t stableHash(std::string_view text) {
    std::uint32_t hash = 2166136261u;  // FNV-1a
    for (const char letter : text) hash = (hash ^ static_cast<unsigned char>(letter)) * 16777619u;
    return hash;
}

std::vector<Item> makeItems(const Vocabulary& vocabulary, Skill skill) {
    switch (skill.task) {
        case Task::count:
            return makeWordCounts(vocabulary);
        case Task::rhyme_sort:
            return makeRhymeSorts(vocabulary);
        case Task::blend:
            return makeBlends(vocabulary, skill.unit);
    }
    return {};
}

}  // namespace wrenlet::exercise
