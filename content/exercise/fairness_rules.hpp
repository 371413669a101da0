// What makes an item fair, rule by rule and mechanic by mechanic. Written against the words and the
// published statements alone, without the makers: what those get wrong is found here.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise::fairness {

using Reasons = std::vector<std::string>;

/// Each adds to `why` what is unfair about `item`, if anything.
/// REQUIRES: two choices or more, none twice, one of them right.
void judgeSort(const Item& item, const Vocabulary& vocabulary, Reasons& why);
void judgeJoin(const Item& item, const Vocabulary& vocabulary, Reasons& why);
void judgeSplit(const Item& item, const Vocabulary& vocabulary, Reasons& why);
void judgeCount(const Item& item, const Vocabulary& vocabulary, Reasons& why);
void judgePick(const Item& item, const Vocabulary& vocabulary, Reasons& why);
void judgeChange(const Item& item, const Vocabulary& vocabulary, Reasons& why);
void judgeLetters(const Item& item, const Vocabulary& vocabulary, Reasons& why);

std::string quoted(std::string_view text);

/// The words that are chosen among, then those of `beside` that are none of them. Empty, with the
/// reason, when one is no word, has no sounds, or has no picture and is to be chosen; also says
/// which can be taken for each other.
std::vector<const Word*> shownWords(const Item& item, std::span<const std::string> beside,
                                    const Vocabulary& vocabulary, Reasons& why);

/// Says it when the parts of the item are not those of the word, said one after another.
void judgeParts(const Item& item, const Vocabulary& vocabulary, const Word& word, Reasons& why);

/// Says it when the choices are not the numbers from `first` on, or the right one is not `right`.
void judgeNumbers(const Item& item, std::size_t first, std::size_t right, Reasons& why);

/// Says it when the word is not of the kind that RF.K.2.d names: three phonemes, consonant, vowel,
/// consonant, not ending in /l/, /ɹ/ or the letter x's /ks/; a vowel with /ɹ/ in it ends so too.
void judgeCvc(const Word& word, Reasons& why);

/// Where the sound that `turns_on` names stands in the word, by its position; the word's size when
/// it does not stand there, or stands there twice.
std::size_t placeOf(const TurnsOn& turns_on, const speech::Pronunciation& sounds);

/// True iff some accent has the sound of `word` at `place` as `sound`, though the dictionary has
/// not.
bool mayBe(const speech::Pronunciation& word, std::size_t place, speech::Phoneme sound);

}  // namespace wrenlet::exercise::fairness
