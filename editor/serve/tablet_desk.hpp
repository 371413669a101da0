// One tablet that joined over the network, as the desk has it: its place on the list, what it last
// said of itself, and what it sent, which goes to disk before the tablet is told so and into the
// classroom's folder tablets/ a little later, as the file that a native tablet leaves there.
#pragma once

#include <cstdint>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "content/link/message.hpp"
#include "content/practice/store.hpp"
#include "editor/serve/link_folder.hpp"

namespace wrenlet::desk {

/// Messages a second that a tablet may go on sending; some thirty times what a child gives.
inline constexpr int kMostMessagesASecond = 20;

class TabletDesk {
  public:
    TabletDesk(LinkFolder folder, ListedTablet listed);

    // Whoever calls what follows holds it.
    std::mutex mutex;

    ListedTablet listed;
    std::uint64_t number = 0;  // of its last ask; listed.number may run ahead of it
    std::int64_t seen_ms = 0;  // in this run; 0: not yet
    bool playing = false;
    std::int64_t unsent = 0;
    std::string pack_hash;
    std::int64_t clock_off_ms = 0;  // how far its clock is ahead of the desk's
    std::int64_t kept = 0;          // responses, in this run

    /// False when it sends faster than any child plays.
    bool mayAsk(std::int64_t now_ms);

    /// Opens its store ahead, so that its first answer does not wait for that. Errors as keep()'s.
    Result<Done> prepare() { return openStore(); }
    /// On disk when this returns. Errors: the disk is full or read-only; nothing is kept then.
    Result<link::Kept> keep(std::span<const practice::Response> responses, std::int64_t now_ms);

    /// Takes what these children did out of all that is kept here.
    Result<Done> forget(std::span<const std::string> children, std::int64_t now_ms);

    /// Whether something is to be handed in, and has waited long enough for more to come with it.
    bool isDue(std::int64_t now_ms) const;
    bool hasMore() const { return first_ms_.has_value(); }
    /// What is to be handed in; what comes from now on is more. Where writing it failed, it is
    /// still to be handed in.
    Result<std::string> toHandIn(std::int64_t now_ms);
    /// What it took, so that a slow disk is not kept busy with it.
    void handedIn(bool well, std::int64_t took_ms);

  private:
    Result<Done> openStore();

    LinkFolder folder_;
    std::optional<practice::Store> store_;
    std::optional<std::int64_t> first_ms_;  // when the oldest came that is not handed in
    std::int64_t newest_ms_ = 0, handed_in_ms_ = 0, took_ms_ = 0;
    double allowance_ = 2 * kMostMessagesASecond;
    std::int64_t allowed_ms_ = 0;
};

}  // namespace wrenlet::desk
