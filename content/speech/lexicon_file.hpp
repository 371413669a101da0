// The compiled dictionary's form: words in order, front-coded in blocks of sixteen, with an index
// of the blocks. It is searched where it lies, so nothing is parsed when a program starts. All
// numbers are little-endian, so one file serves every machine.
//
//   header   kHeaderSize bytes: magic, then u32 version, words, blocks, file size, check
//   index    u32 for each block: where it begins, from the start of the file
//   blocks   for each word: u8 letters shared with the word before (0 for a block's first),
//            u8 further letters, the letters, u8 bytes of pronunciations; and for each
//            pronunciation: u8 sounds, then a byte a sound: phoneme, stress in the top two bits
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

inline constexpr std::string_view kLexiconMagic = "WRENLEX\n";
inline constexpr std::uint32_t kLexiconVersion = 1;
inline constexpr std::size_t kLexiconHeaderSize = 28;
inline constexpr std::size_t kLexiconBlockWords = 16;
inline constexpr std::size_t kMostWordLetters = 63;  // longer words are not found

struct LexiconEntry {
    std::string word;  // lower case ASCII
    std::vector<Pronunciation> said;
};

/// The file's bytes. Errors: no entry, a word twice, a word empty or too long, more
/// pronunciations than a byte can count.
Result<std::string> writeLexicon(std::vector<LexiconEntry> entries);

std::uint8_t packSound(const Sound& sound);

/// FNV-1a over the header up to its check and over the index: tells a damaged file at once.
std::uint32_t lexiconCheck(std::string_view header, std::string_view index);

}  // namespace wrenlet::speech
