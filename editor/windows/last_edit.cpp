#include "editor/windows/last_edit.hpp"

#include "editor/look/wording.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

std::string textOf(const LastEdit& edit) {
    if (!edit.done.empty()) return edit.done;
    if (!edit.can_change) return "This unit can be looked at only.";
    return edit.can_redo ? "All taken back." : "All is saved as you work.";
}

}  // namespace

LastEdit lastEditOf(OpenUnit& unit) {
    const History& history = unit.work().history();
    return {history.lastDone(),
            history.canRedo(),
            unit.canChange(),
            unit.isSaved(),
            unit.savedAt(),
            [&unit](bool again) {
                unit.change([again](UnitAtWork& work) { again ? work.redo() : work.undo(); });
            }};
}

LastEdit lastEditOf(OpenClassList& list) {
    const ClassHistory& history = list.work().history();
    return {history.lastDone(),
            history.canRedo(),
            true,
            list.isSaved(),
            list.savedAt(),
            [&list](bool again) { again ? list.change().redo() : list.change().undo(); }};
}

LastEdit lastEditOf(TomorrowPlace& place) {
    const PlanHistory& history = place.work().history();
    return {history.lastDone(),
            history.canRedo(),
            true,
            place.isSaved(),
            place.savedAt(),
            [&place](bool again) { again ? place.redo() : place.undo(); }};
}

float drawLastEdit(View& view, const Area& foot, float right, const LastEdit& edit) {
    Ui& ui = view.ui;
    float x = foot.x + 16;
    const Button undo{"undo", "Undo", ButtonKind::outlined, "Ctrl Z"};
    const Button redo{"redo", "Do it again", ButtonKind::outlined, "Ctrl Y"};
    const bool can_undo = !edit.done.empty();
    const float buttons = (can_undo ? buttonWidth(ui, undo) + 12 : 0) +
                          (edit.can_redo ? buttonWidth(ui, redo) + 8 : 0);
    const float room = right - x - buttons - 12;
    x += ui.text(Type::body, x, foot.y + 20, kInk,
                 ui.fitted(Type::body, wording::capital(textOf(edit)), room)) +
         12;
    ui.text(Type::note, foot.x + 16, foot.y + 40, edit.is_saved ? kSoft : kInk,
            !edit.is_saved              ? "being saved\u2026"
            : edit.saved_at.has_value() ? "saved " + wording::ago(view.now_ms - *edit.saved_at)
                                        : "nothing changed yet");
    if (can_undo) {
        const float width = buttonWidth(ui, undo);
        if (button(ui, undo, {x, foot.y + 12, width, 32}))
            view.later([take_back = edit.take_back] { take_back(false); });
        x += width + 8;
    }
    if (edit.can_redo) {
        const float width = buttonWidth(ui, redo);
        if (x + width < right && button(ui, redo, {x, foot.y + 12, width, 32}))
            view.later([take_back = edit.take_back] { take_back(true); });
        x += width + 8;
    }
    return x;
}

}  // namespace wrenlet::desk
