#include "tests/touch/game_program.hpp"

#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <nlohmann/json.hpp>

namespace wrenlet::touch {

namespace {

double now() {
    using namespace std::chrono;
    return duration<double>(steady_clock::now().time_since_epoch()).count();
}

Standing standingOf(const std::string& line) {
    const nlohmann::json told = nlohmann::json::parse(line);
    Standing standing;
    standing.place = told.at("place");
    standing.answers = told.at("answers");
    if (!told.at("right").is_null()) standing.right = told.at("right");
    for (const auto& [name, box] : told.at("things").items())
        standing.things[name] = {box.at(0), box.at(1), box.at(2), box.at(3)};
    return standing;
}

}  // namespace

GameProgram::GameProgram(const std::string& display, const std::vector<std::string>& arguments) {
    int ends[2];
    if (pipe(ends) != 0) return;
    process_ = fork();
    if (process_ == 0) {
        dup2(ends[1], 1);
        close(ends[0]);
        setenv("DISPLAY", display.c_str(), 1);
        setenv("SDL_VIDEODRIVER", "x11", 1);
        setenv("SDL_AUDIODRIVER", "dummy", 1);
        setenv("SDL_RENDER_DRIVER", "software", 1);
        setenv("SDL_FRAMEBUFFER_ACCELERATION", "0", 1);
        std::vector<char*> words{const_cast<char*>(WRENLET_PROGRAM)};
        for (const std::string& word : arguments) words.push_back(const_cast<char*>(word.c_str()));
        words.push_back(nullptr);
        execv(words[0], words.data());
        _exit(127);
    }
    close(ends[1]);
    from_ = ends[0];
}

GameProgram::~GameProgram() {
    if (process_ > 0) {
        kill(process_, SIGKILL);
        waitpid(process_, nullptr, 0);
    }
    if (from_ >= 0) close(from_);
}

bool GameProgram::readOn(double seconds) {
    pollfd waits{from_, POLLIN, 0};
    if (poll(&waits, 1, static_cast<int>(seconds * 1e3)) <= 0) return true;
    char bytes[4096];
    const ssize_t got = read(from_, bytes, sizeof bytes);
    if (got <= 0) return false;
    unread_.append(bytes, static_cast<std::size_t>(got));
    for (std::size_t end; (end = unread_.find('\n')) != std::string::npos;) {
        standing_ = standingOf(unread_.substr(0, end));
        unread_.erase(0, end + 1);
    }
    return true;
}

bool GameProgram::waitFor(const std::function<bool(const Standing&)>& so, double seconds) {
    for (const double until = now() + seconds; !so(standing_);)
        if (now() >= until || !readOn(0.05)) return false;
    return true;
}

void GameProgram::listen(double seconds) {
    waitFor([](const Standing&) { return false; }, seconds);
}

bool GameProgram::end() {
    kill(process_, SIGTERM);
    int status = 0;
    waitpid(process_, &status, 0);
    process_ = 0;
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

}  // namespace wrenlet::touch
