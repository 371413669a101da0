#include <algorithm>
#include <string>

#include "content/exercise/blend_parts.hpp"
#include "content/exercise/foils.hpp"
#include "content/exercise/skill_makers.hpp"
#include "content/exercise/sound_place.hpp"

// Taking apart: a word is heard and parted into its boxes. The words are those that suit joining
// parts of the same size; for syllables all whose number is sure, for only that is scored; for
// sounds, words of two to five sounds, clusters among them, for a cluster's second consonant is
// what gets lost (Bruck & Treiman 1990).

namespace wrenlet::exercise {

namespace {

constexpr std::size_t kFewestBoxes = 2;
constexpr std::size_t kMostBoxes = 5;

std::string_view unitName(Unit unit) {
    return unit == Unit::compound     ? "word"
           : unit == Unit::syllable   ? "syllable"
           : unit == Unit::onset_rime ? "part"
                                      : "sound";
}

/// The consonant that stands right after another one: the last of a word's clusters is left to the
/// ear that found the first.
std::size_t secondOfCluster(const speech::Pronunciation& sounds) {
    for (std::size_t i = 1; i < sounds.size(); ++i)
        if (!speech::isVowel(sounds[i - 1].phoneme) && !speech::isVowel(sounds[i].phoneme))
            return i;
    return 0;
}

std::string means(const Blend& blend, Unit unit, std::size_t boxes) {
    const speech::Pronunciation& sounds = blend.word->sounds;
    if (unit == Unit::phoneme) {
        const std::size_t second = secondOfCluster(sounds);
        if (boxes + 1 == sounds.size() && second > 0)
            return "took " + inSlashes({sounds[second - 1], sounds[second]}) + " for one sound";
        if (boxes == blend.word->text.size()) return "counted the letters, not the sounds";
    }
    if (unit == Unit::onset_rime && boxes == sounds.size())
        return "took the rime apart too: " + inSlashes(blend.sounds[1]);
    const std::size_t right = blend.parts.size();
    const std::size_t apart = boxes < right ? right - boxes : boxes - right;
    const std::string name(unitName(unit));
    return (apart == 1 ? "one " + name : std::to_string(apart) + " " + name + "s") +
           (boxes < right ? " fewer" : " more");
}

Item splitItem(const Blend& blend, Unit unit) {
    const speech::Pronunciation& sounds = blend.word->sounds;
    Item item;
    item.skill = {unit, Task::segment};
    item.subject = blend.word->id;
    item.parts = blend.parts;
    for (std::size_t boxes = kFewestBoxes; boxes <= kMostBoxes; ++boxes)
        item.choices.push_back(
            {std::to_string(boxes), boxes == blend.parts.size() ? "" : means(blend, unit, boxes)});
    item.answer = static_cast<std::uint8_t>(blend.parts.size() - kFewestBoxes);
    item.turns_on = {std::to_string(blend.parts.size()), Position::count};
    if (const std::size_t second = secondOfCluster(sounds); unit == Unit::phoneme && second > 0)
        item.turns_on = {std::string(speech::ipa(sounds[second].phoneme)),
                         positionOf(sounds, second)};
    item.id = itemId(item);
    return item;
}

}  // namespace

std::vector<Item> makeSplits(const Vocabulary& vocabulary, Unit unit) {
    ItemList list;
    for (const Blend& blend : unit == Unit::phoneme    ? soundsOfWords(vocabulary)
                              : unit == Unit::syllable ? syllablesOfWords(vocabulary)
                                                       : blends(vocabulary, unit))
        if (blend.parts.size() >= kFewestBoxes && blend.parts.size() <= kMostBoxes)
            list.add(0, splitItem(blend, unit));
    return list.take(kMostItems);
}

}  // namespace wrenlet::exercise
