#include <doctest/doctest.h>

#include <algorithm>

#include "content/common/files.hpp"
#include "game/scenes/adult_scene.hpp"
#include "game/start/tablet_settings.hpp"
#include "tests/fixtures/pond_pack.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using fixtures::Player;
using game::TabletSettings;
using practice::samples::Folder;

namespace {

using exercise::Skill;
using exercise::Task;
using exercise::Unit;

const game::ScreenSize kScreens[] = {{1280, 800, 0}, {1024, 600, 0}, {800, 1280, 0}};
const char* const kSettable[] = {"volume",  "motion", "hands",    "side",
                                 "minutes", "scan",   "captions", "pause"};

std::vector<std::string> texts(const game::Frame& frame) {
    std::vector<std::string> all;
    for (const game::Blit& blit : frame)
        if (blit.sprite.kind == game::Sprite::Kind::text) all.push_back(blit.sprite.name);
    return all;
}

game::AppOptions with(const TabletSettings& tablet) {
    game::AppOptions options;
    options.tablet = tablet;
    return options;
}

Player setTo(const Folder& folder, const TabletSettings& tablet,
             Skill skill = {Unit::onset_rime, Task::rhyme_sort}, game::ScreenSize screen = {}) {
    return Player(folder / "store.db", 1, 7, screen, 3, fixtures::pondPack(skill), with(tablet));
}

}  // namespace

TEST_CASE("Adult: every setting comes round through all its states, each told in words and shape") {
    for (const std::string thing : kSettable) {
        if (thing == "pause") continue;
        CAPTURE(thing);
        const Folder folder;
        Player player(folder / "store.db", 1);
        player.toAdultPage();
        const TabletSettings first = player.app().settings();
        std::vector<game::Frame> shown;
        std::vector<std::vector<std::string>> words;
        do {
            shown.push_back(player.app().frame(player.now()));
            words.push_back(texts(shown.back()));
            player.tap(thing);
        } while (player.app().settings() != first && shown.size() < 10);
        CHECK(player.app().settings() == first);
        CHECK(shown.size() >= 2);
        for (std::size_t i = 0; i < shown.size(); ++i)
            for (std::size_t j = 0; j < i; ++j) {
                CHECK(words[i] != words[j]);
                // Without a word the pages still differ.
                const auto shapes = [](game::Frame frame) {
                    std::erase_if(frame, [](const game::Blit& blit) {
                        return blit.sprite.kind == game::Sprite::Kind::text;
                    });
                    return frame;
                };
                CHECK(shapes(shown[i]) != shapes(shown[j]));
            }
    }
}

