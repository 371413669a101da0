// What the desk says of simulated children, against what they know.
#include <cmath>
#include <cstdio>
#include <ostream>

#include "tests/simulator/report.hpp"

namespace wrenlet::simulator {

namespace {

std::string cell(double value, int digits = 3) {
    if (std::isnan(value)) return "-";
    char text[32];
    std::snprintf(text, sizeof text, "%.*f", digits, value);
    return text;
}

std::string padded(const std::string& text, std::size_t width) {
    return text.size() < width ? std::string(width - text.size(), ' ') + text : text;
}

constexpr std::size_t kWidth = 14;

std::string stepName(std::size_t step) {
    const std::string from = std::to_string(kSaidFrom[step]);
    if (step + 1 == kSaidSteps) return from + "+";
    return from + "-" + std::to_string(kSaidFrom[step + 1] - 1);
}

/// "value/bound" of a share over the classes.
std::string share(const Result& result, std::size_t step, double Said::*part, double Said::*of,
                  Better better, double middle = 0) {
    const Figure figure = [=](const Tally& own, const Tally&) {
        return own.said(step).*part / (own.said(step).*of);
    };
    const Bounded one = bounded(result.classes, result.classes, figure, better, middle);
    return std::isnan(one.value) ? "-" : cell(one.value) + "/" + cell(one.bound);
}

Tally sumOf(const Result& result) {
    Tally sum;
    for (const Tally& one : result.classes) sum.add(one);
    return sum;
}

void printLines(std::ostream& out, const Result& result, const Tally& sum) {
    out << "\nSaid, generator " << letterOf(result.generator) << ", " << result.children
        << " children, " << result.policy << "\n"
        << padded("answers", kWidth);
    for (const char* head :
         {"lines", "truly missed", "said missed", "precision", "recall", "in 80 %", "in 90 %"})
        out << padded(head, kWidth);
    out << "\n";
    for (std::size_t step = 0; step < kSaidSteps; ++step) {
        const Said& said = sum.said(step);
        out << padded(stepName(step), kWidth) << padded(cell(said.lines, 0), kWidth)
            << padded(cell(said.missed, 0), kWidth) << padded(cell(said.said, 0), kWidth)
            << padded(share(result, step, &Said::both, &Said::said, Better::higher), kWidth)
            << padded(share(result, step, &Said::both, &Said::missed, Better::higher), kWidth)
            << padded(share(result, step, &Said::in80, &Said::lines, Better::within, .8), kWidth)
            << padded(share(result, step, &Said::in90, &Said::lines, Better::within, .9), kWidth)
            << "\n";
    }
}

void printSessions(std::ostream& out, const Result& result, const Tally& sum) {
    out << "Held, generator " << letterOf(result.generator) << "\n" << padded("session", kWidth);
    for (const char* head : {"sessions", "no word", "tired", "guessing", "tired at best"})
        out << padded(head, kWidth);
    out << "\n";
    constexpr const char* kNames[] = {"fresh", "tired", "tapping"};
    double fresh = 0;
    for (std::size_t held = 0; held < kWaysHeld; ++held)
        fresh += sum.sessions(Truly::fresh, static_cast<Held>(held));
    const double alarms = sum.sessions(Truly::fresh, Held::tired) / fresh;
    for (std::size_t truly = 0; truly < kWaysTruly; ++truly) {
        double all = 0;
        for (std::size_t held = 0; held < kWaysHeld; ++held)
            all += sum.sessions(static_cast<Truly>(truly), static_cast<Held>(held));
        out << padded(kNames[truly], kWidth) << padded(cell(all, 0), kWidth);
        for (std::size_t held = 0; held < kWaysHeld; ++held)
            out << padded(
                cell(sum.sessions(static_cast<Truly>(truly), static_cast<Held>(held)) / all),
                kWidth);
        const bool is_tired = static_cast<Truly>(truly) == Truly::tired;
        out << padded(is_tired ? cell(sum.tiredAtBest(alarms)) : "-", kWidth) << "\n";
    }
    out << "Sounds missed along a shield alone: " << cell(sum.onlyShielded(), 0)
        << ", called missed: " << cell(sum.shieldedMissed(), 0) << "\n";
}

}  // namespace

void printSaid(std::ostream& out, const std::vector<Result>& results) {
    for (const Result& result : results) {
        const Tally sum = sumOf(result);
        double lines = 0;
        for (std::size_t step = 0; step < kSaidSteps; ++step) lines += sum.said(step).lines;
        if (lines == 0 || result.policy != "wrenlet") continue;
        printLines(out, result, sum);
        printSessions(out, result, sum);
    }
}

}  // namespace wrenlet::simulator
