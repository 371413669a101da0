// Dear ImGui's own style in the desk's measures and colours.
#pragma once

#include <imgui.h>

namespace wrenlet::desk {

void applyStyle(ImGuiStyle& style, float scale, bool finger);

}  // namespace wrenlet::desk
