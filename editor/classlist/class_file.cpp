#include "editor/classlist/class_file.hpp"

#include <system_error>

#include "content/common/files.hpp"
#include "editor/classlist/class_merge.hpp"
#include "editor/edits/beside.hpp"
#include "editor/edits/held_file.hpp"

namespace wrenlet::desk {

namespace {

constexpr int kMostWaitMs = 1'000;

// Where a share keeps no locks, nobody is waited for.
std::optional<HeldFile> held(const pack::Classroom& classroom) {
    return HeldFile::wait(classroom.folder / "class-in-use", kMostWaitMs);
}

Problem folderGone(const pack::Classroom& classroom) {
    return {classroom.folder.string(), "The classroom folder is not there.",
            "Plug the stick in again, or look whether the share can be reached."};
}

bool isThere(const pack::Classroom& classroom) {
    std::error_code error;
    return std::filesystem::is_directory(classroom.folder, error);
}

}  // namespace

Result<Done> changeClassFile(const pack::Classroom& classroom,
                             const std::function<void(pack::ClassList&)>& change) {
    if (!isThere(classroom)) return folderGone(classroom);
    const auto hold = held(classroom);
    Result<pack::ClassList> list = pack::openClassList(classroom);
    if (!list.ok()) return list.problems();
    change(list.value());
    return writeWhole(classroom.classFile(), pack::writeClassList(list.value()));
}

std::filesystem::path ClassWriter::asideFile(const std::filesystem::path& aside,
                                             const pack::Classroom& classroom) {
    return aside /
           std::filesystem::u8path("class-" + classroom.folder.filename().string() + ".json");
}

ClassWriter::Outcome ClassWriter::write(const pack::ClassList& list) {
    Outcome outcome;
    if (isThere(classroom_)) {
        const auto hold = held(classroom_);
        outcome = writeHeld(list);
    } else {
        outcome.problems.push_back(folderGone(classroom_));
    }
    if (aside_.empty()) return outcome;
    std::error_code error;
    const auto copy = asideFile(aside_, classroom_);
    if (outcome.is_saved) {
        std::filesystem::remove(copy, error);
    } else {
        std::filesystem::create_directories(aside_, error);
        if (writeWhole(copy, pack::writeClassList(list)).ok())
            outcome.problems.push_back(
                {"class.json", "The class list is kept on this machine meanwhile.",
                 "It is saved in its place as soon as that can be written."});
    }
    return outcome;
}

ClassWriter::Outcome ClassWriter::writeHeld(const pack::ClassList& list) {
    Outcome outcome;
    pack::ClassList made = list;
    std::error_code error;
    if (std::filesystem::exists(classroom_.classFile(), error)) {
        const Result<std::string> bytes = readWhole(classroom_.classFile(), pack::kMostClassBytes);
        if (!bytes.ok()) return {false, bytes.problems(), {}};
        const Result<pack::ClassList> there = pack::readClassList(bytes.value(), "class.json");
        if (!there.ok() || !there.problems().empty()) {
            const auto kept = freeBeside(classroom_.folder, "class-as-found");
            const Result<Done> copied = writeWhole(kept, bytes.value());
            if (!copied.ok()) return {false, copied.problems(), {}};
            outcome.problems.push_back(
                {"class.json",
                 "Not all of it could be read; as it was found it is kept as " +
                     kept.filename().string() + ".",
                 "Look whether something is missing here.", Problem::Weight::warning});
        }
        if (there.ok() && there.value() != saved_) {
            made = mergeClassLists(saved_, list, there.value());
            if (there.value().children != saved_.children || there.value().left != saved_.left)
                outcome.problems.push_back(
                    {"class.json", "Somebody else changed the class list meanwhile.",
                     "Both are brought together; look it through.", Problem::Weight::warning});
        }
    }
    const Result<Done> written = writeWhole(classroom_.classFile(), pack::writeClassList(made));
    if (!written.ok()) return {false, written.problems(), {}};
    outcome.is_saved = true;
    saved_ = made;
    if (made != list) outcome.found = std::move(made);
    return outcome;
}

}  // namespace wrenlet::desk
