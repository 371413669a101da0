#include "editor/voice/trim.hpp"

#include <algorithm>
#include <cmath>

#include "editor/voice/filter.hpp"

namespace wrenlet::desk {
namespace {

constexpr double kFrame = 0.005;      // s
constexpr double kHissFrom = 2'500;   // Hz: where s, f, t are louder than most rooms
constexpr double kFloorPart = 0.1;    // the quietest tenth is the room
constexpr double kCoreAbove = 12;     // dB over the room: surely speech
constexpr double kSoftAbove = 9;      // dB over the room: speech where a core is near
constexpr double kEdgeAbove = 6;      // dB over the room: still speech, beside a core
constexpr double kSoftest = 42;       // dB under the loudest frame: softer is not heard
constexpr double kSilenceDb = -75;    // dBFS: no room is quieter than this to us
constexpr double kBridged = 0.15;     // s of quiet inside a burst: a stop's closure is shorter
constexpr double kSoftLasts = 0.015;  // s: as long as one loud frame looks, smoothed
constexpr double kClick = 0.025;      // s, as smoothing widens it
constexpr double kClosed = 0.005;  // s of quiet: a closed mouth; voiced periods never are so quiet
constexpr double kFaint = 25;      // dB under the loudest burst, and apart from it: a breath
constexpr double kApart = 0.25;    // s
constexpr double kBesideSpeech = 0.05;  // s around speech that are not taken for the room
constexpr float kSoundsFrom = 0.02f;    // of the loudest moment of a synthesized clip: -34 dB
constexpr double kEnoughRoom = 0.1;     // s of room needed to say how noisy it is

using Frames = std::vector<double>;  // power of each frame

double db(double power) {
    return 10 * std::log10(power + 1e-12);
}

Frames powers(const Pcm& take, double from_hertz, std::size_t frame) {
    SteepFilter filter = SteepFilter::highPass(from_hertz, take.rate);
    Frames out(take.samples.size() / frame, 0.0);
    for (std::size_t i = 0; i < out.size() * frame; ++i) {
        const double sample = filter.next(static_cast<double>(take.samples[i]));
        out[i / frame] += sample * sample / static_cast<double>(frame);
    }
    return out;
}

/// One band of a take: each frame with its neighbours, in dB, and the band's own room and top.
struct Band {
    Frames level;
    double room, top;
    bool over(std::size_t i, double above) const {
        return level[i] > std::max({room + above, top - kSoftest, kSilenceDb});
    }
};

Band bandOf(const Frames& power) {
    Band band;
    for (std::size_t i = 0; i < power.size(); ++i) {
        const std::size_t from = i == 0 ? 0 : i - 1, to = std::min(i + 2, power.size());
        double sum = 0;
        for (std::size_t k = from; k < to; ++k) sum += power[k];
        band.level.push_back(db(sum / static_cast<double>(to - from)));
    }
    Frames sorted = band.level;
    std::sort(sorted.begin(), sorted.end());
    band.room = sorted[static_cast<std::size_t>(kFloorPart * static_cast<double>(sorted.size()))];
    band.top = sorted.back();
    return band;
}

struct Run {
    std::size_t begin, end;  // frames
    double top;              // dB
    std::size_t last;        // frame: from here on no quiet of kClosed
    bool core = false;       // surely speech
    double seconds() const { return static_cast<double>(end - begin) * kFrame; }
};

double quietBetween(const Run& a, const Run& b) {
    return static_cast<double>(b.begin - a.end) * kFrame;
}

/// Whatever is over the room and may be speech, each with its soft ends.
std::vector<Run> soundingRuns(const Band& voice, const Band& hiss) {
    std::vector<Run> runs;
    const std::size_t count = voice.level.size();
    const auto over = [&](std::size_t i, double above) {
        return voice.over(i, above) || hiss.over(i, above);
    };
    for (std::size_t i = 0; i < count;) {
        if (!over(i, kEdgeAbove)) {
            ++i;
            continue;
        }
        Run run{i, i, -200, i};
        bool soft = false;
        for (; i < count && over(i, kEdgeAbove); ++i) {
            run.core = run.core || over(i, kCoreAbove);
            soft = soft || over(i, kSoftAbove);
            run.top = std::max(run.top, voice.level[i]);
        }
        run.end = i;
        if (run.core || (soft && run.seconds() >= kSoftLasts)) runs.push_back(run);
    }
    return runs;
}

/// Those that hold a core, and the soft ones beside them: a stop let go softly after its closure.
/// Near ones are joined.
std::vector<Run> runsOf(const Band& voice, const Band& hiss) {
    const std::vector<Run> all = soundingRuns(voice, hiss);
    std::vector<Run> runs;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool after = i > 0 && all[i - 1].core && quietBetween(all[i - 1], all[i]) < kBridged;
        const bool before =
            i + 1 < all.size() && all[i + 1].core && quietBetween(all[i], all[i + 1]) < kBridged;
        if (!all[i].core && !after && !before) continue;
        if (!runs.empty() && quietBetween(runs.back(), all[i]) < kBridged) {
            if (quietBetween(runs.back(), all[i]) >= kClosed) runs.back().last = all[i].begin;
            runs.back().end = all[i].end;
            runs.back().top = std::max(runs.back().top, all[i].top);
        } else {
            runs.push_back(all[i]);
        }
    }
    return runs;
}

/// Without clicks and breaths, unless there is nothing else.
std::vector<Run> spokenOf(std::vector<Run> runs) {
    if (runs.empty()) return runs;
    const auto loudest = std::max_element(runs.begin(), runs.end(),
                                          [](const Run& a, const Run& b) { return a.top < b.top; });
    const bool only_clicks = std::all_of(runs.begin(), runs.end(),
                                         [](const Run& run) { return run.seconds() <= kClick; });
    std::vector<Run> kept;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        const bool apart = (i == 0 || quietBetween(runs[i - 1], runs[i]) > kApart) &&
                           (i + 1 == runs.size() || quietBetween(runs[i], runs[i + 1]) > kApart);
        const bool click = runs[i].seconds() <= kClick && !only_clicks;
        if (apart && (click || runs[i].top < loudest->top - kFaint)) continue;
        kept.push_back(runs[i]);
    }
    return kept;
}

}  // namespace

