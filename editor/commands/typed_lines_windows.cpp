#include <windows.h>

#include <deque>
#include <iostream>
#include <mutex>
#include <thread>

#include "editor/commands/typed_lines.hpp"

namespace wrenlet::desk {

namespace {

/// An event of the system's, so that it can be told of from wherever a request comes.
HANDLE stopEvent() {
    static const HANDLE event = CreateEventW(nullptr, TRUE, FALSE, nullptr);
    return event;
}

/// The system calls it on a thread of its own and passes on nothing but the request. It ends the
/// program soon after some of them, whatever is answered.
BOOL WINAPI asked(DWORD) {
    SetEvent(stopEvent());
    return TRUE;
}

}  // namespace

struct TypedLines::State {
    struct Lines {
        std::mutex mutex;
        std::deque<std::string> lines;
        HANDLE some = CreateEventW(nullptr, FALSE, FALSE, nullptr);
        ~Lines() { CloseHandle(some); }
    };
    // Kept by the thread that reads too, which ends with the input or the program.
    std::shared_ptr<Lines> typed = std::make_shared<Lines>();
};

TypedLines::TypedLines() : state_(std::make_unique<State>()) {
    SetConsoleCtrlHandler(asked, TRUE);
    std::thread([typed = state_->typed] {
        for (std::string line; std::getline(std::cin, line);) {
            const std::lock_guard lock(typed->mutex);
            typed->lines.push_back(line);
            SetEvent(typed->some);
        }
    }).detach();
}

TypedLines::~TypedLines() = default;

bool TypedLines::wait(int ms, std::optional<std::string>& line) {
    const HANDLE either[] = {stopEvent(), state_->typed->some};
    const DWORD told = WaitForMultipleObjects(2, either, FALSE, static_cast<DWORD>(ms));
    if (told == WAIT_OBJECT_0) return false;
    const std::lock_guard lock(state_->typed->mutex);
    auto& lines = state_->typed->lines;
    if (lines.empty()) return true;
    line = std::move(lines.front());
    lines.pop_front();
    if (!lines.empty()) SetEvent(state_->typed->some);
    return true;
}

}  // namespace wrenlet::desk
