#include "tests/simulator/tally.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <sstream>

#include "tests/simulator/report.hpp"

using namespace wrenlet::simulator;
using doctest::Approx;

TEST_CASE(
    "Simulator: a reader that knows the truth is calibrated, one that turns it round is not") {
    Tally perfect, wrong;
    for (int i = 0; i < 100; ++i) {
        const double known = i / 100.0;
        const bool missed = known < kKnownShare;
        perfect.addReading({missed ? 1.0 : 0.0, known, known}, known);
        wrong.addReading({missed ? 0.0 : 1.0, 0, known - 0.01}, known);
    }
    CHECK(perfect.calibrationError() == 0);
    CHECK(perfect.value(Measure::coverage80) == 1);
    CHECK(perfect.value(Measure::missed_at_90) == 1);
    CHECK(wrong.calibrationError() == 1);
    CHECK(wrong.value(Measure::coverage80) == 0);
    CHECK(wrong.value(Measure::missed_at_90) == 0);
}

TEST_CASE("Simulator: calibration error is the rows' mean distance, bin by bin") {
    Tally tally;
    // Ten rows at .25, of which 4 are missed; thirty at .85, of which 24 are.
    for (int i = 0; i < 10; ++i) tally.addReading({0.25, 0, 1}, i < 4 ? 0.1 : 0.9);
    for (int i = 0; i < 30; ++i) tally.addReading({0.85, 0, 1}, i < 24 ? 0.1 : 0.9);
    CHECK(tally.calibrationError() == Approx((10 * 0.15 + 30 * 0.05) / 40));
    CHECK(std::isnan(tally.value(Measure::missed_at_90)));
    tally.addReading({1.0, 0, 1}, 0.1);
    CHECK(tally.value(Measure::missed_at_90) == 1);
    Tally twice = tally;
    twice.add(tally);
    CHECK(twice.calibrationError() == Approx(tally.calibrationError()));
    CHECK(std::isnan(Tally().calibrationError()));
}

namespace {

/// Classes whose total gain is `first`, `first` + .01, …
std::vector<Tally> classesFrom(double first, int count) {
    std::vector<Tally> classes(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        for (int row = 0; row < 10; ++row)
            classes[static_cast<std::size_t>(i)].of(Measure::total_gain).add(first + 0.01 * i);
    return classes;
}

double gain(const Tally& own, const Tally&) {
    return own.value(Measure::total_gain);
}

double gainRatio(const Tally& own, const Tally& other) {
    return own.value(Measure::total_gain) / other.value(Measure::total_gain);
}

}  // namespace

TEST_CASE("Simulator: bounds lie on the side that is against the policy, and pairs go together") {
    const auto own = classesFrom(0.2, 25), other = classesFrom(0.1, 25);
    const Bounded higher = bounded(own, own, gain, Better::higher);
    CHECK(higher.value == Approx(0.32));
    // The mean of 25 classes .01 apart has a standard error of .0144: 1.645 of them below.
    CHECK(std::fabs(higher.bound - (0.32 - 1.645 * 0.0144)) < 0.003);
    CHECK(bounded(own, own, gain, Better::lower).bound > 0.32);
    CHECK(bounded(own, own, gain, Better::within, 0.2).bound > 0.32);
    CHECK(bounded(own, own, gain, Better::within, 0.4).bound < 0.32);
    CHECK(bounded(own, own, gain, Better::higher).bound == higher.bound);

    auto doubled = own;
    for (Tally& tally : doubled) tally.of(Measure::total_gain).sum *= 2;
    const Bounded ratio = bounded(doubled, own, gainRatio, Better::higher);
    CHECK(ratio.value == Approx(2));
    CHECK(ratio.bound == Approx(2));  // every class twice as good: no doubt about it
    CHECK(bounded(own, other, gainRatio, Better::higher).bound > 1);
}

TEST_CASE("Simulator: goals are held against their bounds, and said only of the project's policy") {
    const auto resultOf = [](const char* policy, double first) {
        return Result{policy, Generator::graded, 500, classesFrom(first, 25)};
    };
    std::ostringstream nothing, goals;
    printGoals(nothing, {resultOf("random", 0.1)});
    CHECK(nothing.str().empty());
    printGoals(goals, {resultOf("wrenlet", 0.2), resultOf("random", 0.1)});
    const std::string text = goals.str();
    const auto line = [&text](const std::string& begin) {
        const auto at = text.find(begin);
        REQUIRE(at != text.npos);
        return text.substr(at, text.find('\n', at) - at);
    };
    CHECK(line("total gain, against random ").find("  holds") != std::string::npos);
    CHECK(line("gain on rows missed at first, against bkt").find("not run") != std::string::npos);
    CHECK(line("sessions under 60 %").find("does not hold") != std::string::npos);

    std::ostringstream json;
    printJson(json, {resultOf("random", 0.1)});
    CHECK(json.str().find("{\"policy\": \"random\", \"generator\": \"G\", \"children\": 500, "
                          "\"weak_gain\": null, \"weak_gain_bound\": null, "
                          "\"total_gain\": 0.220000") == 0);
}
