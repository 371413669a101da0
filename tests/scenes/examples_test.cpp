#include <doctest/doctest.h>

#include <map>
#include <set>

#include "game/scenes/prompts.hpp"
#include "tests/fixtures/pond_pack.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using exercise::Item;
using exercise::Skill;
using exercise::Task;
using exercise::Unit;
using practice::samples::Folder;

TEST_CASE("Example: of two signs either may be the example's, so that it tells no answer") {
    for (const Skill skill :
         {Skill{Unit::onset_rime, Task::rhyme_judge}, Skill{Unit::phoneme, Task::long_short},
          Skill{Unit::sentence, Task::tune}}) {
        CAPTURE(exercise::rowOf(skill).id);
        const pack::Pack pack = fixtures::pondPack(skill);
        const game::Prompts prompts(pack);
        std::set<bool> same;
        for (const Item& asked : pack.items) {
            const Item* example = prompts.exampleFor(asked);
            REQUIRE(example != nullptr);
            CHECK(example->subject != asked.subject);
            same.insert(example->answer == asked.answer);
        }
        CHECK(same.size() == 2);
    }
}

TEST_CASE("Example: it is played like the question, and gives another answer where that is named") {
    for (const Skill skill : {Skill{Unit::phoneme, Task::first}, Skill{Unit::phoneme, Task::last},
                              Skill{Unit::onset_rime, Task::rhyme_pick},
                              Skill{Unit::letter, Task::sound}, Skill{Unit::letter, Task::name}}) {
        CAPTURE(exercise::rowOf(skill).id);
        const pack::Pack pack = fixtures::pondPack(skill);
        const game::Prompts prompts(pack);
        for (const Item& asked : pack.items) {
            CAPTURE(asked.id);
            const Item* example = prompts.exampleFor(asked);
            REQUIRE(example != nullptr);
            CHECK(exercise::mechanicOf(*example) == exercise::mechanicOf(asked));
            CHECK(example->choices[example->answer].id != asked.choices[asked.answer].id);
        }
    }
}

TEST_CASE("Example: first sounds are shown once as a pick, and once more when they are sorted") {
    const Folder folder;
    const pack::Pack pack = fixtures::pondPack({Unit::phoneme, Task::first});
    fixtures::Player player(folder / "store.db", 1, 7, {}, 3, pack);
    player.playRightUntil("welcome");
    std::map<std::string, int> shown;
    std::string place;
    while (player.app().place() != "ending") {
        if (player.app().place() != place) {
            place = player.app().place();
            if (place.find(": example") != std::string::npos) ++shown[place];
        }
        player.app().rightTouch() ? player.tap(*player.app().rightTouch()) : player.wait(48);
    }
    CHECK(shown == std::map<std::string, int>{{"pick: example", 1}, {"sort: example", 1}});
}
