#include "content/exercise/classroom_sentences.hpp"

#include <algorithm>
#include <optional>
#include <set>

#include "content/exercise/list_lines.hpp"
#include "content/exercise/sentence.hpp"

namespace wrenlet::exercise {

namespace {

std::optional<SentenceKind> kindNamed(std::string_view name) {
    if (name == "telling") return SentenceKind::telling;
    if (name == "yes-no") return SentenceKind::yes_no;
    if (name == "wh") return SentenceKind::wh;
    return std::nullopt;
}

bool isPlainId(std::string_view id) {
    return !id.empty() && id.size() <= 40 && std::all_of(id.begin(), id.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
}

class Reader {
  public:
    explicit Reader(std::string_view where) : notes_(where) {}

    Result<std::vector<ClassroomSentence>> read(std::string_view text) {
        for (const ListLine& line : listLines(text, notes_)) {
            if (sentences_.size() == kMostListedSentences) {
                notes_.add(line.number,
                           "The list has more than 2000 sentences; the rest is not read.",
                           "Make two lists of it.");
                break;
            }
            readLine(line);
        }
        return {std::move(sentences_), notes_.take()};
    }

  private:
    void readLine(const ListLine& line) {
        const auto kind = kindNamed(line.column(1));
        if (line.columns.size() != 3 || !isPlainId(line.column(0)) || !kind)
            return notes_.add(line.number, "This line is not an id, a kind and a sentence.",
                              "Write them with tabs between; kinds are telling, yes-no and wh.");
        const std::string_view text = line.column(2);
        if ((text.empty() || text.back() != '?') != (*kind == SentenceKind::telling))
            return notes_.add(line.number, shown(text) + " ends with a mark of another kind.",
                              "Questions end with \"?\" and no other sentence does.");
        auto words = spokenWords(text, notes_.place(line.number));
        if (!words.problems().empty())  // a warning is a count that is never asked
            return notes_.add(line.number, words.problems().front().what,
                              words.problems().front().way_out);
        if (!ids_.insert(std::string(line.column(0))).second ||
            !texts_.insert(std::string(text)).second)
            return notes_.add(line.number, shown(text) + " or its id stands in the list already.",
                              "Leave one out.");
        Sentence sentence{std::string(line.column(0)), std::string(text), std::move(words.value())};
        sentences_.push_back({std::move(sentence), *kind, line.number});
    }

    ListNotes notes_;
    std::vector<ClassroomSentence> sentences_;
    std::set<std::string, std::less<>> ids_;
    std::set<std::string, std::less<>> texts_;
};

}  // namespace

bool rises(SentenceKind kind) {
    return kind == SentenceKind::yes_no;
}

Result<std::vector<ClassroomSentence>> readClassroomSentences(std::string_view text,
                                                              std::string_view where) {
    return Reader(where).read(text);
}

}  // namespace wrenlet::exercise
