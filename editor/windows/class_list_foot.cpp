// The foot line at the class list: the last edit, whether it is saved, and what comes next.
#include <algorithm>

#include "editor/windows/keyed.hpp"
#include "editor/windows/last_edit.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

void drawClassListFoot(View& view, const Area& foot) {
    Ui& ui = view.ui;
    const pack::ClassList& list = view.class_list->list();
    const bool has_children = !list.children.empty();
    const bool has_played = view.desk.state() == ClassState::ready;
    const bool has_pack = !list.pack.empty();
    const std::string text = !has_children ? "Type names"
                             : has_played  ? "See the map"
                             : has_pack    ? "Look again"
                                           : "To the words";
    const std::string sentence = !has_children ? "the names of the children"
                                 : has_played  ? "which sounds they still miss"
                                 : has_pack    ? "for answers, after the first session"
                                               : "now a unit of words for them";
    const Button way{"next", text, ButtonKind::filled};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area place{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, place) || hit(view, Does::next_step)) {
        if (!has_children)
            ui.focus("names box");
        else if (has_played)
            view.wish([](Desk& desk) { desk.showMap(); });
        else if (has_pack)
            view.gather();
        else
            view.later([go = view.go] { go(Place::words); });
    }
    const float lead = ui.width(Type::strong, "Next: "), said = ui.width(Type::body, sentence);
    float right = place.x - 16;
    if (right - lead - said > foot.x + 430) {
        ui.text(Type::body, right, foot.middleY(), colour::kInk, sentence, Align::right);
        right -= said;
        ui.text(Type::strong, right, foot.middleY(), colour::kInk, "Next: ", Align::right);
        right -= lead + 16;
    }
    drawLastEdit(view, foot, right, lastEditOf(*view.class_list));
}

}  // namespace wrenlet::desk
