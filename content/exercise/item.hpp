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
/// `count` is a number of parts (the skill says of what); `first_part` and `last_part` are a
/// compound's words or a word's syllables; `tune` is that of a sentence; `letter` a letter.
enum class Position : std::uint8_t {
    first,
    middle,
    last,
    rime,
    whole,
    word_count,
    count,
    first_part,
    last_part,
    tune,
    letter,
};

std::string_view positionId(Position position);  // "first", "word-count"
/// `first` for a name that is none of those: positionId() of it then differs from `id`.
Position positionFromId(std::string_view id);

/// The sound that an answer is evidence on: IPA ("k", "æt"), a part's word ("bow"), a number of
/// words or parts ("5"), "asking" or "telling", or a letter's id ("letter:b").
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
    std::string id;     // what the response records; see Item
    std::string means;  // what choosing it tells: "heard /d/ for /t/ last"; empty if right
    bool operator==(const Choice&) const = default;
};

/// What an item is made of depends on its mechanic. Letters are chosen by their ids ("letter:b",
/// "letter:sh"), sounds by their clips' ("sound:b"); words that are chosen have pictures.
///   sort    subject is the card, a word or a sentence; parts are empty; the choices head the
///   homes:
///             rhyme sort         two words; the right one rhymes with the card;
///             first, last, middle  two words; the right one has the card's sound in that place;
///             long or short      "long", "short": the vowel of the card;
///             tune               "asking", "telling": the card is a sentence.
///   join    subject is the word; parts are what is brought together, in order: compound parts,
///           syllables, onset and rime, phonemes, or letters (the label is the letter on the tile,
///           the clip its sound in this word); the choices are words.
///   split   subject is the word; parts are what is heard in its boxes, in order; the choices are
///           "2" to "5", the number of boxes.
///   count   subject is the sentence or the word; parts are its words or syllables; the choices are
///           "1" to "8" for words, "1" to "5" for syllables.
///   pick    parts are what is heard first, in order:
///             first, last, middle  subject is the sound's clip; parts are it; choices are words;
///             rhyme judge        subject is a word; parts are it and the other; "yes", "no";
///             rhyme pick         subject is a word; parts are it; the choices are words;
///             odd one out        subject is the right choice; parts are the choices' words;
///             letter name        subject is a letter; parts are its name; letters;
///             letter sound       subject is a letter, shown; parts are empty; sounds;
///             letter for sound   subject is the sound's clip; parts are it; letters;
///             digraph            subject is a word; parts are it and the sound; pairs of letters;
///             both sounds        subject is a letter; parts are its two sounds; letters.
///   change  subject is the word to start from; parts are that word, then the part put in (add),
///           taken away (delete), or first the one taken out and then the one put in (substitute);
///           turns_on says where: a part that is added or put in is the one turned on, and so is
///           one taken away. The choices are words, the right one what comes out.
struct Item {
    std::string id;  // see itemId(): the same in every pack
    Skill skill{};
    std::string subject;
    std::vector<Part> parts;
    std::vector<Choice> choices;  // 2 to 8, in a fixed order; shown in an order chosen when asked
    std::uint8_t answer = 0;      // index into choices
    TurnsOn turns_on;
    bool operator==(const Item&) const = default;
};

/// The id of an item with this skill, subject and choices: "phoneme.blend/cat/bee+cat+hat". Where
/// several questions share those, the parts stand in between:
/// "onset-rime.rhyme-judge/cat/word:cat+word:hat/yes+no".
std::string itemId(const Item& item);

/// True iff a subject or a choice is named by a clip of one sound or of several: "sound:b",
/// "part:ks".
bool isSoundClip(std::string_view id);

/// How an item of this skill and subject is played: as its skill is, but that first, last and
/// middle sounds are also sorted.
Mechanic mechanicOf(Skill skill, std::string_view subject);
Mechanic mechanicOf(const Item& item);

/// True iff the choices keep their order whenever they are shown: numbers, yes and no.
bool keepsOrder(const Item& item);

/// True iff two items offer the same choices, so that one follows the other in the same round.
bool sameChoices(const Item& a, const Item& b);

}  // namespace wrenlet::exercise
