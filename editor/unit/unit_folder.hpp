// Where a unit lies on disk, and saving it as she works: aside, flushed and renamed, soon after
// each change, and never over what somebody else wrote in between.
//
//     units/<id>/unit.json     the unit
//                takes/        her recordings as they were made, each written once
//                pictures/     her own pictures, each written once
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
    ~UnitInUse();
    UnitInUse(const UnitInUse&) = delete;
    UnitInUse& operator=(const UnitInUse&) = delete;

  private:
    explicit UnitInUse(int handle) : handle_(handle) {}
    int handle_;
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

    struct Outcome {
        bool is_saved = false;
        std::vector<Problem> problems;
    };
    Outcome write(const pack::Unit& unit);
    const UnitFolder& folder() const { return folder_; }

  private:
    Result<Done> writeBytes(const std::string& bytes);

    UnitFolder folder_;
    std::string saved_;
    std::filesystem::path aside_;
    bool keeps_found_;
};

/// Saves a unit some time after it changed, aside. Milliseconds are those of any steady clock.
class UnitSaver {
  public:
    static constexpr std::int64_t kQuietMs = 400;     // after the last change
    static constexpr std::int64_t kLongestMs = 1500;  // after the first that is not saved
    static constexpr std::int64_t kAgainMs = 2000;    // after a try that did not work

    /// `aside` must outlive it; `done` is called there when a try has ended.
    UnitSaver(UnitWriter writer, Aside& aside, std::function<void()> done = {});

    /// The unit changed for the `changes`th time.
    void changed(std::uint64_t changes, std::int64_t now_ms);
    /// When step() has something to do next.
    std::optional<std::int64_t> due() const;
    /// Takes in what became of the last try, and tries again if that is due.
    void step(const pack::Unit& unit, std::int64_t now_ms);
    /// Saves what is not saved, and waits for it: at the end.
    void finish(const pack::Unit& unit, std::int64_t now_ms);

    bool isSaved() const { return changes_ == saved_changes_; }
    /// When it was last saved; none: not since it was opened.
    std::optional<std::int64_t> savedAt() const { return saved_at_; }
    /// Why the last try did not work, or what to know of it.
    const std::vector<Problem>& problems() const { return problems_; }

  private:
    void tryNow(const pack::Unit& unit, std::int64_t now_ms);
    void takeOutcome();

    struct Tried {
        std::uint64_t changes;
        std::int64_t at_ms;
        UnitWriter::Outcome outcome;
    };
    std::shared_ptr<UnitWriter> writer_;
    Newest<Tried> newest_;
    std::uint64_t changes_ = 0, saved_changes_ = 0, tried_changes_ = 0;
    std::int64_t first_ms_ = 0, last_ms_ = 0, tried_ms_ = 0;
    bool failed_ = false;
    std::optional<std::int64_t> saved_at_;
    std::vector<Problem> problems_;
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
