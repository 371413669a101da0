// What another teacher made is brought into a unit: seen, chosen, taken in one step, taken back.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "content/exercise/skill.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/bring/bring_in.hpp"
#include "editor/bring/bring_place.hpp"
#include "editor/handout/pack_build.hpp"
#include "editor/handout/stick.hpp"
#include "editor/voice/audio_file.hpp"
#include "tests/desk/library.hpp"
#include "tests/desk/seat.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace fs = std::filesystem;

namespace {

using practice::samples::fileBytes;
using practice::samples::Folder;
using Kind = BroughtLine::Kind;

void writeBytes(const fs::path& path, const std::string& bytes) {
    fs::create_directories(path.parent_path());
    practice::samples::writeBytes(path, bytes);
}

constexpr const char* kDrawing =
    "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><rect width=\"9\" "
    "height=\"9\"/></svg>";

/// Another teacher's unit: pig with a picture of her own and in her own voice, cat said another
/// way, a sentence in her voice.
fs::path theirs(const fs::path& classroom) {
    UnitAtWork work{pack::Unit{}};
    work.add("pig; cat; hat; The pig sat.", "words", library().known);
    work.choosePicture("pig", "own-hers");
    work.chooseSounds("cat", {{speech::Phoneme::k},
                              {speech::Phoneme::aa, speech::Stress::primary},
                              {speech::Phoneme::t}});
    for (const exercise::SkillRow& row : exercise::skillTable())
        if (row.id != "onset-rime.rhyme-sort" && row.id != "phoneme.blend" &&
            row.id != "sentence.count")
            work.turnSkill(std::string(row.id), true);
    pack::Unit unit = work.unit();
    unit.id = "theirs";
    unit.title = "Their farm";
    const fs::path folder = classroom / "units" / "theirs";
    const auto record = [&](const std::string& clip, const pack::VoiceNeed& need) {
        const Pcm said = library().voice.say(need);
        const std::string name = "take-000" + std::to_string(unit.recordings.size() + 1) + ".flac";
        writeBytes(folder / "takes" / name, encodeFlac(said).value());
        unit.recordings.push_back(
            {clip, name, saidFor(need), 0, static_cast<std::int64_t>(said.seconds() * 1e6), {}});
    };
    const KnownWord pig = library().known.find("pig").value();
    record("sentence:s-1", {"sentence:s-1", "The pig sat.", {}, pack::VoiceNeed::Kind::sentence});
    record("word:pig", {"word:pig", "pig", pig.sounds});
    writeBytes(folder / "pictures" / "own-hers.svg", kDrawing);
    writeBytes(folder / "unit.json", pack::writeUnit(inOrder(unit)));
    return folder;
}

struct Room {
    Folder folder;
    std::unique_ptr<OpenUnit> unit;

    Room() {
        auto made = OpenUnit::make(folder.path(), "Mine", library().bench);
        REQUIRE(made.ok());
        unit = std::move(made.value());
        unit->change(
            [](UnitAtWork& work) { work.add("cat; dog; A dog ran.", "words", library().known); });
        unit->finish(0);
    }
    const BroughtLine* line(const BringPlace& place, Kind kind, const std::string& id) {
        for (const BroughtLine& one : place.lines)
            if (one.kind == kind && one.id == id) return &one;
        return nullptr;
    }
    const pack::UnitRecording* recording(const std::string& clip) {
        for (const pack::UnitRecording& one : unit->unit().recordings)
            if (one.clip == clip) return &one;
        return nullptr;
    }
};

/// Their unit as the pack that was handed out.
fs::path theirPack(const fs::path& classroom) {
    const fs::path folder = theirs(classroom);
    const pack::Classroom room{classroom};
    writeBytes(room.classFile(), pack::writeClassList({}));
    BuildProgress progress;
    const auto built =
        buildNext({pack::readUnit(fileBytes(folder / "unit.json"), "u").value(),
                   UnitPlaces::beside(folder / "unit.json", library().bench.pictures), room},
                  library().known.lexicon(), library().blocked, {library().voice}, progress);
    REQUIRE(built);
    REQUIRE(built->isGood());
    REQUIRE(handOut(*built, room).ok());
    return room.packFile(built->file);
}

}  // namespace

