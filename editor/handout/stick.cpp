#include "editor/handout/stick.hpp"

#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/classlist/class_file.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::uint64_t kSpareBytes = 64 * 1024;  // for the folder and class.json

std::string megabytes(std::uint64_t bytes) {
    const std::uint64_t tenths = (bytes + 50'000) / 100'000;
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
}

}  // namespace

std::optional<std::uint64_t> freeBytesOf(const std::filesystem::path& folder) {
    std::error_code error;
    const auto space = std::filesystem::space(folder, error);
    if (error || space.available == static_cast<std::uintmax_t>(-1)) return std::nullopt;
    return space.available;
}

Result<std::string> copyToStick(const pack::Classroom& classroom, const std::string& file,
                                const std::filesystem::path& stick, const FreeBytes& free) {
    std::error_code error;
    if (!std::filesystem::is_directory(stick, error))
        return Problem{stick.string(), "This folder is not there.",
                       "Plug the stick in, or look at the name."};
    const pack::Classroom there{stick};
    const bool is_room = std::filesystem::exists(there.classFile(), error);
    const auto target = is_room ? there.packFile(file) : stick / file;
    const Result<std::string> bytes = readWhole(classroom.packFile(file), pack::kMostPackBytes);
    if (!bytes.ok()) return bytes.problems();
    const bool was_there = std::filesystem::exists(target, error);
    if (was_there) {
        const auto found = readWhole(target, pack::kMostPackBytes);
        if (!found.ok() || found.value() != bytes.value())
            return Problem{target.string(), "Another pack of this name is there already.",
                           "Choose another folder; nothing was changed."};
    } else {
        const std::uint64_t needed = bytes.value().size() + kSpareBytes;
        if (const auto room = free(stick); room && *room < needed)
            return Problem{stick.string(),
                           "There is too little room: " + file + " needs " + megabytes(needed) +
                               " MB, " + megabytes(*room) + " MB are free.",
                           "Make room there, or choose another folder. The pack stays in the "
                           "classroom folder."};
        if (is_room) std::filesystem::create_directories(there.packs(), error);
        const Result<Done> written = writeWhole(target, bytes.value());
        if (!written.ok()) return written.problems();
    }
    if (is_room) {
        const Result<Done> chosen =
            changeClassFile(there, [&](pack::ClassList& list) { list.pack = file; });
        if (!chosen.ok()) return chosen.problems();
    }
    return was_there ? file + " was there already."
                     : file + (is_room ? " is there now, and tablets near it take it."
                                       : " is there now. A colleague can bring it in.");
}

void StickPlace::copy(const pack::Classroom& classroom, const std::string& file) {
    said.clear();
    const Result<std::string> done = copyToStick(classroom, file, pack::tidied(typed));
    problems = done.problems();
    if (done.ok()) said = done.value();
}

}  // namespace wrenlet::desk
