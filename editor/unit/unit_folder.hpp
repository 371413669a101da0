// Where a unit lies on disk, and saving it as she works: aside, flushed and renamed, soon after
// each change, and never over what somebody else wrote in between.
//
//     units/<id>/unit.json     the unit
//                takes/        her recordings as they were made, each written once
//                pictures/     her own pictures, each written once
//                tried.json    skills that were tried out
//                in-use        held while a desk has the unit open
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/unit.hpp"
#include "editor/edits/held_file.hpp"
#include "editor/edits/saver.hpp"
#include "editor/unit/aside.hpp"

namespace wrenlet::desk {

struct UnitFolder {
    std::filesystem::path folder;
    std::filesystem::path file() const { return folder / "unit.json"; }
    std::filesystem::path takes() const { return folder / "takes"; }
    std::filesystem::path pictures() const { return folder / "pictures"; }
    std::filesystem::path inUse() const { return folder / "in-use"; }
};

/// The units of a classroom folder by id, sorted.
std::vector<UnitFolder> unitsIn(const std::filesystem::path& classroom);

/// A folder that no unit of the classroom has yet, named after the title.
UnitFolder newUnitFolder(const std::filesystem::path& classroom, std::string_view title);

/// Marks a unit as open for as long as this lives. On a network share that keeps no locks two desks
/// are not told apart; UnitSaver then notices what the other one wrote.
class UnitInUse {
  public:
    /// `who` is shown to whoever opens it next ("since 14:05 on room-4"). Error: it is open
    /// elsewhere; the problem says where and since when.
    static Result<std::unique_ptr<UnitInUse>> take(const UnitFolder& folder, std::string_view who);

  private:
    explicit UnitInUse(HeldFile held) : held_(std::move(held)) {}
    HeldFile held_;
};

/// Writes a unit's file. Used from one thread at a time.
class UnitWriter {
  public:
    /// `saved` are the bytes that the file holds now, as they were read; empty: there is no file.
    /// `aside` is a folder on this machine for copies while the unit's own cannot be written. With
    /// `keeps_found` the file is first copied beside, for not all of it could be read.
    UnitWriter(UnitFolder folder, std::string saved, std::filesystem::path aside,
               bool keeps_found = false)
        : folder_(std::move(folder)),
          saved_(std::move(saved)),
          aside_(std::move(aside)),
          keeps_found_(keeps_found) {}

    using Outcome = SaveOutcome<pack::Unit>;
    Outcome write(const pack::Unit& unit);
    const UnitFolder& folder() const { return folder_; }

  private:
    Result<Done> writeBytes(const std::string& bytes);

    UnitFolder folder_;
    std::string saved_;
    std::filesystem::path aside_;
    bool keeps_found_;
};

/// Saves a unit some time after it changed.
class UnitSaver : public SaverOf<pack::Unit> {
  public:
    UnitSaver(UnitWriter writer, Aside& aside, std::function<void()> done = {})
        : SaverOf([writer = std::make_shared<UnitWriter>(std::move(writer))](
                      const pack::Unit& unit) { return writer->write(unit); },
                  aside, std::move(done)) {}
};

/// Opens a unit's file, with the bytes it was read from; a unit that is not there yet is empty and
/// has the folder's name. A copy in `aside`, left when the unit could not be saved, is told of as a
/// warning.
struct OpenedUnitFile {
    pack::Unit unit;
    std::string bytes;
    std::vector<Problem> problems;
};
Result<OpenedUnitFile> openUnitFile(const UnitFolder& folder, const std::filesystem::path& aside);

}  // namespace wrenlet::desk
