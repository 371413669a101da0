// What the teacher did to a document, so that all of it can be taken back and done again, without
// limit. A document is any value with `Edit apply(Document&, const Edit&)`, which does an edit and
// returns the one that takes it back.
#pragma once

#include <algorithm>
#include <cstdint>
#include <string>
#include <vector>

namespace wrenlet::desk {

/// One thing that she did: what undo takes back in one step.
template <class Edit>
struct ActionOf {
    std::string said;  // "40 words added."; shown beside Undo
    std::vector<Edit> edits;
};

template <class Document, class Edit>
class HistoryOf {
  public:
    using Action = ActionOf<Edit>;

    /// Does it, and forgets what was undone before. An action without edits does nothing.
    void act(Document& document, const Action& action) {
        if (action.edits.empty()) return;
        done_.push_back(applied(document, action));
        undone_.clear();
    }
    /// Takes the last thing back; false when there is none.
    bool undo(Document& document) { return moved(document, done_, undone_); }
    bool redo(Document& document) { return moved(document, undone_, done_); }

    bool canUndo() const { return !done_.empty(); }
    bool canRedo() const { return !undone_.empty(); }
    /// What was done last, or an empty text.
    std::string lastDone() const { return done_.empty() ? "" : done_.back().said; }
    /// What would be done again, or an empty text.
    std::string nextRedo() const { return undone_.empty() ? "" : undone_.back().said; }
    /// Grows with each change of the document, undo and redo among them; never shrinks.
    std::uint64_t changes() const { return changes_; }
    /// Another document stands in its place: what was done to the one before is forgotten.
    void startAnew() {
        done_.clear();
        undone_.clear();
        ++changes_;
    }

  private:
    /// Applies in order and returns what takes it back, in the order to apply.
    Action applied(Document& document, const Action& action) {
        Action back{action.said, {}};
        for (const Edit& edit : action.edits) back.edits.push_back(apply(document, edit));
        std::reverse(back.edits.begin(), back.edits.end());
        ++changes_;
        return back;
    }
    bool moved(Document& document, std::vector<Action>& from, std::vector<Action>& to) {
        if (from.empty()) return false;
        to.push_back(applied(document, from.back()));
        from.pop_back();
        return true;
    }

    std::vector<Action> done_, undone_;  // each as the edits that reverse it
    std::uint64_t changes_ = 0;
};

}  // namespace wrenlet::desk
