#include "tests/simulator/policies.hpp"

#include "tests/simulator/elo.hpp"
#include "tests/simulator/plain_policies.hpp"
#include "tests/simulator/run.hpp"
#include "tests/simulator/wrenlet_classroom.hpp"

namespace wrenlet::simulator {

namespace {

constexpr int kFittedClasses = 10;
constexpr int kFittedFrom = 100'000;  // classes that no run uses

}  // namespace

std::vector<NamedPolicy> policies(const BktModel& bkt) {
    return {{"wrenlet", makeWrenlet()}, {"fixed", makeFixed()},
            {"random", makeRandom()},   {"random_same_estimator", makeRandomSameEstimator()},
            {"leitner", makeLeitner()}, {"bkt", makeBkt(bkt)},
            {"elo", makeElo()},         {"thompson", makeThompson()}};
}

std::vector<std::string> policyNames() {
    std::vector<std::string> names;
    for (const NamedPolicy& policy : policies({})) names.push_back(policy.name);
    return names;
}

BktModel fittedBkt(const Bank& bank, Generator generator) {
    std::vector<std::vector<std::pair<int, bool>>> answers;
    for (int i = 0; i < kFittedClasses; ++i) {
        const std::size_t first = answers.size();
        answers.resize(first + kClassSize);
        runClass(bank, {generator, Seeds::tune, kFittedFrom + i, kClassSize}, makeRandom(), {},
                 [&](int child, int item, const practice::Response& response) {
                     answers[first + static_cast<std::size_t>(child)].emplace_back(
                         item, response.isRight());
                 });
    }
    return fitBkt(bank, answers);
}

}  // namespace wrenlet::simulator
