#include "editor/windows/canvas.hpp"

#include "editor/look/palette.hpp"
#include "editor/windows/input.hpp"

namespace wrenlet::desk {

ImGuiHome::ImGuiHome() : context_(ImGui::CreateContext()) {
    ImGui::SetCurrentContext(context_);
    input::prepare();
}

ImGuiHome::~ImGuiHome() {
    ImGui::DestroyContext(context_);
}

Canvas::Canvas(SDL_Renderer* target, const std::filesystem::path& assets)
    : target_(target),
      fonts_(assets / "fonts"),
      renderer_(target),
      pictures_(target, assets / "art") {}

Result<Done> Canvas::draw(DeskWindow& window, int width, int height, float scale, float seconds) {
    if (built_for_ != scale) {
        auto built = atlas_.build(fonts_, scale);
        if (!built.ok()) return built;
        if (!renderer_.takeAtlas())
            return Problem{"screen", "The letters do not fit this screen.", "Choose smaller text."};
        built_for_ = scale;
    }
    ImGuiIO& io = ImGui::GetIO();
    io.DisplaySize = {static_cast<float>(width), static_cast<float>(height)};
    io.DeltaTime = seconds;
    ImGui::NewFrame();
    window.frame(io.DisplaySize.x, io.DisplaySize.y, scale, atlas_);
    ImGui::Render();
    SDL_SetRenderDrawColor(target_, colour::kPaper.red, colour::kPaper.green, colour::kPaper.blue,
                           255);
    SDL_RenderClear(target_);
    renderer_.draw(*ImGui::GetDrawData());
    return Done{};
}

}  // namespace wrenlet::desk
