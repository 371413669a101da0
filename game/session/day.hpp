// The day a child plays on, as the people in the room would name it.
#pragma once

#include <cstdint>

namespace wrenlet::game {

/// Days since 1970-01-01 of the local date at `unix_ms`, by the system's time zone.
std::int64_t localDay(std::int64_t unix_ms);

/// Days since 1970-01-01 of a date in the Gregorian calendar (algorithm: Howard Hinnant,
/// "chrono-Compatible Low-Level Date Algorithms", days_from_civil).
std::int64_t daysFromDate(int year, int month, int day);

}  // namespace wrenlet::game
