// The desk's window without a screen: real pointer and keys through Dear ImGui's own input, items
// found by their labels.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "editor/windows/canvas.hpp"
#include "editor/windows/desk_window.hpp"
#include "editor/windows/input.hpp"
#include "tests/desk/demo_class.hpp"

namespace wrenlet::desk {

// A teacher at a desk of 1280×720 pixels that nobody sees.
class Seat {
  public:
    explicit Seat(const OpenedClass& opened, float width = 1280, float height = 720,
                  const Workbench* bench = nullptr, BoothSound sound = {}, Packing packing = {},
                  Trying trying = {}, SettingsHome settings = {},
                  const std::optional<ServePlace::Parts>& serving = {})
        : width_(width),
          height_(height),
          window_(opened, {[this](const auto&) {
                               ++gathered_;
                               return demo::demoClass();
                           },
                           [this] { return now_ms_; }, nullptr, bench,
                           [this](const pack::VoiceNeed& need) { heard_.push_back(need); }, sound,
                           packing, trying, settings,
                           [this](const std::filesystem::path& file) {
                               shown_outside_.push_back(file);
                               return true;
                           },
                           serving}) {
        REQUIRE(atlas_.build({}, 1).ok());
        frame();
        frame();
    }

    void frame() {
        ImGuiIO& io = ImGui::GetIO();
        io.DisplaySize = {width_, height_};
        io.DeltaTime = 1.f / 60;
        ImGui::NewFrame();
        window_.frame(width_, height_, 1, atlas_);
        ImGui::Render();
    }

    void key(Key key) {
        input::key(key, true);
        frame();
        input::key(key, false);
        frame();
        frame();
    }

    /// With Ctrl held.
    void ctrl(Key key) {
        input::modifiers(true, false, false);
        this->key(key);
        input::modifiers(false, false, false);
    }
    void alt(Key key) {
        input::modifiers(false, false, true);
        this->key(key);
        input::modifiers(false, false, false);
    }
    void type(const std::string& text) {
        input::text(text);
        frame();
        frame();
    }
    /// As if copied elsewhere and pasted here.
    void paste(const std::string& text) {
        ImGui::SetClipboardText(text.c_str());
        ctrl(Key::v);
    }
    void wait(std::int64_t ms) {
        now_ms_ += ms;
        frame();
    }

    void click(const std::string& label) {
        pointAt(label);
        touch(label);
    }

    void pointAt(const std::string& label) {
        const Area area = where(label);
        input::pointTo(area.middleX(), area.middleY());
        frame();
        frame();
    }

    // A finger comes down where nothing hovered before.
    void touch(const std::string& label) {
        const Area area = where(label);
        input::pointTo(area.middleX(), area.middleY());
        input::press(true);
        frame();
        input::press(false);
        frame();
        frame();
    }
    void lift() {
        input::lift();
        frame();
    }

    bool shows(const std::string& label) const { return window_.stage().items.count(label); }
    Area where(const std::string& label) const {
        const auto& items = window_.stage().items;
        const auto at = items.find(label);
        REQUIRE_MESSAGE(at != items.end(), label);
        return at->second;
    }

    Desk& desk() { return window_.desk(); }
    DeskWindow& window() { return window_; }
    std::string childShown() { return desk().opened().children[desk().child()].child.name; }
    std::string nameInRow(std::size_t row) {
        return desk().opened().children[desk().map().rows[row].child].child.name;
    }
    std::string cellLabel(std::size_t row, std::size_t column) {
        const MapColumn& shown = desk().map().columns[column];
        return "cell:" + desk().opened().children[desk().map().rows[row].child].child.id + "/" +
               shown.cell.skill + "/" + shown.label;
    }
    int gathered() const { return gathered_; }
    const std::vector<pack::VoiceNeed>& heard() const { return heard_; }
    const std::vector<std::filesystem::path>& shownOutside() const { return shown_outside_; }

  private:
    float width_, height_;
    int gathered_ = 0;
    std::int64_t now_ms_ = demo::kNowMs;
    std::vector<pack::VoiceNeed> heard_;
    std::vector<std::filesystem::path> shown_outside_;
    ImGuiHome home_;
    TypeAtlas atlas_;
    DeskWindow window_;
};

}  // namespace wrenlet::desk
