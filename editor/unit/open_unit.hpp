// A unit that is open at the desk: the teacher's work on it, the newest look at it, and its saving,
// kept together as time goes on.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "editor/unit/aside.hpp"
#include "editor/unit/own_picture.hpp"
#include "editor/unit/unit_at_work.hpp"
#include "editor/unit/unit_folder.hpp"
#include "editor/unit/unit_look.hpp"

namespace wrenlet::desk {

/// What units are worked on with. All must outlive them.
struct Workbench {
    const KnownWords& known;
    const speech::BlockList& blocked;
    std::filesystem::path pictures;  // the picture set
    std::filesystem::path aside;     // on this machine, for what cannot be saved in its place
    std::string who;                 // "since 14:05 on room-4"
    Aside& looking;
    Aside& saving;
    std::function<void()> wake;  // something is done aside; called from there
    DrawSvg draw_svg = {};       // none: no SVG of her own is taken
};

class OpenUnit {
  public:
    /// Errors: its file cannot be read. A unit that is open elsewhere is opened to be looked at
    /// alone, with a problem that says so.
    static Result<std::unique_ptr<OpenUnit>> open(const UnitFolder& folder, const Workbench& bench);
    /// A new one, empty, with a title.
    static Result<std::unique_ptr<OpenUnit>> make(const std::filesystem::path& classroom,
                                                  const std::string& title, const Workbench& bench);

    const UnitFolder& folder() const { return folder_; }
    const pack::Unit& unit() const { return work_.unit(); }
    const UnitAtWork& work() const { return work_; }
    const Workbench& bench() const { return bench_; }
    /// Does something to the unit, unless it may only be looked at.
    void change(const std::function<void(UnitAtWork&)>& what);
    bool canChange() const { return in_use_ != nullptr; }

    /// Never null; it may be of the unit as it was some changes ago.
    const UnitLook& look() const { return *look_; }
    bool isLookedAt() const { return has_looked_ && asked_ == work_.changes() && !looks_.isBusy(); }

    bool isSaved() const { return saver_.isSaved(); }
    std::optional<std::int64_t> savedAt() const { return saver_.savedAt(); }
    /// What went wrong with opening it and with saving it last.
    std::vector<Problem> problems() const;

    /// Looks and saves as is due.
    void step(std::int64_t now_ms);
    std::optional<std::int64_t> due() const { return saver_.due(); }
    /// Saves what is not saved; at the end.
    void finish(std::int64_t now_ms) {
        saver_.changed(work_.changes(), now_ms);
        saver_.finish(work_.unit(), now_ms);
    }

  private:
    OpenUnit(UnitFolder folder, OpenedUnitFile opened, std::unique_ptr<UnitInUse> in_use,
             const Workbench& bench);

    UnitFolder folder_;
    Workbench bench_;
    std::unique_ptr<UnitInUse> in_use_;
    std::vector<Problem> opening_;
    UnitAtWork work_;
    UnitSaver saver_;
    Newest<std::shared_ptr<const UnitLook>> looks_;
    std::shared_ptr<const UnitLook> look_;
    void lookAgain(pack::Unit unit);

    std::optional<std::uint64_t> asked_;   // the change up to which it was seen to
    std::optional<pack::Unit> looked_at_;  // without recordings, which no look depends on
    bool has_looked_ = false;
};

}  // namespace wrenlet::desk