TEST_CASE("Bring in: what another's unit holds is told, by what is new and what is other") {
    Room room;
    const Folder other;
    BringPlace place;
    place.openFile(theirs(other.path()), *room.unit);
    REQUIRE(place.brought);
    CHECK(place.problems.empty());
    REQUIRE(room.line(place, Kind::word, "pig") != nullptr);
    CHECK(room.line(place, Kind::word, "pig")->is_taken);
    CHECK(room.line(place, Kind::word, "hat") != nullptr);
    CHECK(room.line(place, Kind::word, "cat") == nullptr);
    const BroughtLine* sounds = room.line(place, Kind::sounds, "cat");
    REQUIRE(sounds != nullptr);
    CHECK_FALSE(sounds->is_taken);
    CHECK(sounds->says.find("there, /k\u00e6t/ here") != std::string::npos);
    CHECK(room.line(place, Kind::sentence, "s-1")->label == "The pig sat.");
    CHECK(room.line(place, Kind::recording, "word:pig")->is_new);
}

TEST_CASE("Bring in: all that is chosen comes in one step, with pictures and whose voice it is") {
    Room room;
    const Folder other;
    const fs::path there = theirs(other.path());
    const std::string before = pack::writeUnit(room.unit->unit());
    BringPlace place;
    place.openFile(there, *room.unit);
    place.whose = " Ms  Field ";
    place.chooseAll();
    place.take(*room.unit);
    CHECK(place.problems.empty());
    const pack::UnitWord* pig = room.unit->work().word("pig");
    REQUIRE(pig != nullptr);
    CHECK(pig->picture.rfind("own-", 0) == 0);
    CHECK(fileBytes(room.unit->folder().pictures() / (pig->picture + ".svg")) == kDrawing);
    CHECK(room.unit->work().word("cat")->sounds.size() == 3);
    const pack::UnitRecording* said = room.recording("word:pig");
    REQUIRE(said != nullptr);
    CHECK(said->voice == "Ms Field");
    CHECK(fileBytes(room.unit->folder().takes() / said->take) ==
          fileBytes(there / "takes" / "take-0002.flac"));
    // their sentence has the id of another one here, and its recording follows it
    const auto& sentences = room.unit->unit().sentences;
    REQUIRE(sentences.size() == 2);
    CHECK(sentences[1].text == "The pig sat.");
    CHECK(sentences[1].id != sentences[0].id);
    CHECK(room.recording("sentence:" + sentences[1].id) != nullptr);
    CHECK(room.recording("sentence:s-1") == nullptr);
    // what is on disk reads back, and one undo takes all of it back
    const auto read = pack::readUnit(pack::writeUnit(room.unit->unit()), "unit.json");
    REQUIRE(read.ok());
    CHECK(read.problems().empty());
    CHECK(inOrder(read.value()).recordings == room.unit->unit().recordings);
    room.unit->change([](UnitAtWork& work) { work.undo(); });
    CHECK(pack::writeUnit(room.unit->unit()) == before);
    room.unit->change([](UnitAtWork& work) { work.redo(); });
    place.openFile(there, *room.unit);
    for (const BroughtLine& line : place.lines) CHECK_FALSE(line.is_new);
}

TEST_CASE(
    "Bring in: a pack that was handed out gives its words and her clips, not the demo voice") {
    Room room;
    const Folder other;
    BringPlace place;
    place.openFile(theirPack(other.path()), *room.unit);
    REQUIRE(place.brought);
    std::set<std::string> clips;
    for (const BroughtRecording& one : place.brought->recordings) clips.insert(one.clip);
    CHECK(clips == std::set<std::string>{"sentence:s-1", "word:pig"});
    place.chooseNew();
    place.take(*room.unit);
    CHECK(place.problems.empty());
    REQUIRE(room.recording("word:pig") != nullptr);
    CHECK(room.recording("word:pig")->voice == "from Their farm");
    const pack::UnitWord* pig = room.unit->work().word("pig");
    CHECK(fileBytes(room.unit->folder().pictures() / (pig->picture + ".svg")) == kDrawing);
    // and it is heard in the next pack of this unit
    UnitMedia media(room.unit->unit(),
                    UnitPlaces::beside(room.unit->folder().file(), library().bench.pictures),
                    {library().voice});
    const pack::VoiceNeed need{"word:pig", "pig", library().known.find("pig").value().sounds};
    const auto clips_made = media.clips({&need, 1}, {});
    REQUIRE(clips_made.size() == 1);
    REQUIRE(clips_made[0].ok());
    CHECK_FALSE(clips_made[0].value().demo_voice);
    // whose voice it is goes on into that pack, and so to whoever brings it in next
    BuildProgress progress;
    const auto built =
        buildNext({room.unit->unit(),
                   UnitPlaces::beside(room.unit->folder().file(), library().bench.pictures),
                   pack::Classroom{other.path()}},
                  library().known.lexicon(), library().blocked, {library().voice}, progress);
    REQUIRE(built);
    const fs::path next = other.path() / "next.zip";
    writeBytes(next, built->bytes);
    const auto brought = openBrought(next, library().known.lexicon());
    REQUIRE(brought.ok());
    REQUIRE_FALSE(brought.value().recordings.empty());
    for (const BroughtRecording& one : brought.value().recordings)
        CHECK(one.whose == "from Their farm");
}

