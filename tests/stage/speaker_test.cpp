#include "game/stage/speaker.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

using namespace wrenlet::game;

namespace {

class ListedBank final : public ClipBank {
  public:
    std::shared_ptr<const Pcm> clip(std::string_view id) override {
        const auto at = clips.find(std::string(id));
        return at == clips.end() ? nullptr : std::make_shared<Pcm>(at->second);
    }
    std::map<std::string, Pcm> clips;
};

class CountedLock final : public SoundLock {
  public:
    void lock() override { ++depth, ++times; }
    void unlock() override { --depth; }
    int depth = 0, times = 0;
};

struct Stage {
    Mixer mixer;
    ListedBank bank;
    CountedLock lock;
    Speaker speaker{mixer, bank, lock};

    Stage() {
        bank.clips["word:hat"].samples.assign(24'000, 9000);  // 500 ms
        bank.clips["word:cat"].samples.assign(12'001, 9000);  // a sample more than 250 ms
    }
    std::vector<bool> heard(std::size_t milliseconds) {
        std::vector<bool> out;
        std::vector<std::int16_t> buffer(kSamplesPerMilli * 2);
        for (std::size_t i = 0; i < milliseconds; ++i) {
            mixer.mix(buffer.data(), kSamplesPerMilli);
            out.push_back(std::any_of(buffer.begin(), buffer.end(), [](auto s) { return s != 0; }));
        }
        return out;
    }
};

}  // namespace

TEST_CASE("speaker: it tells when each clip sounds, and so it does") {
    Stage stage;
    const Speech speech =
        stage.speaker.say({{"word:hat", 0}, {"word:cat", 120}, {"word:hat", 40}}, 7000);
    REQUIRE(speech.clips.size() == 3);
    CHECK(speech.clips[0].begin == 7000);
    CHECK(speech.clips[0].end == 7500);
    CHECK(speech.clips[1].begin == 7620);
    CHECK(speech.clips[1].end == 7871);
    CHECK(speech.clips[2].begin == 7910);
    CHECK(speech.end == 8411);
    CHECK(speech.at(6999) == -1);
    CHECK(speech.at(7000) == 0);
    CHECK(speech.at(7550) == -1);
    CHECK(speech.at(7700) == 1);
    CHECK(speech.at(8410) == 2);
    CHECK(speech.at(8411) == -1);

    const auto heard = stage.heard(1600);
    for (Millis i = 0; i < 1600; ++i) {
        CAPTURE(i);
        const bool edge = i == 870 || i == 1410;  // part of a millisecond sounds
        if (!edge) CHECK(heard[static_cast<std::size_t>(i)] == (speech.at(7000 + i) >= 0));
    }
}

TEST_CASE("speaker: a clip that the pack lacks is silence of 300 ms") {
    Stage stage;
    const Speech speech = stage.speaker.say({{"word:moth", 0}, {"word:hat", 100}}, 0);
    REQUIRE(speech.clips.size() == 2);
    CHECK(speech.clips[0].end == 300);
    CHECK(speech.clips[1].begin == 400);
    const auto heard = stage.heard(1000);
    CHECK_FALSE(heard[200]);
    CHECK(heard[400]);
    CHECK_FALSE(heard[900]);
}

TEST_CASE("speaker: what is said next, or a hush, ends what was being said") {
    Stage stage;
    stage.speaker.say({{"word:hat", 0}, {"word:hat", 0}}, 0);
    stage.heard(100);
    stage.speaker.say({{"word:cat", 0}}, 100);
    auto heard = stage.heard(900);
    CHECK(heard[200]);
    CHECK_FALSE(heard[260]);
    CHECK(stage.mixer.isQuiet());

    stage.speaker.say({{"word:hat", 0}}, 2000);
    stage.speaker.hush();
    heard = stage.heard(100);
    CHECK(std::none_of(heard.begin(), heard.end(), [](bool b) { return b; }));
}

TEST_CASE("speaker: a cue sounds beside the voice and every change is locked") {
    Stage stage;
    stage.speaker.cue("settle");
    stage.speaker.cue("no such sound");
    CHECK(stage.heard(20)[10]);
    stage.speaker.hush();
    CHECK(stage.heard(1)[0]);
    CHECK(stage.lock.times == 2);
    CHECK(stage.lock.depth == 0);
}

TEST_CASE("speaker: what is said waits until a cue has faded, and pauses are no longer for it") {
    Stage stage;
    const Millis fades = Cues().find("join")->fades_after;
    REQUIRE(fades > 100);
    stage.speaker.cue("join");
    Speech speech = stage.speaker.say({{"word:hat", 0}, {"word:cat", 120}}, 5000);
    CHECK(speech.clips[0].begin == 5000 + fades);
    CHECK(speech.clips[1].begin == speech.clips[0].end + 120);
    stage.heard(100);
    speech = stage.speaker.say({{"word:hat", 0}}, 5100);
    CHECK(speech.clips[0].begin == 5000 + fades);
    CHECK(stage.speaker.say({{"word:hat", 600}}, 5100).clips[0].begin == 5700);
    stage.heard(300);
    CHECK(stage.speaker.say({{"word:hat", 0}}, 5400).clips[0].begin == 5400);
}

TEST_CASE("speaker: a cue is softer while something is said, and nothing waits for it") {
    const auto most = [](bool speaks) {
        Stage stage;
        stage.bank.clips["word:hat"].samples.assign(24'000, 0);  // so that the cue alone is heard
        stage.bank.clips["word:hat"].samples[0] = 1;
        if (speaks) stage.speaker.say({{"word:hat", 0}}, 0);
        stage.speaker.cue("settle");
        if (speaks) CHECK(stage.speaker.say({{"word:hat", 0}}, 0).clips[0].begin == 0);
        std::vector<std::int16_t> buffer(2 * 4800);
        stage.mixer.mix(buffer.data(), 4800);
        return *std::max_element(buffer.begin(), buffer.end());
    };
    CHECK(most(true) <= most(false) / 2 + 2);
    CHECK(most(true) > 100);
}

TEST_CASE("speaker: an empty utterance ends at once") {
    Stage stage;
    const Speech speech = stage.speaker.say({}, 50);
    CHECK(speech.clips.empty());
    CHECK(speech.end == 50);
}
