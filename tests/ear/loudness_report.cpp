#include "tests/ear/loudness_report.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numbers>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "editor/voice/audio_file.hpp"
#include "editor/voice/level.hpp"
#include "editor/voice/take.hpp"
#include "tests/ear/commands.hpp"
#include "tests/ear/noise.hpp"

namespace wrenlet::ear {
namespace {

using desk::Pcm;

void addTone(Pcm& sound, double dbfs, double seconds) {
    const double peak = std::pow(10, dbfs / 20);
    const auto count = static_cast<std::size_t>(seconds * sound.rate);
    for (std::size_t i = 0; i < count; ++i)
        sound.samples.push_back(static_cast<float>(
            peak * std::sin(2 * std::numbers::pi * 1000 *
                            static_cast<double>(sound.samples.size()) / sound.rate)));
}

/// A short clip over and over for five seconds: what a meter with 400-ms blocks can read.
Pcm tiled(const Pcm& clip) {
    Pcm out = clip;
    while (!clip.samples.empty() && out.seconds() < 5)
        out.samples.insert(out.samples.end(), clip.samples.begin(), clip.samples.end());
    return out;
}

/// What is spoken in the clip, without the margins.
Pcm spokenClip(const desk::CheckedTake& checked) {
    const double scale = static_cast<double>(desk::kClipRate) / checked.take.rate;
    const auto at = [&](std::size_t sample) {
        return static_cast<std::size_t>(static_cast<double>(sample - checked.kept.begin) * scale);
    };
    return desk::cutOut(checked.clip, {at(checked.spoken.begin), at(checked.spoken.end)});
}

struct Tally {
    int near = 0, near_other = 0, capped = 0, all = 0, read = 0;
    void add(const desk::CheckedTake& checked, const pack::VoiceNeed& need,
             const std::filesystem::path& scratch, bool with_ffmpeg) {
        ++all;
        // Held back by its true peak, it may be softer.
        if (desk::truePeak(checked.clip) > desk::kMostPeakDb - 0.1) {
            ++capped;
            return;
        }
        const Pcm spoken = spokenClip(checked);
        const double aimed = desk::aimedLufs(need);
        if (std::fabs(desk::gatedLoudness(tiled(spoken)) - aimed) <= 1) ++near;
        if (!with_ffmpeg) return;
        const auto lufs = ffmpegLoudness(tiled(spoken), scratch);
        if (!lufs) return;
        ++read;
        if (std::fabs(*lufs - aimed) <= 1) ++near_other;
    }
    void report(const char* what, std::vector<Line>& lines) const {
        lines.push_back(share("loudness", what, "held back by their true peak", capped, all));
        Line own =
            share("loudness", what, "the others within 1 LU, by libebur128", near, all - capped);
        own.wanted = 100;
        lines.push_back(own);
        if (read == 0) return;
        Line other = share("loudness", what, "the others within 1 LU, by ffmpeg", near_other, read);
        other.wanted = 100;
        lines.push_back(other);
    }
};

constexpr std::size_t kMostRead = 80;  // clips that ffmpeg reads

}  // namespace

std::vector<MeterTone> meterTones() {
    const auto tone = [](std::initializer_list<std::pair<double, double>> parts, double lufs) {
        MeterTone out{{{}, 48'000}, lufs};
        for (const auto& [dbfs, seconds] : parts) addTone(out.sound, dbfs, seconds);
        return out;
    };
    return {tone({{-23, 20}}, -23), tone({{-33, 20}}, -33),
            tone({{-36, 10}, {-23, 60}, {-36, 10}}, -23),
            tone({{-72, 10}, {-36, 10}, {-23, 60}, {-36, 10}, {-72, 10}}, -23),
            tone({{-26, 20}, {-20, 20.1}, {-26, 20}}, -23)};
}

std::optional<double> ffmpegLoudness(const Pcm& sound, const std::filesystem::path& scratch) {
    const auto bytes = desk::encodeFlac(sound);
    const std::filesystem::path file = scratch / "meter.flac";
    if (!bytes.ok() || !writeWhole(file, bytes.value()).ok()) return std::nullopt;
    const std::string said = outputOf("ffmpeg -nostdin -hide_banner -nostats -i '" + file.string() +
                                      "' -af ebur128=dualmono=true -f null - 2>&1");
    const std::size_t at = said.rfind("I:");
    if (at == said.npos) return std::nullopt;
    return std::strtod(said.c_str() + at + 2, nullptr);
}

std::vector<Line> loudnessReport(const std::vector<Word>& words,
                                 const std::vector<LoneSound>& sounds,
                                 const std::filesystem::path& scratch) {
    std::vector<Line> lines;
    const bool with_ffmpeg = hasProgram("ffmpeg");
    const std::vector<MeterTone> tones = meterTones();
    for (std::size_t i = 0; i < tones.size(); ++i) {
        const std::string name = "EBU Tech 3341, test signal " + std::to_string(i + 1);
        const auto line = [&](const char* meter, double lufs) {
            Line one;
            one.check = "loudness";
            one.condition = name;
            one.figure = std::string("off, by ") + meter;
            one.value = std::fabs(lufs - tones[i].lufs);
            one.unit = "LU";
            one.of = 1;
            one.wanted = 0.1;
            one.more_is_better = false;
            lines.push_back(one);
        };
        line("libebur128", desk::gatedLoudness(tones[i].sound));
        if (!with_ffmpeg) continue;
        if (const auto lufs = ffmpegLoudness(tones[i].sound, scratch)) line("ffmpeg", *lufs);
    }
    Tally of_words, of_sounds;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const Pcm take = inRoom(words[i].clean, 40, Colour::pink, stepSeed(41, i));
        of_words.add(desk::checkedTake(take, words[i].need()), words[i].need(), scratch,
                     with_ffmpeg && i < kMostRead);
    }
    for (std::size_t i = 0; i < sounds.size(); ++i) {
        if (sounds[i].with_vowel) continue;
        const Pcm take = inRoom(sounds[i].clean, 40, Colour::pink, stepSeed(43, i));
        const desk::CheckedTake checked = desk::checkedTake(take, sounds[i].need());
        if (!checked.spoken.empty())
            of_sounds.add(checked, sounds[i].need(), scratch, with_ffmpeg && i < 3 * kMostRead);
    }
    of_words.report("words", lines);
    of_sounds.report("lone consonants", lines);
    return lines;
}

}  // namespace wrenlet::ear
