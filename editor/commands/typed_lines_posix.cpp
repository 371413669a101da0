#include <poll.h>
#include <pthread.h>
#include <unistd.h>

#include <csignal>
#include <thread>

#include "editor/commands/typed_lines.hpp"

namespace wrenlet::desk {

struct TypedLines::State {
    sigset_t signals{};
    int ends[2] = {-1, -1};
    bool is_open = true;
    std::string typed;
};

TypedLines::TypedLines() : state_(std::make_unique<State>()) {
    sigemptyset(&state_->signals);
    sigaddset(&state_->signals, SIGINT);
    sigaddset(&state_->signals, SIGTERM);
    sigaddset(&state_->signals, SIGHUP);
    // Before any thread is made, so that each waits for none of these.
    pthread_sigmask(SIG_BLOCK, &state_->signals, nullptr);
    if (pipe(state_->ends) != 0) state_->ends[0] = state_->ends[1] = -1;
    std::thread([signals = state_->signals, end = state_->ends[1]] {
        int signal = 0;
        sigwait(&signals, &signal);
        const char sign = 's';
        (void)!write(end, &sign, 1);
    }).detach();
}

TypedLines::~TypedLines() = default;

bool TypedLines::wait(int ms, std::optional<std::string>& line) {
    pollfd watched[2] = {{state_->ends[0], POLLIN, 0}, {state_->is_open ? 0 : -1, POLLIN, 0}};
    if (poll(watched, 2, ms) <= 0) return true;
    if (watched[0].revents != 0) return false;
    if (watched[1].revents == 0) return true;
    char bytes[256];
    const auto got = read(0, bytes, sizeof bytes);
    if (got <= 0) state_->is_open = false;
    std::string& typed = state_->typed;
    if (got > 0) typed.append(bytes, static_cast<std::size_t>(got));
    if (const auto end = typed.find('\n'); end != typed.npos) {
        line = typed.substr(0, end);
        typed.erase(0, end + 1);
    }
    return true;
}

}  // namespace wrenlet::desk
