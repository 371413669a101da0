#include "content/pack/svg_check.hpp"

#include <algorithm>
#include <cctype>
#include <cstring>

#include "content/pack/text_rules.hpp"

namespace wrenlet::pack {
namespace {

std::string lowered(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return out;
}

/// The text after a declaration, comments and blanks: where an SVG's first tag stands.
std::string_view afterProlog(std::string_view text) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    while (true) {
        while (!text.empty() && std::isspace(static_cast<unsigned char>(text.front())))
            text.remove_prefix(1);
        const bool declaration = text.substr(0, 5) == "<?xml";
        const bool comment = text.substr(0, 4) == "<!--";
        if (!declaration && !comment) return text;
        const std::string_view close = declaration ? "?>" : "-->";
        const std::size_t end = text.find(close, 4);
        if (end == std::string_view::npos) return {};
        text.remove_prefix(end + close.size());
    }
}

/// True iff every `opening` (such as href=" or url() is followed by "#", a place in the picture.
bool staysInside(const std::string& svg, std::string_view opening) {
    for (std::size_t at = svg.find(opening); at != std::string::npos;
         at = svg.find(opening, at + 1)) {
        std::size_t next = at + opening.size();
        while (next < svg.size() && std::strchr("= \t\r\n\"'", svg[next])) ++next;
        if (next >= svg.size() || svg[next] != '#') return false;
    }
    return true;
}

bool hasHandler(const std::string& svg) {
    for (std::size_t at = svg.find("on"); at != std::string::npos; at = svg.find("on", at + 1)) {
        if (at == 0 || !std::isspace(static_cast<unsigned char>(svg[at - 1]))) continue;
        std::size_t next = at;
        while (next < svg.size() && std::isalpha(static_cast<unsigned char>(svg[next]))) ++next;
        while (next < svg.size() && std::isspace(static_cast<unsigned char>(svg[next]))) ++next;
        if (next < svg.size() && svg[next] == '=') return true;
    }
    return false;
}

/// Dashes far smaller than their line keep the drawing library busy for hours.
bool hasDashes(const std::string& svg) {
    constexpr std::string_view kDashes = "stroke-dasharray";
    for (std::size_t at = svg.find(kDashes); at != std::string::npos; at = svg.find(kDashes, at)) {
        at += kDashes.size();
        while (at < svg.size() && std::strchr("=: \t\r\n\"'", svg[at])) ++at;
        if (svg.compare(at, 4, "none") != 0) return true;
    }
    return false;
}

/// The drawing library's time for one outline grows with the square of its length. The picture set
/// has at most 239 tags and 1.4e7 of these squares in one drawing; what is allowed here takes some
/// seconds at most.
bool tooMuchToDraw(const std::string& svg) {
    constexpr std::size_t kMostTags = 1000;
    constexpr double kMostSquares = 6e7;
    double squares = 0;
    std::size_t numbers = 0;
    bool in_number = false;
    for (const char c : svg) {
        const bool digit = c >= '0' && c <= '9';
        if (digit && !in_number) ++numbers;
        in_number = digit || (in_number && c == '.');
        if (c != '"' && c != '\'') continue;
        squares += static_cast<double>(numbers) * static_cast<double>(numbers);
        numbers = 0;
    }
    const auto tags = static_cast<std::size_t>(std::count(svg.begin(), svg.end(), '<'));
    return tags > kMostTags || squares > kMostSquares;
}

}  // namespace

std::string whyNoSvg(std::string_view bytes) {
    if (lowered(afterProlog(bytes).substr(0, 4)) != "<svg") return "is no picture";
    if (!letters(bytes)) return "is not readable as an SVG picture";
    const std::string svg = lowered(bytes);
    if (svg.find("<!doctype") != std::string::npos || svg.find("<!entity") != std::string::npos)
        return "has declarations that no picture needs";
    for (const std::string_view tag : {"<script", "<foreignobject", "<image", "<iframe", "<style",
                                       "<animate", "<set", "javascript:"})
        if (svg.find(tag) != std::string::npos)
            return "has something in it that is no drawing (" + std::string(tag) + ")";
    if (hasHandler(svg)) return "has something in it that runs";
    if (!staysInside(svg, "href") || !staysInside(svg, "url(")) return "points outside itself";
    if (svg.rfind("</svg>") == std::string::npos) return "is cut short";
    if (hasDashes(svg)) return "has dashed lines, which cannot be drawn here";
    if (tooMuchToDraw(svg)) return "has more in it than a tablet can draw in a moment";
    return "";
}

}  // namespace wrenlet::pack
