#include "content/practice/evidence.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "content/common/random.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::practice;

namespace {

/// `right` of `seen` first tries at one cell, among `choices` choices.
Evidence after(int right, int seen, int choices) {
    Mastery mastery;
    Counts counts;
    Response response = samples::response();
    std::vector<std::string> listed;
    for (int i = 0; i < choices; ++i) listed.push_back("w" + std::to_string(i));
    response.choices = std::move(listed);
    response.right = "w0";
    for (int i = 0; i < seen; ++i) {
        response.chosen = i < right ? "w0" : "w1";
        response.means = i < right ? "" : "heard another rime";
        mastery.add(response);
        counts.add(response, {});
    }
    return evidenceOf(cellOf(response), counts, mastery);
}

}  // namespace

TEST_CASE("Mastery: Wilson's interval gives the published values") {
    // 25 of 100 at 95 %: .175451 to .343046, a published worked example; 1 of 11 computed from the
    // same formula (Wilson 1927).
    const Interval a = wilson(25, 100, 1.96);
    CHECK(std::fabs(a.low - .175451) < 2e-6);
    CHECK(std::fabs(a.high - .343046) < 2e-6);
    const Interval b = wilson(1, 11, 1.96);
    CHECK(std::fabs(b.low - .016232) < 2e-6);
    CHECK(std::fabs(b.high - .377365) < 2e-6);
}

namespace {

/// How likely one who guesses among `choices` is right `fewest` times or more of `seen` (binomial
/// tail); and how likely that gets a standing of steady.
struct Guessing {
    double tail = 0, steady = 0;
};

Guessing guessing(int fewest, int seen, int choices) {
    Guessing chance;
    const double p = 1.0 / choices;
    double ways = 1;
    for (int right = 0; right <= seen; ++right) {
        const double likely = ways * std::pow(p, right) * std::pow(1 - p, seen - right);
        if (right >= fewest) chance.tail += likely;
        if (after(right, seen, choices).standing == Standing::steady) chance.steady += likely;
        ways = ways * (seen - right) / (right + 1);
    }
    return chance;
}

}  // namespace

TEST_CASE("Mastery: one who guesses is rarely called steady") {
    // Tails of the binomial distribution, as tables have them.
    CHECK(guessing(9, 10, 2).tail == doctest::Approx(.0107).epsilon(.005));
    CHECK(guessing(8, 10, 2).tail == doctest::Approx(.0547).epsilon(.005));
    CHECK(guessing(7, 10, 3).tail == doctest::Approx(.0197).epsilon(.005));
    CHECK(guessing(6, 10, 4).tail == doctest::Approx(.0197).epsilon(.005));
    CHECK(guessing(4, 4, 2).tail == doctest::Approx(.0625).epsilon(.005));
    // Ten answers of pure guessing: steady no more often than the tails above.
    CHECK(guessing(9, 10, 2).steady <= .0108);
    CHECK(guessing(7, 10, 3).steady <= .0197);
    CHECK(guessing(6, 10, 4).steady <= .0197);
    // Who is always right is called steady all the same.
    CHECK(after(20, 20, 2).standing == Standing::steady);
    CHECK(after(12, 12, 4).standing == Standing::steady);
    CHECK(after(2, 12, 4).standing == Standing::missed);
    CHECK(after(2, 2, 4).standing == Standing::too_little);
    CHECK(after(4, 4, 2).standing != Standing::steady);
}

TEST_CASE("Mastery: practice after a miss is no evidence") {
    Mastery once, again;
    Response response = samples::response();
    once.add(response);
    again.add(response);
    response.try_number = 2;
    again.add(response);
    CHECK(std::ranges::equal(once.met(), again.met()));
}

TEST_CASE("Mastery: the same responses give the same state to the last bit") {
    const auto played = [] {
        Mastery mastery;
        Random random(3);
        Response response = samples::response();
        for (int i = 0; i < 500; ++i) {
            response.day = 20'000 + i / 40;
            response.turns_on.sound = i % 3 == 0 ? "æt" : i % 3 == 1 ? "ɛn" : "t";
            response.skill = i % 2 == 0 ? "onset-rime.rhyme-sort" : "phoneme.blend";
            response.chosen = random.unit() < .7 ? response.right : "other";
            mastery.add(response);
        }
        return mastery;
    };
    const Mastery a = played(), b = played();
    CHECK(std::ranges::equal(a.met(), b.met()));
    CHECK(a.met().size() > 10);
}

