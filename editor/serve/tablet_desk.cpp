#include "editor/serve/tablet_desk.hpp"

#include <algorithm>
#include <system_error>
#include <utility>

namespace wrenlet::desk {

namespace {

namespace fs = std::filesystem;

constexpr std::int64_t kQuietMs = 2000;      // no more came for so long,
constexpr std::int64_t kLongestMs = 15'000;  // or it has waited for so long
constexpr std::int64_t kRestTimes = 50;      // as long as the last one took, before the next

}  // namespace

TabletDesk::TabletDesk(LinkFolder folder, ListedTablet given)
    : listed(std::move(given)), number(listed.number), folder_(std::move(folder)) {
    // Cut off before it handed in, its store has a log beside it, or there is no file of it yet.
    std::error_code error;
    fs::path log = folder_.store(listed.identity.tablet);
    if (!fs::exists(log, error)) return;
    log += "-wal";
    if (fs::exists(log, error) ||
        !fs::exists(folder_.classroom.snapshot(listed.identity.tablet), error))
        first_ms_ = 0;
}

bool TabletDesk::mayAsk(std::int64_t now_ms) {
    const double passed = double(std::clamp<std::int64_t>(now_ms - allowed_ms_, 0, 60'000));
    allowed_ms_ = now_ms;
    allowance_ = std::min<double>(2 * kMostMessagesASecond,
                                  allowance_ + passed * kMostMessagesASecond / 1000);
    if (allowance_ < 1) return false;
    allowance_ -= 1;
    return true;
}

Result<Done> TabletDesk::openStore() {
    if (store_) return Done{};
    const std::string& tablet = listed.identity.tablet;
    const fs::path file = folder_.store(tablet);
    std::error_code error;
    const bool is_new = !fs::exists(file, error);
    auto opened = practice::Store::open(file, tablet);
    if (!opened.ok()) return opened.problems();
    fs::permissions(file, fs::perms::owner_read | fs::perms::owner_write, error);
    // What another desk handed in for it stays in what this one hands in.
    if (is_new && fs::exists(folder_.classroom.snapshot(tablet), error)) {
        const auto before = practice::readSnapshot(folder_.classroom.snapshot(tablet));
        if (before.ok()) {
            const auto taken = opened.value().take(before.value());
            if (!taken.ok()) return taken.problems();
        }
    }
    store_ = std::move(opened.value());
    return Done{};
}

Result<link::Kept> TabletDesk::keep(std::span<const practice::Response> responses,
                                    std::int64_t now_ms) {
    if (const auto opened = openStore(); !opened.ok()) return opened.problems();
    auto taken = store_->take(responses);
    if (!taken.ok()) return taken.problems();
    kept += static_cast<std::int64_t>(taken.value().kept.size());
    newest_ms_ = now_ms;
    if (!first_ms_) first_ms_ = now_ms;
    return link::Kept{std::move(taken.value().kept), std::move(taken.value().refused)};
}

Result<Done> TabletDesk::forget(std::span<const std::string> children, std::int64_t now_ms) {
    std::error_code error;
    if (!store_ && !fs::exists(folder_.store(listed.identity.tablet), error)) return Done{};
    if (const auto opened = openStore(); !opened.ok()) return opened.problems();
    const auto gone = store_->forget(children);
    if (!gone.ok()) return gone.problems();
    if (gone.value() > 0 && !first_ms_) first_ms_ = now_ms;
    return Done{};
}

bool TabletDesk::isDue(std::int64_t now_ms) const {
    if (!first_ms_) return false;
    if (now_ms < handed_in_ms_ + kRestTimes * took_ms_ && now_ms >= handed_in_ms_) return false;
    return now_ms - newest_ms_ >= kQuietMs || now_ms - *first_ms_ >= kLongestMs ||
           now_ms < newest_ms_;
}

Result<std::string> TabletDesk::toHandIn(std::int64_t now_ms) {
    handed_in_ms_ = now_ms;
    if (const auto opened = openStore(); !opened.ok()) return opened.problems();
    auto bytes = store_->snapshotBytes();
    if (bytes.ok()) first_ms_.reset();
    return bytes;
}

void TabletDesk::handedIn(bool well, std::int64_t took_ms) {
    constexpr std::int64_t kAfterTroubleMs = 200;  // then it is tried again less often
    took_ms_ = std::max<std::int64_t>(well ? 1 : kAfterTroubleMs, took_ms);
    if (!well && !first_ms_) first_ms_ = handed_in_ms_;
}

}  // namespace wrenlet::desk
