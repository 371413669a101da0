#include "tests/ear/trim_report.hpp"

#include <algorithm>
#include <cmath>

#include "content/common/random.hpp"
#include "editor/voice/filter.hpp"
#include "editor/voice/trim.hpp"
#include "tests/ear/noise.hpp"

namespace wrenlet::ear {
namespace {

struct Room {
    const char* name;
    double snr_db;
    Colour colour;
    double truth_db;         // under the loudest: softer is not counted as speech
    bool hum_counts = true;  // as speech, by the truth; trimming never takes it for speech
};
constexpr Room kRooms[] = {
    {"40 dB, pink noise; truth 35 dB under the top", 40, Colour::pink, 35},
    {"40 dB, pink noise; truth 40 dB under the top", 40, Colour::pink, 40},
    {"40 dB, pink noise; truth 40 dB under the top, without hum", 40, Colour::pink, 40, false},
    {"30 dB, pink noise; truth 35 dB under the top", 30, Colour::pink, 35},
    {"30 dB, white noise; truth 35 dB under the top", 30, Colour::white, 35},
    {"20 dB, pink noise; truth 25 dB under the top", 20, Colour::pink, 25}};
constexpr double kBefore = 0.6;  // s, as inRoom puts it

double percentile(std::vector<double> values, double part) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(part * static_cast<double>(values.size() - 1))];
}

}  // namespace

std::vector<Line> trimReport(const std::vector<Word>& words) {
    std::vector<Line> lines;
    for (const Room& room : kRooms) {
        int near = 0, cut = 0;
        std::vector<double> errors;  // ms
        for (std::size_t i = 0; i < words.size(); ++i) {
            const desk::Pcm take =
                inRoom(words[i].clean, room.snr_db, room.colour, stepSeed(31, i));
            const Audible truth = audible(
                room.hum_counts ? words[i].clean : desk::withoutHum(words[i].clean), room.truth_db);
            const desk::Stretch found = desk::heardIn(take).all();
            const desk::Stretch kept = desk::widened(found, desk::kTrimMargin, take);
            const auto seconds = [&](std::size_t at) {
                return static_cast<double>(at) / take.rate - kBefore;
            };
            for (const double error :
                 {seconds(found.begin) - truth.begin, seconds(found.end) - truth.end}) {
                errors.push_back(1000 * std::fabs(error));
                if (std::fabs(error) <= 0.03) ++near;
            }
            cut += (seconds(kept.begin) > truth.begin ? 1 : 0) +
                   (seconds(kept.end) < truth.end ? 1 : 0);
        }
        const int ends = static_cast<int>(errors.size());
        lines.push_back(share("trim", room.name, "ends within 30 ms of the truth", near, ends));
        Line is_cut = share("trim", room.name, "ends cut in the clip, margins and all", cut, ends);
        is_cut.more_is_better = false;
        if (room.snr_db == 40) is_cut.wanted = 0;
        if (room.snr_db == 30) is_cut.wanted = 14;
        lines.push_back(is_cut);
        for (const double part : {0.5, 0.95}) {
            Line line;
            line.check = "trim";
            line.condition = room.name;
            line.figure = part < 0.9 ? "median error" : "error of the 95th in 100";
            line.value = percentile(errors, part);
            line.unit = "ms";
            line.of = ends;
            if (room.snr_db == 40) line.wanted = 30;
            line.more_is_better = false;
            lines.push_back(line);
        }
    }
    return lines;
}

}  // namespace wrenlet::ear
