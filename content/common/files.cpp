#include "content/common/files.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>
#include <system_error>

#ifndef _WIN32
#include <fcntl.h>
#include <unistd.h>
#else
#include <io.h>
#endif

namespace wrenlet {
namespace {

struct CloseFile {
    void operator()(std::FILE* file) const { std::fclose(file); }
};
using File = std::unique_ptr<std::FILE, CloseFile>;

bool flushToDisk(std::FILE* file) {
    if (std::fflush(file) != 0) return false;
#ifndef _WIN32
    return fsync(fileno(file)) == 0;
#else
    return _commit(_fileno(file)) == 0;
#endif
}

/// The rename itself must reach the disk too; a folder that cannot be flushed is not an error.
void flushFolder(const std::filesystem::path& folder) {
#ifndef _WIN32
    const int handle = open(folder.empty() ? "." : folder.c_str(), O_RDONLY);
    if (handle < 0) return;
    (void)fsync(handle);
    close(handle);
#else
    (void)folder;
#endif
}

Problem cannotWrite(const std::filesystem::path& path, int error) {
    const std::string name = path.filename().string();
    if (error == ENOSPC)
        return {name, "The disk is full; the file from before still stands.",
                "Make some room and try again."};
#ifdef EDQUOT
    const bool is_quota = error == EDQUOT;
#else
    const bool is_quota = false;
#endif
    if (error == EFBIG || is_quota)
        return {name, "There is not enough room for this file; the file from before still stands.",
                "Make some room, or choose another place, and try again."};
    return {name, std::string("This file cannot be written (") + std::strerror(error) + ").",
            "Check that the folder is there and may be written to."};
}

}  // namespace

Result<std::string> readWhole(const std::filesystem::path& path, std::uint64_t limit_bytes) {
    const std::string name = path.filename().string();
    std::error_code error;
    if (!std::filesystem::is_regular_file(path, error))
        return Problem{name, "This file is not there.", "Check the folder and the name."};
    const File in(std::fopen(path.string().c_str(), "rb"));
    if (!in) return Problem{name, "This file cannot be opened.", "Check that it may be read."};
    std::setvbuf(in.get(), nullptr, _IONBF, 0);
    const std::uintmax_t size = std::filesystem::file_size(path, error);
    // One byte more than it should have, so that one call reads it and sees its end; a file that
    // grows meanwhile is read on.
    std::size_t room = static_cast<std::size_t>(std::min<std::uintmax_t>(size, limit_bytes)) + 1;
    std::string bytes;
    std::size_t got = 0;
    do {
        bytes.resize(got + room);
        const std::size_t n = std::fread(bytes.data() + got, 1, room, in.get());
        got += n;
        if (got > limit_bytes)
            return Problem{name,
                           "This file is larger than " + std::to_string(limit_bytes / 1024) +
                               " KB, more than such a file can hold.",
                           "Choose another file."};
        if (n < room) break;
        room = std::min<std::size_t>(65536, static_cast<std::size_t>(limit_bytes - got) + 1);
    } while (true);
    if (std::ferror(in.get()) != 0)
        return Problem{name, "This file cannot be read to its end.",
                       "Copy it again, from where it came."};
    bytes.resize(got);
    return bytes;
}

Result<Done> writeWhole(const std::filesystem::path& path, std::string_view bytes) {
    std::filesystem::path aside = path;
    aside += ".new";
    {
        File file(std::fopen(aside.string().c_str(), "wb"));
        if (!file) return cannotWrite(path, errno);
        const bool written = std::fwrite(bytes.data(), 1, bytes.size(), file.get()) == bytes.size();
        if (!written || !flushToDisk(file.get())) {
            const int error = errno;
            file.reset();
            std::remove(aside.string().c_str());
            return cannotWrite(path, error);
        }
    }
    std::error_code error;
    std::filesystem::rename(aside, path, error);
    if (error) return cannotWrite(path, error.value());
    flushFolder(path.parent_path());
    return Done{};
}

std::vector<std::filesystem::path> listFiles(const std::filesystem::path& folder,
                                             std::string_view extension) {
    std::vector<std::filesystem::path> found;
    std::error_code error;
    for (std::filesystem::directory_iterator it(folder, error), end; !error && it != end;
         it.increment(error)) {
        if (it->is_regular_file(error) && it->path().extension() == extension)
            found.push_back(it->path());
    }
    std::sort(found.begin(), found.end());
    return found;
}

}  // namespace wrenlet