HeardSpeech heardIn(const Pcm& take) {
    HeardSpeech heard;
    const auto frame = static_cast<std::size_t>(std::lround(kFrame * take.rate));
    const Frames voice = powers(take, kHumBelow, frame);
    if (voice.size() < 4) return heard;
    const std::vector<Run> runs =
        spokenOf(runsOf(bandOf(voice), bandOf(powers(take, kHissFrom, frame))));
    const auto beside = static_cast<std::size_t>(kBesideSpeech / kFrame);
    double speech = 0, room = 0;
    std::size_t in_speech = 0, in_room = 0, next = 0;
    for (std::size_t i = 0; i < voice.size(); ++i) {
        while (next < runs.size() && i >= runs[next].end + beside) ++next;
        const bool near = next < runs.size() && i + beside >= runs[next].begin;
        const bool inside = near && i >= runs[next].begin && i < runs[next].end;
        if (inside) speech += voice[i], ++in_speech;
        if (!near) room += voice[i], ++in_room;
    }
    if (in_speech > 0) heard.speech_db = db(speech / static_cast<double>(in_speech));
    if (static_cast<double>(in_room) * kFrame >= kEnoughRoom)
        heard.room_db = std::max(-100.0, db(room / static_cast<double>(in_room)));
    for (const Run& run : runs) heard.bursts.push_back({run.begin * frame, run.end * frame});
    if (!runs.empty()) heard.last_sound = {runs.back().last * frame, runs.back().end * frame};
    return heard;
}

Stretch widened(Stretch stretch, double seconds, const Pcm& take) {
    const auto more = static_cast<std::size_t>(seconds * take.rate);
    return {stretch.begin - std::min(more, stretch.begin),
            std::min(stretch.end + more, take.samples.size())};
}

Pcm withoutSilence(const Pcm& clip, double margin_s) {
    float most = 0;
    for (const float sample : clip.samples) most = std::max(most, std::fabs(sample));
    const auto sounds = [&](float sample) { return std::fabs(sample) >= most * kSoundsFrom; };
    if (most <= 0) return clip;
    const auto begin = std::find_if(clip.samples.begin(), clip.samples.end(), sounds);
    const auto end = std::find_if(clip.samples.rbegin(), clip.samples.rend(), sounds).base();
    const Stretch sounding{static_cast<std::size_t>(begin - clip.samples.begin()),
                           static_cast<std::size_t>(end - clip.samples.begin())};
    return softened(cutOut(clip, widened(sounding, margin_s, clip)), 0.005);
}

}  // namespace wrenlet::desk
