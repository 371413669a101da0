// A teacher meets her unit's questions as a child does, by real keys and presses.
#include <doctest/doctest.h>

#include <set>

#include "content/common/files.hpp"
#include "editor/tryout/question_words.hpp"
#include "editor/tryout/tried.hpp"
#include "tests/desk/demo_class.hpp"
#include "tests/desk/library.hpp"
#include "tests/desk/prepared_game.hpp"
#include "tests/desk/seat.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace {

class NotedSpeaker final : public Speaker {
  public:
    void play(const std::vector<float>& samples, int) override {
        lengths.push_back(samples.size());
    }
    bool isPlaying() const override { return false; }
    std::vector<std::size_t> lengths;
};

struct Room {
    practice::samples::Folder folder;
    PreparedGame game;
    NotedSpeaker speaker;
    Seat seat;

    Room()
        : seat(classIn(folder.path()), 1280, 720, &library().bench,
               {nullptr, &speaker, &library().at_once, nullptr}, {}, trying()) {}

    Trying trying() {
        AtOnce* const now = &library().at_once;
        return {&game, now, now, now, now, ClipMaking{library().voice}, folder / "passing"};
    }
    static OpenedClass classIn(const std::filesystem::path& path) {
        OpenedClass opened = demo::demoClass();
        opened.classroom.folder = path;
        return opened;
    }
    void begin(const std::string& words) {
        seat.window().makeUnit("On the farm");
        seat.window().words().typed = words;
        seat.window().words().add(*seat.window().unit());
        seat.alt(Key::three);
        seat.frame();
        REQUIRE(seat.window().place() == Place::try_out);
    }
    TryPlace& place() { return *seat.window().tryOut(); }
    OpenUnit& unit() { return *seat.window().unit(); }
    void toSkill(const std::string& id) {
        const auto& skills = unit().look().skills;
        for (std::size_t i = 0; i < skills.size(); ++i)
            if (exercise::rowOf(skills[i].skill).id == id) place().chooseSkill(i);
        REQUIRE(exercise::rowOf(place().skillLook()->skill).id == id);
        seat.frame();
        seat.frame();
        seat.frame();
    }
    bool isAsked(const std::string& item) {
        const auto& items = unit().look().items;
        return std::any_of(items.begin(), items.end(),
                           [&](const exercise::Item& one) { return one.id == item; });
    }
};

constexpr const char* kWords =
    "cat hat bat pig hen pen dog log sun moon bee tree rainbow rain bow; The hen sat in the hay.";

}  // namespace

TEST_CASE("Try out: the place says what to do before there is anything to try") {
    Room room;
    room.seat.alt(Key::three);
    CHECK_FALSE(room.seat.shows("tablet"));
    room.begin("");
    CHECK_FALSE(room.seat.shows("tablet"));
    CHECK_FALSE(room.seat.shows("play it"));
}

TEST_CASE("Try out: a question is drawn by the game itself, and what it says is told") {
    Room room;
    room.begin(kWords);
    room.toSkill("phoneme.blend");
    REQUIRE(room.seat.shows("tablet"));
    REQUIRE(room.place().isStillNow());
    const ShownStill& still = *room.place().still();
    CHECK(std::filesystem::exists(still.png));
    const Area glass = room.seat.where("tablet");
    CHECK(still.width == int(std::lround(glass.width)));
    CHECK(still.height == int(std::lround(glass.height)));
    REQUIRE(still.said.size() >= 3);
    CHECK(still.said.front().need.id == "phrase:join.ask");
    CHECK(still.said[1].need.id.substr(0, 6) == "sound:");
    CHECK(room.place().tried() >= 1);
    // one picture a question, however many frames
    const int stills = room.game.stills;
    for (int i = 0; i < 20; ++i) room.seat.frame();
    CHECK(room.game.stills == stills);
    room.seat.key(Key::right);
    CHECK(room.game.stills == stills + 1);
    CHECK(room.place().index() == 1);
    CHECK(room.place().isStillNow());
    CHECK_FALSE(std::filesystem::exists(still.png.parent_path() / "still-1.png"));
}

