#include "editor/windows/input.hpp"

#include <imgui.h>

#include <array>
#include <cfloat>
#include <string>
#include <utility>

namespace wrenlet::desk::input {

namespace {

constexpr std::array<std::pair<Key, ImGuiKey>, 20> kKnownToImGui{{
    {Key::tab, ImGuiKey_Tab},
    {Key::left, ImGuiKey_LeftArrow},
    {Key::right, ImGuiKey_RightArrow},
    {Key::up, ImGuiKey_UpArrow},
    {Key::down, ImGuiKey_DownArrow},
    {Key::page_up, ImGuiKey_PageUp},
    {Key::page_down, ImGuiKey_PageDown},
    {Key::home, ImGuiKey_Home},
    {Key::end, ImGuiKey_End},
    {Key::enter, ImGuiKey_Enter},
    {Key::space, ImGuiKey_Space},
    {Key::escape, ImGuiKey_Escape},
    {Key::erase, ImGuiKey_Delete},
    {Key::backspace, ImGuiKey_Backspace},
    {Key::a, ImGuiKey_A},
    {Key::c, ImGuiKey_C},
    {Key::v, ImGuiKey_V},
    {Key::x, ImGuiKey_X},
    {Key::y, ImGuiKey_Y},
    {Key::z, ImGuiKey_Z},
}};

#if IMGUI_VERSION_NUM >= 18700
ImGuiKey imguiKey(Key key) {
    switch (key) {
        case Key::f5:
            return ImGuiKey_F5;
        case Key::plus:
            return ImGuiKey_Equal;
        case Key::minus:
            return ImGuiKey_Minus;
        case Key::zero:
            return ImGuiKey_0;
        case Key::one:
            return ImGuiKey_1;
        case Key::two:
            return ImGuiKey_2;
        case Key::three:
            return ImGuiKey_3;
        case Key::four:
            return ImGuiKey_4;
        case Key::five:
            return ImGuiKey_5;
        case Key::f1:
            return ImGuiKey_F1;
        case Key::d:
            return ImGuiKey_D;
        case Key::f:
            return ImGuiKey_F;
        case Key::h:
            return ImGuiKey_H;
        case Key::k:
            return ImGuiKey_K;
        case Key::l:
            return ImGuiKey_L;
        case Key::p:
            return ImGuiKey_P;
        case Key::s:
            return ImGuiKey_S;
        default:
            break;
    }
    for (const auto& [ours, theirs] : kKnownToImGui)
        if (ours == key) return theirs;
    return ImGuiKey_None;
}
#endif

}  // namespace

void prepare() {
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.LogFilename = nullptr;
    io.ConfigInputTextCursorBlink = false;
#if IMGUI_VERSION_NUM < 18700
    for (const auto& [ours, theirs] : kKnownToImGui) io.KeyMap[theirs] = static_cast<int>(ours);
#endif
    lift();
}

#if IMGUI_VERSION_NUM >= 18700
void pointTo(float x, float y) {
    ImGui::GetIO().AddMousePosEvent(x, y);
}
void lift() {
    ImGui::GetIO().AddMousePosEvent(-FLT_MAX, -FLT_MAX);
}
void press(bool down) {
    ImGui::GetIO().AddMouseButtonEvent(0, down);
}
void wheel(float columns, float rows) {
    ImGui::GetIO().AddMouseWheelEvent(columns, rows);
}
void key(Key key, bool down) {
    ImGui::GetIO().AddKeyEvent(imguiKey(key), down);
}
void modifiers(bool ctrl, bool shift, bool alt) {
    ImGuiIO& io = ImGui::GetIO();
    io.AddKeyEvent(ImGuiMod_Ctrl, ctrl);
    io.AddKeyEvent(ImGuiMod_Shift, shift);
    io.AddKeyEvent(ImGuiMod_Alt, alt);
}
bool pressed(Key key) {
    return ImGui::IsKeyPressed(imguiKey(key));
}
#else
void pointTo(float x, float y) {
    ImGui::GetIO().MousePos = ImVec2(x, y);
}
void lift() {
    ImGui::GetIO().MousePos = ImVec2(-FLT_MAX, -FLT_MAX);
}
void press(bool down) {
    ImGui::GetIO().MouseDown[0] = down;
}
void wheel(float columns, float rows) {
    ImGui::GetIO().MouseWheelH += columns;
    ImGui::GetIO().MouseWheel += rows;
}
void key(Key key, bool down) {
    ImGui::GetIO().KeysDown[static_cast<int>(key)] = down;
}
void modifiers(bool ctrl, bool shift, bool alt) {
    ImGuiIO& io = ImGui::GetIO();
    io.KeyCtrl = ctrl;
    io.KeyShift = shift;
    io.KeyAlt = alt;
}
bool pressed(Key key) {
    return ImGui::IsKeyPressed(static_cast<int>(key));
}
#endif

void text(std::string_view utf8) {
    ImGui::GetIO().AddInputCharactersUTF8(std::string(utf8).c_str());
}

bool isTyping() {
    return ImGui::GetIO().WantTextInput;
}
bool ctrl() {
    return ImGui::GetIO().KeyCtrl;
}
bool shift() {
    return ImGui::GetIO().KeyShift;
}
bool alt() {
    return ImGui::GetIO().KeyAlt;
}

}  // namespace wrenlet::desk::input
