#include "tests/heard/overheard.hpp"

#include <doctest/doctest.h>

#include "game/sdl/script_run.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::heard {

using game::Millis;

namespace {

/// Notes what is said, and lets it be said.
class NotingVoice final : public game::Voice {
  public:
    NotingVoice(game::Speaker& speaker, Overheard& notes) : speaker_(speaker), notes_(notes) {}

    game::Speech say(const game::Utterance& utterance, Millis now) override {
        notes_.said.push_back({notes_.recording.size(), utterance});
        return speaker_.say(utterance, now);
    }
    void hush() override {
        notes_.said.push_back({notes_.recording.size(), {}});
        speaker_.hush();
    }
    void cue(std::string_view name) override {
        notes_.cues.push_back({notes_.recording.size(), std::string(name)});
        speaker_.cue(name);
    }
    void setVolume(float volume) override { speaker_.setVolume(volume); }
    std::string trouble() const override { return ""; }

  private:
    game::Speaker& speaker_;
    Overheard& notes_;
};

}  // namespace

Overheard overhear(exercise::Skill skill, const game::Tape& tape) {
    constexpr std::size_t kFrame = game::kSampleRate / 60;
    const practice::samples::Folder folder;
    std::filesystem::copy(WRENLET_TEST_STARTER, folder / "classroom",
                          std::filesystem::copy_options::recursive);
    auto opened = game::openClassroom({folder / "classroom"}, {folder / "tablet"}, 1);
    REQUIRE(opened.ok());
    pack::Pack& pack = opened.value().pack;
    std::erase_if(pack.items, [&](const auto& item) { return item.skill != skill; });

    Overheard notes;
    game::Mixer mixer;
    game::SoundDevice device(mixer);
    device.open(game::SoundDevice::Use::decode_only);
    game::DecodedClips clips(pack, [] {});
    game::Speaker speaker(mixer, clips, device);
    NotingVoice voice(speaker, notes);
    game::ScriptClock clock;
    const practice::PracticeScheduler scheduler;
    game::AppOptions options;
    options.seed = tape.seed;
    game::App app(
        {opened.value().list, pack, opened.value().store, scheduler, voice, clock, {}, {}}, options,
        {tape.width, tape.height, 0});
    game::ScriptedChild child(tape);
    std::vector<std::int16_t> stereo(2 * kFrame);
    for (std::int64_t step = 0; step < tape.most_minutes * 60 * 60 && !child.isDone(app); ++step) {
        clock.now = step * 1000 / 60;
        for (const game::Contact& contact : child.tick(app, clock.now))
            app.touch(contact, clock.now);
        app.step(clock.now);
        mixer.mix(stereo.data(), kFrame);
        for (std::size_t i = 0; i < kFrame; ++i) {
            notes.recording.push_back(stereo[2 * i]);
            if (stereo[2 * i] != stereo[2 * i + 1]) notes.sides_alike = false;
        }
    }
    for (const Said& said : notes.said)
        for (const game::Spoken& spoken : said.words)
            if (const auto pcm = clips.clip(spoken.clip))
                notes.clips[spoken.clip] = pcm->samples;
    notes.answers = opened.value().store.all().size();
    return notes;
}

}  // namespace wrenlet::heard
