// The foot line at Tomorrow: the last edit, whether it is saved, and what comes next.
#include <algorithm>

#include "editor/windows/keyed.hpp"
#include "editor/windows/last_edit.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

void drawTomorrowFoot(View& view, const Area& foot) {
    using Kind = TomorrowStep::Kind;
    Ui& ui = view.ui;
    TomorrowPlace* place = view.tomorrow;
    const TomorrowStep next = place->next(view.desk.opened(), view.desk.gathering().answers);
    const bool is_print = next.kind == Kind::print;
    const Button way{"next", next.button, ButtonKind::filled,
                     is_print ? capOf(view, Does::print) : ""};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area at{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, at) || hit(view, Does::next_step))
        view.later([place, kind = next.kind, opened = &view.desk.opened()] {
            if (kind == Kind::plan) place->planAnew(*opened);
            if (kind == Kind::see_lesson) place->take("");
            if (kind == Kind::print) place->print(*opened);
        });
    float right = at.x - 16;
    const Button print{"print", "Print", ButtonKind::outlined, capOf(view, Does::print)};
    if (!is_print && place->plan().isMade()) {
        const float wide = buttonWidth(ui, print);
        right -= wide;
        if (button(ui, print, {right, foot.y + 12, wide, 32}))
            view.later([place, opened = &view.desk.opened()] { place->print(*opened); });
        right -= 16;
    }
    const float lead = ui.width(Type::strong, "Next: "), said = ui.width(Type::body, next.sentence);
    if (right - lead - said > foot.x + 430) {
        ui.text(Type::body, right, foot.middleY(), colour::kInk, next.sentence, Align::right);
        right -= said;
        ui.text(Type::strong, right, foot.middleY(), colour::kInk, "Next: ", Align::right);
        right -= lead + 16;
    }
    drawLastEdit(view, foot, right, lastEditOf(*place));
}

}  // namespace wrenlet::desk
