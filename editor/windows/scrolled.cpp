#include "editor/windows/scrolled.hpp"

#include <algorithm>

#include "editor/windows/input.hpp"

namespace wrenlet::desk {

namespace {

constexpr float kStep = 60, kAround = 12;  // u
// What stands at the edges of a page has its focus ring outside it.
constexpr float kRing = 7;

}  // namespace

void drawScrolled(View& view, const char* name, const Area& area,
                  const std::function<float(const Area&)>& draw) {
    Ui& ui = view.ui;
    const float scale = ui.scale();
    const Area outer{area.x - kRing, area.y - kRing, area.width + 2 * kRing, area.height + kRing};
    ImGui::SetCursorScreenPos({outer.x * scale, outer.y * scale});
    ImGui::BeginChild(name, {outer.width * scale, outer.height * scale}, false,
                      ImGuiWindowFlags_NoNav | ImGuiWindowFlags_NoBackground);
    ImDrawList* list = ui.paintOn(ImGui::GetWindowDrawList());
    const float bar = ImGui::GetScrollMaxY() > 0 ? (ui.finger() ? 28.f : 14.f) + 6 - kRing : 0;
    const float top = area.y - ImGui::GetScrollY() / scale;
    const float height = draw({area.x, top, area.width - bar, area.height});
    if (!input::isTyping() && !input::ctrl() && !input::alt()) {
        const float by = input::pressed(Key::down) ? kStep : input::pressed(Key::up) ? -kStep : 0;
        const float page = input::pressed(Key::page_down) ? area.height
                           : input::pressed(Key::page_up) ? -area.height
                                                          : 0;
        if (by + page != 0)
            ImGui::SetScrollY(
                std::clamp(ImGui::GetScrollY() + (by + page) * scale, 0.f, ImGui::GetScrollMaxY()));
    }
    if (const auto held = ui.cameTo(); held && held->x >= area.x) {
        const float above = held->y - kAround - area.y;
        const float below = held->bottom() + kAround - area.bottom();
        const float by = above < 0 ? above : std::max(0.f, below);
        if (by != 0)
            ImGui::SetScrollY(
                std::clamp(ImGui::GetScrollY() + by * scale, 0.f, ImGui::GetScrollMaxY()));
    }
    ImGui::SetCursorScreenPos({outer.x * scale, (top + height) * scale});
    ImGui::Dummy({1, 1});
    ui.paintOn(list);
    ImGui::EndChild();
}

}  // namespace wrenlet::desk
