// A response as a row of the table `response`: one column a field, in words that can be read with
// any SQLite tool; `choices` is a JSON list. The bounds that a row from elsewhere must keep.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "content/practice/response.hpp"
#include "content/practice/sqlite.hpp"

namespace wrenlet::practice {

inline constexpr std::int64_t kApplicationId = 0x57524E4C;  // "WRNL" in the file's header
inline constexpr std::int64_t kFormat = 1;                  // the file's user_version

inline constexpr std::size_t kLongestText = 400;  // bytes of one text
inline constexpr std::size_t kMostChoices = 16;
inline constexpr std::int64_t kLongestAnswerMs = 24ll * 3'600'000;

/// Makes the tables of an empty store.
extern const char* const kSchema;
/// Reads rows with columns in the order that readRow() expects; add a WHERE or an ORDER BY.
extern const char* const kSelectResponses;
extern const char* const kInsertResponse;
extern const char* const kInsertNumbered;  // with its sequence

/// A name that can also be a file's: 1 to 40 of a-z, A-Z, 0-9, "-" and "_".
bool isTabletName(std::string_view name);

/// True iff every field but tablet and sequence may stand in a store: the texts not too long, the
/// numbers in the ranges that response.hpp names.
bool isInBounds(const Response& response);

/// Binds every field but the sequence, which SQLite gives out.
void bindRow(Statement& insert, const Response& response);
/// The sequence too, for kInsertNumbered.
void bindNumbered(Statement& insert, const Response& response);

/// The current row, its texts from `pool`; nothing when a field is of the wrong kind or out of
/// bounds.
std::optional<Response> readRow(const Statement& select, TextPool& pool);

/// Deletes what these children did from both tables; nothing when that failed.
struct Removed {
    std::size_t answers = 0, sessions = 0;
};
std::optional<Removed> removeChildren(sqlite3* connection, std::span<const std::string> children);

}  // namespace wrenlet::practice
