// What the teacher did to a unit, so that all of it can be taken back and done again, without
// limit.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "editor/unit/edit.hpp"

namespace wrenlet::desk {

/// One thing that she did: what undo takes back in one step.
struct Action {
    std::string said;  // "40 words added."; shown beside Undo
    std::vector<Edit> edits;
};

class History {
  public:
    /// Does it, and forgets what was undone before. An action without edits does nothing.
    void act(pack::Unit& unit, const Action& action);
    /// Takes the last thing back; false when there is none.
    bool undo(pack::Unit& unit);
    bool redo(pack::Unit& unit);

    bool canUndo() const { return !done_.empty(); }
    bool canRedo() const { return !undone_.empty(); }
    /// What was done last, or an empty text.
    const std::string& lastDone() const;
    /// What would be done again, or an empty text.
    const std::string& nextRedo() const;
    /// Grows with each change of the unit, undo and redo among them; never shrinks.
    std::uint64_t changes() const { return changes_; }

  private:
    /// Applies in order and returns what takes it back, in the order to apply.
    Action applied(pack::Unit& unit, const Action& action);

    std::vector<Action> done_, undone_;  // each as the edits that reverse it
    std::uint64_t changes_ = 0;
};

}  // namespace wrenlet::desk