TEST_CASE("Try out: the prompt is heard whole, and each clip of it by itself") {
    Room room;
    room.begin(kWords);
    room.toSkill("phoneme.blend");
    room.seat.key(Key::h);
    REQUIRE(room.speaker.lengths.size() == 1);
    room.seat.click("hear:1");
    REQUIRE(room.speaker.lengths.size() == 2);
    CHECK(room.speaker.lengths[1] > 0);
    CHECK(room.speaker.lengths[1] * 2 < room.speaker.lengths[0]);
}

TEST_CASE(
    "Try out: the skills that were tried are known after another start, whatever the file holds") {
    Room room;
    room.begin(kWords);
    room.toSkill("phoneme.blend");
    const std::size_t tried = room.place().tried();
    REQUIRE(tried >= 1);
    const std::filesystem::path folder = room.unit().folder().folder;
    const auto again = [&] {
        room.seat.window().openUnit(folder);
        room.seat.frame();
        return room.place().tried();
    };
    CHECK(openTried(folder / "tried.json").size() == tried);  // a crash now would lose none
    room.seat.window().makeUnit("Another");                   // lets the first one go
    CHECK(again() == tried);
    for (const char* broken : {"", "no JSON", "{\"format\": \"wrenlet unit\"}",
                               "{\"format\": \"wrenlet tried\", \"format_version\": 1, "
                               "\"skills\": [\"no.skill\", 3]}"}) {
        room.seat.window().makeUnit("Another");
        REQUIRE(writeWhole(folder / "tried.json", broken).ok());
        CHECK(again() == 0);
    }
}

TEST_CASE("Try out: with single letters off H is no key, and no button shows it") {
    Room room;
    room.begin(kWords);
    room.toSkill("phoneme.blend");
    room.seat.window().settings().set({100, true, false, "", ""});
    room.seat.key(Key::h);
    CHECK(room.speaker.lengths.empty());
    room.seat.click("hear it");
    CHECK(room.speaker.lengths.size() == 1);
}

TEST_CASE("Try out: Space plays the question in the game, on the pack that the desk made of it") {
    Room room;
    room.begin(kWords);
    for (const char* skill : {"onset-rime.rhyme-sort", "phoneme.blend", "sentence.count",
                              "phoneme.segment", "phoneme.first", "compound.delete"}) {
        room.toSkill(skill);
        REQUIRE(room.place().item() != nullptr);
        room.seat.key(Key::space);
        REQUIRE_FALSE(room.game.played.empty());
        CHECK(room.game.played.back() == room.place().item()->id);
        CHECK(room.place().problems().empty());
    }
}

TEST_CASE("Try out: a question is left out and asked again, and undo takes either back") {
    Room room;
    room.begin(kWords);
    room.toSkill("phoneme.blend");
    room.seat.key(Key::right);
    const std::string id = room.place().item()->id;
    const std::size_t before = room.place().skillLook()->items, count = room.place().count();
    room.seat.key(Key::l);
    CHECK(room.unit().unit().items_off == std::vector<std::string>{id});
    CHECK_FALSE(room.isAsked(id));
    CHECK(room.place().skillLook()->items == before - 1);
    // it stands where it stood, to be asked again
    CHECK(room.place().count() == count);
    CHECK(room.place().item()->id == id);
    room.seat.click("leave out");
    CHECK(room.unit().unit().items_off.empty());
    CHECK(room.isAsked(id));
    room.seat.ctrl(Key::z);
    CHECK(room.unit().unit().items_off.size() == 1);
    room.seat.ctrl(Key::z);
    CHECK(room.unit().unit().items_off.empty());
}

