#include "game/stage/mixer.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <utility>
#include <vector>

#include "content/common/random.hpp"

using namespace wrenlet;
using namespace wrenlet::game;

namespace {

using Lane = Mixer::Lane;

Pcm flat(std::size_t samples, std::int16_t level) {
    Pcm pcm;
    pcm.samples.assign(samples, level);
    return pcm;
}

// The left side of what the mixer gives, pulled in buffers of `frames`.
std::vector<std::int16_t> pull(Mixer& mixer, std::size_t total, std::size_t frames) {
    std::vector<std::int16_t> left;
    std::vector<std::int16_t> buffer;
    while (left.size() < total) {
        const std::size_t now = std::min(frames, total - left.size());
        buffer.assign(now * 2, 12345);
        mixer.mix(buffer.data(), now);
        for (std::size_t i = 0; i < now; ++i) {
            REQUIRE(buffer[2 * i] == buffer[2 * i + 1]);
            left.push_back(buffer[2 * i]);
        }
    }
    return left;
}

// Where silence turns to sound and back.
std::vector<std::size_t> turns(const std::vector<std::int16_t>& samples) {
    std::vector<std::size_t> at;
    bool sounding = false;
    for (std::size_t i = 0; i < samples.size(); ++i)
        if ((samples[i] != 0) != sounding) {
            at.push_back(i);
            sounding = !sounding;
        }
    return at;
}

}  // namespace

TEST_CASE("mixer: gaps are exact to the sample, whatever the size of the buffers") {
    const Pcm first = flat(1000, 9000), second = flat(777, 9000);
    for (const std::size_t frames : {1u, 64u, 512u, 800u, 1024u, 5000u}) {
        CAPTURE(frames);
        Mixer mixer;
        pull(mixer, 333, frames);
        const Mixer::Line lines[] = {{&first, 0}, {&second, 1000 + 5760}};
        CHECK(mixer.begin(Lane::voice, lines) == 333);
        const auto samples = pull(mixer, 9000, frames);
        CHECK(turns(samples) == std::vector<std::size_t>{0, 1000, 6760, 7537});
        CHECK(mixer.isQuiet());
        CHECK(mixer.clock() == 9333);
    }
}

TEST_CASE("mixer: what is stopped fades within 5 ms, what has not begun never does") {
    const Pcm first = flat(48'000, 20'000), second = flat(1000, 20'000);
    Mixer mixer;
    const Mixer::Line lines[] = {{&first, 0}, {&second, 60'000}};
    mixer.begin(Lane::voice, lines);
    const auto before = pull(mixer, 480, 480);
    mixer.stop(Lane::voice);
    const auto after = pull(mixer, 70'000, 512);
    CHECK(turns(after).size() == 2);
    CHECK(turns(after)[1] <= static_cast<std::size_t>(kFadeSamples));
    CHECK(turns(after)[1] > static_cast<std::size_t>(kFadeSamples) - 4);
    int biggest_step = std::abs(before.back() - after.front());
    for (std::size_t i = 1; i < after.size(); ++i)
        biggest_step = std::max(biggest_step, std::abs(after[i] - after[i - 1]));
    CHECK(biggest_step <= 20'000 / kFadeSamples + 2);
}

TEST_CASE("mixer: stopping the voice leaves the cues alone") {
    const Pcm sound = flat(2000, 8000);
    Mixer mixer;
    const Mixer::Line line{&sound, 0};
    mixer.begin(Lane::voice, {&line, 1});
    mixer.begin(Lane::cue, {&line, 1});
    mixer.stop(Lane::voice);
    const auto samples = pull(mixer, 3000, 512);
    CHECK(turns(samples) == std::vector<std::size_t>{0, 2000});
}

TEST_CASE("mixer: nothing passes the cap, however much sounds at whatever volume") {
    const int cap = static_cast<int>(kGainCap * 32767);
    const Pcm high = flat(4000, 32767), low = flat(4000, -32768);
    for (const float volume : {0.0f, 0.5f, 1.0f, 7.0f, -1.0f}) {
        for (const Pcm* pcm : {&high, &low}) {
            Mixer mixer;
            mixer.setVolume(volume);
            const std::vector<Mixer::Line> lines(20, {pcm, 0});
            mixer.begin(Lane::voice, lines);
            for (const std::int16_t sample : pull(mixer, 4000, 512))
                REQUIRE(std::abs(static_cast<int>(sample)) <= cap);
        }
    }
    Mixer mixer;
    const Mixer::Line line{&high, 0};
    mixer.begin(Lane::voice, {&line, 1});
    CHECK(pull(mixer, 1, 1)[0] >= cap - 1);  // full scale at full volume is the cap itself
    mixer.setVolume(0.5f);
    CHECK(std::abs(pull(mixer, 1, 1)[0] - cap / 2) <= 1);
    mixer.setVolume(0);
    CHECK(pull(mixer, 1, 1)[0] == 0);
}

TEST_CASE("mixer: the volume an adult chose bounds every sample, however much sounds") {
    const Pcm high = flat(4000, 32767), low = flat(4000, -32768);
    Random random(5);
    Pcm noisy;
    for (int i = 0; i < 4000; ++i)
        noisy.samples.push_back(static_cast<std::int16_t>(random.below(65'536)));
    for (const int percent : {25, 50, 75, 100}) {
        CAPTURE(percent);
        const float volume = static_cast<float>(percent) / 100;
        const int bound = static_cast<int>(kGainCap * volume * 32767);
        int loudest = 0;
        for (const Pcm* pcm : {&high, &low, &std::as_const(noisy)})
            for (const std::size_t voices : {1u, 2u, 20u}) {
                Mixer mixer;
                mixer.setVolume(volume);
                const std::vector<Mixer::Line> lines(voices, {pcm, 0});
                mixer.begin(Lane::voice, lines);
                mixer.begin(Lane::cue, lines);
                for (const std::int16_t sample : pull(mixer, 4000, 512))
                    loudest = std::max(loudest, std::abs(static_cast<int>(sample)));
            }
        CHECK(loudest <= bound + 1);
        CHECK(loudest >= bound - 2);  // and it can be reached: the bound is what is heard
    }
    // What is turned softer while it sounds is bounded from the next sample on.
    Mixer mixer;
    const std::vector<Mixer::Line> lines(20, {&high, 0});
    mixer.begin(Lane::voice, lines);
    pull(mixer, 100, 100);
    mixer.setVolume(0.25f);
    for (const std::int16_t sample : pull(mixer, 1000, 100))
        REQUIRE(sample <= static_cast<int>(kGainCap * 0.25f * 32767) + 1);
}

TEST_CASE("mixer: paused it is silent and goes on where it was") {
    Pcm ramp;
    for (int i = 1; i <= 1000; ++i) ramp.samples.push_back(static_cast<std::int16_t>(i * 30));
    const Mixer::Line line{&ramp, 0};
    Mixer whole, paused;
    whole.begin(Lane::voice, {&line, 1});
    paused.begin(Lane::voice, {&line, 1});
    const auto wanted = pull(whole, 1000, 100);
    auto heard = pull(paused, 400, 100);
    paused.setPaused(true);
    CHECK(turns(pull(paused, 300, 100)).empty());
    CHECK(paused.clock() == 400);
    paused.setPaused(false);
    const auto rest = pull(paused, 600, 100);
    heard.insert(heard.end(), rest.begin(), rest.end());
    CHECK(heard == wanted);
}
