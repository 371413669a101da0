#include "tests/heard/ear.hpp"

#include <ebur128.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <utility>

namespace wrenlet::heard {

namespace {

constexpr std::size_t kRate = 48'000;
constexpr std::size_t kGlimpse = 128;  // samples of the clip that are looked for first
constexpr std::size_t kTen = kRate / 100;

double power(Samples samples) {
    double sum = 0;
    for (const double sample : samples) sum += sample * sample;
    return sum;
}

/// Where the part of the clip with the most power begins.
std::size_t loudestPart(Samples clip, std::size_t length) {
    std::size_t best = 0;
    double here = power(clip.first(length)), most = here;
    for (std::size_t at = 1; at + length <= clip.size(); ++at) {
        const double gone = clip[at - 1], come = clip[at + length - 1];
        here += come * come - gone * gone;
        if (here > most) {
            most = here;
            best = at;
        }
    }
    return best;
}

// A clip is looked for in two pictures of a recording, each bounded so that sums of kGlimpse
// products stay small. What lies under a soft knock is like itself in one of them at least.
using Picture = std::vector<std::int16_t> (*)(Samples);

std::vector<std::int16_t> softer(Samples samples) {
    std::vector<std::int16_t> out;
    for (const std::int16_t sample : samples) out.push_back(static_cast<std::int16_t>(sample / 8));
    return out;
}

/// From sample to sample: what lies high up counts more.
std::vector<std::int16_t> steps(Samples samples) {
    std::vector<std::int16_t> out(samples.size(), 0);
    for (std::size_t i = 1; i < samples.size(); ++i)
        out[i] =
            static_cast<std::int16_t>(std::clamp((samples[i] - samples[i - 1]) / 2, -4'000, 4'000));
    return out;
}

std::int32_t product(const std::int16_t* a, const std::int16_t* b) {
    std::int32_t sum = 0;
    for (std::size_t i = 0; i < kGlimpse; ++i) sum += std::int32_t{a[i]} * b[i];
    return sum;
}

/// A picture, with the power of each stretch of it.
struct Looked {
    explicit Looked(std::vector<std::int16_t> picture)
        : samples(std::move(picture)), power(samples.size() + 1, 0) {
        for (std::size_t i = 0; i < samples.size(); ++i)
            power[i + 1] = power[i] + std::int64_t{samples[i]} * samples[i];
    }
    std::vector<std::int16_t> samples;
    std::vector<std::int64_t> power;  // of all samples before

