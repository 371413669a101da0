// The table of items answered by hand (hand_checked_items.tsv), read and put into the form that the
// program has for them, so that the makers and the rules of fairness can be held against it.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/lexicon.hpp"

namespace wrenlet::handchecked {

struct Line {
    std::size_t number = 0;  // in the file, from 1
    std::string text;        // the whole line
    std::string skill, asked, right, decides, place;
    std::vector<std::string> choices;  // empty for "-"

    bool isNone() const { return right == "none"; }
};

/// Every line of the table; a failed requirement where one has not six columns.
std::vector<Line> readTable();

/// The text between marks: split("a + b", " + ") gives a and b.
std::vector<std::string> split(std::string_view text, std::string_view mark);

/// Sounds written in IPA without blanks: "stɹɪŋ"; nothing when a symbol is unknown.
std::optional<speech::Pronunciation> soundsOf(std::string_view ipa);

/// The classroom list with its sounds, to build a line's own words from.
class Words {
  public:
    Words();

    /// The word as the list has it, else as the dictionary says it; every one has a picture of its
    /// own here. Nothing when neither knows it.
    std::optional<exercise::Word> word(std::string_view text) const;

    /// These words in order and the parts of the compounds among them; a failed requirement for one
    /// that is not known.
    exercise::Vocabulary vocabulary(const std::vector<std::string>& texts) const;

    /// The same, and some forty words of all sizes after them, to be foils.
    exercise::Vocabulary amongOthers(const std::vector<std::string>& texts) const;

    /// Up to `most` words that rhyme with this one, of the list before those of the dictionary.
    std::vector<std::string> rhymes(const exercise::Word& word, std::size_t most) const;

  private:
    speech::Lexicon lexicon_;
    std::vector<exercise::Word> list_;
    std::map<std::string, std::size_t, std::less<>> by_text_, by_id_;
};

/// A line as the program would ask it.
struct Asked {
    std::vector<exercise::Item> items;   // each with the line's answer
    std::vector<exercise::Item> sorts;   // the same question in another form; not all are made
    exercise::Vocabulary vocabulary;     // the line's own words and sentences
    exercise::Vocabulary for_making;     // what the makers are given
    std::vector<std::string> differing;  // where program and table differ, found on the way
    bool same_choices = false;           // the makers must give the line's choices too
    std::string left_out;                // why the makers make none of these, where they do not
    std::vector<std::string> refused;    // what fairness may say against it for that reason alone
};

/// Differs for a line whose skill or form is not known, so that no line goes unchecked.
Asked asked(const Line& line, const Words& words);

}  // namespace wrenlet::handchecked
