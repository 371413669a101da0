#include "editor/edits/held_file.hpp"

#include <chrono>
#include <thread>
#include <utility>

#include "editor/edits/lock.hpp"

namespace wrenlet::desk {

namespace {

constexpr int kNone = -1;

}  // namespace

std::optional<HeldFile> HeldFile::take(const std::filesystem::path& path) {
    const auto handle = openLocked(path);
    if (!handle) return std::nullopt;
    return HeldFile(*handle);
}

std::optional<HeldFile> HeldFile::wait(const std::filesystem::path& path, int most_ms) {
    constexpr int kStepMs = 5;
    for (int waited = 0;; waited += kStepMs) {
        if (auto held = take(path)) return held;
        if (waited >= most_ms) return std::nullopt;
        std::this_thread::sleep_for(std::chrono::milliseconds(kStepMs));
    }
}

void HeldFile::say(std::string_view text) const {
    writeLocked(handle_, text);
}

HeldFile::HeldFile(HeldFile&& other) noexcept : handle_(std::exchange(other.handle_, kNone)) {}

HeldFile::~HeldFile() {
    if (handle_ != kNone) closeLocked(handle_);
}

}  // namespace wrenlet::desk
