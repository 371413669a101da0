#include "editor/classlist/names.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "content/pack/classroom.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/classlist/csv.hpp"
#include "editor/unit/outside_text.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::size_t kMostRows = 5'000, kMostTold = 40;
constexpr std::array<std::string_view, 7> kGivenHeads{
    "given name", "givenname", "first name", "firstname", "forename", "name", "child"};
constexpr std::array<std::string_view, 7> kFamilyHeads{
    "family name", "familyname", "last name", "lastname", "surname", "family", "last"};

std::string lowered(std::string_view text) {
    std::string low(text);
    for (char& letter : low)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return low;
}

template <std::size_t N>
std::optional<std::size_t> columnOf(const std::vector<std::string>& head,
                                    const std::array<std::string_view, N>& names) {
    for (std::size_t i = 0; i < head.size(); ++i)
        if (std::find(names.begin(), names.end(), lowered(head[i])) != names.end()) return i;
    return std::nullopt;
}

/// Each child on a line of her own.
std::string inLines(std::string text) {
    while (!text.empty() && (text.back() == '\n' || text.back() == '\r')) text.pop_back();
    if (text.find_first_of("\r\n") != std::string::npos) return text;
    const bool has_columns = text.find_first_of("|\t") != std::string::npos;
    const bool parts_by_semicolons = text.find(';') != std::string::npos;
    for (char& letter : text)
        if (letter == ';' || (letter == ',' && !parts_by_semicolons && !has_columns)) letter = '\n';
    return text;
}

std::size_t columnsIn(const std::vector<CsvRow>& rows) {
    std::size_t least = 0;
    for (const CsvRow& row : rows)
        if (row.why_broken.empty())
            least = least == 0 ? row.fields.size() : std::min(least, row.fields.size());
    return std::max<std::size_t>(least, 1);
}

class Reader {
  public:
    explicit Reader(std::string_view where) : where_(where) {}

    NamesRead read(std::string_view outside, std::size_t given_column) {
        const Result<std::string> text = outsideText(outside, where_, kMostNamesBytes);
        for (const Problem& problem : text.problems()) read_.problems.push_back(problem);
        if (!text.ok()) return std::move(read_);
        const std::string lines = inLines(text.value());
        std::vector<CsvRow> rows = csvRows(lines, csvSeparator(lines), kMostRows);
        if (rows.empty()) return std::move(read_);
        std::size_t given = given_column;
        std::optional<std::size_t> family;
        read_.columns = columnsIn(rows);
        const auto named = columnOf(rows.front().fields, kGivenHeads);
        if (named) {
            read_.has_head = true;
            given = *named;
            family = columnOf(rows.front().fields, kFamilyHeads);
            rows.erase(rows.begin());
        } else if (read_.columns == 2) {
            family = 1 - std::min<std::size_t>(given, 1);
        }
        if (!named && given >= read_.columns) given = 0;
        for (const CsvRow& row : rows) take(row, given, family);
        return std::move(read_);
    }

  private:
    void take(const CsvRow& row, std::size_t given, std::optional<std::size_t> family) {
        if (!row.why_broken.empty())
            return tell(row.line, "This line " + row.why_broken + ".", "Put it right there.");
        if (given >= row.fields.size() || row.fields[given].empty())
            return tell(row.line, "There is no given name on this line.", "Write it there.");
        NewChild child{row.fields[given], "", "", row.line};
        const std::string why = whyNoName(child.given);
        if (!why.empty())
            return tell(row.line, pack::inQuotes(child.given) + " " + why + ".", "It is left out.");
        if (family && *family < row.fields.size() && whyNoName(row.fields[*family]).empty())
            child.family = row.fields[*family];
        read_.children.push_back(std::move(child));
    }
    void tell(std::size_t line, std::string what, std::string way_out) {
        if (read_.problems.size() < kMostTold)
            read_.problems.push_back({where_ + ", line " + std::to_string(line), std::move(what),
                                      std::move(way_out), Problem::Weight::warning});
    }

    std::string where_;
    NamesRead read_;
};

}  // namespace

std::string whyNoName(std::string_view name) {
    if (name.empty()) return "is empty";
    if (!pack::letters(name)) return "has letters that cannot be read";
    if (!pack::isLine(name, pack::kMostNameLetters)) return "is longer than a name";
    const bool has_letter = std::any_of(name.begin(), name.end(), [](char letter) {
        const auto value = static_cast<unsigned char>(letter);
        return value >= 0x80 || (value >= 'a' && value <= 'z') || (value >= 'A' && value <= 'Z');
    });
    return has_letter ? "" : "has no letter";
}

NamesRead readNames(std::string_view text, std::string_view where, std::size_t given_column) {
    return Reader(where).read(text, given_column);
}

}  // namespace wrenlet::desk
