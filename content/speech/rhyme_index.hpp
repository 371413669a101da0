// All rhymes of a word among the dictionary's: the words put in order of what rhymes and of the
// onset before it, once, so that a look-up compares sounds with a few words only.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "content/speech/lexicon.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

struct RhymingWord {
    std::string_view word;  // lower case; valid as long as the index
    bool likeliest;         // false when only a later listed way of saying it rhymes ("read": bed)
};

class RhymeIndex {
  public:
    /// Takes a moment (tens of milliseconds). Words without a vowel are left out. The lexicon is
    /// not needed afterwards.
    explicit RhymeIndex(const Lexicon& lexicon);

    /// Every word that has a listed pronunciation which is a perfect rhyme of `said`, in
    /// alphabetical order, each once. Empty for a pronunciation without a vowel.
    std::vector<RhymingWord> rhymesOf(const Pronunciation& said) const;

    std::size_t bytes() const;  // of memory that it holds

  private:
    /// Words with one rime and one onset before it.
    struct Group {
        std::uint32_t key;  // into keys_: the rime's sounds, then the onset's
        std::uint8_t rime_size, onset_size;
        std::uint32_t first;  // into entries_; they go on to the next group's first
    };
    struct Entry {
        std::uint32_t word;  // into words_
        std::uint8_t size;
        bool likeliest;
    };

    std::string_view rimeOf(const Group& group) const;
    std::string_view onsetOf(const Group& group) const;

    std::string words_, keys_;
    std::vector<Group> groups_;
    std::vector<Entry> entries_;
};

}  // namespace wrenlet::speech
