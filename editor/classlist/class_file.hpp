// The class list on disk: class.json of a classroom folder, read anew before each write, so that
// nothing that another desk or another part of this one wrote is lost.
#pragma once

#include <filesystem>
#include <functional>
#include <string>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"
#include "editor/edits/saver.hpp"

namespace wrenlet::desk {

/// Reads class.json, changes it and writes it, held meanwhile. Errors: not there, not readable, not
/// writable; what was there stays whole.
Result<Done> changeClassFile(const pack::Classroom& classroom,
                             const std::function<void(pack::ClassList&)>& change);

/// Writes the list that is worked on. Used from one thread at a time.
class ClassWriter {
  public:
    using Outcome = SaveOutcome<pack::ClassList>;

    /// `saved` is what the file holds, as it was read. `aside` is a folder on this machine for a
    /// copy while the classroom folder cannot be written; empty: none is kept.
    ClassWriter(pack::Classroom classroom, pack::ClassList saved, std::filesystem::path aside)
        : classroom_(std::move(classroom)), saved_(std::move(saved)), aside_(std::move(aside)) {}

    /// What somebody else changed is brought together with `list`, and handed back as found. A file
    /// of which not all is understood is copied beside before it is written over.
    Outcome write(const pack::ClassList& list);

    /// Where the copy of a class list is put while its folder cannot be written.
    static std::filesystem::path asideFile(const std::filesystem::path& aside,
                                           const pack::Classroom& classroom);

  private:
    Outcome writeHeld(const pack::ClassList& list);

    pack::Classroom classroom_;
    pack::ClassList saved_;
    std::filesystem::path aside_;
};

}  // namespace wrenlet::desk
