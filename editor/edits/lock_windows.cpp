#include <fcntl.h>
#include <io.h>
#include <share.h>
#include <sys/stat.h>

#include "editor/edits/lock.hpp"

namespace wrenlet::desk {

std::optional<int> openLocked(const std::filesystem::path& path) {
    int handle = -1;
    if (_wsopen_s(&handle, path.c_str(), _O_RDWR | _O_CREAT | _O_BINARY | _O_NOINHERIT, _SH_DENYWR,
                  _S_IREAD | _S_IWRITE) != 0)
        return std::nullopt;
    return handle;
}

void closeLocked(int handle) {
    _close(handle);
}

void writeLocked(int handle, std::string_view text) {
    if (_chsize(handle, 0) != 0) return;
    if (_write(handle, text.data(), static_cast<unsigned>(text.size())) < 0) return;
    _commit(handle);
}

}  // namespace wrenlet::desk
