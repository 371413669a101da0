// A teacher makes Monday's pack from pasted words to the tablet, by real keys and presses, with a
// microphone that plays prepared takes and the child's own program to try it; then a child plays
// it.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "content/pack/pack_file.hpp"
#include "tests/booth/prepared_microphone.hpp"
#include "tests/desk/library.hpp"
#include "tests/desk/prepared_game.hpp"
#include "tests/desk/seat.hpp"
#include "tests/practice/samples.hpp"
#include "tests/scenes/player.hpp"

namespace wrenlet::desk {

namespace {

using practice::samples::Folder;

constexpr const char* kForty =
    "pig\nhen\ngoat\nduck\ndog\nsheep\ncow\nfox\nfrohg\nrabbit\nmouse\nrat\ncat\nhat\nbat\nbox\nlog"
    "\n"
    "pen\nbee\ntree\nspider\nsnail\nnest\nsun\nmoon\nring\nking\nwing\nbow\nrainbow\nrain\ntrain\n"
    "boat\ncoat\nbear\nchair\npear\nspoon\nkey\ncup\nThe hen sat in the hay.\nIs the pig wet?\n";

/// Everything but a few skills is off, so that a pack is made in seconds.
const std::set<std::string> kSkillsOn = {"onset-rime.rhyme-sort", "phoneme.first", "phoneme.blend"};

OpenedClass roomIn(const std::filesystem::path& folder) {
    OpenedClass opened = demo::demoClass();
    opened.classroom.folder = folder;
    practice::samples::writeBytes(folder / "class.json", pack::writeClassList(opened.list));
    return opened;
}

struct Teacher {
    Folder folder;
    PreparedMicrophone microphone;
    PreparedGame game;
    Seat seat;

    Teacher()
        : seat(roomIn(folder.path()), 1280, 720, &library().bench,
               {&microphone, nullptr, &library().at_once, nullptr},
               {&library().at_once, ClipMaking{library().voice}}, trying()) {}

    Trying trying() {
        AtOnce* const now = &library().at_once;
        return {&game, now, now, now, now, ClipMaking{library().voice}, folder / "passing"};
    }