TEST_CASE("Bring in: single things are left out, and what is here already is not offered") {
    Room room;
    const Folder other;
    BringPlace place;
    place.openFile(theirs(other.path()), *room.unit);
    place.chooseNone();
    CHECK(place.chosen() == 0);
    place.take(*room.unit);
    CHECK(room.unit->work().word("pig") == nullptr);
    for (std::size_t i = 0; i < place.lines.size(); ++i)
        if (place.lines[i].kind == Kind::word && place.lines[i].id == "hat") place.turn(i);
    place.take(*room.unit);
    CHECK(room.unit->work().word("hat") != nullptr);
    CHECK(room.unit->work().word("pig") == nullptr);
    CHECK(room.unit->unit().recordings.empty());
    place.openFile(theirs(other.path()), *room.unit);
    CHECK(room.line(place, Kind::word, "hat") == nullptr);
}

TEST_CASE("Bring in: what is no pack, is cut short or lies in a folder that is gone is told") {
    Room room;
    const Folder other;
    BringPlace place;
    const auto told = [&](const fs::path& path) {
        place.openFile(path, *room.unit);
        return !place.brought && anyError(place.problems);
    };
    CHECK(told(other / "gone.zip"));
    CHECK(told(other.path()));
    writeBytes(other / "words.zip", "PK no zip at all");
    CHECK(told(other / "words.zip"));
    const fs::path there = theirs(other.path());
    const std::string unit = fileBytes(there / "unit.json");
    writeBytes(there / "unit.json", unit.substr(0, unit.size() / 2));
    CHECK(told(there));
    writeBytes(there / "unit.json", unit);
    // a recording that is none, found when it is taken: nothing is changed, nothing left behind
    writeBytes(there / "takes" / "take-0002.flac", "no sound");
    const std::string before = pack::writeUnit(room.unit->unit());
    place.openFile(there, *room.unit);
    place.chooseAll();
    place.take(*room.unit);
    CHECK(anyError(place.problems));
    CHECK(pack::writeUnit(room.unit->unit()) == before);
    CHECK(listFiles(room.unit->folder().takes(), ".flac").empty());
    CHECK(listFiles(room.unit->folder().pictures(), ".svg").empty());
    // a recording that is gone costs the rest nothing
    fs::remove(there / "takes" / "take-0002.flac");
    place.openFile(there, *room.unit);
    REQUIRE(place.brought);
    CHECK(place.problems.size() == 1);
    // the stick with this unit is pulled out meanwhile
    fs::rename(room.folder.path(), room.folder.path().string() + "-out");
    place.chooseAll();
    place.take(*room.unit);
    CHECK(place.problems.at(0).what == "The unit's folder is not there.");
    CHECK(pack::writeUnit(room.unit->unit()) == before);
    CHECK_FALSE(fs::exists(room.folder.path()));
    fs::rename(room.folder.path().string() + "-out", room.folder.path());
}

TEST_CASE(
    "Bring in: a pack whose bytes were changed anywhere gives a word about it or a whole pack") {
    Room room;
    const Folder other;
    const std::string good = fileBytes(theirPack(other.path()));
    Random random(11);
    int refused = 0;
    for (int i = 0; i < 60; ++i) {
        std::string bad = good;
        if (i % 3 == 0) bad.resize(random.below(static_cast<std::uint32_t>(good.size())));
        for (int j = 0; j < 8 && !bad.empty(); ++j)
            bad[random.below(static_cast<std::uint32_t>(bad.size()))] =
                static_cast<char>(random.below(256));
        writeBytes(other / "bad.zip", bad);
        BringPlace place;
        place.openFile(other / "bad.zip", *room.unit);
        refused += !place.brought;
        CHECK((place.brought.has_value() || anyError(place.problems)));
    }
    CHECK(refused > 30);
}

