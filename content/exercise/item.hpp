// One question with one answer: what is heard, what can be chosen, which choice is right, the
// sound it turns on, and what each wrong choice would mean. Items are computed from a unit's
// words, never typed, and are stored in the pack.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/skill.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::exercise {

/// Where in the word or sentence the deciding sound stands. `rime` is a whole rime (cat, hat);
/// `whole` a part of a compound or a syllable; `word_count` a number of words. `middle` is any
/// place between the first sound and the last: the vowel of "cat", the second sound of "stop".
enum class Position : std::uint8_t { first, middle, last, rime, whole, word_count };

std::string_view positionId(Position position);  // "first", "word-count"
/// `first` for a name that is none of those: positionId() of it then differs from `id`.
Position positionFromId(std::string_view id);

/// The sound that an answer is evidence on: IPA ("k", "æt"), a part's word ("bow"), or a number
/// of words ("5").
struct TurnsOn {
    std::string sound;
    Position position = Position::first;
    bool operator==(const TurnsOn&) const = default;
};

/// Something heard before the answer is given: a sound, a rime, a syllable, a word.
struct Part {
    std::string clip;   // id of its clip
    std::string label;  // IPA or text, for adults
    bool operator==(const Part&) const = default;
};

struct Choice {
    std::string id;     // a word id, or a number of words: what the response records
    std::string means;  // what choosing it tells: "heard /d/ for /t/ last"; empty if right
    bool operator==(const Choice&) const = default;
};

/// What an item is made of depends on its skill's mechanic:
///   sort   subject is the card's word; parts are empty; the choices are the words that head the
///          homes, and the right one rhymes with the card.
///   join   subject is the word; parts are its compound parts, syllables, onset and rime, or
///          phonemes, in order; the choices are words with pictures.
///   count  subject is the sentence; parts are its words; the choices are "1" to "8".
struct Item {
    std::string id;  // skill, subject and choices: the same in every pack
    Skill skill{};
    std::string subject;
    std::vector<Part> parts;
    std::vector<Choice> choices;  // 2 to 8, in a fixed order; shown in an order chosen when asked
    std::uint8_t answer = 0;      // index into choices
    TurnsOn turns_on;
    bool operator==(const Item&) const = default;
};

/// The id of an item with this skill, subject and choices: "phoneme.blend/cat/bee+cat+hat".
std::string itemId(const Item& item);

/// True iff two items offer the same choices, so that one follows the other in the same round.
bool sameChoices(const Item& a, const Item& b);

}  // namespace wrenlet::exercise
