#include "content/pack/text_rules.hpp"

#include <algorithm>
#include <cstdint>

namespace wrenlet::pack {
namespace {

bool isAsciiLetter(char32_t c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool isDigit(char32_t c) {
    return c >= '0' && c <= '9';
}
bool isControl(char32_t c) {
    return c < 0x20 || (c >= 0x7F && c < 0xA0);
}

/// Not seen by itself: direction marks, spaces of no width, control characters.
bool isUnseen(char32_t c) {
    return isControl(c) || c == 0xAD || (c >= 0x200B && c <= 0x200F) ||
           (c >= 0x2028 && c <= 0x202E) || (c >= 0x2060 && c <= 0x206F) || c == 0xFEFF;
}

/// Letters of the Latin alphabets, with their accents: é, ñ, ö.
bool isLatin(char32_t c) {
    return isAsciiLetter(c) || (c >= 0xC0 && c <= 0x24F && c != 0xD7 && c != 0xF7);
}

/// Letters of other alphabets and scripts, and accents that follow their letter, as far as their
/// blocks in Unicode tell.
bool isOtherLetter(char32_t c) {
    return (c >= 0x300 && c < 0x2000) || (c >= 0x2C00 && c < 0x2E00) ||
           (c >= 0x3040 && c < 0xD800) || (c >= 0xF900 && c < 0xFE00) ||
           (c >= 0xFE70 && c < 0xFEFD) || (c >= 0x20000 && c < 0x30000);
}

struct OneLetter {
    char32_t code;
    std::size_t bytes;
};

/// The letter that `utf8` begins with; nothing when its bytes are none.
std::optional<OneLetter> oneLetter(std::string_view utf8) {
    if (utf8.empty()) return std::nullopt;
    const auto lead = static_cast<std::uint8_t>(utf8[0]);
    const std::size_t length = lead < 0x80   ? 1
                               : lead < 0xC2 ? 0
                               : lead < 0xE0 ? 2
                               : lead < 0xF0 ? 3
                               : lead < 0xF5 ? 4
                                             : 0;
    if (length == 0 || length > utf8.size()) return std::nullopt;
    char32_t c = length == 1 ? lead : lead & (0x7Fu >> length);
    for (std::size_t k = 1; k < length; ++k) {
        const auto next = static_cast<std::uint8_t>(utf8[k]);
        if ((next & 0xC0u) != 0x80u) return std::nullopt;
        c = (c << 6) | (next & 0x3Fu);
    }
    static constexpr char32_t kLeast[] = {0, 0, 0x80, 0x800, 0x10000};
    if (c < kLeast[length] || c > 0x10FFFF || (c >= 0xD800 && c < 0xE000)) return std::nullopt;
    return OneLetter{c, length};
}

std::string whyNot(std::string_view text, std::size_t most, std::string_view marks) {
    const auto all = letters(text);
    if (!all) return "is not readable text";
    if (all->empty()) return "is empty";
    if (all->size() > most) return "is longer than " + std::to_string(most) + " letters";
    bool any_letter = false;
    for (const char32_t c : *all) {
        if (isDigit(c)) return "has a digit; write the number as a word";
        if (isUnseen(c)) return "has a character that cannot be seen";
        if (isOtherLetter(c)) return "has letters that are not English";
        if (isLatin(c))
            any_letter = true;
        else if (c > 0x7F || marks.find(static_cast<char>(c)) == std::string_view::npos)
            return "has a sign that cannot be said";
    }
    return any_letter ? "" : "has no letter";
}

}  // namespace

std::size_t letterSize(std::string_view text) {
    const auto c = oneLetter(text);
    return c ? c->bytes : 0;
}

bool isEnglish(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) {
        return isAsciiLetter(static_cast<unsigned char>(c)) || c == '\'' || c == '-';
    });
}

std::optional<std::vector<char32_t>> letters(std::string_view utf8) {
    std::vector<char32_t> out;
    while (!utf8.empty()) {
        const auto letter = oneLetter(utf8);
        if (!letter) return std::nullopt;
        out.push_back(letter->code);
        utf8.remove_prefix(letter->bytes);
    }
    return out;
}

bool isPlainId(std::string_view text, std::size_t most) {
    return !text.empty() && text.size() <= most &&
           std::all_of(text.begin(), text.end(), [](char c) {
               return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
           });
}

bool isPlainFileName(std::string_view text) {
    if (text.empty() || text.size() > 120 || text.front() == '.') return false;
    return std::all_of(text.begin(), text.end(), [](char c) {
        const auto u = static_cast<unsigned char>(c);
        return isAsciiLetter(u) || isDigit(u) || c == '-' || c == '.' || c == '_' || c == ' ';
    });
}

bool isPlainPath(std::string_view text) {
    while (true) {
        const std::size_t slash = text.find('/');
        if (!isPlainFileName(text.substr(0, slash))) return false;
        if (slash == std::string_view::npos) return true;
        text.remove_prefix(slash + 1);
    }
}

std::string whyNoWord(std::string_view text) {
    const bool has_blank = text.find(' ') != std::string_view::npos;
    std::string why = whyNot(text, 40, has_blank ? " '-" : "'-");
    if (why.empty() && has_blank) why = "is several words";
    if (why.empty() && (text.front() == '\'' || text.front() == '-'))
        why = "does not begin with a letter";
    return why;
}

std::string whyNoSentence(std::string_view text) {
    return whyNot(text, 200, " .,?!'-\":;");
}

bool isUtf16(std::string_view bytes) {
    return bytes.substr(0, 2) == "\xFF\xFE" || bytes.substr(0, 2) == "\xFE\xFF";
}

bool isLine(std::string_view text, std::size_t most) {
    const auto all = letters(text);
    return all && all->size() <= most && std::none_of(all->begin(), all->end(), isControl);
}

std::string inQuotes(std::string_view text) {
    std::string out = "\"";
    for (std::size_t count = 0; !text.empty(); ++count) {
        if (count == 24) return out + "…\"";
        const auto letter = oneLetter(text);
        if (letter && !isUnseen(letter->code))
            out += text.substr(0, letter->bytes);
        else
            out += '?';
        text.remove_prefix(letter ? letter->bytes : 1);
    }
    return out + "\"";
}

std::string tidied(std::string_view text) {
    struct Swap {
        std::string_view curly;
        char straight;
    };
    static constexpr Swap kSwaps[] = {
        {"\u2018", '\''}, {"\u2019", '\''}, {"\u201C", '"'}, {"\u201D", '"'}, {"\u00A0", ' '}};
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
        const auto swap = std::find_if(std::begin(kSwaps), std::end(kSwaps), [&](const Swap& s) {
            return text.substr(i, s.curly.size()) == s.curly;
        });
        const char c = swap == std::end(kSwaps) ? text[i] : swap->straight;
        i += swap == std::end(kSwaps) ? 1 : swap->curly.size();
        const bool blank = c == ' ' || c == '\t' || c == '\n' || c == '\r';
        if (!blank)
            out += c;
        else if (!out.empty() && out.back() != ' ')
            out += ' ';
    }
    if (!out.empty() && out.back() == ' ') out.pop_back();
    return out;
}

}  // namespace wrenlet::pack
