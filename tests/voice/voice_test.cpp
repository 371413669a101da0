#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "editor/voice/audio_file.hpp"
#include "editor/voice/demo_voice.hpp"
#include "editor/voice/loudness.hpp"
#include "editor/voice/trim.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;

namespace {

constexpr double kPi = 3.14159265358979323846;

Pcm sine(double hertz, double dbfs, double seconds) {
    Pcm clip;
    const double peak = std::pow(10, dbfs / 20);
    for (int i = 0; i < seconds * clip.rate; ++i)
        clip.samples.push_back(
            static_cast<float>(peak * std::sin(2 * kPi * hertz * i / clip.rate)));
    return clip;
}

pack::VoiceNeed word(std::string_view text) {
    return {"word:" + std::string(text), std::string(text), fixtures::said(text),
            pack::VoiceNeed::Kind::word};
}

pack::VoiceNeed sentence(const char* text, bool asks) {
    return {"sentence:1", text, {}, pack::VoiceNeed::Kind::sentence, asks};
}

/// Hz of each voiced window of 60 ms, one every 10 ms, by autocorrelation.
std::vector<double> pitches(const Pcm& said) {
    std::vector<double> found;
    const auto window = static_cast<std::size_t>(said.rate * 6 / 100);
    const auto shortest = static_cast<std::size_t>(said.rate / 240);
    const auto longest = static_cast<std::size_t>(said.rate / 60);
    const auto step = static_cast<std::size_t>(said.rate / 100);
    for (std::size_t at = 0; at + window + longest < said.samples.size(); at += step) {
        const auto like = [&](std::size_t lag) {
            double both = 0, here = 1e-9, there = 1e-9;
            for (std::size_t i = at; i < at + window; i += 4) {
                const auto a = static_cast<double>(said.samples[i]);
                const auto b = static_cast<double>(said.samples[i + lag]);
                both += a * b;
                here += a * a;
                there += b * b;
            }
            return here / static_cast<double>(window) < 1e-5 ? 0 : both / std::sqrt(here * there);
        };
        std::size_t best = shortest;
        double most = 0;
        for (std::size_t lag = shortest; lag <= longest; lag += 4)
            if (like(lag) > most) most = like(best = lag);
        if (most > 0.7) found.push_back(static_cast<double>(said.rate) / static_cast<double>(best));
    }
    return found;
}

/// How much higher it ends than it lies in its middle.
double rise(const Pcm& said) {
    std::vector<double> all = pitches(said);
    REQUIRE(all.size() > 20);
    std::vector<double> end(all.end() - 5, all.end());
    std::sort(end.begin(), end.end());
    std::sort(all.begin(), all.end());
    return end[2] / all[all.size() / 2];
}

pack::VoiceNeed lone(speech::Phoneme phoneme) {
    return {"sound", "sound", {{phoneme}}, pack::VoiceNeed::Kind::sound};
}

}  // namespace

TEST_CASE("Loudness: a 1 kHz sine at -23 dBFS from both sides is -23.0 LUFS") {
    // EBU Tech 3341, minimum requirements test signal 1: a stereo tone, -23.0 within 0.1 LU.
    CHECK(std::fabs(loudness(sine(1000, -23, 20)) - -23.0) < 0.1);
    CHECK(std::fabs(loudness(sine(1000, -33, 20)) - -33.0) < 0.1);
}

TEST_CASE("Loudness: a clip shorter than a block of the standard is measured too") {
    CHECK(std::fabs(loudness(sine(1000, -23, 0.1)) - -23.0) < 0.3);
    CHECK(loudness(Pcm{}) <= -100);
    CHECK(loudness(sine(1000, -200, 1)) <= -70);
}

TEST_CASE("Demo voice: words come at one loudness, without a clipped top or long silence") {
    const auto lexicon = fixtures::dictionary();
    const DemoVoice voice(lexicon);
    for (const char* text : {"cat", "rainbow", "sheep", "umbrella", "fish", "moon"}) {
        CAPTURE(std::string(text));
        const Pcm said = voice.say(word(text));
        REQUIRE(said.rate == kClipRate);
        CHECK(said.seconds() > 0.2);
        CHECK(said.seconds() < 1.6);
        CHECK(std::fabs(loudness(said) - kWordLufs) < 1.5);
        CHECK(truePeak(said) < kMostPeakDb + 0.2);
        const Pcm sounding = withoutSilence(said, 0);
        CHECK(said.seconds() - sounding.seconds() < 0.24);
    }
}

