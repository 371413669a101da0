#include "tests/ear/line.hpp"

#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>

namespace wrenlet::ear {
namespace {

std::string number(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.1f", value);
    return text;
}

}  // namespace

std::optional<bool> Line::reached() const {
    if (!wanted) return std::nullopt;
    return more_is_better ? value >= *wanted : value <= *wanted;
}

Line share(std::string check, std::string condition, std::string figure, int count, int of) {
    constexpr double z = 1.96;
    Line line;
    line.check = std::move(check);
    line.condition = std::move(condition);
    line.figure = std::move(figure);
    line.of = of;
    if (of == 0) return line;
    const double n = of, p = count / n;
    const double middle = (p + z * z / (2 * n)) / (1 + z * z / n);
    const double reach = z / (1 + z * z / n) * std::sqrt(p * (1 - p) / n + z * z / (4 * n * n));
    line.value = 100 * p;
    line.low = 100 * std::max(0.0, middle - reach);
    line.high = 100 * std::min(1.0, middle + reach);
    return line;
}

std::string asTable(const std::vector<Line>& lines) {
    std::string out =
        "| check | condition | figure | measured | 95 % bounds | of | held against | |\n"
        "|---|---|---|---|---|---|---|---|\n";
    for (const Line& line : lines) {
        out += "| " + line.check + " | " + line.condition + " | " + line.figure + " | " +
               number(line.value) + ' ' + line.unit + " | ";
        if (line.low && line.high) out += number(*line.low) + " to " + number(*line.high);
        out += " | " + std::to_string(line.of) + " | ";
        if (line.wanted)
            out += (line.more_is_better ? "at least " : "at most ") + number(*line.wanted);
        out += " | ";
        if (const auto reached = line.reached()) out += *reached ? "reached" : "below";
        out += " |\n";
    }
    return out;
}

std::string asJson(const Line& line) {
    nlohmann::ordered_json json{{"check", line.check},   {"condition", line.condition},
                                {"figure", line.figure}, {"value", line.value},
                                {"unit", line.unit},     {"of", line.of}};
    if (line.low) json["low"] = *line.low;
    if (line.high) json["high"] = *line.high;
    if (line.wanted) json["wanted"] = *line.wanted;
    if (const auto reached = line.reached()) json["reached"] = *reached;
    return json.dump();
}

}  // namespace wrenlet::ear