TEST_CASE("Try out: questions left out keep their places among the others") {
    Room room;
    room.begin(kWords);
    room.toSkill("phoneme.blend");
    std::vector<std::string> all;
    for (std::size_t i = 0; i < room.place().count(); ++i) all.push_back(room.place().at(i).id);
    REQUIRE(all.size() > 4);
    for (const std::size_t off : {std::size_t{0}, std::size_t{1}, all.size() - 1}) {
        room.place().choose(off);
        room.place().leaveOut();
        room.seat.frame();
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        CHECK(room.place().at(i).id == all[i]);
        CHECK(room.place().isLeftOut(room.place().at(i)) == (i < 2 || i + 1 == all.size()));
    }
}

TEST_CASE("Try out: the next step leads through every skill that gives something") {
    Room room;
    room.begin(kWords);
    const std::size_t all = room.place().toTry();
    REQUIRE(all > 10);
    for (std::size_t i = 0; i < all + 2 && room.place().tried() < all; ++i) {
        room.seat.key(Key::enter);
        room.seat.frame();
    }
    CHECK(room.place().tried() == all);
    room.seat.ctrl(Key::enter);
    CHECK(room.seat.window().place() == Place::hand_out);
    // among tried skills Enter goes to a question about another word
    room.seat.alt(Key::three);
    room.toSkill("phoneme.blend");
    const std::string subject = room.place().item()->subject;
    room.seat.key(Key::enter);
    CHECK(room.place().item()->subject != subject);
}

TEST_CASE("Try out: a whole skill is left out and asked again") {
    Room room;
    room.begin(kWords);
    room.toSkill("phoneme.blend");
    room.seat.click("skill off");
    CHECK(room.unit().unit().skills_off == std::vector<std::string>{"phoneme.blend"});
    CHECK_FALSE(room.seat.shows("tablet"));
    room.seat.click("skill off");
    CHECK(room.unit().unit().skills_off.empty());
    room.seat.frame();
    CHECK(room.seat.shows("tablet"));
}

TEST_CASE("Try out: the sounds that the unit is about are asked alone, where there are any") {
    Room room;
    room.begin(kWords);
    room.toSkill("phoneme.first");
    const std::size_t all = room.place().count();
    REQUIRE(room.place().skillLook()->sounds.size() > 3);
    const auto middle = [&] {
        const auto& items = room.unit().look().items;
        return std::count_if(items.begin(), items.end(), [](const exercise::Item& item) {
            return item.skill.task == exercise::Task::middle;
        });
    };
    const auto vowels = middle();
    room.seat.click("focus:h");
    room.seat.frame();
    CHECK(room.unit().unit().focus_sounds == std::vector<std::string>{"h"});
    REQUIRE(room.place().count() > 0);
    CHECK(room.place().count() < all);
    for (std::size_t i = 0; i < room.place().count(); ++i)
        CHECK(room.place().at(i).turns_on.sound == "h");
    CHECK(middle() == vowels);  // it is in no middle
    CHECK(room.place().skillLook()->sounds.size() > 3);
    const auto read = pack::readUnit(pack::writeUnit(room.unit().unit()), "unit.json");
    REQUIRE(read.ok());
    CHECK(read.value().focus_sounds == std::vector<std::string>{"h"});
    room.seat.ctrl(Key::z);
    CHECK(room.unit().unit().focus_sounds.empty());
    CHECK(room.place().count() == all);
    const auto other = pack::readUnit(
        R"({"format": "wrenlet unit", "format_version": 1, "id": "a", "title": "A", "words": ["cat"],
            "sentences": [], "focus_sounds": ["qq", "m"]})",
        "unit.json");
    REQUIRE(other.ok());
    CHECK(other.value().focus_sounds == std::vector<std::string>{"m"});
    CHECK(other.problems().size() == 1);
}

