// Recording hands-free: a microphone that plays prepared takes, and a unit that keeps them.
#include "editor/booth/booth.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "editor/voice/audio_file.hpp"
#include "editor/voice/loudness.hpp"
#include "tests/booth/prepared_microphone.hpp"
#include "tests/desk/library.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace {

using practice::samples::Folder;

constexpr int kRate = kClipRate;
/// A unit of a few words in a folder that is there, and its booth.
struct Studio {
    Folder folder;
    std::unique_ptr<OpenUnit> unit;
    PreparedMicrophone microphone;
    std::unique_ptr<Booth> booth;
    std::int64_t now_ms = 0;

    explicit Studio(const char* words = "cat, hat, dog") {
        auto made = OpenUnit::make(folder.path(), "Farm", library().bench);
        REQUIRE(made.ok());
        unit = std::move(made.value());
        unit->change([&](UnitAtWork& work) { work.add(words, "words", library().known); });
        unit->step(0);
        booth = std::make_unique<Booth>(
            *unit, Booth::Parts{&microphone, nullptr, library().at_once, nullptr, {}});
    }
    void run(double seconds) {
        for (int i = 0; i < int(seconds * 50); ++i) {
            now_ms += 20;
            unit->step(now_ms);
            booth->step(now_ms);
        }
    }
    /// As the demo voice says it, with a pause after it.
    void say(const pack::VoiceNeed& need, double gain = 1) {
        microphone.say(library().voice.say(need), gain);
        run(library().voice.say(need).seconds() + 1.2);
    }
    const pack::VoiceNeed& current() const { return booth->current()->need; }
    const pack::UnitRecording* recording(const std::string& clip) const {
        for (const auto& one : unit->unit().recordings)
            if (one.clip == clip) return &one;
        return nullptr;
    }
    void choose(const std::string& clip) {
        for (std::size_t i = 0; i < booth->queue().size(); ++i)
            if (booth->queue()[i].need.id == clip) return booth->choose(i);
        FAIL(clip << " is not in the queue");
    }
};

}  // namespace

