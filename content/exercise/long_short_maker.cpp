#include <string>

#include "content/exercise/foils.hpp"
#include "content/exercise/skill_makers.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/exercise/vowel_length.hpp"

// Long or short: a card goes to the home of its vowel. RF.1.2.a names spoken single-syllable words.

namespace wrenlet::exercise {

std::vector<Item> makeLongShorts(const Vocabulary& vocabulary) {
    ItemList list;
    for (const Word* word : picturedWords(vocabulary)) {
        const auto vowel = lengthOf(word->sounds);
        if (!vowel) continue;
        const std::string sound = inSlashes(word->sounds[vowel->place].phoneme);
        Item item;
        item.skill = {Unit::phoneme, Task::long_short};
        item.subject = word->id;
        item.choices = {{"long", vowel->is_long ? "" : "took the short " + sound + " for long"},
                        {"short", vowel->is_long ? "took the long " + sound + " for short" : ""}};
        item.answer = vowel->is_long ? 0 : 1;
        item.turns_on = {std::string(speech::ipa(word->sounds[vowel->place].phoneme)),
                         positionOf(word->sounds, vowel->place)};
        item.id = itemId(item);
        list.add(0, std::move(item));
    }
    return list.take(kMostItems);
}

}  // namespace wrenlet::exercise
