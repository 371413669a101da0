// Captions as they really come, in every mechanic, with its example and its corrections.
#include "game/scenes/captions.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "tests/fixtures/pond_pack.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using fixtures::Player;
using game::Box;
using practice::samples::Folder;

namespace {

using exercise::Skill;
using exercise::Task;
using exercise::Unit;

constexpr Skill kOneOfEachMechanic[] = {
    {Unit::onset_rime, Task::rhyme_sort}, {Unit::phoneme, Task::blend},
    {Unit::phoneme, Task::segment},       {Unit::syllable, Task::count},
    {Unit::onset_rime, Task::rhyme_pick}, {Unit::compound, Task::remove}};

const game::ScreenSize kScreens[] = {{1280, 800, 0}, {1024, 600, 0}, {800, 1280, 0}};

game::AppOptions captioned(bool left_hand = false) {
    game::AppOptions options;
    options.tablet.captions = true;
    options.tablet.left_hand = left_hand;
    return options;
}

/// The caption of a frame, and the paper below it; no text when there is none.
struct Shown {
    std::string text;
    Box paper;
};
Shown captionIn(const game::Frame& frame) {
    Shown shown;
    std::size_t at = frame.size();
    while (at > 0 && frame[at - 1].sprite.kind == game::Sprite::Kind::text &&
           frame[at - 1].sprite.from_left)
        --at;
    if (at == 0 || at == frame.size()) return shown;
    const game::Blit& paper = frame[at - 1];
    shown.paper = {paper.centre.x - static_cast<float>(paper.sprite.width) / 2,
                   paper.centre.y - static_cast<float>(paper.sprite.height) / 2,
                   static_cast<float>(paper.sprite.width), static_cast<float>(paper.sprite.height)};
    for (std::size_t i = at; i < frame.size(); ++i) {
        if (!shown.text.empty()) shown.text += ' ';
        shown.text += frame[i].sprite.name;
    }
    return shown;
}

bool overlap(const Box& a, const Box& b) {
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}

/// What lies behind everything and is never touched.
bool isScenery(const std::string& name) {
    return name.rfind("bg-", 0) == 0 || name.rfind("wren-", 0) == 0 || name == "lily-flower" ||
           name.rfind("reed-", 0) == 0;
}

/// True iff nothing that is touched or drawn in front of the pond lies under the caption.
bool coversNothing(const game::App& app, const game::Frame& frame, const Box& paper) {
    for (const std::string& name : app.touchables())
        if (overlap(*app.boxOf(name), paper)) return false;
    for (const game::Blit& blit : frame) {
        using Kind = game::Sprite::Kind;
        const game::Sprite& sprite = blit.sprite;
        const bool is_piece = sprite.kind == Kind::card || sprite.kind == Kind::picture ||
                              (sprite.kind == Kind::art && !isScenery(sprite.name));
        const float w = static_cast<float>(sprite.width), h = static_cast<float>(sprite.height);
        const Box box = {blit.centre.x - w / 2, blit.centre.y - h / 2, w, h};
        if (is_piece && box != paper && overlap(box, paper)) return false;
    }
    return true;
}

}  // namespace

