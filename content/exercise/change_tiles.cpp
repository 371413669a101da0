#include "content/exercise/change_tiles.hpp"

#include <algorithm>

#include "content/exercise/foils.hpp"

namespace wrenlet::exercise {

namespace {

/// Where `longer` has the part that `shorter` lacks.
std::size_t placeOfMore(const std::vector<Part>& longer, const std::vector<Part>& shorter) {
    std::size_t at = 0;
    while (at < shorter.size() && longer[at].clip == shorter[at].clip) ++at;
    return std::min(at, longer.size() - 1);
}

/// The part and what is left of the word without it, in order.
std::vector<Part> inOrder(const Part& part, const Part& rest, Position position) {
    return position == Position::first_part ? std::vector{part, rest} : std::vector{rest, part};
}

}  // namespace

std::vector<Part> changeParts(const Word& word, const Vocabulary& vocabulary, Unit unit) {
    std::vector<Part> parts;
    if (unit == Unit::compound)
        for (const std::string& id : word.compound)
            if (const Word* part = vocabulary.word(id)) parts.push_back(partOf(*part));
    if (unit == Unit::phoneme)
        for (const speech::Sound& sound : word.sounds) parts.push_back(partOf({sound}));
    if (parts.empty()) parts.push_back(partOf(word));
    return parts;
}

ChangeTiles changeTiles(const Item& item, const Vocabulary& vocabulary) {
    ChangeTiles tiles;
    tiles.takes = item.skill.task != Task::add;
    tiles.puts = item.skill.task != Task::remove;
    const Word* from = vocabulary.word(item.subject);
    const Word* to = vocabulary.word(item.choices[item.answer].id);
    if (from == nullptr || to == nullptr || item.parts.size() < 2) return tiles;
    tiles.before = changeParts(*from, vocabulary, item.skill.unit);
    tiles.after = changeParts(*to, vocabulary, item.skill.unit);
    if (item.skill.unit == Unit::syllable) {
        auto& longer = tiles.takes ? tiles.before : tiles.after;
        longer = inOrder(item.parts[1], partOf(tiles.takes ? *to : *from), item.turns_on.position);
    }
    tiles.at = tiles.before.size() > tiles.after.size() ? placeOfMore(tiles.before, tiles.after)
                                                        : placeOfMore(tiles.after, tiles.before);
    return tiles;
}

bool makesChains(Skill skill) {
    return skill.task == Task::substitute;
}

bool followsInChain(const Item& last, const Item& next) {
    return last.skill == next.skill && makesChains(last.skill) &&
           next.subject == last.choices[last.answer].id;
}

}  // namespace wrenlet::exercise
