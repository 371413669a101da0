#include "editor/look/wording.hpp"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>

namespace wrenlet::desk::wording {

namespace {

constexpr std::int64_t kMinute = 60'000;
constexpr std::int64_t kHour = 60 * kMinute;
constexpr std::int64_t kDay = 24 * kHour;

// "letter:sh" as it is written: "sh".
std::string letter(std::string_view id) {
    return std::string(id.substr(id.find(':') + 1));
}

}  // namespace

std::string figure(std::int64_t number) {
    std::string digits = std::to_string(number);
    const std::size_t first = number < 0 ? 1 : 0;
    for (std::size_t at = digits.size(); at > first + 3;) digits.insert(at -= 3, ",");
    return digits;
}

std::string counted(std::int64_t number, std::string_view one, std::string_view many) {
    std::string text = figure(number) + " ";
    if (number == 1) return text.append(one);
    if (!many.empty()) return text.append(many);
    return text.append(one).append("s");
}

std::string times(int number) {
    constexpr std::array<std::string_view, 11> kWords{
        "never",     "once",        "twice",       "three times", "four times", "five times",
        "six times", "seven times", "eight times", "nine times",  "ten times"};
    if (number >= 0 && number < static_cast<int>(kWords.size()))
        return std::string(kWords[static_cast<std::size_t>(number)]);
    return figure(number) + " times";
}

std::string names(std::span<const std::string> all, std::size_t most) {
    const std::size_t shown = all.size() > most ? most : all.size();
    std::string text;
    for (std::size_t i = 0; i < shown; ++i) {
        if (i > 0) text += i + 1 == all.size() ? " and " : ", ";
        text += all[i];
    }
    if (shown < all.size()) text += " and " + figure(std::int64_t(all.size() - shown)) + " more";
    return text;
}

std::string ago(std::int64_t past_ms) {
    if (past_ms < kMinute) return "just now";
    if (past_ms < kHour) return counted(past_ms / kMinute, "minute") + " ago";
    if (past_ms < kDay) return counted(past_ms / kHour, "hour") + " ago";
    return counted(past_ms / kDay, "day") + " ago";
}

std::string dayShort(std::int64_t day) {
    constexpr std::array<std::string_view, 7> kNames{"Su", "Mo", "Tu", "We", "Th", "Fr", "Sa"};
    const std::chrono::sys_days date{std::chrono::days(day)};
    const std::chrono::year_month_day civil(date);
    const std::chrono::weekday weekday(date);
    return std::string(kNames[weekday.c_encoding()]) + " " +
           std::to_string(static_cast<unsigned>(civil.day()));
}

std::string date(std::int64_t day) {
    constexpr std::array<std::string_view, 12> kNames{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                      "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    const std::chrono::year_month_day civil{std::chrono::sys_days{std::chrono::days(day)}};
    return std::to_string(static_cast<unsigned>(civil.day())) + " " +
           std::string(kNames[static_cast<unsigned>(civil.month()) - 1]);
}

std::string isoDate(std::int64_t day) {
    const std::chrono::year_month_day civil{std::chrono::sys_days{std::chrono::days(day)}};
    char text[24];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(civil.year()),
                  static_cast<unsigned>(civil.month()), static_cast<unsigned>(civil.day()));
    return text;
}

std::string minutes(std::int64_t ms) {
    if (ms < kMinute) return "less than a minute";
    return counted((ms + kMinute / 2) / kMinute, "minute");
}

std::string word(std::string_view id) {
    return std::string(id.substr(0, id.find('~')));
}

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = char(text[0] - 'a' + 'A');
    return text;
}

std::string place(const exercise::TurnsOn& turns_on) {
    using exercise::Position;
    switch (turns_on.position) {
        case Position::first:
            return "first sound " + turns_on.sound;
        case Position::middle:
            return "middle sound " + turns_on.sound;
        case Position::last:
            return "last sound " + turns_on.sound;
        case Position::rime:
            return "rhyme " + turns_on.sound;
        case Position::whole:
            return "part " + word(turns_on.sound);
        case Position::first_part:
            return "first part " + word(turns_on.sound);
        case Position::last_part:
            return "last part " + word(turns_on.sound);
        case Position::tune:
            return turns_on.sound;
        case Position::letter:
            return "letter " + letter(turns_on.sound);
        case Position::count:
            return "counting " + turns_on.sound + (turns_on.sound == "1" ? " part" : " parts");
        case Position::word_count:
            break;
    }
    return "counting " + turns_on.sound + (turns_on.sound == "1" ? " word" : " words");
}

std::string placeShort(const exercise::TurnsOn& turns_on) {
    using exercise::Position;
    const std::string dash = "\u2013";
    switch (turns_on.position) {
        case Position::first:
            return turns_on.sound + dash;
        case Position::middle:
            return dash + turns_on.sound + dash;
        case Position::last:
            return dash + turns_on.sound;
        case Position::rime:
            return dash + turns_on.sound;
        case Position::whole:
            return word(turns_on.sound);
        case Position::first_part:
            return word(turns_on.sound) + dash;
        case Position::last_part:
            return dash + word(turns_on.sound);
        case Position::letter:
            return letter(turns_on.sound);
        case Position::count:
        case Position::word_count:
        case Position::tune:
            break;
    }
    return turns_on.sound;
}

std::string_view heardAs(practice::HeardAs mark) {
    return mark == practice::HeardAs::right    ? "right"
           : mark == practice::HeardAs::almost ? "almost"
                                               : "wrong";
}

std::string heard(const practice::HeardCounts& counts) {
    std::string text;
    const auto add = [&](int count, practice::HeardAs mark) {
        if (count == 0) return;
        text += (text.empty() ? "" : ", ") + figure(count) + " " + std::string(heardAs(mark));
    };
    add(counts.right, practice::HeardAs::right);
    add(counts.almost, practice::HeardAs::almost);
    add(counts.wrong, practice::HeardAs::wrong);
    return text;
}

std::string skill(std::string_view id) {
    const auto known = exercise::skillFromId(id);
    return std::string(known ? exercise::rowOf(*known).name : id);
}

}  // namespace wrenlet::desk::wording