    OpenUnit& unit() { return *seat.window().unit(); }
    Booth& booth() { return *seat.window().booth(); }
    void listen(double seconds) {
        for (int i = 0; i < int(seconds * 50); ++i) seat.wait(20);
    }
    void say(const pack::VoiceNeed& need, double gain = 1) {
        Pcm sound = library().voice.say(need);
        for (float& sample : sound.samples) sample = std::clamp(sample * float(gain), -1.f, 1.f);
        microphone.say(sound);
        listen(sound.seconds() + 1.2);
    }
};

}  // namespace

TEST_CASE("A teacher pastes, mends, speaks, tries again, builds and hands out, and a child plays") {
    Teacher teacher;
    Seat& seat = teacher.seat;

    // the words
    seat.alt(Key::one);
    seat.click("unit title");
    seat.type("On the farm");
    seat.key(Key::enter);
    REQUIRE(seat.window().unit() != nullptr);
    seat.click("words box");
    seat.paste(kForty);
    seat.key(Key::enter);
    seat.frame();
    CHECK(teacher.unit().unit().words.size() == 40);
    CHECK(teacher.unit().unit().sentences.size() == 2);

    // what to look at, one after another by the next step
    const std::size_t to_look_at = teacher.unit().look().to_look_at;
    REQUIRE(to_look_at >= 3);
    int mended = 0;
    for (; teacher.unit().look().to_look_at > 0 && mended < 10; ++mended) {
        seat.ctrl(Key::enter);
        const std::string word = seat.window().words().in_hand.id;
        const WordLook* look = teacher.unit().look().word(word);
        REQUIRE(look != nullptr);
        REQUIRE_FALSE(look->to_look_at.empty());
        seat.click("way:" + look->to_look_at.front().code + ":0");
        seat.frame();
    }
    CHECK(mended >= 3);
    CHECK(teacher.unit().look().to_look_at == 0);
    for (const exercise::SkillRow& row : exercise::skillTable())
        if (kSkillsOn.count(std::string(row.id)) == 0)
            teacher.unit().change(
                [&](UnitAtWork& work) { work.turnSkill(std::string(row.id), true); });
    seat.frame();

    // her voice: Space begins, five words by themselves, the second one overdriven at first
    seat.alt(Key::two);
    REQUIRE(seat.window().place() == Place::booth);
    seat.key(Key::space);
    teacher.listen(1);
    std::vector<std::string> said;
    for (int i = 0; i < 5; ++i) {
        const pack::VoiceNeed need = teacher.booth().current()->need;
        if (i == 1) {
            teacher.say(need, 14);
            REQUIRE(teacher.booth().current()->need.id == need.id);
            REQUIRE_FALSE(teacher.booth().findings().empty());
            CHECK(seat.shows("hear take"));
        }
        teacher.say(need);
        REQUIRE(teacher.booth().current()->need.id != need.id);
        said.push_back(need.id);
    }
    seat.key(Key::space);
    CHECK(teacher.booth().phase() == Booth::Phase::paused);

    // a look at a question of each skill, one played, one left out
    seat.alt(Key::three);
    REQUIRE(seat.window().place() == Place::try_out);
    TryPlace& trial = *seat.window().tryOut();
    CHECK(trial.toTry() == kSkillsOn.size());
    for (std::size_t i = 0; i < kSkillsOn.size(); ++i) {
        seat.key(Key::enter);
        seat.frame();
        REQUIRE(trial.isStillNow());
        CHECK(std::filesystem::exists(trial.still()->png));
        CHECK_FALSE(trial.still()->said.empty());
    }
    CHECK(trial.tried() == kSkillsOn.size());
    REQUIRE(trial.count() > 3);
    seat.key(Key::space);
    CHECK(teacher.game.played == std::vector<std::string>{trial.item()->id});
    seat.key(Key::right);
    const std::string left_out = trial.item()->id;
    seat.key(Key::l);
    CHECK(seat.window().unit()->unit().items_off == std::vector<std::string>{left_out});

    // the pack
    seat.alt(Key::four);
    REQUIRE(seat.window().place() == Place::hand_out);
    seat.ctrl(Key::enter);
    seat.frame();
    HandOutPlace& place = *seat.window().handOut();
    REQUIRE(place.built() != nullptr);
    REQUIRE(place.built()->isGood());
    CHECK(place.built()->version == 1);
    CHECK(place.built()->clips - place.built()->clips_demo == said.size());
    seat.ctrl(Key::enter);
    CHECK(place.problems().empty());
    CHECK(place.handedOut() == "on-the-farm-1.zip");
    const pack::Classroom classroom{teacher.folder.path()};
    const auto list = pack::openClassList(classroom);
    REQUIRE(list.ok());
    CHECK(list.value().pack == "on-the-farm-1.zip");
    CHECK(list.value().children == demo::classList().children);

    // on the tablet
    const auto handed = pack::readPackFile(classroom.packFile(list.value().pack));
    REQUIRE(handed.ok());
    for (const pack::Clip& clip : handed.value().clips)
        CHECK(clip.demo_voice == (std::find(said.begin(), said.end(), clip.id) == said.end()));
    std::set<std::string> skills;
    for (const exercise::Item& item : handed.value().items)
        skills.insert(std::string(exercise::rowOf(item.skill).id));
    CHECK(skills == kSkillsOn);
    CHECK(handed.value().item(left_out) == nullptr);
    CHECK(handed.value().item(teacher.game.played.front()) != nullptr);
    fixtures::Player child(teacher.folder / "tablet.db", 1, 7, {}, 3, handed.value());
    child.playRightUntil("ending");
    CHECK(child.store().all().size() > 5);

    // one word more makes pack 2, and she can go back to the first
    seat.alt(Key::one);
    seat.click("words box");
    seat.type("ham");
    seat.key(Key::enter);
    seat.frame();
    CHECK(place.built() == nullptr);
    place.build();
    seat.frame();
    REQUIRE(place.built() != nullptr);
    CHECK(place.built()->version == 2);
    REQUIRE(place.built()->changes.has_value());
    CHECK(place.built()->changes->words_new == std::vector<std::string>{"ham"});
    CHECK(place.built()->changes->clips_hers_new == 0);
    place.handOut();
    CHECK(pack::openClassList(classroom).value().pack == "on-the-farm-2.zip");
    seat.alt(Key::four);
    seat.click("back:1");
    CHECK(pack::openClassList(classroom).value().pack == "on-the-farm-1.zip");
}

TEST_CASE("Space begins in the booth right after words were typed") {
    Teacher teacher;
    Seat& seat = teacher.seat;
    seat.window().makeUnit("On the farm");
    seat.frame();
    seat.click("words box");
    seat.type("pig, hen");
    seat.key(Key::enter);
    seat.alt(Key::two);
    seat.key(Key::space);
    CHECK(teacher.booth().phase() == Booth::Phase::listening);
}

TEST_CASE("A pack that cannot be written is told, and what was out stays out") {
    const Folder folder;
    OpenedClass opened = roomIn(folder.path());
    const pack::Classroom classroom = opened.classroom;
    BuiltPack built;
    built.file = "reeds-1.zip";
    built.bytes = "PK";
    std::filesystem::create_directories(classroom.packs());
    REQUIRE(handOut(built, classroom).ok());
    CHECK_FALSE(handOut(built, classroom).ok());  // never over one that is out
    built.file = "reeds-2.zip";
    practice::samples::writeBytes(classroom.classFile(), "{ broken");
    CHECK_FALSE(handOut(built, classroom).ok());
    CHECK(practice::samples::fileBytes(classroom.classFile()) == "{ broken");
    CHECK_FALSE(goBackTo("reeds-1.zip", classroom).ok());  // it is no pack
    std::filesystem::rename(folder.path(), folder.path().string() + "-gone");
    const auto gone = handOut(built, classroom);
    REQUIRE_FALSE(gone.ok());
    CHECK(gone.problems()[0].what == "The classroom folder is not there.");
    std::filesystem::rename(folder.path().string() + "-gone", folder.path());
}

TEST_CASE("A build that is stopped gives nothing, and packs are found by their numbers") {
    const Folder folder;
    const pack::Classroom classroom{folder.path()};
    std::filesystem::create_directories(classroom.packs());
    for (const char* name :
         {"farm-2.zip", "farm-10.zip", "farm-x.zip", "farmyard-3.zip", "farm-0.zip"})
        practice::samples::writeBytes(classroom.packFile(name), "PK");
    const auto packs = packsOf(classroom, "farm");
    REQUIRE(packs.size() == 2);
    CHECK(packs[0].version == 10);
    CHECK(packs[1].name == "farm-2.zip");
    UnitAtWork work{pack::Unit{}};
    work.add("cat hat", "words", library().known);
    pack::Unit unit = work.unit();
    unit.id = "farm";
    BuildProgress progress;
    progress.stop = true;
    CHECK_FALSE(buildNext(
        {unit, UnitPlaces::beside(folder / "unit.json", library().bench.pictures), classroom},
        library().known.lexicon(), library().blocked, {library().voice}, progress));
}

}  // namespace wrenlet::desk
