// A page of the desk as PNG, drawn by SDL's software renderer with no screen.
#include <SDL.h>
#include <SDL_image.h>

#include <algorithm>
#include <memory>

#include "content/common/clock.hpp"
#include "editor/windows/canvas.hpp"
#include "editor/windows/program.hpp"

namespace wrenlet::desk {

namespace {

struct SurfaceClose {
    void operator()(SDL_Surface* surface) const { SDL_FreeSurface(surface); }
};
struct RendererClose {
    void operator()(SDL_Renderer* renderer) const { SDL_DestroyRenderer(renderer); }
};

// False when nobody in the class has that id or name.
bool goTo(Desk& desk, const DeskOptions& options) {
    const auto& children = desk.opened().children;
    if (!options.child.empty()) {
        const auto named =
            std::find_if(children.begin(), children.end(), [&](const auto& progress) {
                return progress.child.id == options.child || progress.child.name == options.child;
            });
        if (named == children.end()) return false;
        desk.openChild(static_cast<std::size_t>(named - children.begin()));
    }
    if (options.page == Page::child) {
        if (!options.skill.empty()) desk.chooseSkill(options.skill);
        desk.showChild();
    } else {
        desk.showMap();
    }
    return true;
}

}  // namespace

int pictureWith(const OpenedClass& opened, const DeskOptions& options, std::int64_t now_ms,
                const Workbench* bench, const std::function<bool(DeskWindow&)>& prepare,
                std::ostream& err, const BoothSound& sound, const Packing& packing,
                const Trying& trying, const SettingsHome& settings,
                const std::optional<ServePlace::Parts>& serving) {
    const std::unique_ptr<SDL_Surface, SurfaceClose> surface(SDL_CreateRGBSurfaceWithFormat(
        0, options.width, options.height, 32, SDL_PIXELFORMAT_ARGB8888));
    const std::unique_ptr<SDL_Renderer, RendererClose> renderer(
        surface ? SDL_CreateSoftwareRenderer(surface.get()) : nullptr);
    if (!renderer) {
        err << "The picture cannot be drawn: " << SDL_GetError() << "\n";
        return 1;
    }
    Canvas canvas(renderer.get(), options.assets);
    DeskWindow window(opened, {[&](const auto&) { return opened; },
                               [&] { return now_ms; },
                               &canvas.pictures(),
                               bench,
                               [](const pack::VoiceNeed&) {},
                               sound,
                               packing,
                               trying,
                               settings,
                               {},
                               serving});
    if (!prepare(window)) return 1;
    const float scale = options.scale.value_or(scaleFor(
        static_cast<float>(options.width), static_cast<float>(options.height), window.textSize()));
    for (int frame = 0; frame < 2; ++frame) {  // scrolling children know their size after one
        const auto drawn = canvas.draw(window, options.width, options.height, scale, 1.f / 60);
        for (const Problem& problem : drawn.problems()) err << sentence(problem) << "\n";
        if (!drawn.ok()) return 1;
    }
    SDL_RenderFlush(renderer.get());
    if (IMG_SavePNG(surface.get(), options.picture.string().c_str()) != 0) {
        err << "The picture cannot be written to " << options.picture.string() << ": "
            << SDL_GetError() << "\n";
        return 1;
    }
    return 0;
}

int pictureOf(const OpenedClass& opened, const DeskOptions& options, std::int64_t now_ms,
              std::ostream& err) {
    return pictureWith(
        opened, options, now_ms, nullptr,
        [&](DeskWindow& window) {
            if (goTo(window.desk(), options)) return true;
            err << "No child in the class is called " << options.child << ".\n";
            return false;
        },
        err);
}

int pictureDesk(const DeskOptions& options, std::ostream& err) {
    const SystemClock clock;
    const OpenedClass opened = openClass(options.classroom, clock.unixMillis());
    for (const Problem& problem : opened.problems) err << sentence(problem) << "\n";
    const int drawn = pictureOf(opened, options, clock.unixMillis(), err);
    return opened.listed || options.classroom.empty() ? drawn : 1;
}

}  // namespace wrenlet::desk
