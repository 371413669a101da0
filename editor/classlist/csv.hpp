// A table as text, as RFC 4180 has it, one record a line: what spreadsheets and school programs
// write. A line that is broken costs none of the others.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::desk {

struct CsvRow {
    std::size_t line = 0;             // from 1
    std::vector<std::string> fields;  // tidied: no blanks at the ends
    std::string why_broken;           // the end of a sentence, or empty; a broken row has no fields
};

/// What parts the fields of the first line: tab, semicolon, upright stroke or comma, whichever it
/// has most of; a comma when it has none.
char csvSeparator(std::string_view text);

/// The rows with something in them, at most `most_rows`. A field in double quotes may hold the
/// separator and doubled quotes, and ends on its line (OneRoster CSV 1.1 and 1.2 allow no line end
/// in a field). Broken: a quote that is not closed or that goes on behind its end, a control
/// character, more than 200 fields, a field of more than 4,000 bytes.
std::vector<CsvRow> csvRows(std::string_view text, char separator, std::size_t most_rows);

}  // namespace wrenlet::desk
