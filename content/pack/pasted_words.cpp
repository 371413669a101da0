#include "content/pack/pasted_words.hpp"

#include <algorithm>
#include <set>
#include <string>

#include "content/exercise/list_lines.hpp"
#include "content/pack/text_rules.hpp"

namespace wrenlet::pack {
namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

class Reader {
  public:
    explicit Reader(std::string_view where) : notes_(where) {}

    Result<std::vector<UnitWord>> read(std::string_view text) {
        if (text.substr(0, kByteOrderMark.size()) == kByteOrderMark)
            text.remove_prefix(kByteOrderMark.size());
        if (isUtf16(text)) {
            notes_.add(0, "This is text in UTF-16.", "Save it as UTF-8.");
            return {std::move(words_), notes_.take()};
        }
        if (text.size() > exercise::kMostListBytes) {
            notes_.add(0, "This is longer than 1 MB; what comes after that is not read.",
                       "Paste a shorter list.");
            text = text.substr(0, exercise::kMostListBytes);
            const std::size_t end = text.find_last_of(",;\t\r\n");
            text = text.substr(0, end == std::string_view::npos ? text.size() : end);
        }
        std::size_t line = 1;
        while (!text.empty() && !full_) {
            const std::size_t end = std::min(text.find_first_of(",;\t\r\n"), text.size());
            take(text.substr(0, end), line);
            if (end == text.size()) break;
            const bool is_pair = text.substr(end, 2) == "\r\n";
            if (text[end] == '\n' || text[end] == '\r') ++line;
            text.remove_prefix(end + (is_pair ? 2 : 1));
        }
        if (words_.empty())
            notes_.add(0, "There is no word here that can be read.", "Write one word on a line.");
        return {std::move(words_), notes_.take()};
    }

  private:
    void take(std::string_view piece, std::size_t line) {
        UnitWord word;
        word.text = tidied(piece);
        word.place = line;
        if (word.text.empty()) return;
        if (words_.size() == kMostUnitWords) {
            notes_.add(line, "There are more than 2000 words; the rest is not read.",
                       "Make two lists of it.");
            full_ = true;
            return;
        }
        if (const std::string why = whyNot(word.text); !why.empty())
            notes_.add(line, inQuotes(word.text) + " " + why + ".",
                       "It is left out; write one English word.");
        else if (!seen_.insert(wordId(word)).second)
            notes_.add(line, inQuotes(word.text) + " stands in the list already.",
                       "It is taken once.");
        else
            words_.push_back(std::move(word));
    }

    static std::string whyNot(const std::string& text) {
        if (std::string why = whyNoWord(text); !why.empty()) return why;
        return isEnglish(text) ? "" : "has letters that are not English";
    }

    exercise::ListNotes notes_;
    std::vector<UnitWord> words_;
    std::set<std::string> seen_;
    bool full_ = false;
};

}  // namespace

Result<std::vector<UnitWord>> readPastedWords(std::string_view text, std::string_view where) {
    return Reader(where).read(text);
}

}  // namespace wrenlet::pack
