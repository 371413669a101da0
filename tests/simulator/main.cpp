// wrenlet-simulate: policies against simulated children; see run.hpp, tally.hpp and child.hpp.
#include <algorithm>
#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <iostream>
#include <optional>
#include <thread>

#include "tests/simulator/policies.hpp"
#include "tests/simulator/report.hpp"
#include "tests/simulator/run.hpp"

using namespace wrenlet;
using namespace wrenlet::simulator;

namespace {

constexpr const char* kUsage =
    "wrenlet-simulate [--children N] [--seeds tune|judge] [--generator G|A|C|all]\n"
    "                 [--policy NAME[,NAME...]|all] [--json] [--threads N]\n"
    "Simulated children are no evidence about children.\n";

struct Options {
    int children = 700;
    Seeds seeds = Seeds::tune;
    std::vector<Generator> generators{std::begin(kGenerators), std::end(kGenerators)};
    std::vector<std::string> policies = policyNames();
    bool json = false;
    int threads = static_cast<int>(std::max(1u, std::thread::hardware_concurrency()));
};

/// Nothing for a number that is none or lies outside 1 to `most`.
std::optional<int> countFrom(const std::string& text, int most) {
    char* end = nullptr;
    const long value = std::strtol(text.c_str(), &end, 10);
    if (text.empty() || *end != '\0' || value < 1 || value > most) return std::nullopt;
    return static_cast<int>(value);
}

std::optional<std::vector<std::string>> policiesFrom(const std::string& text) {
    const auto known = policyNames();
    if (text == "all") return known;
    std::vector<std::string> named;
    for (std::size_t begin = 0; begin <= text.size();) {
        const std::size_t end = std::min(text.find(',', begin), text.size());
        named.push_back(text.substr(begin, end - begin));
        if (std::find(known.begin(), known.end(), named.back()) == known.end()) return std::nullopt;
        begin = end + 1;
    }
    return named;
}

bool take(Options& options, const std::string& name, const std::string& value) {
    if (name == "--children" || name == "--threads") {
        const auto count = countFrom(value, name == "--threads" ? 256 : 100'000);
        if (count) (name == "--threads" ? options.threads : options.children) = *count;
        return count.has_value();
    }
    if (name == "--seeds") {
        options.seeds = value == "tune" ? Seeds::tune : Seeds::judge;
        return value == "tune" || value == "judge";
    }
    if (name == "--generator") {
        if (value == "all") return true;
        options.generators.clear();
        for (const Generator generator : kGenerators)
            if (value == std::string(1, letterOf(generator))) options.generators = {generator};
        return !options.generators.empty();
    }
    if (name != "--policy") return false;
    const auto named = policiesFrom(value);
    if (named) options.policies = *named;
    return named.has_value();
}

std::optional<Options> optionsFrom(int argc, char** argv) {
    Options options;
    for (int i = 1; i < argc; ++i) {
        if (std::strcmp(argv[i], "--json") == 0) {
            options.json = true;
            continue;
        }
        if (i + 1 == argc || !take(options, argv[i], argv[i + 1])) return std::nullopt;
        ++i;
    }
    return options;
}

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

std::vector<Result> simulate(const Bank& bank, const Options& options) {
    std::vector<BktModel> fitted(options.generators.size());
    doAll(options.threads, fitted.size(),
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
    doAll(options.threads, results.size() * in_a_result, [&](std::size_t job) {
        Result& result = results[job / in_a_result];
        const int number = static_cast<int>(job % in_a_result);
        const int size = std::min(kClassSize, options.children - number * kClassSize);
        result.classes[static_cast<std::size_t>(number)] =
            runClass(bank, {result.generator, options.seeds, number, size},
                     makers[job / in_a_result].first, makers[job / in_a_result].second);
    });
    return results;
}

}  // namespace

int main(int argc, char** argv) {
    const auto options = optionsFrom(argc, argv);
    if (!options) {
        std::fputs(kUsage, stderr);
        return 2;
    }
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    const auto results = simulate(bank, *options);
    if (options->json) {
        printJson(std::cout, results);
    } else {
        printTable(std::cout, results);
        printGoals(std::cout, results);
    }
    return 0;
}
