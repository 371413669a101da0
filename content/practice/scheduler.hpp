// Chooses the next item from what the child did: two focus skills, what was missed, what is due.
// Hard rules first (no answer place and no sound three times running), then a score; the same seed
// and the same history give the same items.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/practice/mastery.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::practice {

/// An item as it is put before the child.
struct Asked {
    std::size_t item = 0;             // index into the pack's items
    std::vector<std::uint8_t> order;  // order[place] is an index into the item's choices
    enum class Reason : std::uint8_t { warm_up, focus, missed, due, ending } reason = Reason::focus;
    bool operator==(const Asked&) const = default;

    /// Where the right choice stands, from the left.
    std::size_t answerPlace(const exercise::Item& item) const;
};

/// Everything the choice depends on.
struct Situation {
    std::span<const exercise::Item> items;
    std::span<const Response> history;    // the child's, oldest first; this session's at the end
    const Mastery* mastery = nullptr;     // of that same history
    std::span<const std::string> pinned;  // skill ids the teacher pinned
    std::int64_t session = 0;
    std::int64_t day = 0;
    std::uint64_t seed = 0;                // the session's
    int asked_so_far = 0;                  // items asked in this session
    bool last_ones = false;                // the session is about to end: end on a success
    std::optional<std::size_t> stay_with;  // prefer items with this item's choices (a sort goes on)
};

class Scheduler {
  public:
    virtual ~Scheduler() = default;
    /// Nothing only when no item may be asked at all.
    virtual std::optional<Asked> next(const Situation& situation) const = 0;
};

/// The two skills this child works on today, most missed first, pinned ones before all.
std::vector<std::string> focusSkills(const Situation& situation);

class FirstScheduler final : public Scheduler {
  public:
    std::optional<Asked> next(const Situation& situation) const override;
};

}  // namespace wrenlet::practice