TEST_CASE(
    "Find me more: a skill without questions gets some by one key, and undo takes them back") {
    Room room;
    room.begin("pig hen cow");
    room.toSkill("onset-rime.rhyme-pick");
    REQUIRE(room.place().count() == 0);
    Finder& finder = *room.seat.window().finder();
    REQUIRE(finder.offers() != nullptr);
    CHECK(finder.offers()->why.find("no question") != std::string::npos);
    REQUIRE(finder.offers()->together);
    const std::size_t offered = finder.offers()->offers.size();
    room.seat.key(Key::a);
    room.seat.frame();
    CHECK(room.unit().unit().words.size() == 3 + offered);
    CHECK(room.place().count() >= exercise::kFewestQuestions);
    room.seat.frame();
    CHECK(room.seat.shows("tablet"));
    room.seat.ctrl(Key::z);
    CHECK(room.unit().unit().words.size() == 3);
}

TEST_CASE("Find me more: topic and sound choose, Enter adds the one chosen, Esc leads back") {
    Room room;
    room.begin(kWords);
    room.toSkill("phoneme.first");
    REQUIRE(room.place().count() > 0);
    room.seat.key(Key::f);
    room.seat.frame();
    room.seat.click("topic:animals");
    room.seat.frame();
    room.seat.click("sound:s");
    room.seat.frame();
    Finder& finder = *room.seat.window().finder();
    REQUIRE(finder.offers() != nullptr);
    REQUIRE(finder.offers()->offers.size() > 1);
    for (const Offer& offer : finder.offers()->offers) {
        CHECK(offer.topics.find("animals") != std::string::npos);
        const exercise::Word* word = library().known.classroom().word(offer.id);
        REQUIRE(word != nullptr);
        CHECK(word->sounds.front().phoneme == speech::Phoneme::s);
    }
    room.seat.key(Key::down);
    const std::string second = finder.offers()->offers[1].id;
    room.seat.key(Key::enter);
    CHECK(room.unit().work().word(second) != nullptr);
    CHECK_FALSE(room.unit().work().word(second)->picture.empty());
    room.seat.key(Key::escape);
    CHECK(room.seat.shows("tablet"));
}

TEST_CASE("Find me more: sentences are offered where sentences are counted") {
    Room room;
    room.begin("pig hen cow");
    room.toSkill("sentence.count");
    REQUIRE(room.place().count() == 0);
    Finder& finder = *room.seat.window().finder();
    REQUIRE(finder.offers() != nullptr);
    REQUIRE_FALSE(finder.offers()->offers.empty());
    room.seat.key(Key::enter);
    room.seat.frame();
    CHECK(room.unit().unit().sentences.size() == 1);
    CHECK(room.place().count() > 0);
}

TEST_CASE("The game's program that is missing, silent or of another version is told") {
    const practice::samples::Folder folder;
    const auto missing = gameProgram(folder / "no-such-program");
    CHECK_FALSE(missing->still({folder / "p.zip", "x", folder / "s.png", 100, 100}).ok());
    CHECK_FALSE(missing->play(folder / "p.zip", "x").ok());
    const auto other = gameProgram("/bin/echo");
    CHECK_FALSE(other->still({folder / "p.zip", "x", folder / "s.png", 100, 100}).ok());
    for (const char* printed :
         {"", "[]", "{}", R"({"said": 3})", R"({"said": [3]})", R"({"said": [{"clip": 3}]})",
          R"({"said": [{"clip": "word:cat", "gap_ms": -1}]})",
          R"({"said": [{"clip": "word:cat", "gap_ms": 99999999999}]})"})
        CHECK_FALSE(readSaid(printed).ok());
    const auto said = readSaid(R"({"said": [{"clip": "word:cat", "gap_ms": 250}]})");
    REQUIRE(said.ok());
    CHECK(said.value() == std::vector<SaidClip>{{"word:cat", 250}});
}

TEST_CASE("Every skill's name is short enough for the list, and no two are alike") {
    std::set<std::string> names;
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        CHECK_MESSAGE(shortName(row.skill).size() <= 20, shortName(row.skill));
        names.insert(shortName(row.skill));
    }
    CHECK(names.size() == exercise::skillTable().size());
}

}  // namespace wrenlet::desk
