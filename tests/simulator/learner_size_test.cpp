#include <doctest/doctest.h>

#include <algorithm>

#include "content/common/random.hpp"
#include "content/practice/learner.hpp"
#include "tests/simulator/bank.hpp"

namespace wrenlet::simulator {

TEST_CASE("Learner: a child who met every part of every skill takes under 64 KB") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    practice::Learner learner;
    Random random(3);
    std::size_t most = 0;
    for (int asked = 0; asked < 6'000; ++asked) {
        // Each item in turn, so that none is left out, and then by chance.
        const auto size = static_cast<std::uint32_t>(bank.items.size());
        const auto number = static_cast<std::uint32_t>(asked);
        const exercise::Item& item = bank.items[number < size ? number : random.below(size)].item;
        practice::Response response;
        response.tablet = "t-1";
        response.sequence = asked + 1;
        response.session = 1 + asked / 44;
        response.day = 20'000 + response.session;
        response.skill = exercise::rowOf(item.skill).id;
        response.turns_on = item.turns_on;
        std::vector<std::string> listed;
        for (const exercise::Choice& choice : item.choices) listed.push_back(choice.id);
        random.shuffle(listed);
        response.choices = std::move(listed);
        response.right = item.choices[item.answer].id;
        const auto other = random.below(static_cast<std::uint32_t>(item.choices.size()));
        response.chosen = random.unit() < .8 ? response.right.string() : item.choices[other].id;
        response.took_ms = 2'000 + random.below(4'000);
        learner.add(response);
        most = std::max(most, learner.bytes());
    }
    MESSAGE(learner.mastery().met().size() << " parts, " << most << " bytes at most");
    CHECK(learner.mastery().met().size() > 300);
    CHECK(most < 64u * 1024);
}

}  // namespace wrenlet::simulator
