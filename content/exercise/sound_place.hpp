// Which sounds of a word can be asked about: the words that the standard means by "CVC", and the
// places in them where every ear hears the same sound.
#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

/// True iff the word suits first, middle and last sounds: a consonant, a vowel and a consonant, not
/// ending in /l/ or /ɹ/ (RF.K.2.d, which also leaves out /ks/: that is two sounds), and without
/// /ɝ/, a vowel and /ɹ/ in one.
bool isPlainCvc(const speech::Pronunciation& sounds);

/// True iff the sound at `place` is the same one in every accent that is judged.
bool isSure(const speech::Pronunciation& sounds, std::size_t place);

/// True iff a vowel is followed by /l/ or /ɹ/, or is /ɝ/, or the word ends in /ks/: sounds that
/// colour each other and are hard to take apart by ear.
bool isBlurred(const speech::Pronunciation& sounds);

/// True iff a vowel is followed by /ɹ/ or is /ɝ/: one sound or two, as the ear likes.
bool isColouredByR(const speech::Pronunciation& sounds);

/// first, middle or last. REQUIRES: place < sounds.size().
Position positionOf(const speech::Pronunciation& sounds, std::size_t place);
std::string_view placeName(Position position);  // "first", "last", "in the middle"

/// Consonants that stand right after another consonant: 1 in "stop", 2 in "stamp".
std::size_t clusterSounds(const speech::Pronunciation& sounds);

/// True iff its syllables break where its sounds say: not of "ice-cream" without its parts, which
/// its sounds alone would break like "I scream".
bool breaksBySound(const Word& word);

std::string inSlashes(speech::Phoneme phoneme);              // "/k/"
std::string inSlashes(const speech::Pronunciation& sounds);  // "/kæt/"

/// Its sounds as a key: the same iff the phonemes are, whatever the stress.
std::string soundKey(const speech::Pronunciation& sounds);

}  // namespace wrenlet::exercise
