#include "editor/windows/style.hpp"

#include <cmath>

#include "editor/look/palette.hpp"

namespace wrenlet::desk {

namespace {

ImVec4 vec(Colour colour) {
    return {colour.red / 255.f, colour.green / 255.f, colour.blue / 255.f, colour.alpha / 255.f};
}

}  // namespace

void applyStyle(ImGuiStyle& style, float scale, bool finger) {
    using namespace colour;
    style = ImGuiStyle();
    style.WindowPadding = {0, 0};
    style.WindowBorderSize = 0;
    style.ItemSpacing = {0, 0};
    style.CellPadding = {0, 0};
    style.WindowMinSize = {1, 1};
    style.ScrollbarSize = std::floor((finger ? 28.f : 14.f) * scale);
    style.ScrollbarRounding = 4 * scale;
    style.TouchExtraPadding = finger ? ImVec2{4 * scale, 4 * scale} : ImVec2{0, 0};
    style.CircleTessellationMaxError = 0.2f;
    style.AntiAliasedLinesUseTex = false;
    ImVec4* colours = style.Colors;
    colours[ImGuiCol_Text] = vec(kInk);
    colours[ImGuiCol_WindowBg] = vec(kPaper);
    colours[ImGuiCol_ChildBg] = {0, 0, 0, 0};
    colours[ImGuiCol_ScrollbarBg] = vec(kWash);
    colours[ImGuiCol_ScrollbarGrab] = vec(kEdge);
    colours[ImGuiCol_ScrollbarGrabHovered] = vec(kSoft);
    colours[ImGuiCol_ScrollbarGrabActive] = vec(kInk);
}

}  // namespace wrenlet::desk