TEST_CASE(
    "Captions: what sounds is written, whatever is asked, shown or explained, over no piece") {
    for (const game::ScreenSize& screen : kScreens)
        for (const Skill skill : kOneOfEachMechanic) {
            const bool left = screen.h == 600;
            CAPTURE(screen.w);
            CAPTURE(screen.h);
            CAPTURE(exercise::rowOf(skill).id);
            const Folder folder;
            Player player(folder / "store.db", 1, 7, screen, 3, fixtures::pondPack(skill),
                          captioned(left));
            const pack::Pack pack = fixtures::pondPack(skill);
            std::set<std::string> phases;
            std::size_t heard = 0, said = 0, touches = 0;
            game::Millis since = 0;
            player.tap("badge:c-01");
            for (int i = 0; i < 3'000 && touches < 60; ++i) {
                player.wait(96);
                if (player.voice().said.size() != said) {
                    said = player.voice().said.size();
                    since = player.now();
                }
                const auto frame = player.app().frame(player.now());
                const Shown shown = captionIn(frame);
                if (!shown.text.empty() && !coversNothing(player.app(), frame, shown.paper)) {
                    CAPTURE(player.app().place());
                    FAIL_CHECK("the caption covers something: ", shown.text);
                }
                // Which clip sounds is known but for the step in which it was begun.
                game::Millis begin = since - 100;
                for (const game::Spoken& spoken : player.voice().said.back()) {
                    begin += spoken.gap_before;
                    const pack::Clip* clip = pack.clip(spoken.clip);
                    const auto end = begin + static_cast<game::Millis>(
                                                 clip != nullptr ? clip->seconds * 1000 : 300);
                    if (clip != nullptr && player.now() >= begin + 120 &&
                        player.now() < end - 120) {
                        ++heard;
                        const std::string place = player.app().place();
                        phases.insert(place.substr(place.find(' ') + 1));
                        CAPTURE(place);
                        CAPTURE(clip->text);
                        CAPTURE(shown.text);
                        CHECK(shown.text.find(clip->text) != std::string::npos);
                    }
                    begin = end;
                }
                const auto right = player.app().rightTouch();
                if (!right || player.now() < since + 4'000) continue;
                ++touches;
                std::string touched = *right;
                const std::string group = touched.substr(0, touched.find(':'));
                if (touches % 4 == 3)
                    for (const std::string& name : player.app().touchables())
                        if (name != *right && (group == "home" || group == "choice") &&
                            name.rfind(group + ":", 0) == 0)
                            touched = name;
                player.tap(touched);
            }
            CHECK(heard > 50);
            CHECK(phases.count("example") == 1);
            CHECK(phases.count("asked") == 1);
            CHECK(phases.count("right") == 1);
        }
}

TEST_CASE("Captions: none is shown unless an adult wishes for them, and no piece has moved then") {
    for (const game::ScreenSize& screen : kScreens) {
        const Folder folder;
        Player player(folder / "store.db", 1, 7, screen);
        player.tap("badge:c-01");
        player.playRightUntil("sort: asked");
        CHECK(captionIn(player.app().frame(player.now())).text.empty());
        if (screen.h > screen.w) continue;
        const auto card = player.app().boxOf("card");
        player.toAdultPage();
        player.tap("captions");
        player.tap("back");
        player.wait(600);
        CHECK_FALSE(captionIn(player.app().frame(player.now())).text.empty());
        CHECK(player.app().boxOf("card") == card);
    }
}

TEST_CASE("Captions: a passage is a sentence, or what is said without a rest") {
    pack::Pack pack;
    for (const auto& [id, text] : {std::pair{"a", "Which one rhymes with"},
                                   {"b", "cat"},
                                   {"c", "hat"},
                                   {"d", "Listen."},
                                   {"e", "/k/"},
                                   {"f", "/æ/"}}) {
        pack::Clip clip;
        clip.id = id;
        clip.text = text;
        clip.seconds = 0.3;
        pack.clips.push_back(clip);
    }
    fixtures::SilentVoice voice(pack);
    game::Telling telling;
    telling.begin(
        voice, {{"a"}, {"b", 250}, {"c", 700}, {"d", 100}, {"e", 100}, {"f", 450}, {"b", 450}}, 0);
    const auto at = [&](game::Millis now) { return game::captionOf(telling, pack, now).text; };
    CHECK(at(0) == "Which one rhymes with cat");
    CHECK(at(840) == "Which one rhymes with cat");
    CHECK(at(1'600) == "hat Listen.");
    CHECK(at(2'400) == "/k/ /æ/ · cat");
    CHECK(at(60'000) == "/k/ /æ/ · cat");  // it stays, for who reads it later
    CHECK(game::captionOf({}, pack, 0).text.empty());
}
