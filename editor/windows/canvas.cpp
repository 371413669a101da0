#include "editor/windows/canvas.hpp"

#include <algorithm>

#include "editor/look/palette.hpp"
#include "editor/windows/input.hpp"

namespace wrenlet::desk {

ImGuiHome::ImGuiHome() : context_(ImGui::CreateContext()) {
    ImGui::SetCurrentContext(context_);
    input::prepare();
    ImGuiIO& io = ImGui::GetIO();
    io.ClipboardUserData = this;
    io.GetClipboardTextFn = [](void* home) { return static_cast<ImGuiHome*>(home)->pasted(); };
    io.SetClipboardTextFn = [](void* home, const char* text) {
        static_cast<ImGuiHome*>(home)->copied(text);
    };
}

const char* ImGuiHome::pasted() {
    constexpr std::size_t kMost = 1u << 20;  // as much as a list of words may be
    std::string text = copied_;
    if (SDL_WasInit(SDL_INIT_VIDEO) != 0) {
        const std::unique_ptr<char, decltype(&SDL_free)> system(SDL_GetClipboardText(), SDL_free);
        text = system ? system.get() : "";
    }
    pasted_.clear();
    for (std::size_t i = 0; i < std::min(text.size(), kMost); ++i) {
        const char letter = text[i];
        if (letter == '\r' && i + 1 < text.size() && text[i + 1] == '\n') continue;
        if (letter == '\n' || letter == '\r')
            pasted_ += "; ";
        else
            pasted_ += letter == '\t' ? std::string(" | ") : std::string(1, letter);
    }
    return pasted_.c_str();
}

void ImGuiHome::copied(const char* text) {
    copied_ = text;
    if (SDL_WasInit(SDL_INIT_VIDEO) != 0) SDL_SetClipboardText(text);
}

ImGuiHome::~ImGuiHome() {
    ImGui::DestroyContext(context_);
}

Canvas::Canvas(SDL_Renderer* target, const std::filesystem::path& assets)
    : target_(target),
      fonts_(assets / "fonts"),
      renderer_(target),
      pictures_(target, assets / "art", assets / "pictures") {}

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
