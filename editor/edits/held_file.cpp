#include "editor/edits/held_file.hpp"

#ifdef _WIN32
#include <fcntl.h>
#include <io.h>
#include <share.h>
#include <sys/stat.h>
#else
#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>
#endif

#include <chrono>
#include <thread>
#include <utility>

namespace wrenlet::desk {

namespace {

constexpr int kNone = -1;

#ifdef _WIN32
int openHeld(const std::filesystem::path& path) {
    int handle = kNone;
    _wsopen_s(&handle, path.c_str(), _O_RDWR | _O_CREAT, _SH_DENYWR, _S_IREAD | _S_IWRITE);
    return handle;
}
void closeHeld(int handle) {
    _close(handle);
}
void writeHeld(int handle, std::string_view text) {
    _chsize(handle, 0);
    _write(handle, text.data(), static_cast<unsigned>(text.size()));
    _commit(handle);
}
#else
int openHeld(const std::filesystem::path& path) {
    const int handle = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644);
    if (handle >= 0 && ::flock(handle, LOCK_EX | LOCK_NB) != 0) {
        ::close(handle);
        return kNone;
    }
    return handle;
}
void closeHeld(int handle) {
    ::close(handle);
}
void writeHeld(int handle, std::string_view text) {
    if (::ftruncate(handle, 0) != 0) return;
    if (::write(handle, text.data(), text.size()) < 0) return;
    ::fsync(handle);
}
#endif

}  // namespace

std::optional<HeldFile> HeldFile::take(const std::filesystem::path& path) {
    const int handle = openHeld(path);
    if (handle < 0) return std::nullopt;
    return HeldFile(handle);
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
    writeHeld(handle_, text);
}

HeldFile::HeldFile(HeldFile&& other) noexcept : handle_(std::exchange(other.handle_, kNone)) {}

HeldFile::~HeldFile() {
    if (handle_ != kNone) closeHeld(handle_);
}

}  // namespace wrenlet::desk
