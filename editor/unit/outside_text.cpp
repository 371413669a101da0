#include "editor/unit/outside_text.hpp"

#include <array>

#include "content/pack/text_rules.hpp"

namespace wrenlet::desk {

namespace {

/// What Windows-1252 has at 0x80 to 0x9F, as Unicode; 0 where it has nothing (WHATWG Encoding
/// Standard, index windows-1252).
constexpr std::array<char32_t, 32> kWindows{
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

void append(std::string& text, char32_t letter) {
    if (letter < 0x80) {
        text += static_cast<char>(letter);
    } else if (letter < 0x800) {
        text += static_cast<char>(0xC0 | (letter >> 6));
        text += static_cast<char>(0x80 | (letter & 0x3F));
    } else {
        text += static_cast<char>(0xE0 | (letter >> 12));
        text += static_cast<char>(0x80 | ((letter >> 6) & 0x3F));
        text += static_cast<char>(0x80 | (letter & 0x3F));
    }
}

std::string fromWindows(std::string_view bytes) {
    std::string text;
    for (const char byte : bytes) {
        const auto value = static_cast<unsigned char>(byte);
        const bool is_own = value >= 0x80 && value < 0xA0;
        append(text, is_own ? kWindows[value - 0x80] : value);
    }
    return text;
}

Problem warning(std::string_view where, std::string what, std::string way_out) {
    return {std::string(where), std::move(what), std::move(way_out), Problem::Weight::warning};
}

}  // namespace

Result<std::string> outsideText(std::string_view bytes, std::string_view where, std::size_t most) {
    if (pack::isUtf16(bytes))
        return Problem{std::string(where), "This is text in UTF-16.",
                       "Save it as UTF-8, or copy the words and paste."};
    std::vector<Problem> warnings;
    std::string text(bytes);
    if (!pack::letters(bytes)) {
        text = fromWindows(bytes);
        warnings.push_back(warning(where,
                                   "This text is not in UTF-8; it was read as a Windows text.",
                                   "Look whether its letters are right."));
    }
    constexpr std::string_view kMark = "\xEF\xBB\xBF";
    if (text.compare(0, kMark.size(), kMark) == 0) text.erase(0, kMark.size());
    if (text.size() > most) {
        const std::size_t end = text.find_last_of("\r\n", most);
        text.resize(end == std::string::npos ? most : end);
        const std::string size = most >= (1u << 20) ? std::to_string(most >> 20) + " MB"
                                                    : std::to_string(most >> 10) + " KB";
        warnings.push_back(
            warning(where, "This is longer than " + size + "; what comes after that is not read.",
                    "Take a shorter list."));
    }
    return {std::move(text), std::move(warnings)};
}

}  // namespace wrenlet::desk
