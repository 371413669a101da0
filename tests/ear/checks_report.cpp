#include "tests/ear/checks_report.hpp"

#include <algorithm>
#include <cmath>

#include "content/common/random.hpp"
#include "editor/voice/filter.hpp"
#include "editor/voice/take_checks.hpp"
#include "tests/ear/noise.hpp"

namespace wrenlet::ear {
namespace {

using desk::Pcm;
using desk::Trouble;

constexpr double kBefore = 0.6;  // s, as inRoom puts it

/// As a microphone of 16 bits gives it.
Pcm inSteps(Pcm take) {
    for (float& sample : take.samples) sample = std::round(sample * 32768) / 32768;
    return take;
}

/// Its tops cut where it was `times` too loud, turned down afterwards.
Pcm overdriven(Pcm take, float times) {
    float top = 0;
    for (const float sample : take.samples) top = std::max(top, std::fabs(sample));
    for (float& sample : take.samples) sample = std::clamp(sample, -top / times, top / times);
    return take;
}

Pcm from(const Pcm& take, double begin, double end) {
    return desk::cutOut(take, {static_cast<std::size_t>(begin * take.rate),
                               static_cast<std::size_t>(end * take.rate)});
}

bool found(const Pcm& take, const Word& word, Trouble trouble) {
    const auto findings = desk::checkTake(take, desk::heardIn(take), word.need());
    return std::any_of(findings.begin(), findings.end(),
                       [&](const desk::Finding& finding) { return finding.trouble == trouble; });
}

struct Counted {
    const char* condition;
    const char* figure;
    double wanted;
    bool more_is_better;
    int count = 0;
};

}  // namespace

std::vector<Line> checksReport(const std::vector<Word>& words) {
    Counted counts[] = {{"overdriven by 1.1", "clipping found", 94.4, true},
                        {"overdriven by 1.26", "clipping found", 100, true},
                        {"good take, 40 dB", "clipping found", 0, false},
                        {"its first 60 ms missing", "cut start found", 100, true},
                        {"its last 60 ms missing", "cut end found", 100, true},
                        {"good take, 40 dB", "cut start or end found", 0, false},
                        {"good take, cut to 50 ms around it", "cut start or end found", 0, false},
                        {"said twice, 0.6 s apart", "two tries found", 100, true},
                        {"good take, 40 dB", "two tries found", 0, false},
                        {"room at 20 dB", "noise found", 100, true},
                        {"room at 40 dB", "noise found", 0, false}};
    for (std::size_t i = 0; i < words.size(); ++i) {
        const Word& word = words[i];
        const Pcm good = inSteps(inRoom(word.clean, 40, Colour::pink, stepSeed(61, i)));
        const Audible speech = audible(word.clean, 25);
        const double begin = kBefore + speech.begin, end = kBefore + speech.end;
        const Audible all = audible(desk::withoutHum(word.clean), 40);
        const Pcm tight = from(good, kBefore + all.begin - 0.05, kBefore + all.end + 0.05);
        Pcm twice = from(good, 0, end + 0.3);
        const Pcm again = from(good, begin - 0.3, good.seconds());
        twice.samples.insert(twice.samples.end(), again.samples.begin(), again.samples.end());
        const Pcm noisy = inRoom(word.clean, 20, Colour::pink, stepSeed(67, i));
        const bool results[] = {
            found(inSteps(overdriven(good, 1.1f)), word, Trouble::clipped),
            found(inSteps(overdriven(good, 1.26f)), word, Trouble::clipped),
            found(good, word, Trouble::clipped),
            found(from(good, begin + 0.06, good.seconds()), word, Trouble::cut_off_start),
            found(from(good, 0, end - 0.06), word, Trouble::cut_off_end),
            found(good, word, Trouble::cut_off_start) || found(good, word, Trouble::cut_off_end),
            found(tight, word, Trouble::cut_off_start) || found(tight, word, Trouble::cut_off_end),
            found(twice, word, Trouble::two_tries),
            found(good, word, Trouble::two_tries),
            found(noisy, word, Trouble::noisy),
            found(good, word, Trouble::noisy)};
        for (std::size_t k = 0; k < std::size(counts); ++k) counts[k].count += results[k] ? 1 : 0;
    }
    std::vector<Line> lines;
    for (const Counted& counted : counts) {
        Line line = share("plain checks", counted.condition, counted.figure, counted.count,
                          static_cast<int>(words.size()));
        line.wanted = counted.wanted;
        line.more_is_better = counted.more_is_better;
        lines.push_back(line);
    }
    return lines;
}

}  // namespace wrenlet::ear