TEST_CASE("Adult: what is set is kept at once, and the next start finds it") {
    const Folder folder;
    {
        Player player(folder / "store.db", 1);
        player.toAdultPage();
        for (const char* thing :
             {"volume", "motion", "hands", "side", "minutes", "scan", "captions"}) {
            player.tap(thing);
            const auto kept = game::openTabletSettings(folder / "settings.json");
            CHECK(kept.problems().empty());
            CHECK(kept.value() == player.app().settings());
        }
        CHECK(player.voice().volume == doctest::Approx(0.25f));
    }
    const TabletSettings kept = game::openTabletSettings(folder / "settings.json").value();
    CHECK(kept.volume_percent == 25);
    CHECK_FALSE(kept.motion);
    CHECK_FALSE(kept.drags);
    CHECK(kept.left_hand);
    CHECK(kept.minutes == 5);
    CHECK(kept.scan_pace == 1'500);
    CHECK(kept.captions);
    Player again = setTo(folder, kept);
    CHECK(again.voice().volume == doctest::Approx(0.25f));
    CHECK(again.app().boxOf("leave")->x < again.app().boxOf("replay")->x);
}

TEST_CASE("Adult: settings that cannot be kept are used all the same, and the page says so") {
    const Folder folder;
    std::filesystem::create_directories(folder / "settings.json" / "in-the-way");
    Player player(folder / "store.db", 1);
    player.toAdultPage();
    player.tap("captions");
    CHECK(player.app().settings().captions);
    player.tap("facts");
    const auto all = texts(player.app().frame(player.now()));
    CHECK(std::any_of(all.begin(), all.end(), [](const std::string& text) {
        return text.find("settings.json") != std::string::npos;
    }));
}

TEST_CASE("Adult: a pause is quiet until an adult lets it go on, whatever is touched meanwhile") {
    const Folder folder;
    Player player(folder / "store.db", 1);
    player.tap("badge:c-01");
    player.playRightUntil("sort: asked");
    const std::string place = player.app().place();
    player.toAdultPage();
    player.tap("pause");
    CHECK(player.app().place() == "paused");
    CHECK(game::openTabletSettings(folder / "settings.json").value().paused);
    const auto said = player.voice().said.size();
    const auto rows = player.store().all().size();
    for (int i = 0; i < 200; ++i) {
        player.contact(
            {game::Contact::Kind::down, 1, {float(i * 37 % 1100), float(i * 53 % 800)}, 0});
        player.wait(48);
        player.contact(
            {game::Contact::Kind::up, 1, {float(i * 37 % 1100), float(i * 53 % 800)}, 0});
        player.wait(500);
    }
    CHECK(player.app().place() == "paused");
    CHECK(player.voice().said.size() == said);
    CHECK(player.store().all().size() == rows);
    CHECK_FALSE(player.app().isMoving(player.now()));
    CHECK_FALSE(player.app().nextDue(player.now()).has_value());
    // A wrong number does not let it go on.
    const auto leave = player.app().boxOf("leave")->centre();
    player.contact({game::Contact::Kind::down, 1, leave, 0});
    player.wait(1700);
    player.contact({game::Contact::Kind::up, 1, leave, 0});
    for (const std::string& number : player.app().touchables())
        if (number != player.app().rightTouch()) {
            player.tap(number);
            break;
        }
    CHECK(player.app().place() == "paused");
    player.toAdultPage();
    player.tap("back");
    CHECK(player.app().place() == place);
    CHECK_FALSE(game::openTabletSettings(folder / "settings.json").value().paused);
    CHECK(player.waitForTouch());
}

TEST_CASE("Adult: a tablet that was paused is paused when it starts again") {
    const Folder folder;
    TabletSettings paused;
    paused.paused = true;
    Player player = setTo(folder, paused);
    CHECK(player.app().place() == "paused");
    CHECK(player.voice().said.empty());
    const auto frame = game::firstFrame(fixtures::smallClass(1), {}, paused);
    CHECK(frame == player.app().frame(player.now()));
    player.toAdultPage();
    player.tap("back");
    CHECK(player.app().place() == "badges");
}

TEST_CASE("Adult: pages tell nothing of any child") {
    const Folder folder;
    Player player(folder / "store.db", 3);
    player.tap("badge:c-01");
    player.playRightUntil("sort: right");
    player.toAdultPage();
    std::vector<std::string> all = texts(player.app().frame(player.now()));
    player.tap("facts");
    for (const std::string& text : texts(player.app().frame(player.now()))) all.push_back(text);
    CHECK(all.size() > 20);
    for (const std::string& text : all) {
        CHECK(text.find("Child 1") == std::string::npos);
        CHECK(text.find("c-01") == std::string::npos);
        CHECK(text.find("right answer") == std::string::npos);
        CHECK(text.find("rhyme") == std::string::npos);
    }
}

TEST_CASE(
    "Adult: every control is 88 px or more and apart at every size, and 20 mm where it is known") {
    std::vector<game::ScreenSize> screens(std::begin(kScreens), std::end(kScreens));
    screens.push_back({1280, 800, 0.135f});  // a tablet of 8 inches
    screens.push_back({800, 1280, 0.135f});
    for (const game::ScreenSize& screen : screens) {
        CAPTURE(screen.w);
        CAPTURE(screen.h);
        const Folder folder;
        Player player(folder / "store.db", 1, 7, screen);
        player.toAdultPage();
        for (int page = 0; page < 2; ++page) {
            std::vector<game::Box> boxes;
            for (const std::string& name : player.app().touchables())
                boxes.push_back(*player.app().boxOf(name));
            CHECK(boxes.size() >= 2);
            for (std::size_t i = 0; i < boxes.size(); ++i) {
                const game::Box& box = boxes[i];
                CHECK(box.w >= 88);
                CHECK(box.h >= 88);
                if (screen.mm_per_px > 0) {
                    CHECK(box.w * screen.mm_per_px >= 19.9f);
                    CHECK(box.h * screen.mm_per_px >= 19.9f);
                }
                CHECK(box.x >= 0);
                CHECK(box.y >= 0);
                CHECK(box.x + box.w <= static_cast<float>(screen.w) + 0.5f);
                CHECK(box.y + box.h <= static_cast<float>(screen.h) + 0.5f);
                const float gap = screen.mm_per_px > 0 ? 4.9f / screen.mm_per_px : 14;
                for (std::size_t j = 0; j < i; ++j) {
                    const game::Box& other = boxes[j];
                    const bool apart =
                        box.x + box.w + gap <= other.x || other.x + other.w + gap <= box.x ||
                        box.y + box.h + gap <= other.y || other.y + other.h + gap <= box.y;
                    CHECK(apart);
                }
            }
            if (page == 0) player.tap("facts");
        }
    }
}

TEST_CASE("Adult: many problems are told page by page, and none is left out") {
    for (const game::ScreenSize& screen : kScreens) {
        CAPTURE(screen.w);
        const Folder folder;
        Player player(folder / "store.db", 1, 7, screen);
        std::string trouble;
        for (int i = 1; i <= 60; ++i)
            trouble += "Problem number " + std::to_string(i) + " is here. ";
        player.voice().trouble_text = trouble +
                                      "https://an-address-that-has-no-blank-and-is-longer-"
                                      "than-any-line-of-this-page-could-ever-be.example/"
                                      "and-goes-on-and-on-and-on-for-quite-a-while";
        player.toAdultPage();
        CHECK(player.app().place() == "adult: facts");
        std::string read;
        for (int page = 0; page < 30; ++page) {
            for (const game::Blit& blit : player.app().frame(player.now()))
                if (blit.sprite.from_left && !blit.sprite.bold) read += blit.sprite.name + " ";
            const auto names = player.app().touchables();
            if (std::find(names.begin(), names.end(), "more") == names.end()) break;
            player.tap("more");
        }
        for (int i = 1; i <= 60; ++i)
            CHECK_MESSAGE(read.find("number " + std::to_string(i) + " ") != std::string::npos, i);
        player.tap("settings");
        CHECK(player.app().place() == "adult");
    }
}

TEST_CASE("Hands: where pieces are only touched no drag does anything, and all is played") {
    const Skill skills[] = {{Unit::onset_rime, Task::rhyme_sort}, {Unit::compound, Task::blend},
                            {Unit::phoneme, Task::segment},       {Unit::syllable, Task::count},
                            {Unit::letter, Task::sound},          {Unit::compound, Task::remove}};
    for (const Skill skill : skills) {
        CAPTURE(exercise::rowOf(skill).id);
        const Folder folder;
        TabletSettings touched;
        touched.drags = false;
        Player player = setTo(folder, touched, skill);
        player.tap("badge:c-01");
        std::size_t drags = 0;
        for (int i = 0; i < 4000 && player.app().place() != "ending"; ++i) {
            if (!player.app().rightTouch()) {
                player.wait(96);
                continue;
            }
            const std::string right = *player.app().rightTouch();
            const std::string place = player.app().place();
            const auto rows = player.store().all().size();
            // Drawn far away and let go of: nothing has moved, and nothing was answered.
            if (drags < 40) {
                const game::Box box = *player.app().boxOf(right);
                const game::Point from = box.centre();
                const game::Point out = {box.x + box.w + 60, box.y - 60};
                player.contact({game::Contact::Kind::down, 1, from, 0});
                player.wait(32);
                const auto held = player.app().frame(player.now());
                player.contact({game::Contact::Kind::move, 1, {from.x, box.y - 60}, 0});
                player.contact({game::Contact::Kind::move, 1, out, 0});
                CHECK(player.app().frame(player.now()) == held);
                player.contact({game::Contact::Kind::up, 1, out, 0});
                CHECK(player.store().all().size() == rows);
                CHECK(player.app().place() == place);
                ++drags;
            }
            player.tap(*player.app().rightTouch());
        }
        CHECK(player.app().place() == "ending");
        CHECK(drags > 0);
        CHECK(player.store().all().size() > 3);
        for (const auto& row : player.store().all()) CHECK(row.isRight());
    }
}

TEST_CASE("Left hand: the wren, the way out and the replay change sides, and nothing overlaps") {
    for (const game::ScreenSize& screen : kScreens) {
        CAPTURE(screen.w);
        const game::Layout right(screen), left(screen, {true, false});
        CHECK(left.leave().centre().x < left.width() / 2);
        CHECK(left.replay().centre().x > left.width() / 2);
        if (!left.isPortrait()) CHECK(left.wren().centre().x > left.width() / 2);
        const auto mirrored = [&](const game::Box& box) {
            return game::Box{left.width() - box.x - box.w, box.y, box.w, box.h};
        };
        CHECK(left.stage().x == doctest::Approx(mirrored(right.stage()).x));
        CHECK(left.stage().w == doctest::Approx(right.stage().w));
        for (const game::Box& box : {left.wren(), left.leave(), left.replay()})
            for (const game::Box& piece :
                 {left.card(), left.subject(), left.waiting(), left.acorns(), left.done(),
                  left.stones(3)[0], left.stones(3)[2], left.pads(8)[0], left.pads(8)[7],
                  left.homes(2)[0].all, left.homes(2)[1].all}) {
                const bool apart = box.x + box.w <= piece.x || piece.x + piece.w <= box.x ||
                                   box.y + box.h <= piece.y || piece.y + piece.h <= box.y;
                CHECK(apart);
            }
        // What is read from left to right stays so.
        CHECK(left.stones(3)[0].x < left.stones(3)[2].x);
        CHECK(left.row({0, 0})[0].x < left.row({0, 0})[1].x);
    }
}

TEST_CASE("Left hand: a whole session is played, and turned round in the middle of it") {
    const Folder folder;
    Player player(folder / "store.db", 1);
    player.tap("badge:c-01");
    player.playRightUntil("sort: asked");
    player.toAdultPage();
    player.tap("side");
    player.tap("back");
    player.playRightUntil("ending");
    for (const auto& row : player.store().all()) CHECK(row.isRight());
}
