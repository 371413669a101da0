#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include "editor/edits/lock.hpp"

namespace wrenlet::desk {

std::optional<int> openLocked(const std::filesystem::path& path) {
    const int handle = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644);
    if (handle < 0) return std::nullopt;
    if (::flock(handle, LOCK_EX | LOCK_NB) == 0) return handle;
    ::close(handle);
    return std::nullopt;
}

void closeLocked(int handle) {
    ::close(handle);
}

void writeLocked(int handle, std::string_view text) {
    if (::ftruncate(handle, 0) != 0) return;
    if (::write(handle, text.data(), text.size()) < 0) return;
    ::fsync(handle);
}

}  // namespace wrenlet::desk
