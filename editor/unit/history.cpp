#include "editor/unit/history.hpp"

#include <algorithm>

namespace wrenlet::desk {

namespace {

const std::string kNothing;

}  // namespace

Action History::applied(pack::Unit& unit, const Action& action) {
    Action back{action.said, {}};
    for (const Edit& edit : action.edits) back.edits.push_back(apply(unit, edit));
    std::reverse(back.edits.begin(), back.edits.end());
    ++changes_;
    return back;
}

void History::act(pack::Unit& unit, const Action& action) {
    if (action.edits.empty()) return;
    done_.push_back(applied(unit, action));
    undone_.clear();
}

bool History::undo(pack::Unit& unit) {
    if (done_.empty()) return false;
    undone_.push_back(applied(unit, done_.back()));
    done_.pop_back();
    return true;
}

bool History::redo(pack::Unit& unit) {
    if (undone_.empty()) return false;
    done_.push_back(applied(unit, undone_.back()));
    undone_.pop_back();
    return true;
}

const std::string& History::lastDone() const {
    return done_.empty() ? kNothing : done_.back().said;
}

const std::string& History::nextRedo() const {
    return undone_.empty() ? kNothing : undone_.back().said;
}

}  // namespace wrenlet::desk
