// What the game costs while nobody touches it, and what memory it takes with a large pack: the
// program itself on a real X server, its badge and its pieces touched by fingers.
#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tests/bench/figure.hpp"
#include "tests/bench/large_classroom.hpp"
#include "tests/touch/game_program.hpp"
#include "tests/touch/x_server.hpp"

using namespace wrenlet;
using bench::figure;
using touch::GameProgram;
using touch::Standing;
using touch::XServer;

namespace {

const std::filesystem::path kFolder = std::filesystem::temp_directory_path() / "wrenlet-bench-idle";
constexpr unsigned kFinger = 1;
constexpr double kMeasured = 10, kPlayed = 120, kPatience = 120;  // seconds

/// What the system says of a running program: a line of a file in /proc/PID.
std::string told(pid_t program, const char* file, const std::string& begins) {
    std::ifstream lines("/proc/" + std::to_string(program) + "/" + file);
    for (std::string line; std::getline(lines, line);)
        if (line.compare(0, begins.size(), begins) == 0) return line.substr(begins.size());
    return "";
}

/// Of all threads.
double cpuSeconds(pid_t program) {
    const std::string line = told(program, "stat", "");
    std::istringstream fields(line.substr(std::min(line.size(), line.rfind(')') + 2)));
    std::vector<std::string> all;
    for (std::string field; fields >> field;) all.push_back(field);
    constexpr std::size_t kUser = 11, kSystem = 12;  // after the name: see proc(5)
    if (all.size() <= kSystem) return 0;
    return (std::stod(all[kUser]) + std::stod(all[kSystem])) /
           static_cast<double>(sysconf(_SC_CLK_TCK));
}

void idleFigure(GameProgram& game, const char* name) {
    const double cpu = cpuSeconds(game.process()), begin = bench::seconds();
    game.listen(kMeasured);
    const double share = (cpuSeconds(game.process()) - cpu) / (bench::seconds() - begin);
    figure(name, 100 * share, "%", 1);
}

void tap(XServer& server, GameProgram& game, const std::string& thing) {
    const auto found = game.standing().things.find(thing);
    if (found == game.standing().things.end()) return;
    const game::Point at = found->second.centre();
    server.down(kFinger, at);
    game.listen(0.08);
    server.up(kFinger, at);
    game.listen(0.3);
}

int measure() {
    XServer server(kFolder);
    if (!server.trouble().empty()) {
        std::fprintf(stderr, "bench-idle: %s\n", server.trouble().c_str());
        return 1;
    }
    GameProgram game(server.display(),
                     {(kFolder / "classroom").string(), "--data", (kFolder / "tablet").string(),
                      "--seed", "3", "--full-screen", "--announce"});
    if (!game.waitFor([](const Standing& now) { return now.place == "badges"; }, kPatience))
        return 1;
    game.listen(25);  // clips are decoded meanwhile
    idleFigure(game, "processor of a game that idles at the badges, against 1 %");
    tap(server, game, "badge:c-01");
    const auto asks = [](const Standing& now) {
        return now.right && now.place.find(": asked") != std::string::npos;
    };
    if (!game.waitFor(asks, kPatience)) return 1;
    game.listen(60);  // all is told, and what there is to touch has been hinted at
    idleFigure(game, "processor of a game that idles at a question, against 1 %");
    for (const double until = bench::seconds() + kPlayed; bench::seconds() < until;) {
        if (game.standing().right)
            tap(server, game, *game.standing().right);
        else
            game.listen(0.1);
    }
    const std::string most = told(game.process(), "status", "VmHWM:");
    if (most.empty() || game.standing().answers == 0) {
        std::fputs("bench-idle: the game ended, or was not played\n", stderr);
        return 1;
    }
    figure("memory at most with a pack of 500 words, played for two minutes, against 150 MB",
           std::stod(most) / 1024, "MB", 150);
    return game.end() ? 0 : 1;
}

}  // namespace

int main() {
    std::filesystem::remove_all(kFolder);
    std::filesystem::create_directories(kFolder);
    const int status = bench::makeLargeClassroom(kFolder / "classroom") ? measure() : 1;
    std::filesystem::remove_all(kFolder);
    return status;
}
