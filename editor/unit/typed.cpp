#include "editor/unit/typed.hpp"

#include <algorithm>
#include <set>

#include "content/exercise/sentence.hpp"
#include "content/pack/pasted_words.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/unit/outside_text.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::size_t kMostBytes = 1u << 20;
constexpr std::size_t kFewestUnmarked = 3;  // words that make a sentence without a mark

std::string withoutQuotes(std::string piece) {
    if (piece.size() >= 2 && piece.front() == '"' && piece.back() == '"')
        piece = piece.substr(1, piece.size() - 2);
    return pack::tidied(piece);
}

std::size_t blanksIn(std::string_view piece) {
    return static_cast<std::size_t>(std::count(piece.begin(), piece.end(), ' '));
}

bool endsMarked(std::string_view piece) {
    return !piece.empty() && std::string_view(".?!").find(piece.back()) != std::string_view::npos;
}

bool isSentence(const std::string& piece) {
    const std::size_t blanks = blanksIn(piece);
    if (blanks == 0) return false;
    if (endsMarked(piece)) return true;
    const bool has_capital = piece.front() >= 'A' && piece.front() <= 'Z';
    return has_capital && blanks + 1 >= kFewestUnmarked && piece.find(',') == std::string::npos;
}

class Reader {
  public:
    explicit Reader(std::string_view where) : where_(where) {}

    Typed read(std::string_view text) {
        const Result<std::string> decoded = outsideText(text, where_, kMostBytes);
        for (Problem problem : decoded.problems()) {
            problem.weight = Problem::Weight::warning;
            typed_.problems.push_back(std::move(problem));
        }
        if (!decoded.ok()) return std::move(typed_);
        text = decoded.value();
        pieces(text);
        return std::move(typed_);
    }

  private:
    void pieces(std::string_view text) {
        std::size_t line = 1;
        while (!text.empty()) {
            const std::size_t end = std::min(text.find_first_of(";|\t\r\n"), text.size());
            take(withoutQuotes(std::string(text.substr(0, end))), line);
            if (end == text.size()) break;
            if (text[end] == '\n' || text[end] == '\r') ++line;
            text.remove_prefix(end + (text.substr(end, 2) == "\r\n" ? 2 : 1));
        }
    }

    void take(std::string piece, std::size_t line) {
        if (piece.empty()) return;
        if (isSentence(piece))
            takeSentence(std::move(piece), line);
        else
            takeWords(std::move(piece), line);
    }

    void takeSentence(std::string piece, std::size_t line) {
        if (!endsMarked(piece)) piece += '.';
        std::string why = pack::whyNoSentence(piece);
        const auto spoken = exercise::spokenWords(piece, where_);
        if (!why.empty())
            tell(line, pack::inQuotes(piece) + " " + why + ".", "It is left out.");
        else if (!spoken.ok())
            tell(line, spoken.problems().front().what, spoken.problems().front().way_out);
        else if (!seen_.insert(piece).second)
            tell(line, pack::inQuotes(piece) + " stands there twice.", "It is taken once.");
        else
            typed_.sentences.push_back({"", std::move(piece), 0});
    }

    void takeWords(std::string piece, std::size_t line) {
        std::replace(piece.begin(), piece.end(), ' ', ',');
        std::replace(piece.begin(), piece.end(), '"', ',');
        // one with a full stop, as words at the end of a line have it
        while (!piece.empty() && (piece.back() == '.' || piece.back() == ',')) piece.pop_back();
        if (piece.empty()) return;
        auto words = pack::readPastedWords(piece, where_);
        for (const Problem& problem : words.problems())
            if (problem.what.find("no word here") == std::string::npos ||
                words.problems().size() == 1)
                tell(line, problem.what, problem.way_out);
        if (!words.ok()) return;
        for (pack::UnitWord& word : words.value()) {
            if (typed_.words.size() == pack::kMostUnitWords) {
                if (!std::exchange(full_, true))
                    tell(line, "There are more than 2000 words; the rest is not read.",
                         "Make two units of it.");
                return;
            }
            word.place = 0;
            if (seen_.insert(pack::wordId(word)).second)
                typed_.words.push_back(std::move(word));
            else
                tell(line, pack::inQuotes(word.text) + " stands there twice.", "It is taken once.");
        }
    }

    void tell(std::size_t line, std::string what, std::string way_out) {
        constexpr std::size_t kMostTold = 100;
        if (typed_.problems.size() >= kMostTold) return;
        const std::string where =
            where_ + (line == 0 ? std::string() : ", line " + std::to_string(line));
        typed_.problems.push_back(
            {where, std::move(what), std::move(way_out), Problem::Weight::warning});
    }

    std::string where_;
    Typed typed_;
    std::set<std::string> seen_;
    bool full_ = false;
};

}  // namespace

Typed readTyped(std::string_view text, std::string_view where) {
    return Reader(where).read(text);
}

}  // namespace wrenlet::desk