TEST_CASE("Bring in: dropped on the window, chosen by keys, taken by the next step, taken back") {
    const Folder folder, other;
    const fs::path there = theirs(other.path());
    OpenedClass opened = demo::demoClass();
    opened.classroom.folder = folder.path();
    Seat seat(opened, 1280, 720, &library().bench);
    seat.window().makeUnit("Mine");
    seat.window().words().typed = "cat, dog";
    seat.window().words().add(*seat.window().unit());
    seat.window().drop(there);
    seat.frame();
    REQUIRE(seat.shows("line:word:pig"));
    const std::size_t chosen = seat.window().bring().chosen();
    seat.key(Key::space);
    CHECK(seat.window().bring().chosen() == chosen - 1);
    seat.key(Key::space);
    seat.click("whose voice");
    seat.type("Ms Field");
    seat.ctrl(Key::enter);
    CHECK(seat.window().unit()->work().word("pig") != nullptr);
    CHECK(seat.window().unit()->unit().recordings.at(0).voice == "Ms Field");
    CHECK_FALSE(seat.window().bring().open);
    seat.ctrl(Key::z);
    CHECK(seat.window().unit()->work().word("pig") == nullptr);
    // the path typed does the same, and Escape leads back
    seat.click("bring in");
    seat.click("brought path");
    seat.type(there.string());
    seat.key(Key::enter);
    seat.frame();
    REQUIRE(seat.shows("line:word:pig"));
    seat.click("choose: none");
    CHECK(seat.window().bring().chosen() == 0);
    seat.key(Key::escape);
    CHECK_FALSE(seat.window().bring().open);
}

TEST_CASE("Stick: a pack that is out is copied, into a plain folder and into a classroom folder") {
    const Folder folder, stick;
    const pack::Classroom room{folder.path()};
    writeBytes(room.packFile("farm-1.zip"), "PK bytes");
    const auto plain = copyToStick(room, "farm-1.zip", stick.path());
    REQUIRE(plain.ok());
    CHECK(fileBytes(stick / "farm-1.zip") == "PK bytes");
    CHECK(copyToStick(room, "farm-1.zip", stick.path()).value() == "farm-1.zip was there already.");
    pack::ClassList list;
    list.title = "Next door";
    list.children = {{"c-1", "Ada", "badge-01", {}}};
    writeBytes(stick / "class.json", pack::writeClassList(list));
    REQUIRE(copyToStick(room, "farm-1.zip", stick.path()).ok());
    CHECK(fileBytes(stick / "packs" / "farm-1.zip") == "PK bytes");
    CHECK(pack::openClassList({stick.path()}).value().pack == "farm-1.zip");
    CHECK(pack::openClassList({stick.path()}).value().children == list.children);
}

TEST_CASE("Stick: a full disk, a folder that is gone and another pack of the name change nothing") {
    const Folder folder, stick;
    const pack::Classroom room{folder.path()};
    writeBytes(room.packFile("farm-1.zip"), std::string(2'200'000, 'x'));
    const auto full = copyToStick(room, "farm-1.zip", stick.path(),
                                  [](const fs::path&) { return std::uint64_t{400'000}; });
    REQUIRE_FALSE(full.ok());
    CHECK(full.problems()[0].what ==
          "There is too little room: farm-1.zip needs 2.3 MB, 0.4 MB are free.");
    CHECK(fs::is_empty(stick.path()));
    CHECK_FALSE(copyToStick(room, "farm-1.zip", stick / "gone").ok());
    writeBytes(stick / "farm-1.zip", "another");
    CHECK(copyToStick(room, "farm-1.zip", stick.path()).problems().at(0).what ==
          "Another pack of this name is there already.");
    CHECK(fileBytes(stick / "farm-1.zip") == "another");
    CHECK_FALSE(copyToStick(room, "farm-2.zip", stick.path()).ok());  // is not out
    CHECK(fileBytes(room.packFile("farm-1.zip")).size() == 2'200'000);
    CHECK(freeBytesOf(stick.path()).value_or(0) > 0);
}

}  // namespace wrenlet::desk