TEST_CASE("Mastery: what is said of one sound says something of the sounds and tasks beside it") {
    Mastery mastery;
    Response response = samples::response();
    response.skill = "phoneme.first";
    response.turns_on = {"t", exercise::Position::first};
    response.choices = {"a", "b", "c"};
    response.right = "a";
    response.chosen = "b";
    const auto believed = [&mastery](const char* skill, const char* sound, exercise::Position at) {
        return logit(shareKnown(mastery.known(featuresOf(skill, {sound, at}))));
    };
    using exercise::Position;
    const double before = believed("phoneme.first", "t", Position::first);
    const double like = believed("phoneme.first", "d", Position::first);
    const double unlike = believed("letter.name", "letter:q", Position::letter);
    for (int i = 0; i < 5; ++i) mastery.add(response);
    const double fell = before - believed("phoneme.first", "t", Position::first);
    const double like_fell = like - believed("phoneme.first", "d", Position::first);
    const double unlike_fell = unlike - believed("letter.name", "letter:q", Position::letter);
    CHECK(fell > like_fell);
    CHECK(like_fell > unlike_fell);
    CHECK(unlike_fell > 0);
}

TEST_CASE("Mastery: a night takes back part of what practice gave, and widens what is believed") {
    Mastery mastery;
    Response response = samples::response();
    response.chosen = response.right;
    response.day = 20'000;
    const Features features = featuresOf(response.skill, response.turns_on);
    for (int i = 0; i < 4; ++i) mastery.add(response);
    const Known evening = mastery.known(features);
    Response elsewhere = response;
    elsewhere.skill = "letter.name";
    elsewhere.turns_on = {"letter:q", exercise::Position::letter};
    elsewhere.day = 20'001;
    elsewhere.choices = {"only"};  // tells nothing but the day
    mastery.add(elsewhere);
    const Known morning = mastery.known(features);
    CHECK(morning.task.mean < evening.task.mean);
    CHECK(morning.sound.mean < evening.sound.mean);
    CHECK(morning.task.variance > evening.task.variance);
    elsewhere.day = 19'000;  // a clock that was set back
    mastery.add(elsewhere);
    CHECK(mastery.known(features) == morning);
}

TEST_CASE("Mastery: a wrong answer along a shield moves nothing") {
    Mastery mastery(std::make_shared<ClassPriors>(), {"b/v"});
    Counts counts;
    Response response = samples::response();
    response.skill = "phoneme.blend";
    response.turns_on = {"b", exercise::Position::first};
    response.chosen = "other";
    response.means = "heard /v/ for /b/ first";
    mastery.add(response);
    counts.add(response, std::vector<std::string>{"b/v"});
    CHECK(mastery.met().empty());
    CHECK(counts.seen == 1);
    CHECK(counts.shielded == 1);
    response.means = "heard /d/ for /b/ first";
    mastery.add(response);
    CHECK_FALSE(mastery.met().empty());
}

TEST_CASE("Evidence: foils are counted by their meaning") {
    Counts counts;
    Response response = samples::response();
    response.chosen = response.choices[response.choices.size() - 1] == response.right
                          ? response.choices[0]
                          : response.choices[response.choices.size() - 1];
    response.means = "heard another rime";
    counts.add(response, {});
    CHECK(counts.seen == 1);
    CHECK(counts.right == 0);
    CHECK(counts.taken.at("heard another rime") == 1);
}

TEST_CASE("Class priors: what no child of a class knows is believed of the next one") {
    Response response = samples::response();
    response.chosen = "other";
    std::vector<Mastery> children(8);
    for (Mastery& child : children)
        for (int i = 0; i < 6; ++i) child.add(response);
    std::vector<const Mastery*> all;
    for (const Mastery& child : children) all.push_back(&child);
    const auto fitted = std::make_shared<const ClassPriors>(ClassPriors::fittedTo(all));
    const Features features = featuresOf(response.skill, response.turns_on);
    CHECK(shareKnown(Mastery(fitted).known(features)) < shareKnown(Mastery().known(features)) - .1);
    // An empty class changes nothing, and the order of the children neither.
    CHECK(ClassPriors::fittedTo({}) == ClassPriors());
    std::reverse(all.begin(), all.end());
    CHECK(ClassPriors::fittedTo(all) == *fitted);
}
