// Where the teacher stands with handing out: the next pack is made aside as soon as she comes here,
// and one press puts it into the classroom folder; another goes back to an earlier one.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "editor/document/opened_class.hpp"
#include "editor/handout/pack_build.hpp"
#include "editor/handout/stick.hpp"
#include "editor/unit/open_unit.hpp"

namespace wrenlet::desk {

/// A tablet as its answers tell of it.
struct TabletLine {
    std::string tablet;
    std::string pack;  // that its newest answer is of: "on-the-farm 7"
    std::int64_t last_ms = 0;
    std::int64_t answers = 0;
};
/// The newest answers first.
std::vector<TabletLine> tabletsOf(const OpenedClass& opened);

class HandOutPlace {
  public:
    struct Parts {
        Aside& building;
        ClipMaking making;
        std::function<void()> wake;
        FreeBytes free = freeBytesOf;
    };
    HandOutPlace(const OpenUnit& unit, pack::Classroom classroom, Parts parts);
    ~HandOutPlace();

    /// Makes the next pack, unless the one at hand is of the unit as it is.
    void build();
    void stop();
    bool isBuilding() const { return progress_ != nullptr; }
    std::size_t done() const { return progress_ ? progress_->done.load() : 0; }
    std::size_t all() const { return progress_ ? progress_->all.load() : 0; }
    /// The pack at hand; null before one is made and after the unit was changed.
    const BuiltPack* built() const;

    /// Errors stand in problems().
    void handOut();
    void goBackTo(const std::string& file);
    const std::vector<PackFile>& packs() const { return packs_; }  // the newest first
    const std::vector<Problem>& problems() const { return problems_; }
    /// The pack that was handed out or gone back to here; empty: none.
    const std::string& handedOut() const { return handed_out_; }
    StickPlace& stick() { return stick_; }

    /// The classroom folder when it was last looked at: a stick may have been pulled out.
    struct FolderSeen {
        bool is_here = false;
        std::optional<std::uint64_t> free_bytes = {};  // none: not known
    };
    const FolderSeen& folder() const { return folder_; }
    void lookAtFolder();

    /// Takes what was made. Where clips are kept on a shelf, the pack is also made ahead, once the
    /// unit has been left alone for kQuietMs, so that she does not wait for it later.
    void step(std::int64_t now_ms);
    /// When step() has something to do by itself.
    std::optional<std::int64_t> due() const;

  private:
    static constexpr std::int64_t kQuietMs = 2000;
    bool wantsAhead() const;

    const OpenUnit& unit_;
    pack::Classroom classroom_;
    Parts parts_;
    struct Made {
        std::uint64_t changes;
        std::optional<BuiltPack> pack;
    };
    Newest<std::shared_ptr<Made>> newest_;
    std::shared_ptr<BuildProgress> progress_;  // of the running build
    std::optional<BuiltPack> built_;
    std::uint64_t built_changes_ = 0;
    std::vector<PackFile> packs_;
    std::vector<Problem> problems_;
    std::string handed_out_;
    StickPlace stick_;
    FolderSeen folder_;
    std::uint64_t seen_changes_ = 0;          // of the unit, at the last step
    std::optional<std::int64_t> changed_ms_;  // when they were seen; none: made ahead since
};

}  // namespace wrenlet::desk
