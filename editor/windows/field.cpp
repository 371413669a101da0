// Where something is typed: Dear ImGui's own text field, in the desk's clothes, as one of the
// keyboard's stops.
#include <imgui_internal.h>
#include <imgui_stdlib.h>

#include "editor/windows/ui.hpp"

namespace wrenlet::desk {

namespace {

ImVec4 vec(Colour colour) {
    return {colour.red / 255.f, colour.green / 255.f, colour.blue / 255.f, 1};
}

}  // namespace

Ui::Typing Ui::field(const std::string& label, const Area& area, std::string& text,
                     const std::string& hint) {
    constexpr float kRadius = 8, kPad = 12;
    note(label, area);
    stage_.stops.push_back(label);
    const bool takes_cursor = stage_.moved && stage_.held == label;
    fill(area, colour::kCard, kRadius);
    edge(area, colour::kEdge, kRadius);

    const ImFont* font = atlas_.font(Type::body);
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding,
                        {px(kPad), (px(area.height) - font->FontSize) / 2});
    for (const ImGuiCol ground :
         {ImGuiCol_FrameBg, ImGuiCol_FrameBgHovered, ImGuiCol_FrameBgActive})
        ImGui::PushStyleColor(ground, ImVec4{0, 0, 0, 0});
    ImGui::PushStyleColor(ImGuiCol_TextDisabled, vec(colour::kSoft));
    ImGui::PushStyleColor(ImGuiCol_TextSelectedBg, vec(colour::kPaleDeep));
    ImGui::SetCursorScreenPos(at(area.x, area.y));
    ImGui::SetNextItemWidth(px(area.width));
    if (takes_cursor) ImGui::SetKeyboardFocusHere();
    Typing typing;
    typing.entered = ImGui::InputTextWithHint(
        ("##" + label).c_str(), hint.c_str(), &text,
        ImGuiInputTextFlags_EnterReturnsTrue | ImGuiInputTextFlags_NoUndoRedo);
    typing.active = ImGui::IsItemActive();
    ImGui::PopStyleColor(5);
    ImGui::PopStyleVar();
    if (typing.active && stage_.moved && !takes_cursor) {
        ImGui::ClearActiveID();  // Tab went on to another stop
        typing.active = false;
    }
    if (typing.active) {
        stage_.held = label;
        focusRing(area.inset(3), kRadius);
    }
    return typing;
}

}  // namespace wrenlet::desk
