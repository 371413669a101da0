#include "tests/ear/endpoint_report.hpp"

#include <algorithm>

#include "content/common/random.hpp"
#include "editor/voice/hands_free.hpp"
#include "tests/ear/noise.hpp"

namespace wrenlet::ear {
namespace {

using desk::Endpoint;

struct Room {
    const char* name;
    double snr_db;
};
constexpr Room kRooms[] = {
    {"40 dB, pink noise", 40}, {"30 dB, pink noise", 30}, {"20 dB, pink noise", 20}};
constexpr double kBefore = 1.5, kAfter = 1.5;  // s
constexpr double kTruth = 25;                  // dB under the top: what may not be lost
constexpr double kSoon = 0.7;                  // s after the word's end
constexpr std::size_t kBlock = 512;            // samples, as a microphone gives them

}  // namespace

std::vector<Line> endpointReport(const std::vector<Word>& words) {
    std::vector<Line> lines;
    for (const Room& room : kRooms) {
        int whole = 0, soon = 0;
        for (std::size_t i = 0; i < words.size(); ++i) {
            const desk::Pcm sound =
                inRoom(words[i].clean, room.snr_db, Colour::pink, stepSeed(51, i), kBefore, kAfter);
            const Audible truth = audible(words[i].clean, kTruth);
            desk::HandsFree listening(sound.rate, words[i].need());
            const std::span<const float> all(sound.samples);
            std::size_t at = 0;
            while (at < all.size() && listening.state() != Endpoint::State::ended) {
                const std::size_t size = std::min(kBlock, all.size() - at);
                listening.feed(all.subspan(at, size));
                at += size;
            }
            if (listening.state() != Endpoint::State::ended) continue;
            const double ended = static_cast<double>(at) / sound.rate - kBefore;
            const double began = ended - listening.take().seconds();
            if (ended - truth.end <= kSoon) ++soon;
            if (began <= truth.begin && ended >= truth.end) ++whole;
        }
        const int all = static_cast<int>(words.size());
        lines.push_back(
            share("hands-free", room.name, "the whole word is in the take", whole, all));
        lines.push_back(
            share("hands-free", room.name, "ended within 0.7 s of the word's end", soon, all));
    }
    return lines;
}

}  // namespace wrenlet::ear
