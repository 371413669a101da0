#include "editor/windows/page_head.hpp"

#include <algorithm>

#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

float drawPageButtons(View& view) {
    const bool on_map = view.desk.page() == Page::map;
    const Button child{"page:Child", "Child", on_map ? ButtonKind::outlined : ButtonKind::on, ""};
    const Button map{"page:Map", "Map", on_map ? ButtonKind::on : ButtonKind::outlined, ""};
    const float child_width = buttonWidth(view.ui, child), map_width = buttonWidth(view.ui, map);
    const float child_x = view.width - 16 - child_width, map_x = child_x - 8 - map_width;
    if (button(view.ui, map, {map_x, 16, map_width, 34}))
        view.wish([](Desk& desk) { desk.showMap(); });
    if (button(view.ui, child, {child_x, 16, child_width, 34}))
        view.wish([](Desk& desk) { desk.showChild(); });
    return map_x;
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