TEST_CASE("Demo voice: a stop alone is short and has no vowel after it") {
    const auto lexicon = fixtures::dictionary();
    const DemoVoice voice(lexicon);
    using speech::Phoneme;
    for (const Phoneme phoneme : {Phoneme::p, Phoneme::t, Phoneme::k}) {
        const Pcm said = voice.say(lone(phoneme));
        CHECK(said.seconds() > 0.03);
        CHECK(said.seconds() < 0.35);
        // A vowel would be the loudest by far at the end; the burst of a stop dies away.
        const auto energy = [&](double from, double to) {
            double sum = 0;
            const auto size = static_cast<double>(said.samples.size());
            for (auto i = static_cast<std::size_t>(from * size);
                 i < static_cast<std::size_t>(to * size); ++i)
                sum += static_cast<double>(said.samples[i] * said.samples[i]);
            return sum;
        };
        CHECK(energy(0.85, 1) < energy(0, 0.85));
    }
    CHECK(voice.say(lone(Phoneme::s)).seconds() > 0.1);
}

TEST_CASE("Demo voice: what is said follows the sounds and not the spelling") {
    const auto lexicon = fixtures::dictionary();
    const DemoVoice voice(lexicon);
    pack::VoiceNeed bow = word("bow");
    const Pcm of_rain = voice.say(bow);
    bow.sounds = {{speech::Phoneme::b}, {speech::Phoneme::aw, speech::Stress::primary}};
    CHECK(of_rain.samples != voice.say(bow).samples);
}

TEST_CASE("Demo voice: what asks ends higher than it began, and what tells does not") {
    const auto lexicon = fixtures::dictionary();
    const DemoVoice voice(lexicon);
    for (const char* text :
         {"Can the frog hop?", "Is the fish under the log?", "Can we find the little key?",
          "Did a mouse run into the house?", "Can the goat sleep?", "Did the sun go down?"}) {
        const double asking = rise(voice.say(sentence(text, true)));
        CHECK(asking > 1.12);
    }
    for (const char* text : {"The frog can hop.", "The fish is under the log.", "A duck swims by.",
                             "The goat sleeps.", "I see a bee."}) {
        const double telling = rise(voice.say(sentence(text, false)));
        CHECK(telling < 1.02);
    }
}

TEST_CASE("Audio files: an encoded clip keeps its length to the frame") {
    const Pcm tone = sine(440, -12, 0.5);
    const auto bytes = encodeOgg(tone);
    REQUIRE(bytes.ok());
    CHECK(bytes.value().compare(0, 4, "OggS") == 0);
    CHECK(atRate(Pcm{std::vector<float>(1600, 0.1f), 16000}, 48000).samples.size() == 4800);
}

// The truth is known because the two are laid end to end: a consonant alone, then an "uh" alone.
// soxr's own header gives 20 bits for its high quality: 120 dB.
TEST_CASE("Another rate leaves a sine a sine, with nothing beside it down to 100 dB") {
    Pcm low;
    low.rate = 16'000;
    constexpr double kHertz = 3'000, kPeak = 0.5;
    for (int i = 0; i < low.rate; ++i)
        low.samples.push_back(
            static_cast<float>(kPeak * std::sin(2 * kPi * kHertz * i / low.rate)));
    const Pcm high = atRate(low, 48'000);
    double beside = 0, of = 0;
    for (std::size_t i = 4'800; i + 4'800 < high.samples.size(); ++i) {
        const double due = kPeak * std::sin(2 * kPi * kHertz * static_cast<double>(i) / high.rate);
        of += due * due;
        beside += (high.samples[i] - due) * (high.samples[i] - due);
    }
    CHECK(10 * std::log10(beside / of) < -100);
}

TEST_CASE("The same sound gives the same file, and the demo voice says a word alike every time") {
    const speech::Lexicon lexicon = fixtures::dictionary();
    const DemoVoice voice(lexicon);
    const Pcm once = voice.say(word("cat"));
    voice.say(word("dog"));
    const Pcm again = voice.say(word("cat"));
    CHECK(once.samples == again.samples);
    const auto first = encodeOgg(once), second = encodeOgg(again);
    REQUIRE(first.ok());
    CHECK(first.value() == second.value());
    const auto back = decodeTake(first.value(), "clip.ogg");
    REQUIRE(back.ok());
    CHECK(back.value().samples.size() == once.samples.size());
}
