// The Class place before there is anything to see: what it is for, and the one way to begin.
#include "editor/windows/page_head.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

void drawEmptyPage(View& view) {
    Ui& ui = view.ui;
    const OpenedClass& opened = view.desk.opened();
    Area body = view.frame.body;
    ui.text(Type::place, body.x, kTitleMiddle, colour::kInk, "Class");
    if (view.class_list != nullptr) drawPageButtons(view);
    for (const Problem& problem : opened.problems) {
        const float width = std::min(body.width, 760.f);
        const std::string text =
            problem.where + (problem.way_out.empty() ? "" : ". ") + problem.way_out;
        const float height = warningCard(ui, body.x, body.y, width, problem.what, text, true) + 12;
        body.y += height;
        body.height -= height;
    }
    switch (view.desk.state()) {
        case ClassState::no_folder:
            emptyPlace(
                ui, body, "No classroom is open",
                "The desk shows which sounds each child still misses. Drop a classroom folder "
                "on this window, or start it with the folder's name: wrenlet-desk CLASSROOM");
            break;
        case ClassState::no_list:
            emptyPlace(ui, body, "This folder has no class to show",
                       "Looked in " + opened.classroom.folder.string() +
                           ". A classroom folder holds class.json with the children's names. Put "
                           "it right, or drop another folder on this window.");
            break;
        case ClassState::no_children:
            emptyPlace(
                ui, body, "No children yet",
                "class.json in the classroom folder lists the children, each with a name and "
                "a badge. Write them there, then look again.");
            break;
        case ClassState::nobody_played:
            emptyPlace(ui, body, "Nobody has played yet",
                       "The map fills after the first session: each tablet leaves its answers in "
                       "this classroom folder, and the desk gathers them.");
            break;
        case ClassState::ready:
            break;
    }
}

}  // namespace wrenlet::desk
