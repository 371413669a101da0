// A monkey plays: nothing crashes, nobody gets stuck, and no answer is kept that nobody gave. A few
// thousand touches in every check; two hundred thousand behind the label soak.
#include <doctest/doctest.h>

#include "tests/fixtures/pond_pack.hpp"
#include "tests/monkey/monkey.hpp"

using namespace wrenlet;
using exercise::Mechanic;
using practice::samples::Folder;

namespace {

#ifdef WRENLET_LONG_SOAK
constexpr int kTouches = 200'000;
#else
constexpr int kTouches = 5'000;
#endif
constexpr int kMechanics = 6;

/// A sixth of all touches, on the skills of one mechanic one after another.
void playMonkeys(Mechanic mechanic) {
    std::vector<exercise::Skill> skills;
    for (const exercise::SkillRow& row : exercise::skillTable())
        if (row.mechanic == mechanic) skills.push_back(row.skill);
    REQUIRE_FALSE(skills.empty());
    const int tablets = std::max(static_cast<int>(skills.size()), kTouches / kMechanics / 2'000);
    const int touches = kTouches / kMechanics / tablets + 1;
    int answers = 0, sessions = 0, starts = 0;
    for (int i = 0; i < tablets; ++i) {
        const exercise::Skill skill = skills[static_cast<std::size_t>(i) % skills.size()];
        CAPTURE(exercise::rowOf(skill).id);
        CAPTURE(i);
        const Folder folder;
        const auto seed = static_cast<std::uint64_t>(100 * static_cast<int>(mechanic) + i);
        monkey::Monkey monkey(folder / "store.db", fixtures::pondPack(skill), seed);
        monkey.play(touches);
        for (const std::string& complaint : monkey.complaints()) FAIL_CHECK(complaint);
        CHECK(monkey.sessions() >= std::max(1, touches / monkey::Monkey::kCalmEvery));
        CHECK(monkey.answers() > 0);
        answers += monkey.answers();
        sessions += monkey.sessions();
        starts += monkey.starts();
    }
    MESSAGE((tablets * touches), " touches, ", answers, " answers, ", sessions,
            " sessions brought to their end, ", starts, " starts");
}

}  // namespace

TEST_CASE("Monkey: at a sort no answer is kept that nobody gave, and a child can go on") {
    playMonkeys(Mechanic::sort);
}

TEST_CASE("Monkey: at a join no answer is kept that nobody gave, and a child can go on") {
    playMonkeys(Mechanic::join);
}

TEST_CASE("Monkey: at a split no answer is kept that nobody gave, and a child can go on") {
    playMonkeys(Mechanic::split);
}

TEST_CASE("Monkey: at a count no answer is kept that nobody gave, and a child can go on") {
    playMonkeys(Mechanic::count);
}

TEST_CASE("Monkey: at a pick no answer is kept that nobody gave, and a child can go on") {
    playMonkeys(Mechanic::pick);
}

TEST_CASE("Monkey: at a change no answer is kept that nobody gave, and a child can go on") {
    playMonkeys(Mechanic::change);
}
