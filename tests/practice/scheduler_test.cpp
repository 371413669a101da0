#include "content/practice/scheduler.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "content/common/random.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/sentence.hpp"
#include "content/practice/session_plan.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::practice;
using exercise::Item;

namespace {

/// The items of every skill over a few dozen words.
std::vector<Item> manyItems() {
    exercise::Vocabulary vocabulary;
    for (const char* text :
         {"cat",  "hat", "bat",  "bee",   "tree",  "key",  "dog",   "frog",   "log",    "sun",
          "bun",  "run", "goat", "boat",  "coat",  "pig",  "wig",   "fan",    "pan",    "map",
          "cap",  "net", "jet",  "ship",  "fish",  "duck", "truck", "spoon",  "moon",   "nest",
          "rain", "cup", "cake", "tiger", "zebra", "lion", "robot", "pencil", "window", "bed"})
        vocabulary.words.push_back({text, text, fixtures::said(text), {}, text});
    for (const char* text : {"I see a bee.", "The duck sits on the log.", "Dogs run.",
                             "A big goat ran up the hill.", "We like cake."})
        vocabulary.sentences.push_back({"s-" + std::to_string(vocabulary.sentences.size()), text,
                                        exercise::spokenWords(text, "").value()});
    std::vector<Item> items;
    for (const auto& row : exercise::skillTable())
        for (Item& item : exercise::makeItems(vocabulary, row.skill))
            items.push_back(std::move(item));
    return items;
}

/// Plays sessions with a child who is right with the chance that `knows` gives.
class Simulated {
  public:
    explicit Simulated(const std::vector<Item>& items) : items_(items) {}

    template <class Knows>
    void session(std::int64_t day, std::uint64_t seed, int count, const Knows& knows) {
        ++session_;
        std::optional<std::size_t> stay;
        Random chance(seed * 77 + 5);
        for (int asked = 0; asked < count; ++asked) {
            Situation situation;
            situation.items = items_;
            situation.history = history;
            situation.mastery = &mastery;
            situation.session = session_;
            situation.day = day;
            situation.seed = seed;
            situation.asked_so_far = asked;
            situation.stay_with = stay;
            const auto next = FirstScheduler().next(situation);
            REQUIRE(next.has_value());
            const Item& item = items_[next->item];
            chosen.push_back(*next);
            Response response;
            response.sequence = static_cast<std::int64_t>(history.size()) + 1;
            response.session = session_;
            response.day = day;
            response.item = item.id;
            response.skill = exercise::rowOf(item.skill).id;
            response.asked = item.subject;
            response.turns_on = item.turns_on;
            for (const auto index : next->order) response.choices.push_back(item.choices[index].id);
            response.right = item.choices[item.answer].id;
            const bool right = chance.unit() < knows(item);
            const auto wrong = item.answer == 0 ? 1u : 0u;
            response.chosen = right ? response.right : item.choices[wrong].id;
            response.means = right ? "" : item.choices[wrong].means;
            history.push_back(response);
            mastery.add(response);
            stay = right && exercise::rowOf(item.skill).mechanic == exercise::Mechanic::sort
                       ? std::optional<std::size_t>(next->item)
                       : std::nullopt;
        }
    }

    std::vector<Response> history;
    std::vector<Asked> chosen;
    Mastery mastery;

  private:
    const std::vector<Item>& items_;
    std::int64_t session_ = 0;
};

const auto kMostly = [](const Item&) { return 0.8; };

}  // namespace

TEST_CASE("Scheduler: the same seed and history give the same items") {
    const auto items = manyItems();
    Simulated once(items), twice(items), other(items);
    for (int day = 0; day < 3; ++day) {
        once.session(day, 42 + day, 30, kMostly);
        twice.session(day, 42 + day, 30, kMostly);
        other.session(day, 99 + day, 30, kMostly);
    }
    CHECK(once.chosen == twice.chosen);
    CHECK_FALSE(once.chosen == other.chosen);
}

TEST_CASE("Scheduler: the items' order in the pack decides nothing") {
    auto items = manyItems();
    Simulated once(items);
    once.session(0, 7, 40, kMostly);
    auto turned = items;
    std::reverse(turned.begin(), turned.end());
    Simulated again(turned);
    again.session(0, 7, 40, kMostly);
    REQUIRE(once.history.size() == again.history.size());
    for (std::size_t i = 0; i < once.history.size(); ++i)
        CHECK(once.history[i].item == again.history[i].item);
}

