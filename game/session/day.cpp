#include "game/session/day.hpp"

#include <ctime>

namespace wrenlet::game {

std::int64_t daysFromDate(int year, int month, int day) {
    const std::int64_t y = year - (month <= 2 ? 1 : 0);
    const std::int64_t era = (y >= 0 ? y : y - 399) / 400;
    const std::int64_t year_of_era = y - era * 400;
    const std::int64_t day_of_year = (153 * (month + (month > 2 ? -3 : 9)) + 2) / 5 + day - 1;
    const std::int64_t day_of_era =
        year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year;
    return era * 146097 + day_of_era - 719468;
}

std::int64_t localDay(std::int64_t unix_ms) {
    const auto seconds = static_cast<std::time_t>(unix_ms / 1000);
    const std::tm* local = std::localtime(&seconds);
    if (local == nullptr) return unix_ms / 86'400'000;
    return daysFromDate(local->tm_year + 1900, local->tm_mon + 1, local->tm_mday);
}

}  // namespace wrenlet::game
