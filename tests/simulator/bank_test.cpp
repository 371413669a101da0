#include "tests/simulator/bank.hpp"

#include <doctest/doctest.h>

#include <set>

using namespace wrenlet;
using namespace wrenlet::simulator;
using speech::Phoneme;

TEST_CASE("Simulator: the bank has every skill, and every sound of it often enough") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    CHECK(bank.items.size() >= 600);
    CHECK(bank.items.size() <= 800);
    const std::size_t skills = exercise::skillTable().size();
    REQUIRE(bank.rows >= skills + 80);
    std::set<std::string> labels, ids;
    for (std::size_t i = 0; i < bank.components.size(); ++i) {
        const Component& component = bank.components[i];
        CAPTURE(component.label);
        CHECK(labels.insert(component.label).second);
        CHECK((component.kind == Component::Kind::skill) == (i < skills));
        CHECK((component.kind == Component::Kind::hidden) == (i >= bank.rows));
        CHECK(component.phoneme.has_value() == (component.kind == Component::Kind::sound));
        CHECK(component.items.size() >= (i < skills ? 16 : 3));
        for (const int item : component.items) {
            const BankItem& one = bank.items[static_cast<std::size_t>(item)];
            CHECK((i < skills ? one.skill : one.sound) == static_cast<int>(i));
        }
    }
    for (const BankItem& one : bank.items) {
        CHECK(ids.insert(one.item.id).second);
        REQUIRE(one.contrasts.size() == one.item.choices.size());
        CHECK(one.contrasts[one.item.answer] == -1);
        CHECK(one.item.skill == bank.components[static_cast<std::size_t>(one.skill)].skill);
        if (one.sound >= 0)
            CHECK(one.item.turns_on ==
                  bank.components[static_cast<std::size_t>(one.sound)].turns_on);
    }
    const Bank again = makeBank(WRENLET_TEST_SHARE);
    REQUIRE(again.items.size() == bank.items.size());
    for (std::size_t i = 0; i < bank.items.size(); ++i)
        CHECK(again.items[i].item == bank.items[i].item);
}

TEST_CASE("Simulator: the sounds that a wrong choice names are read") {
    CHECK(soundsNamed("heard /d/ for /t/ last") == NamedSounds{Phoneme::t, Phoneme::d});
    CHECK(soundsNamed("heard /d/ for /t/ last, and more") == NamedSounds{Phoneme::t, Phoneme::d});
    CHECK(soundsNamed("took /tʃ/ for /ʃ/ first") == NamedSounds{Phoneme::sh, Phoneme::ch});
    CHECK(soundsNamed("did not hear /t/ last") == NamedSounds{Phoneme::t, std::nullopt});
    for (const char* other :
         {"", "took /æt/ for /ɪt/", "one sound fewer", "took /st/ for one sound", "took b for d",
          "took the last sound, not the first", "heard a sound more: /stɑp/",
          "did not hear \"bow\"", "heard /d", "took /t/ for /"})
        CHECK_FALSE(soundsNamed(other).has_value());
}
