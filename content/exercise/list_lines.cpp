#include "content/exercise/list_lines.hpp"

#include <algorithm>

namespace wrenlet::exercise {

namespace {

constexpr std::size_t kMostLetters = 40;
constexpr std::size_t kShown = 24;
constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

bool isBlank(std::string_view text) {
    return text.find_first_not_of(" \t") == std::string_view::npos;
}

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

std::vector<std::string_view> columnsOf(std::string_view line) {
    std::vector<std::string_view> columns;
    while (true) {
        const std::size_t tab = line.find('\t');
        columns.push_back(trimmed(line.substr(0, tab)));
        if (tab == std::string_view::npos) return columns;
        line.remove_prefix(tab + 1);
    }
}

}  // namespace

std::string_view ListLine::column(std::size_t index) const {
    return index < columns.size() ? columns[index] : std::string_view();
}

void ListNotes::add(std::size_t line, std::string what, std::string way_out) {
    if (problems_.size() == kMostListNotes) {
        ++untold_;
        return;
    }
    problems_.push_back(
        {place(line), std::move(what), std::move(way_out), Problem::Weight::warning});
}

std::string ListNotes::place(std::size_t line) const {
    return line == 0 ? where_ : where_ + ", line " + std::to_string(line);
}

std::vector<Problem> ListNotes::take() {
    if (untold_ > 0)
        problems_.push_back({where_,
                             "There are " + std::to_string(untold_) + " more notes like these.",
                             "Put these right first.", Problem::Weight::warning});
    untold_ = 0;
    return std::move(problems_);
}

std::vector<ListLine> listLines(std::string_view text, ListNotes& notes) {
    if (text.size() > kMostListBytes) {
        const std::size_t end = text.rfind('\n', kMostListBytes);
        notes.add(0, "The list is longer than 1 MB; what comes after that is not read.",
                  "Make two lists of it.");
        text = text.substr(0, end == std::string_view::npos ? 0 : end);
    }
    if (text.substr(0, kByteOrderMark.size()) == kByteOrderMark)
        text.remove_prefix(kByteOrderMark.size());
    std::vector<ListLine> lines;
    for (std::size_t number = 1; !text.empty(); ++number) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        if (isBlank(line) || line.front() == '#') continue;
        if (line.size() > kMostLineBytes) {
            notes.add(number, "This line is too long to be one of this list.",
                      "Put one word or sentence on a line.");
            continue;
        }
        lines.push_back({number, columnsOf(line)});
    }
    return lines;
}

std::string whyNotListed(std::string_view word) {
    if (word.empty()) return "is empty";
    for (const char c : word) {
        if (isLetter(c) || c == '\'') continue;
        if (c >= '0' && c <= '9') return "has a digit; write the number as a word";
        if (static_cast<unsigned char>(c) >= 0x80)
            return "has a sign that is not an English letter";
        if (c < 0x20 || c == 0x7F) return "has a sign that cannot be seen";
        return c == ' ' ? "has a space; one word stands on a line" : "has a sign that is no letter";
    }
    if (word.size() > kMostLetters) return "has more than 40 letters";
    if (!isLetter(word.front()) || !isLetter(word.back())) return "begins or ends with no letter";
    return "";
}

std::string shown(std::string_view text) {
    std::string out = "\"";
    for (const char c : text.substr(0, kShown)) out += c >= 0x20 && c < 0x7F ? c : '?';
    return out + (text.size() > kShown ? "…\"" : "\"");
}

}  // namespace wrenlet::exercise
