#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>

#include "editor/tryout/started.hpp"

extern char** environ;

namespace wrenlet::desk {

struct Started::Process {
    pid_t number = -1;
    int from = -1;
};

Started::Started(const std::filesystem::path& program, const std::vector<std::string>& words)
    : process_(std::make_unique<Process>()) {
    int ends[2] = {-1, -1};
    if (pipe2(ends, O_CLOEXEC) != 0) return;
    process_->from = ends[0];
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    std::vector<char*> call{const_cast<char*>(program.c_str())};
    for (const std::string& word : words) call.push_back(const_cast<char*>(word.c_str()));
    call.push_back(nullptr);
    if (posix_spawn(&process_->number, program.c_str(), &actions, nullptr, call.data(), environ) !=
        0)
        process_->number = -1;
    posix_spawn_file_actions_destroy(&actions);
    close(ends[1]);
}

Started::~Started() {
    if (process_->from >= 0) close(process_->from);
}

bool Started::isThere() const {
    return process_->number >= 0;
}

bool Started::read(std::string& text, std::size_t most_bytes,
                   std::optional<std::chrono::seconds> longest) {
    using Clock = std::chrono::steady_clock;
    const Clock::time_point begun = Clock::now();
    char block[4096];
    for (;;) {
        int wait = -1;
        if (longest) {
            const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(
                begun + *longest - Clock::now());
            if (left.count() <= 0) return false;
            wait = static_cast<int>(left.count());
        }
        pollfd one{process_->from, POLLIN, 0};
        if (poll(&one, 1, wait) < 0 && errno != EINTR) return false;
        if (one.revents == 0) continue;
        const ssize_t got = ::read(process_->from, block, sizeof block);
        if (got <= 0) return got == 0;
        text.append(block, static_cast<std::size_t>(got));
        if (text.size() > most_bytes) return false;
    }
}

int Started::wait() {
    int status = 0;
    while (waitpid(process_->number, &status, 0) < 0)
        if (errno != EINTR) return -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

void Started::askToEnd() {
    ::kill(process_->number, SIGTERM);
}

void Started::kill() {
    ::kill(process_->number, SIGKILL);
}

}  // namespace wrenlet::desk