    /// How like `part` is to the samples from `at` on.
    double like(std::size_t at, const Looked& part) const {
        const std::size_t length = part.samples.size() / kGlimpse * kGlimpse;
        double both = 0;
        for (std::size_t i = 0; i < length; i += kGlimpse)
            both += product(samples.data() + at + i, part.samples.data() + i);
        const auto here = static_cast<double>(power[at + length] - power[at]);
        const auto own = static_cast<double>(part.power[length]);
        return both > 0 && here > 0 ? both / std::sqrt(here * own) : 0;
    }
};

struct Destroy {
    void operator()(ebur128_state* state) const { ebur128_destroy(&state); }
};
using Meter = std::unique_ptr<ebur128_state, Destroy>;

void addBothSides(ebur128_state* meter, Samples mono) {
    std::vector<short> both;
    for (const std::int16_t sample : mono) both.insert(both.end(), 2, sample);
    ebur128_add_frames_short(meter, both.data(), mono.size());
}

/// One place of a clip of this length: the likest of those that would overlap.
void keepLikest(std::vector<Heard>& found, const Heard& heard, std::size_t length) {
    if (found.empty() || heard.at >= found.back().at + length)
        found.push_back(heard);
    else if (heard.like > found.back().like)
        found.back() = heard;
}

/// In one picture; places are counted from the beginning of `recording`.
std::vector<Heard> placesIn(Picture picture, Samples recording, Samples clip, double least) {
    const Samples core = active(clip);
    if (core.size() < kGlimpse || clip.size() > recording.size()) return {};
    const auto before_core = static_cast<std::size_t>(core.data() - clip.data());
    const Looked all(picture(recording)), whole(picture(core));
    const std::size_t peak = loudestPart(whole.samples, kGlimpse);
    const auto from = whole.samples.begin() + static_cast<std::ptrdiff_t>(peak);
    const Looked glimpse({from, from + kGlimpse});

    // What something else sounds over may be less like for a moment than it is on the whole.
    const double somewhat = least - 0.25;
    const std::size_t last = recording.size() - clip.size();
    std::vector<Heard> found;
    double before = 0, here = all.like(before_core + peak, glimpse);
    for (std::size_t at = 0; at <= last; ++at) {
        const double after = at < last ? all.like(at + 1 + before_core + peak, glimpse) : 0;
        const bool is_peak = here >= somewhat && here >= before && here >= after;
        before = here;
        here = after;
        if (!is_peak) continue;
        Heard best;
        for (std::size_t i = at > 2 ? at - 2 : 0; i <= std::min(last, at + 2); ++i)
            if (const double like = all.like(i + before_core, whole); like > best.like)
                best = {i, like};
        if (best.like >= least) keepLikest(found, best, clip.size());
    }
    return found;
}

}  // namespace

std::vector<Heard> places(Samples recording, std::size_t from, std::size_t to, Samples clip,
                          double least) {
    to = std::min(to, recording.size());
    if (from >= to) return {};
    std::vector<Heard> all;
    for (const Picture picture : {&softer, &steps})
        for (Heard heard : placesIn(picture, recording.subspan(from, to - from), clip, least)) {
            heard.at += from;
            all.push_back(heard);
        }
    std::sort(all.begin(), all.end(), [](const Heard& a, const Heard& b) { return a.at < b.at; });
    std::vector<Heard> found;
    for (const Heard& heard : all) keepLikest(found, heard, clip.size());
    return found;
}

std::vector<Sounded> inOrder(Samples recording, std::size_t from, std::size_t to,
                             const std::vector<Samples>& clips) {
    std::vector<Sounded> all;
    for (std::size_t i = 0; i < clips.size(); ++i)
        for (const Heard& heard : places(recording, from, to, clips[i])) all.push_back({i, heard});
    std::stable_sort(all.begin(), all.end(), [](const Sounded& a, const Sounded& b) {
        return a.heard.like > b.heard.like;
    });
    std::vector<Sounded> kept;
    for (const Sounded& one : all) {
        const auto end = [&](const Sounded& it) { return it.heard.at + clips[it.clip].size(); };
        const bool hidden = std::any_of(kept.begin(), kept.end(), [&](const Sounded& other) {
            return one.heard.at < end(other) && other.heard.at < end(one);
        });
        if (!hidden) kept.push_back(one);
    }
    std::sort(kept.begin(), kept.end(),
              [](const Sounded& a, const Sounded& b) { return a.heard.at < b.heard.at; });
    return kept;
}

double loudness(Samples played) {
    const Meter meter(ebur128_init(2, kRate, EBUR128_MODE_S));
    double sum = 0;
    std::size_t measured = 0;
    for (std::size_t at = 0; at < played.size(); at += 3 * kRate) {
        const Samples piece = played.subspan(at, std::min(3 * kRate, played.size() - at));
        addBothSides(meter.get(), piece);
        const auto ms = static_cast<unsigned long>(piece.size() * 1000 / kRate);
        double lufs = 0;
        if (ms == 0 || ebur128_loudness_window(meter.get(), ms, &lufs) != EBUR128_SUCCESS) continue;
        sum += std::pow(10, lufs / 10) * static_cast<double>(piece.size());
        measured += piece.size();
    }
    return measured > 0 && sum > 0 ? 10 * std::log10(sum / static_cast<double>(measured))
                                   : -HUGE_VAL;
}

double loudestMoment(Samples played) {
    const Meter meter(ebur128_init(2, kRate, EBUR128_MODE_S));
    std::vector<std::int16_t> padded(played.begin(), played.end());
    padded.resize((played.size() / kTen + 12) * kTen, 0);
    double most = -HUGE_VAL;
    for (std::size_t at = 0; at < padded.size(); at += kTen) {
        addBothSides(meter.get(), Samples(padded).subspan(at, kTen));
        double now = -HUGE_VAL;
        ebur128_loudness_window(meter.get(), 100, &now);
        most = std::max(most, now);
    }
    return most;
}

Samples active(Samples clip) {
    double most = 0;
    for (std::size_t at = 0; at + kTen <= clip.size(); at += kTen)
        most = std::max(most, power(clip.subspan(at, kTen)));
    std::size_t first = clip.size(), end = 0;
    for (std::size_t at = 0; at + kTen <= clip.size(); at += kTen) {
        if (power(clip.subspan(at, kTen)) < most / 10'000) continue;
        first = std::min(first, at);
        end = at + kTen;
    }
    return first < end ? clip.subspan(first, end - first) : Samples{};
}

}  // namespace wrenlet::heard
