// Chooses the next item from what the child did: what is missed, what is due, what she can manage.
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
#include "content/practice/policy.hpp"
#include "content/practice/question_bank.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::practice {

/// An item as it is put before the child.
struct Asked {
    std::size_t item = 0;             // index into the pack's items
    std::vector<std::uint8_t> order;  // order[place] is an index into the item's choices
    enum class Reason : std::uint8_t {
        warm_up,
        focus,
        missed,
        due,
        sure,
        ending
    } reason = Reason::focus;
    bool operator==(const Asked&) const = default;

    /// Where the right choice stands, from the left.
    std::size_t answerPlace(const exercise::Item& item) const;
};

/// Everything the choice depends on.
struct Situation {
    const QuestionBank* bank = nullptr;   // what may be asked
    std::span<const Response> history;    // the child's, oldest first; this session's at the end
    const Mastery* mastery = nullptr;     // of that same history; computed when it is left out
    std::span<const std::string> pinned;  // skill ids the teacher pinned
    std::span<const std::string> focus;   // skill ids: today's (focus.hpp)
    std::int64_t session = 0;
    std::int64_t day = 0;
    std::uint64_t seed = 0;                // the session's
    int asked_so_far = 0;                  // items asked in this session
    bool last_ones = false;                // the session is about to end: end on a success
    bool sure_one = false;                 // it is in doubt whether she listens (attention.hpp)
    std::optional<std::size_t> stay_with;  // prefer items with this item's choices (a sort goes on)
                                           // or that change what came out of it (a chain goes on)
    std::span<const std::string> chain;    // its words so far: it ends at the first of them
};

class Scheduler {
  public:
    virtual ~Scheduler() = default;
    /// Nothing only when no item may be asked at all.
    virtual std::optional<Asked> next(const Situation& situation) const = 0;
};

/// Hard rules, all about this session's first tries but (3), which looks across sessions:
///   (1) no answer place three times running;
///   (2) no sound that an answer turned on three times running;
///   (3) no item among the last 60 asked;
///   (4) no skill more than 5 times running.
/// In a pack too small to keep them all they give way one after another: (3) to 40, 20 and 10, then
/// (4) with 20, 10, 5, 2 and 1 of (3), then (2), then (1); an item twice running comes last of all.
///
/// A session begins few skills that the child was never asked for (Policy::new_skills), but for
/// those she likely knows well and those that are pinned: each begins with an example that takes
/// its time.
///
/// Choices stand in a shuffled order that keeps (1). They keep their places while a sort goes on,
/// and a count's stand in the order of its numbers; then (1) decides which item may be asked.
///
/// The first two items, the last ones and those asked to hear whether the child listens are the
/// likeliest to succeed. Between them the item is asked that teaches most for what it costs in
/// success:
///
///   worth = sound_need L(s) (a + (1 - a) t) R_sound + skill_need L(t) (a + (1 - a) s) R_skill
///   L(x)  = (1 - x) (1 - m + 4 m x (1 - x))
///   score = worth - pull (1 - P(right)) + what is missed before, due, in focus, pinned
///           - what was asked today and before + a small throw
///
/// with s and t the shares believed known of the sound in its place and of the skill; R, its reach,
/// how far the lines of a report would rise if it were known: the questions it stands in, each by
/// its weight and by how far the other of the two is known. So a skill that many sounds wait for
/// comes before one sound, and a sound is learned in a task that the child can do. The pull rises
/// as the day's share of right answers falls short of the aim, and with it the child gets what she
/// can do. The constants stand in policy.hpp. Nothing depends on the order of the items.
class PracticeScheduler final : public Scheduler {
  public:
    explicit PracticeScheduler(const Policy& policy = kPolicy) : policy_(policy) {}
    std::optional<Asked> next(const Situation& situation) const override;

  private:
    Policy policy_;
};

}  // namespace wrenlet::practice
