// wrenlet-simulate: policies against simulated children; see run.hpp, tally.hpp and child.hpp.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <iostream>
#include <optional>
#include <thread>

#include "tests/simulator/policies.hpp"
#include "tests/simulator/report.hpp"
#include "tests/simulator/simulate.hpp"

using namespace wrenlet;
using namespace wrenlet::simulator;

namespace {

constexpr const char* kUsage =
    "wrenlet-simulate [--children N] [--seeds tune|judge] [--generator G|A|C|all]\n"
    "                 [--policy NAME[,NAME...]|all] [--json] [--threads N]\n"
    "Simulated children are no evidence about children.\n";

struct Options {
    Simulation simulation;
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
        if (count) (name == "--threads" ? options.threads : options.simulation.children) = *count;
        return count.has_value();
    }
    if (name == "--seeds") {
        options.simulation.seeds = value == "tune" ? Seeds::tune : Seeds::judge;
        return value == "tune" || value == "judge";
    }
    if (name == "--generator") {
        if (value == "all") return true;
        options.simulation.generators.clear();
        for (const Generator generator : kGenerators)
            if (value == std::string(1, letterOf(generator)))
                options.simulation.generators = {generator};
        return !options.simulation.generators.empty();
    }
    if (name != "--policy") return false;
    const auto named = policiesFrom(value);
    if (named) options.simulation.policies = *named;
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

}  // namespace

int main(int argc, char** argv) {
    const auto options = optionsFrom(argc, argv);
    if (!options) {
        std::fputs(kUsage, stderr);
        return 2;
    }
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    const auto results = simulate(bank, options->simulation, options->threads);
    if (options->json) {
        printJson(std::cout, results);
    } else {
        printTable(std::cout, results);
        printSaid(std::cout, results);
        printGoals(std::cout, results);
    }
    return 0;
}
