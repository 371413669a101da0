#include "tests/simulator/simulate.hpp"

#include <algorithm>
#include <atomic>
#include <functional>
#include <thread>

#include "tests/simulator/policies.hpp"

namespace wrenlet::simulator {

namespace {

/// Does `count` jobs on so many threads; which thread does which makes no difference.
void doAll(int threads, std::size_t count, const std::function<void(std::size_t)>& job) {
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < count; i = next++) job(i);
    };
    std::vector<std::thread> workers;
    for (int i = 1; i < threads; ++i) workers.emplace_back(work);
    work();
    for (std::thread& worker : workers) worker.join();
}

}  // namespace

std::vector<Result> simulate(const Bank& bank, const Simulation& options, int threads) {
    std::vector<BktModel> fitted(options.generators.size());
    doAll(threads, fitted.size(),
          [&](std::size_t i) { fitted[i] = fittedBkt(bank, options.generators[i]); });

    const int classes = (options.children + kClassSize - 1) / kClassSize;
    std::vector<Result> results;
    std::vector<std::pair<MakeClassroom, MakeClassroom>> makers;  // a result's, and BKT's
    for (std::size_t i = 0; i < fitted.size(); ++i)
        for (const NamedPolicy& policy : policies(fitted[i])) {
            if (std::find(options.policies.begin(), options.policies.end(), policy.name) ==
                options.policies.end())
                continue;
            results.push_back({policy.name, options.generators[i], options.children, {}});
            results.back().classes.resize(static_cast<std::size_t>(classes));
            makers.emplace_back(policy.make, makeBkt(fitted[i]));
        }
    const auto in_a_result = static_cast<std::size_t>(classes);
    doAll(threads, results.size() * in_a_result, [&](std::size_t job) {
        Result& result = results[job / in_a_result];
        const int number = static_cast<int>(job % in_a_result);
        const int size = std::min(kClassSize, options.children - number * kClassSize);
        result.classes[static_cast<std::size_t>(number)] =
            runClass(bank, {result.generator, options.seeds, number, size},
                     makers[job / in_a_result].first, makers[job / in_a_result].second);
    });
    return results;
}

}  // namespace wrenlet::simulator
