// The teacher's side of reception.hpp, and what is done for it from time to time.
#include <algorithm>
#include <system_error>
#include <utility>

#include "content/common/files.hpp"
#include "content/link/join_code.hpp"
#include "editor/serve/reception.hpp"

namespace wrenlet::desk {

Result<ShownCode> Reception::openCode() {
    const std::int64_t now = parts_.clock.unixMillis();
    auto door = link::JoinDoor::open(link::makeCode(parts_.entropy), now, parts_.entropy);
    if (!door)
        return Problem{"The code", "This computer has too little memory free to make one.",
                       "Close other programs and try again."};
    const ShownCode shown{door->code(), door->closesAt(), 0};
    const std::lock_guard lock(door_mutex_);
    door_ = std::move(door);
    return shown;
}

void Reception::closeCode() {
    const std::lock_guard lock(door_mutex_);
    door_.reset();
}

std::optional<ShownCode> Reception::code() const {
    const std::lock_guard lock(door_mutex_);
    if (!door_ || !door_->isOpen(parts_.clock.unixMillis())) return std::nullopt;
    return ShownCode{door_->code(), door_->closesAt(), door_->wrong()};
}

std::vector<SeenTablet> Reception::tablets() const {
    const std::int64_t now = parts_.clock.unixMillis();
    std::vector<std::shared_ptr<TabletDesk>> all;
    {
        const std::lock_guard lock(list_mutex_);
        for (const auto& [name, tablet] : tablets_) all.push_back(tablet);
    }
    const std::string hash = class_now_.at(now)->welcome.pack_hash;
    std::vector<SeenTablet> seen;
    for (const auto& tablet : all) {
        const std::lock_guard lock(tablet->mutex);
        if (tablet->listed.removed) continue;
        SeenTablet one;
        one.tablet = tablet->listed.identity.tablet;
        one.seen_ms = std::max(tablet->seen_ms, tablet->listed.seen_ms);
        const bool is_here = tablet->seen_ms > 0 && now - tablet->seen_ms < kAwayMs;
        if (is_here)
            one.state = tablet->playing ? SeenTablet::State::playing : SeenTablet::State::waiting;
        one.unsent = tablet->unsent;
        one.kept = tablet->kept;
        one.clock_off_ms = tablet->clock_off_ms;
        one.has_pack = !hash.empty() && tablet->pack_hash == hash;
        seen.push_back(std::move(one));
    }
    return seen;
}

Result<Done> Reception::remove(const std::string& tablet) {
    return setRemoved(tablet, true);
}

Result<Done> Reception::letBack(const std::string& tablet) {
    return setRemoved(tablet, false);
}

Result<Done> Reception::setRemoved(const std::string& name, bool removed) {
    const auto tablet = find(name);
    if (!tablet) return Done{};
    const std::lock_guard lock(tablet->mutex);
    const std::lock_guard list(list_mutex_);
    const bool before = std::exchange(listed_[name].removed, removed);
    if (auto kept = keepList(); !kept.ok()) {
        listed_[name].removed = before;
        return kept;
    }
    tablet->listed.removed = removed;
    changed();
    return Done{};
}

void Reception::forgetDeleted(const std::vector<std::string>& deleted, std::int64_t now_ms) {
    if (deleted.empty() || deleted == forgotten_) return;
    std::vector<std::shared_ptr<TabletDesk>> all;
    {
        const std::lock_guard lock(list_mutex_);
        for (const auto& [name, tablet] : tablets_) all.push_back(tablet);
    }
    bool all_well = true;
    for (const auto& tablet : all) {
        const std::lock_guard lock(tablet->mutex);
        if (const auto gone = tablet->forget(deleted, now_ms); !gone.ok()) {
            failed(gone.problems());
            all_well = false;
        }
    }
    if (all_well) forgotten_ = deleted;
}

bool Reception::handInOne(std::int64_t now_ms) {
    const auto served = class_now_.at(now_ms);
    if (!served->problems.empty()) {
        const std::lock_guard lock(told_mutex_);
        problems_ = served->problems;
    }
    forgetDeleted(served->welcome.deleted, now_ms);
    std::vector<std::shared_ptr<TabletDesk>> all;
    {
        const std::lock_guard lock(list_mutex_);
        for (const auto& [name, tablet] : tablets_) all.push_back(tablet);
    }
    for (const auto& tablet : all) {
        {
            const std::lock_guard lock(tablet->mutex);
            if (!tablet->isDue(now_ms)) continue;
        }
        if (handIn(*tablet, now_ms)) return true;
    }
    return false;
}

// The tablet is held while its answers are copied, and not while they are written: it goes on.
bool Reception::handIn(TabletDesk& tablet, std::int64_t now_ms) {
    const std::int64_t began = parts_.clock.unixMillis();
    std::filesystem::path file;
    const auto bytes = [&] {
        const std::lock_guard lock(tablet.mutex);
        file = folder_.classroom.snapshot(tablet.listed.identity.tablet);
        return tablet.toHandIn(now_ms);
    }();
    std::vector<Problem> problems = bytes.problems();
    if (bytes.ok()) {
        std::error_code ignored;
        std::filesystem::create_directories(file.parent_path(), ignored);
        problems = writeWhole(file, bytes.value()).problems();
    }
    {
        const std::lock_guard lock(tablet.mutex);
        tablet.handedIn(problems.empty(), parts_.clock.unixMillis() - began);
    }
    if (!problems.empty()) {
        failed(problems);
        return false;
    }
    {
        const std::lock_guard told(told_mutex_);
        ++handed_in_;
    }
    changed();
    return true;
}

std::uint64_t Reception::handedIn() const {
    const std::lock_guard lock(told_mutex_);
    return handed_in_;
}

}  // namespace wrenlet::desk
