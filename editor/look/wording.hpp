// How the desk puts things: counts, names, times and places in the teacher's words. Short, present
// tense, about the thing and not the person.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "content/exercise/item.hpp"
#include "content/practice/heard.hpp"

namespace wrenlet::desk {

/// Stands wherever figures on a child are shown.
inline constexpr std::string_view kCaution =
    "Practice information from play: not a test, a screening or a diagnosis.";

}  // namespace wrenlet::desk

namespace wrenlet::desk::wording {

/// "2,140"
std::string figure(std::int64_t number);
/// "1 answer", "2,140 answers"; `many` defaults to `one` and an s.
std::string counted(std::int64_t number, std::string_view one, std::string_view many = {});
/// "once", "twice", "five times", "12 times"
std::string times(int number);
/// "Leo", "Leo and Maya", "Leo, Maya and 3 more": at most `most` names.
std::string names(std::span<const std::string> all, std::size_t most = 5);
/// "just now", "2 minutes ago", "3 hours ago", "4 days ago"
std::string ago(std::int64_t past_ms);
/// "Mo 2" for a day counted from 1970-01-01.
std::string dayShort(std::int64_t day);
/// "3 Nov" for such a day.
std::string date(std::int64_t day);
/// "2026-11-03" for such a day (ISO 8601).
std::string isoDate(std::int64_t day);
/// "41 minutes", "less than a minute"
std::string minutes(std::int64_t ms);
/// A word's id as it is written: "bow" for "bow~rain".
std::string word(std::string_view id);
std::string capital(std::string text);

/// "last sound t", "rhyme æt", "part bow", "counting 5 words"
std::string place(const exercise::TurnsOn& turns_on);
/// As the head of a narrow column, where a dash stands for the rest of the word: "t–" for a first
/// sound, "–t" for a last one, "–æ–" for a middle one, "–æt" for a rime.
std::string placeShort(const exercise::TurnsOn& turns_on);
/// "right", "almost", "wrong"
std::string_view heardAs(practice::HeardAs mark);
/// "2 right, 1 almost"
std::string heard(const practice::HeardCounts& counts);
/// What the desk calls a skill; its id if the table has no such skill.
std::string skill(std::string_view id);

}  // namespace wrenlet::desk::wording
