#include "editor/paper/html.hpp"

#include <cstdio>

namespace wrenlet::desk::paper {

namespace {

// Sizes in pt and mm, since this is for paper. The colours are the desk's ink, deep and clay.
constexpr std::string_view kStyle = R"(
@page { size: auto; margin: 13mm 14mm; }
* { box-sizing: border-box; }
html { background: #fff; color: #22313a; font: 10.5pt/1.38 Andika, "Segoe UI", Roboto, Helvetica, Arial, sans-serif; }
body { margin: 0 auto; max-width: 182mm; padding: 8mm 4mm; }
@media print { body { padding: 0; max-width: none; } }
h1 { font-size: 19pt; line-height: 1.15; margin: 0 0 1mm; }
h2 { font-size: 12.5pt; margin: 4.5mm 0 1.5mm; border-bottom: .4mm solid #22313a; padding-bottom: .6mm; }
p, ol, ul { margin: 1.2mm 0; }
ol, ul { padding-left: 6mm; }
li { margin: .7mm 0; break-inside: avoid; }
.soft { color: #4c5b63; }
.answer { font-weight: bold; color: #23545f; }
.who { color: #98361e; }
.caution { margin: 5mm .5mm 1mm 0; padding: 2.2mm 3mm; border: .4mm solid #7d7058; border-radius: 2mm; font-size: 9.3pt; break-inside: avoid; }
.columns { columns: 2; column-gap: 8mm; margin-top: 3mm; }
section { break-inside: avoid; padding-bottom: 4mm; }
section h2 { margin-top: 0; }
table { border-collapse: collapse; width: 100%; font-size: 8.3pt; line-height: 1.25; }
th { text-align: left; border-bottom: .35mm solid #22313a; padding: .7mm 1.5mm .7mm 0; }
td { border-bottom: .2mm solid #ddd0b4; padding: .55mm 1.5mm .55mm 0; vertical-align: middle; }
td.number { white-space: nowrap; }
svg { vertical-align: middle; }
)";

/// The length of a well-formed UTF-8 character at the front of `text`; 0 when there is none.
std::size_t characterAt(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const std::size_t length = byte(0) < 0x80   ? 1
                               : byte(0) < 0xC2 ? 0
                               : byte(0) < 0xE0 ? 2
                               : byte(0) < 0xF0 ? 3
                               : byte(0) < 0xF5 ? 4
                                                : 0;
    if (length == 0 || length > text.size()) return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((byte(i) & 0xC0) != 0x80) return 0;
    return length;
}

std::string millimetres(double mm) {
    char text[32];
    std::snprintf(text, sizeof text, "%.2f", mm);
    return text;
}

}  // namespace

std::string escaped(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const std::size_t length = characterAt(text);
        const std::string_view one = text.substr(0, length == 0 ? 1 : length);
        text.remove_prefix(one.size());
        if (length == 0 || (length == 1 && static_cast<unsigned char>(one[0]) < 0x20)) continue;
        if (one == "&")
            out += "&amp;";
        else if (one == "<")
            out += "&lt;";
        else if (one == ">")
            out += "&gt;";
        else if (one == "\"")
            out += "&quot;";
        else if (one == "'")
            out += "&#39;";
        else if (one != "\x7f")
            out += one;
    }
    return out;
}

std::string element(std::string_view name, std::string_view text, std::string_view kind) {
    std::string out = "<" + std::string(name);
    if (!kind.empty()) out += " class=\"" + escaped(kind) + "\"";
    return out + ">" + escaped(text) + "</" + std::string(name) + ">\n";
}

std::string page(std::string_view title, std::string_view body) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
           "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src "
           "'unsafe-inline'\">\n<title>" +
           escaped(title) + "</title>\n<style>" + std::string(kStyle) +
           "</style>\n</head>\n<body>\n<main>\n" + std::string(body) +
           "</main>\n</body>\n</html>\n";
}

std::string rangeBar(double low, double middle, double high, std::string_view label) {
    constexpr double kWidth = 24, kHeight = 3.4;
    const auto at = [&](double share) { return millimetres(share * kWidth); };
    return "<svg role=\"img\" aria-label=\"" + escaped(label) + "\" width=\"" +
           millimetres(kWidth) + "mm\" height=\"" + millimetres(kHeight) +
           "mm\" viewBox=\"0 0 24 3.4\"><rect x=\".1\" y=\"1.2\" width=\"23.8\" height=\"1\" "
           "fill=\"#ffffff\" stroke=\"#7d7058\" stroke-width=\".2\"/><rect x=\"" +
           at(low) + "\" y=\"1.2\" width=\"" + at(high - low) +
           "\" height=\"1\" fill=\"#2f6f7e\"/><rect x=\"" + millimetres(middle * (kWidth - .8)) +
           "\" y=\".2\" width=\".8\" height=\"3\" fill=\"#22313a\"/></svg>";
}

}  // namespace wrenlet::desk::paper