TEST_CASE("Scheduler: the hard rules hold in thousands of choices") {
    const auto items = manyItems();
    std::size_t choices = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Simulated child(items);
        const double level = 0.3 + 0.01 * static_cast<double>(seed);
        for (int day = 0; day < 2; ++day)
            child.session(day, seed, 40, [&](const Item&) { return level; });
        for (std::size_t begin : {std::size_t{0}, std::size_t{40}}) {
            int place_run = 0, sound_run = 0, skill_run = 0;
            std::size_t last_place = 99;
            std::string last_sound, last_skill;
            for (std::size_t i = begin; i < begin + 40; ++i, ++choices) {
                const Item& item = items[child.chosen[i].item];
                const std::size_t place = child.chosen[i].answerPlace(item);
                place_run = place == last_place ? place_run + 1 : 1;
                sound_run = item.turns_on.sound == last_sound ? sound_run + 1 : 1;
                skill_run = child.history[i].skill == last_skill ? skill_run + 1 : 1;
                last_place = place;
                last_sound = item.turns_on.sound;
                last_skill = child.history[i].skill;
                CHECK(place_run <= 2);
                CHECK(sound_run <= 2);
                CHECK(skill_run <= 5);
                for (std::size_t j = i > 20 ? i - 20 : 0; j < i; ++j)
                    CHECK(child.history[j].item != item.id);
            }
        }
    }
    CHECK(choices == 4800);
}

TEST_CASE("Scheduler: what a child misses is asked more often than of one who knows it") {
    const auto items = manyItems();
    const auto asked = [&](double knows_joining) {
        int count = 0;
        for (std::uint64_t seed = 1; seed <= 20; ++seed) {
            Simulated child(items);
            for (int day = 0; day < 4; ++day)
                child.session(day, seed, 30, [&](const Item& item) {
                    return item.skill.unit == exercise::Unit::phoneme ? knows_joining : 0.95;
                });
            for (const Response& row : child.history)
                count += row.skill == "phoneme.blend" && row.day > 0;
        }
        return count;
    };
    const int missed = asked(0.35), known = asked(0.95);
    CHECK(missed > known * 5 / 4);
}

TEST_CASE("Scheduler: what the game has no scene for is never chosen") {
    Item unplayed;
    unplayed.id = "phoneme.first/sound:k/cat+hen";
    unplayed.skill = {exercise::Unit::phoneme, exercise::Task::first};
    unplayed.subject = "sound:k";
    unplayed.choices = {{"cat", ""}, {"hen", "took /h/ for /k/ first"}};
    std::vector<Item> items{unplayed};
    Situation situation;
    situation.items = items;
    CHECK_FALSE(FirstScheduler().next(situation).has_value());
    CHECK(focusSkills(situation).empty());
}

TEST_CASE("Scheduler: a skill that the teacher pinned is in the focus") {
    const auto items = manyItems();
    const std::vector<std::string> pinned = {"syllable.blend"};
    Situation situation;
    situation.items = items;
    situation.pinned = pinned;
    const auto focus = focusSkills(situation);
    REQUIRE(focus.size() == 2);
    CHECK(focus[0] == "syllable.blend");
}

TEST_CASE("Scheduler: a pack of one item is asked again rather than nothing") {
    auto items = manyItems();
    items.resize(1);
    Simulated child(items);
    child.session(0, 1, 5, kMostly);
    CHECK(child.history.size() == 5);
    Situation situation;
    CHECK_FALSE(FirstScheduler().next(situation).has_value());
}

TEST_CASE("Session plan: a session ends by its minutes, and not on a miss") {
    SessionPlan plan;
    plan.length_ms = 300'000;
    CHECK_FALSE(plan.isOver(299'000, 10, true));
    CHECK(plan.isOver(300'000, 10, true));
    CHECK_FALSE(plan.isOver(300'000, 10, false));
    CHECK(plan.isOver(300'000 + SessionPlan::kGraceMs, 10, false));
    CHECK(plan.isClosing(290'000, 10));
}
