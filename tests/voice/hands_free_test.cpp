#include "editor/voice/hands_free.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "editor/voice/take.hpp"
#include "tests/fixtures/sounds.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using namespace wrenlet::fixtures;
using State = Endpoint::State;

namespace {

const pack::VoiceNeed kGoat{"word:goat", "goat", {}, pack::VoiceNeed::Kind::word};
const pack::VoiceNeed kSentence{
    "sentence:1", "The goat eats.", {}, pack::VoiceNeed::Kind::sentence};

/// Feeds `sound` in blocks as a microphone does; the second at which it ended, or -1.
double endedAfter(HandsFree& listening, const Pcm& sound, std::size_t block = 512) {
    const std::span<const float> all(sound.samples);
    for (std::size_t at = 0; at < all.size(); at += block)
        if (listening.feed(all.subspan(at, std::min(block, all.size() - at))) == State::ended)
            return static_cast<double>(at + block) / sound.rate;
    return -1;
}

Pcm spoken(double quiet_s, const Pcm& said, double room_db) {
    const Pcm sound = joined({silence(quiet_s), said, silence(2)});
    return mixed(sound, room(room_db, sound.seconds()));
}

}  // namespace

TEST_CASE("Hands-free: reads the room, waits as long as she likes, and ends by itself") {
    for (const double room_db : {-80.0, -60.0, -45.0}) {
        CAPTURE(room_db);
        HandsFree listening(kClipRate, kGoat);
        const double ended = endedAfter(listening, spoken(7, buzz(-20, 0.4), room_db));
        CHECK(ended > 7.4);
        CHECK(ended < 8.1);
        CHECK(std::fabs(listening.roomDb() - room_db) < (room_db < -72 ? 10 : 3));
        const CheckedTake checked = checkedTake(listening.take(), kGoat);
        CHECK(std::fabs(static_cast<double>(checked.spoken.size()) / kClipRate - 0.4) < 0.03);
        CHECK(listening.take().seconds() < 1.5);
    }
}

TEST_CASE("Hands-free: what is already known of the room need not be read again") {
    HandsFree listening(kClipRate, kGoat, -60);
    CHECK(listening.state() == State::waiting);
    const double ended = endedAfter(listening, spoken(0.1, buzz(-20, 0.4), -60));
    CHECK(ended > 0.5);
    CHECK(ended < 1.2);
}

TEST_CASE("Hands-free: a word's closure and a sentence's pause do not end it") {
    const Pcm said = buzz(-20, 0.3);
    HandsFree word(kClipRate, kGoat);
    CHECK(endedAfter(word, spoken(1, joined({said, silence(0.2), said}), -60)) > 1.8);
    HandsFree sentence(kClipRate, kSentence);
    CHECK(endedAfter(sentence, spoken(1, joined({said, silence(0.6), said}), -60)) > 2.2);
}

TEST_CASE("Hands-free: a click and a louder room begin nothing") {
    HandsFree listening(kClipRate, kGoat);
    Pcm sound = room(-60, 3);
    const Pcm click = tone(3000, -10, 0.008);
    std::copy(click.samples.begin(), click.samples.end(), sound.samples.begin() + 2 * kClipRate);
    CHECK(endedAfter(listening, sound) < 0);
    CHECK(listening.state() == State::waiting);
    CHECK(endedAfter(listening, room(-54, 20, 2)) < 0);
    CHECK(listening.state() == State::waiting);
    CHECK(listening.take().seconds() < 0.5);
}

TEST_CASE("Hands-free: speech that came while the room was read is not taken for the room") {
    HandsFree listening(kClipRate, kGoat);
    const Pcm said = spoken(0.1, buzz(-20, 0.3), -60);
    endedAfter(listening, said);
    CHECK(listening.state() == State::waiting);
    CHECK(listening.roomDb() < -55);
    CHECK(endedAfter(listening, spoken(0.5, buzz(-20, 0.4), -60)) > 0);
}

TEST_CASE("Hands-free: blocks of any size, no numbers among them, and a key that stops") {
    const Pcm said = spoken(1, buzz(-20, 0.4), -60);
    for (const std::size_t block : {std::size_t{1}, std::size_t{333}, std::size_t{48000}}) {
        HandsFree listening(kClipRate, kGoat);
        CHECK(endedAfter(listening, said, block) > 0);
    }
    HandsFree listening(kClipRate, kGoat);
    const std::vector<float> bad(48000, std::nanf(""));
    listening.feed(bad);
    CHECK(listening.state() == State::waiting);
    listening.stop();
    CHECK(listening.state() == State::ended);
    CHECK(std::isfinite(listening.take().samples.front()));
}

TEST_CASE("Hands-free: a noise that never ends is cut, and a recording is bounded") {
    HandsFree listening(kClipRate, kGoat);
    const double ended = endedAfter(listening, spoken(1, buzz(-20, 20), -60));
    CHECK(ended > 6.9);
    CHECK(ended < 7.2);
    Recording recording(48000, 1);
    CHECK(recording.add(silence(0.9).samples));
    CHECK_FALSE(recording.add(silence(0.9).samples));
    CHECK(recording.full());
    CHECK(recording.sound().seconds() == 1);
}
