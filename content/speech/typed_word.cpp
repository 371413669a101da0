#include "content/speech/typed_word.hpp"

#include <algorithm>

#include "content/speech/lexicon_file.hpp"

namespace wrenlet::speech {

namespace {

constexpr std::size_t kMostShown = 40;

bool isLetter(char c) {
    return c >= 'a' && c <= 'z';
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

bool isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

std::string trimmed(std::string_view typed) {
    while (!typed.empty() && isSpace(typed.front())) typed.remove_prefix(1);
    while (!typed.empty() && isSpace(typed.back())) typed.remove_suffix(1);
    return std::string(typed);
}

std::string plain(std::string_view typed) {
    constexpr std::string_view kCurly = "\u2019";
    std::string word = trimmed(typed);
    for (std::size_t at = word.find(kCurly); at != word.npos; at = word.find(kCurly, at + 1))
        word.replace(at, kCurly.size(), "'");
    for (char& c : word)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return word;
}

/// The bytes of the UTF-8 letter that begins here; 0 for a broken one.
std::size_t letterSize(std::string_view text) {
    const auto lead = static_cast<unsigned char>(text.front());
    const std::size_t size = lead < 0x80   ? 1
                             : lead < 0xC2 ? 0
                             : lead < 0xE0 ? 2
                             : lead < 0xF0 ? 3
                             : lead < 0xF5 ? 4
                                           : 0;
    if (size > text.size()) return 0;
    for (std::size_t i = 1; i < size; ++i)
        if ((static_cast<unsigned char>(text[i]) & 0xC0) != 0x80) return 0;
    // Too long a form, a half of a pair, past the last letter: no UTF-8 either.
    const auto second = size > 1 ? static_cast<unsigned char>(text[1]) : 0;
    const bool is_none = (lead == 0xE0 && second < 0xA0) || (lead == 0xED && second >= 0xA0) ||
                         (lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second >= 0x90);
    return is_none ? 0 : size;
}

}  // namespace

bool isUnseen(std::string_view letter) {
    const auto is_between = [letter](std::string_view first, std::string_view last) {
        return letter.size() == first.size() && letter >= first && letter <= last;
    };
    return is_between(std::string_view("\0", 1), "\x1F") || is_between("\x7F", "\x7F") ||
           is_between("\u0080", "\u009F") || is_between("\u200B", "\u200F") ||
           is_between("\u2028", "\u202E") || is_between("\u2060", "\u206F") ||
           is_between("\uFEFF", "\uFEFF");
}

std::string shownWord(std::string_view typed) {
    std::string shown;
    for (std::size_t letters = 0; !typed.empty(); ++letters) {
        if (letters == kMostShown) return shown + "\u2026";
        const std::size_t size = letterSize(typed);
        if (size == 0 || isUnseen(typed.substr(0, size)))
            shown += '?';
        else
            shown += typed.substr(0, size);
        typed.remove_prefix(std::max<std::size_t>(size, 1));
    }
    return shown;
}

Result<std::string> typedWord(std::string_view typed) {
    const std::string word = plain(typed);
    const auto refused = [typed](std::string what, std::string way_out) {
        return Problem{"\"" + shownWord(typed) + "\"", std::move(what), std::move(way_out)};
    };
    if (word.empty()) return refused("There is no word here.", "Type one.");
    if (word.size() > kMostWordLetters)
        return refused("This is longer than any word.", "Type one word.");
    if (std::any_of(word.begin(), word.end(), isSpace))
        return refused("These are several words.", "Type one at a time.");
    if (std::any_of(word.begin(), word.end(), isDigit))
        return refused("This has digits in it.", "Write numbers as words.");
    const bool plain_letters = std::all_of(
        word.begin(), word.end(), [](char c) { return isLetter(c) || c == '\'' || c == '-'; });
    if (!plain_letters || std::none_of(word.begin(), word.end(), isLetter))
        return refused("This is not written in English letters.", "Use the letters a to z.");
    return word;
}

}  // namespace wrenlet::speech
