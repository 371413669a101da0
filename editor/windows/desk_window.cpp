#include "editor/windows/desk_window.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "editor/windows/input.hpp"
#include "editor/windows/style.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::array<float, 5> kTextSizes{0.9f, 1.f, 1.15f, 1.3f, 1.5f};

float nextTextSize(float size, int step) {
    std::size_t at = 0;
    while (at + 1 < kTextSizes.size() && kTextSizes[at] < size - 0.01f) ++at;
    if (step < 0 && at > 0) --at;
    if (step > 0 && at + 1 < kTextSizes.size()) ++at;
    return kTextSizes[at];
}

}  // namespace

DeskWindow::DeskWindow(OpenedClass opened, Surroundings surroundings)
    : desk_(std::move(opened)), surroundings_(std::move(surroundings)) {}

void DeskWindow::openFolder(const std::filesystem::path& folder) {
    desk_.replace(surroundings_.open(folder));
}

void DeskWindow::frame(float pixel_width, float pixel_height, float scale, const TypeAtlas& atlas) {
    applyStyle(ImGui::GetStyle(), scale, stage_.finger);
    ImGui::PushFont(atlas.font(Type::body));
    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize({pixel_width, pixel_height});
    ImGui::Begin("desk", nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                     ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoBringToFrontOnFocus |
                     ImGuiWindowFlags_NoScrollWithMouse);
    {
        Ui ui(atlas, scale, stage_);
        std::vector<std::function<void(Desk&)>> wishes;
        const float width = pixel_width / scale, height = pixel_height / scale;
        View view{ui,
                  desk_,
                  frameFor(width, height),
                  width,
                  height,
                  surroundings_.now_ms(),
                  surroundings_.pictures,
                  scroll_,
                  sounds_,
                  wishes,
                  {},
                  {},
                  text_size_};
        view.gather = [&] {
            view.wish([this](Desk& desk) {
                desk.replace(surroundings_.open(desk.opened().classroom.folder));
            });
        };
        view.set_text_size = [&](float step) {
            view.wish(
                [this, step](Desk&) { text_size_ = nextTextSize(text_size_, step > 0 ? 1 : -1); });
        };
        keys(view);
        drawRail(view);
        if (desk_.state() != ClassState::ready) {
            drawEmptyPage(view);
        } else if (desk_.page() == Page::map) {
            drawMapPage(view);
        } else {
            drawChildPage(view);
        }
        drawFoot(view);
        for (const auto& wish : wishes) wish(desk_);
    }
    ImGui::End();
    ImGui::PopFont();
}

void DeskWindow::keys(View& view) {
    if (input::pressed(Key::f5)) view.gather();
    if (input::ctrl() && input::pressed(Key::plus)) view.set_text_size(1);
    if (input::ctrl() && input::pressed(Key::minus)) view.set_text_size(-1);
    if (input::pressed(Key::escape)) view.wish([](Desk& desk) { desk.showMap(); });
}

}  // namespace wrenlet::desk
