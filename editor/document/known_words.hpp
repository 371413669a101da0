// The words that the desk knows something of: the classroom list with senses and compounds, then
// the dictionary, and for the rest a guess by a word's parts or its letters, to be confirmed by
// ear.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/exercise/classroom_words.hpp"
#include "content/exercise/lint.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/how_said.hpp"
#include "content/speech/lexicon.hpp"

namespace wrenlet::desk {

struct KnownWord {
    std::string id;     // in the classroom list: "bow~rain"; empty: it is not there
    std::string text;   // lower case
    std::string sense;  // a gloss where the spelling means several: "tied in hair"; else empty
    speech::Pronunciation sounds;
    std::vector<speech::Pronunciation> also;       // other ways that the dictionary lists
    std::vector<speech::Pronunciation> syllables;  // a compound's by its parts
    std::vector<std::string> compound;             // its parts as written; empty: not a compound
    std::vector<std::string> other_senses;         // ids of the list's other words so spelled
    std::string picture;                           // of the classroom list; empty: none
    speech::SaidBy source = speech::SaidBy::rules;
    bool confirm_by_ear = true;
};

class KnownWords {
  public:
    /// `assets` holds lexicon.bin, words/classroom.tsv and words/sentences.tsv. Errors: one of them
    /// cannot be read.
    static Result<KnownWords> open(const std::filesystem::path& assets);

    /// A word as it is typed: "bow", or with its sense "bow~rain" where the classroom list tells
    /// several apart; without one, the first that a child is asked. Errors: see typedWord(); a
    /// sense that the list lacks; a word that nothing gives a sound for.
    Result<KnownWord> find(std::string_view typed) const;

    /// A warning, "looks-compound", of a word (an id) that the dictionary has and two of its words
    /// seem to make, so that nobody knows yet where it is to be parted. Nothing of a word of the
    /// classroom list, where that was decided by hand.
    std::optional<exercise::Lint> looksCompound(std::string_view id) const;

    const speech::Lexicon& lexicon() const { return lexicon_; }
    /// The classroom lists, as item makers take them.
    const exercise::Vocabulary& classroom() const { return classroom_; }
    /// The classroom list as it is written, with topics.
    const std::vector<exercise::ClassroomWord>& listed() const { return listed_; }

  private:
    KnownWords(speech::Lexicon lexicon, std::vector<exercise::ClassroomWord> listed,
               exercise::Vocabulary classroom);
    KnownWord fromList(const exercise::ClassroomWord& listed, const exercise::Word& word) const;
    Result<KnownWord> fromSpelling(std::string_view text) const;
    std::vector<std::string> likelyParts(std::string_view text) const;

    speech::Lexicon lexicon_;
    std::vector<exercise::ClassroomWord> listed_;
    exercise::Vocabulary classroom_;
    std::unique_ptr<speech::LetterToSound> rules_;
};

}  // namespace wrenlet::desk
