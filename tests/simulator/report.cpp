#include "tests/simulator/report.hpp"

#include <cmath>
#include <cstdio>
#include <ostream>

namespace wrenlet::simulator {

namespace {

struct Column {
    const char* name;
    const char* heading;
    Figure figure;
    Better better;
    double middle = 0;
};

constexpr double kCovered = 0.81;  // the middle of what an 80 % range may hold, 77 to 85 %

Figure valueOf(Measure measure) {
    return [measure](const Tally& own, const Tally&) { return own.value(measure); };
}

Figure ratioOf(Measure own_measure, Measure other_measure) {
    return [=](const Tally& own, const Tally& other) {
        return own.value(own_measure) / other.value(other_measure);
    };
}

double calibration(const Tally& own, const Tally&) {
    return own.calibrationError();
}

std::vector<Column> columns() {
    const auto column = [](const char* heading, Measure measure, Better better, double middle = 0) {
        return Column{nameOf(measure).data(), heading, valueOf(measure), better, middle};
    };
    return {column("weak gain", Measure::weak_gain, Better::higher),
            column("total", Measure::total_gain, Better::higher),
            column("very low", Measure::very_low_total_gain, Better::higher),
            column("bad sess.", Measure::bad_sessions, Better::lower),
            column("(very low)", Measure::very_low_bad_sessions, Better::lower),
            column("top 8", Measure::top8_precision, Better::higher),
            {"ece", "ECE", calibration, Better::lower},
            column("p >= .9", Measure::missed_at_90, Better::higher),
            column("in 80 %", Measure::coverage80, Better::within, kCovered),
            column("log loss", Measure::log_loss, Better::lower),
            column("(child's)", Measure::log_loss_child, Better::lower),
            column("(BKT's)", Measure::log_loss_bkt, Better::lower),
            column("taps", Measure::tap_found, Better::higher),
            column("(slow)", Measure::tap_found_slow, Better::higher),
            column("false", Measure::tap_false, Better::lower),
            column("missed", Measure::missed_at_first, Better::lower),
            column("right", Measure::right, Better::higher)};
}

Bounded boundedOf(const Result& result, const Column& column) {
    return bounded(result.classes, result.classes, column.figure, column.better, column.middle);
}

std::string fixedPoint(double value, int digits) {
    if (std::isnan(value)) return "-";
    char text[32];
    std::snprintf(text, sizeof text, "%.*f", digits, value);
    return text;
}

std::string padded(const std::string& text, std::size_t width) {
    return text.size() < width ? std::string(width - text.size(), ' ') + text : text;
}

constexpr std::size_t kNameWidth = 22, kWidth = 12;

void printHead(std::ostream& out, const Result& result) {
    out << "\nGenerator " << letterOf(result.generator) << ", " << result.children << " children\n"
        << std::string(kNameWidth, ' ');
    for (const Column& column : columns()) out << padded(column.heading, kWidth);
    out << "\n";
}

struct Goal {
    const char* what;
    const char* against;  // the policy whose classes are the other ones; "": its own
    Figure figure;
    Better better;
    double target;
    double highest = 0;  // of `within`
};

std::vector<Goal> goals() {
    const auto ratio = [](const char* what, const char* against, Measure measure, double target) {
        return Goal{what, against, ratioOf(measure, measure), Better::higher, target};
    };
    const auto value = [](const char* what, Measure measure, Better better, double target) {
        return Goal{what, "", valueOf(measure), better, target};
    };
    return {
        ratio("gain on rows missed at first, against random", "random", Measure::weak_gain, 1.4),
        ratio("gain on rows missed at first, against bkt", "bkt", Measure::weak_gain, 1.05),
        ratio("total gain, against random", "random", Measure::total_gain, 1),
        ratio("total gain of the very low, against random", "random", Measure::very_low_total_gain,
              0.9),
        value("sessions under 60 % success", Measure::bad_sessions, Better::lower, 0.01),
        ratio("first eight named, against random_same_estimator", "random_same_estimator",
              Measure::top8_precision, 1.3),
        {"calibration error of P(missed)", "", calibration, Better::lower, 0.05},
        value("truly missed of P(missed) >= .9", Measure::missed_at_90, Better::higher, 0.85),
        {"held by the 80 % range", "", valueOf(Measure::coverage80), Better::within, 0.77, 0.85},
        {"log loss against a fitted BKT's, its own answers", "",
         ratioOf(Measure::log_loss, Measure::log_loss_bkt), Better::lower, 0.97},
        {"log loss against a fitted BKT's, random answers", "random_same_estimator",
         [](const Tally&, const Tally& other) {
             return other.value(Measure::log_loss) / other.value(Measure::log_loss_bkt);
         },
         Better::lower, 0.97},
        value("tappers found within 12 items", Measure::tap_found, Better::higher, 0.95),
        value("slow tappers found within 12 items", Measure::tap_found_slow, Better::higher, 0.95),
        value("honest sessions with a false alarm", Measure::tap_false, Better::lower, 0.01)};
}

const Result* find(const std::vector<Result>& results, Generator generator,
                   std::string_view policy) {
    for (const Result& result : results)
        if (result.generator == generator && result.policy == policy) return &result;
    return nullptr;
}

bool holds(const Goal& goal, const Bounded& bounded) {
    if (goal.better == Better::lower) return bounded.bound <= goal.target;
    const bool enough = bounded.bound >= goal.target;
    return goal.better == Better::within ? enough && bounded.bound <= goal.highest : enough;
}

std::string targetOf(const Goal& goal) {
    if (goal.better == Better::within)
        return fixedPoint(goal.target, 2) + "-" + fixedPoint(goal.highest, 2);
    return (goal.better == Better::higher ? ">= " : "<= ") + fixedPoint(goal.target, 2);
}

}  // namespace

void printTable(std::ostream& out, const std::vector<Result>& results) {
    out << "Simulated children are no evidence about children. Each figure with its 95 % bound on "
           "the\nunfavourable side, from a bootstrap over classes.\n";
    const Result* last = nullptr;
    for (const Result& result : results) {
        if (last == nullptr || last->generator != result.generator) printHead(out, result);
        out << result.policy
            << std::string(kNameWidth - std::min(kNameWidth, result.policy.size()), ' ');
        for (const Column& column : columns()) {
            const Bounded one = boundedOf(result, column);
            out << padded(std::isnan(one.value)
                              ? "-"
                              : fixedPoint(one.value, 3) + "/" + fixedPoint(one.bound, 3),
                          kWidth);
        }
        out << "\n";
        last = &result;
    }
}

void printJson(std::ostream& out, const std::vector<Result>& results) {
    const auto number = [](double value) {
        return std::isnan(value) ? std::string("null") : fixedPoint(value, 6);
    };
    for (const Result& result : results) {
        out << "{\"policy\": \"" << result.policy << "\", \"generator\": \""
            << letterOf(result.generator) << "\", \"children\": " << result.children;
        for (const Column& column : columns()) {
            const Bounded one = boundedOf(result, column);
            out << ", \"" << column.name << "\": " << number(one.value) << ", \"" << column.name
                << "_bound\": " << number(one.bound);
        }
        out << "}\n";
    }
}

void printGoals(std::ostream& out, const std::vector<Result>& results) {
    for (const Generator generator : kGenerators) {
        const Result* own = find(results, generator, "wrenlet");
        if (own == nullptr) continue;
        out << "\nGoals, generator " << letterOf(generator) << "\n";
        for (const Goal& goal : goals()) {
            const bool alone = *goal.against == '\0';
            const Result* other = alone ? own : find(results, generator, goal.against);
            out << "  " << goal.what
                << std::string(52 - std::min<std::size_t>(52, std::string_view(goal.what).size()),
                               ' ');
            if (other == nullptr) {
                out << " not run beside " << goal.against << "\n";
                continue;
            }
            const double middle = (goal.target + goal.highest) / 2;
            const Bounded one =
                bounded(own->classes, other->classes, goal.figure, goal.better, middle);
            out << padded(fixedPoint(one.value, 3), 8) << "  bound "
                << padded(fixedPoint(one.bound, 3), 6) << "  wanted " << padded(targetOf(goal), 9)
                << "  " << (holds(goal, one) ? "holds" : "does not hold") << "\n";
        }
    }
}

}  // namespace wrenlet::simulator
