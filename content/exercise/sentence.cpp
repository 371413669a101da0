#include "content/exercise/sentence.hpp"

#include <string>

namespace wrenlet::exercise {

namespace {

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
bool isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}
bool isMark(char c) {
    return std::string_view(".,!?;:\"()").find(c) != std::string_view::npos;
}

/// The typographer's quotes, dots, dashes and spaces as plain ones; everything else as it is.
std::string plain(std::string_view text) {
    struct Pair {
        std::string_view from, to;
    };
    static constexpr Pair kPairs[] = {{"\u2019", "'"},   {"\u2018", "'"},   {"\u201C", "\""},
                                      {"\u201D", "\""},  {"\u2026", "..."}, {"\u00A0", " "},
                                      {"\u2013", " - "}, {"\u2014", " - "}};
    std::string out;
    while (!text.empty()) {
        bool found = false;
        for (const Pair& pair : kPairs) {
            if (text.substr(0, pair.from.size()) != pair.from) continue;
            out += pair.to;
            text.remove_prefix(pair.from.size());
            found = true;
            break;
        }
        if (found) continue;
        out += text.front();
        text.remove_prefix(1);
    }
    return out;
}

/// The word without the marks around it: "\"Look!\"" gives Look.
std::string_view bare(std::string_view token) {
    const auto isOuter = [](char c) { return isMark(c) || c == '\'' || c == '-'; };
    while (!token.empty() && isOuter(token.front())) token.remove_prefix(1);
    while (!token.empty() && isOuter(token.back())) token.remove_suffix(1);
    return token;
}

std::string quoted(std::string_view word) {
    constexpr std::size_t kShown = 40;
    std::string text = "\"";
    if (word.size() <= kShown) {
        text += word;
        return text + "\"";
    }
    std::size_t end = kShown;  // never inside a character of several bytes
    while (end > 0 && (static_cast<unsigned char>(word[end]) & 0xC0) == 0x80) --end;
    text += word.substr(0, end);
    return text + "…\"";
}

/// Why the word cannot be counted; `what` is empty when it can.
Problem whyNot(std::string_view word, std::string_view where) {
    Problem problem;
    problem.where = where;
    for (const char c : word) {
        if (isLetter(c) || c == '\'') continue;
        if (isDigit(c)) {
            problem.what = quoted(word) + " can be read aloud in more than one way.";
            problem.way_out = "Write the number as words.";
        } else if (c == '-') {
            problem.what = quoted(word) + " has a hyphen: it may be heard as one word or as two.";
            problem.way_out = "Write it as one word or as two.";
        } else {
            problem.what = quoted(word) + " has a sign that is not an English letter.";
            problem.way_out = "Use the letters a to z and the marks . , ! ?";
        }
        break;
    }
    return problem;
}

}  // namespace

Result<std::vector<SpokenWord>> spokenWords(std::string_view text, std::string_view where) {
    const std::string line = plain(text);
    std::vector<SpokenWord> words;
    std::vector<Problem> problems;
    std::size_t at = 0;
    while (at < line.size()) {
        while (at < line.size() && isSpace(line[at])) ++at;
        std::size_t end = at;
        while (end < line.size() && !isSpace(line[end])) ++end;
        const std::string_view word = bare(std::string_view(line).substr(at, end - at));
        at = end;
        if (word.empty()) continue;
        Problem problem = whyNot(word, where);
        if (!problem.what.empty())
            problems.push_back(std::move(problem));
        else
            words.push_back({std::string(word)});
    }
    if (!problems.empty()) return problems;
    if (words.empty())
        return Problem{std::string(where), "The sentence has no word.",
                       "Write one, or leave it out."};
    if (words.size() < kFewestCounted || words.size() > kMostCounted) {
        Problem warning{std::string(where),
                        "The sentence has " + std::to_string(words.size()) +
                            " words; the children count 2 to 8.",
                        "It will not be asked.", Problem::Weight::warning};
        return {std::move(words), {std::move(warning)}};
    }
    return words;
}

}  // namespace wrenlet::exercise
