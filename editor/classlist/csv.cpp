#include "editor/classlist/csv.hpp"

#include <algorithm>

#include "content/pack/text_rules.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::size_t kMostFields = 200, kMostFieldBytes = 4'000;

std::string_view lineAt(std::string_view text) {
    return text.substr(0, std::min(text.find_first_of("\r\n"), text.size()));
}

class LineReader {
  public:
    LineReader(std::string_view line, char separator) : line_(line), separator_(separator) {}

    CsvRow read(std::size_t number) {
        CsvRow row{number, {}, {}};
        do {
            if (row.fields.size() == kMostFields) {
                row.why_broken = "has more than 200 fields";
                break;
            }
            row.why_broken = field(row.fields.emplace_back());
        } while (row.why_broken.empty() && next());
        if (!row.why_broken.empty()) row.fields.clear();
        return row;
    }

  private:
    /// True when a separator was passed.
    bool next() {
        if (at_ >= line_.size()) return false;
        ++at_;
        return true;
    }
    std::string field(std::string& value) {
        while (at_ < line_.size() && line_[at_] == ' ') ++at_;
        const bool quoted = at_ < line_.size() && line_[at_] == '"';
        if (quoted) {
            if (std::string why = inQuotes(value); !why.empty()) return why;
        } else {
            const std::size_t end = std::min(line_.find(separator_, at_), line_.size());
            value = line_.substr(at_, end - at_);
            at_ = end;
        }
        value = pack::tidied(value);
        if (value.size() > kMostFieldBytes) return "has a field of more than 4,000 letters";
        for (const char letter : value)
            if (static_cast<unsigned char>(letter) < 0x20) return "has a character that is none";
        return "";
    }
    std::string inQuotes(std::string& value) {
        for (++at_; at_ < line_.size(); ++at_) {
            if (line_[at_] != '"') {
                value += line_[at_];
                continue;
            }
            if (at_ + 1 >= line_.size() || line_[at_ + 1] != '"') break;
            value += line_[++at_];
        }
        if (at_ >= line_.size()) return "has a quote that is not closed";
        ++at_;
        while (at_ < line_.size() && line_[at_] == ' ') ++at_;
        if (at_ < line_.size() && line_[at_] != separator_) return "goes on behind a closed quote";
        return "";
    }

    std::string_view line_;
    char separator_;
    std::size_t at_ = 0;
};

}  // namespace

char csvSeparator(std::string_view text) {
    const std::string_view line = lineAt(text);
    char best = ',';
    std::ptrdiff_t most = 0;
    for (const char one : {'\t', ';', '|', ','}) {
        const auto count = std::count(line.begin(), line.end(), one);
        if (count > most) {
            best = one;
            most = count;
        }
    }
    return best;
}

std::vector<CsvRow> csvRows(std::string_view text, char separator, std::size_t most_rows) {
    std::vector<CsvRow> rows;
    for (std::size_t number = 1; !text.empty() && rows.size() < most_rows; ++number) {
        const std::string_view line = lineAt(text);
        text.remove_prefix(line.size());
        if (!text.empty()) text.remove_prefix(text.substr(0, 2) == "\r\n" ? 2 : 1);
        if (line.find_first_not_of(" \t\r") == std::string_view::npos) continue;
        rows.push_back(LineReader(line, separator).read(number));
    }
    return rows;
}

}  // namespace wrenlet::desk
