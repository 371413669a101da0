#include "editor/windows/page_head.hpp"

#include <algorithm>

#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

float drawPageButtons(View& view) {
    const struct {
        Page page;
        const char* name;
        void (*show)(Desk&);
    } pages[] = {{Page::papers, "Papers", [](Desk& desk) { desk.showPapers(); }},
                 {Page::tomorrow, "Tomorrow", [](Desk& desk) { desk.showTomorrow(); }},
                 {Page::child, "Child", [](Desk& desk) { desk.showChild(); }},
                 {Page::map, "Map", [](Desk& desk) { desk.showMap(); }},
                 {Page::list, "List", [](Desk& desk) { desk.showList(); }}};
    float x = view.width - 16;
    for (const auto& page : pages) {
        const bool needs_list = page.page != Page::map && page.page != Page::child;
        const bool needs_children = page.page != Page::list;
        const bool has_any = (!needs_list || view.class_list != nullptr) &&
                             (!needs_children || !view.desk.opened().children.empty());
        if (!has_any) continue;
        const Button way{std::string("page:") + page.name, page.name,
                         view.desk.page() == page.page ? ButtonKind::on : ButtonKind::outlined};
        const float width = buttonWidth(view.ui, way);
        if (button(view.ui, way, {x - width, 16, width, 34})) view.wish(page.show);
        x -= width + 8;
    }
    return x + 8;
}

std::size_t drawScrollBar(Ui& ui, const ScrollBar& bar, const Area& area) {
    const float count = static_cast<float>(bar.count), shown = static_cast<float>(bar.shown);
    const float length = bar.upright ? area.height : area.width;
    const float grip = std::max(24.f, length * shown / count);
    const float most = std::max(1.f, count - shown);
    const float from = (length - grip) * static_cast<float>(bar.first) / most;
    ui.fill(area, colour::kWash, 4);
    ui.fill(bar.upright ? Area{area.x + 2, area.y + from, area.width - 4, grip}
                        : Area{area.x + from, area.y + 2, grip, area.height - 4},
            colour::kEdge, 4);
    ui.press(bar.label, area, false);
    if (!ImGui::IsItemActive()) return bar.first;
    const ImVec2 mouse = ImGui::GetIO().MousePos;
    const float at = bar.upright ? mouse.y / ui.scale() - area.y : mouse.x / ui.scale() - area.x;
    const float share = (at - grip / 2) / std::max(1.f, length - grip);
    return static_cast<std::size_t>(std::clamp(share, 0.f, 1.f) * most + 0.5f);
}

}  // namespace wrenlet::desk