TEST_CASE("Booth: three words are said without a key, and each is kept and the next comes") {
    Studio studio;
    studio.booth->goOn();
    studio.run(1);  // it hears the room
    CHECK(studio.booth->isReady());
    CHECK(studio.booth->roomDb() < -50);
    std::vector<std::string> said;
    for (int i = 0; i < 3; ++i) {
        const pack::VoiceNeed need = studio.current();
        REQUIRE(need.kind == pack::VoiceNeed::Kind::word);
        said.push_back(need.id);
        studio.say(need);
        REQUIRE_MESSAGE(studio.recording(need.id) != nullptr, need.id);
        CHECK(studio.current().id != need.id);
    }
    CHECK(studio.booth->hers() == 3);
    CHECK(studio.microphone.starts == 1);
    for (const std::string& clip : said) {
        const pack::UnitRecording& kept = *studio.recording(clip);
        // the take is on disk as it was heard, with the ends around what was said
        const auto take = readTake(studio.unit->folder().takes() / kept.take);
        REQUIRE(take.ok());
        CHECK(take.value().rate == kRate);
        CHECK(double(kept.to_us) / 1e6 <= take.value().seconds() + 1e-3);
        CHECK(kept.to_us - kept.from_us > 200'000);
    }
}

TEST_CASE("Booth: undo gives the demo voice back, and the take stays on disk") {
    Studio studio;
    studio.booth->goOn();
    studio.run(1);
    const pack::VoiceNeed need = studio.current();
    studio.say(need);
    REQUIRE(studio.recording(need.id) != nullptr);
    const auto file = studio.unit->folder().takes() / studio.recording(need.id)->take;
    studio.unit->change([](UnitAtWork& work) { work.undo(); });
    studio.run(0.1);
    CHECK(studio.recording(need.id) == nullptr);
    CHECK(studio.booth->hers() == 0);
    CHECK(std::filesystem::exists(file));
    studio.unit->change([](UnitAtWork& work) { work.redo(); });
    studio.run(0.1);
    CHECK(studio.booth->hers() == 1);
}

TEST_CASE("Booth: a take with something to tell waits, and is said again or kept as it is") {
    Studio studio;
    studio.booth->goOn();
    studio.run(1);
    const pack::VoiceNeed need = studio.current();
    // overdriven: the tops are cut
    Pcm loud = library().voice.say(need);
    for (float& sample : loud.samples) sample = std::clamp(sample * 12.f, -1.f, 1.f);
    studio.microphone.say(loud);
    studio.run(loud.seconds() + 1.2);
    CHECK(studio.recording(need.id) == nullptr);
    CHECK(studio.current().id == need.id);
    REQUIRE(studio.booth->lastTake() != nullptr);
    REQUIRE_FALSE(studio.booth->findings().empty());
    CHECK(studio.booth->findings().front().trouble == Trouble::clipped);
    CHECK(studio.booth->isReady());  // it just goes on listening
    SUBCASE("said again") {
        studio.say(need);
        REQUIRE(studio.recording(need.id) != nullptr);
        CHECK(studio.recording(need.id)->kept.empty());
        CHECK(studio.current().id != need.id);
    }
    SUBCASE("kept as it is") {
        studio.booth->keepAsItIs();
        studio.run(0.1);
        REQUIRE(studio.recording(need.id) != nullptr);
        CHECK(studio.recording(need.id)->kept == std::vector<std::string>{"clipped"});
        CHECK(studio.current().id != need.id);
    }
}

TEST_CASE("Booth: silence is no take, and nothing is heard while it is paused") {
    Studio studio;
    studio.booth->goOn();
    studio.run(4);
    CHECK(studio.booth->lastTake() == nullptr);
    CHECK(studio.booth->phase() == Booth::Phase::listening);
    studio.booth->pause();
    const pack::VoiceNeed need = studio.current();
    studio.say(need);
    CHECK(studio.recording(need.id) == nullptr);
    CHECK(studio.microphone.stops == 1);
}

TEST_CASE("Booth: a word whose sounds are changed is to be said again") {
    Studio studio;
    studio.booth->goOn();
    studio.run(1);
    studio.choose("word:cat");
    studio.say(studio.current());
    REQUIRE(studio.recording("word:cat") != nullptr);
    const auto& dog = library().known.classroom().word("dog")->sounds;
    studio.unit->change([&](UnitAtWork& work) { work.chooseSounds("cat", dog); });
    studio.run(0.1);
    for (const BoothEntry& entry : studio.booth->queue())
        if (entry.need.id == "word:cat") CHECK(entry.voice == BoothEntry::Voice::changed);
    CHECK(studio.booth->hers() == 0);
}

TEST_CASE("Booth: without a microphone it says so, and takes a file all the same") {
    Studio studio;
    studio.microphone.is_missing = true;
    studio.booth->goOn();
    CHECK(studio.booth->phase() == Booth::Phase::paused);
    REQUIRE(studio.booth->problems().size() == 1);
    CHECK(studio.booth->problems()[0].what == "No microphone found.");
    const pack::VoiceNeed need = studio.current();
    Pcm take = library().voice.say(need);
    take.samples.insert(take.samples.begin(), kRate / 3, 0.f);
    take.samples.insert(take.samples.end(), kRate / 3, 0.f);
    const auto flac = encodeFlac(take);
    REQUIRE(flac.ok());
    practice::samples::writeBytes(studio.folder / "mine.flac", flac.value());
    studio.booth->takeFile(studio.folder / "mine.flac");
    studio.run(0.1);
    CHECK(studio.recording(need.id) != nullptr);
    practice::samples::writeBytes(studio.folder / "none.wav", "RIFF and nothing");
    studio.booth->takeFile(studio.folder / "none.wav");
    CHECK_FALSE(studio.booth->problems().empty());
}

TEST_CASE("Booth: a folder that vanishes costs no take") {
    Studio studio;
    studio.booth->goOn();
    studio.run(1);
    std::filesystem::rename(studio.folder / "units", studio.folder / "pulled-out");
    const pack::VoiceNeed need = studio.current();
    studio.say(need);
    REQUIRE(studio.recording(need.id) != nullptr);
    const std::string name = studio.recording(need.id)->take;
    REQUIRE_FALSE(studio.booth->problems().empty());
    CHECK_FALSE(std::filesystem::exists(studio.unit->folder().takes() / name));
    // back again, it is written by itself; the saver made the unit's folder meanwhile
    std::filesystem::remove_all(studio.folder / "units");
    std::filesystem::rename(studio.folder / "pulled-out", studio.folder / "units");
    studio.run(3);
    CHECK(std::filesystem::exists(studio.unit->folder().takes() / name));
    CHECK(studio.booth->problems().empty());
}

TEST_CASE("Booth: a pack is built with her takes, brought to one loudness") {
    Studio studio;
    studio.booth->goOn();
    studio.run(1);
    studio.choose("word:cat");
    studio.say(studio.current(), 0.5);
    const pack::UnitRecording* kept = studio.recording("word:cat");
    REQUIRE(kept != nullptr);
    const pack::Unit& unit = studio.unit->unit();
    UnitMedia media(unit,
                    UnitPlaces::beside(studio.unit->folder().file(), library().bench.pictures),
                    {library().voice, 2});
    std::vector<pack::VoiceNeed> needs;
    for (const BoothEntry& entry : studio.booth->queue())
        if (entry.need.id == "word:cat" || entry.need.id == "word:hat") needs.push_back(entry.need);
    const auto clips = media.clips(needs, {});
    REQUIRE(clips.size() == 2);
    for (std::size_t i = 0; i < clips.size(); ++i) {
        const Result<pack::Clip>& clip = clips[i];
        REQUIRE(clip.ok());
        CHECK(clip.value().demo_voice == (needs[i].id == "word:hat"));
        if (needs[i].id == "word:cat")
            CHECK(clip.value().seconds ==
                  doctest::Approx(double(kept->to_us - kept->from_us) / 1e6).epsilon(0.02));
    }
}

}  // namespace wrenlet::desk
