#include "game/scenes/adult_scene.hpp"

#include <algorithm>
#include <array>
#include <cstdio>

#include "game/scenes/wrapped.hpp"

namespace wrenlet::game {
namespace {

constexpr std::array<int, 4> kVolumes = {25, 50, 75, 100};
constexpr std::array<std::string_view, 4> kVolumeWords = {"a quarter", "half", "3 quarters",
                                                          "full"};
constexpr std::array<Millis, 5> kPaces = {0, 1'500, 2'500, 3'500, 5'000};
constexpr int kMinutesStates = kMostMinutes - kLeastMinutes + 2;

// WHO and ITU: Recommendation ITU-T H.870, "Guidelines for safe listening devices/systems", has one
// criterion for adults and one for children; the children's is 75 dB(A) for 40 hours a week.
// https://www.itu.int/rec/T-REC-H.870
constexpr std::string_view kCaution =
    "Soft enough to talk over. For children WHO-ITU H.870 names 75 dB, 40 hours a week; no program "
    "can know how loud it is at an ear.";

/// The first of `values` that is not below `value`, or the last.
template <class T, std::size_t N>
std::size_t nearest(const std::array<T, N>& values, T value) {
    const auto found =
        std::find_if(values.begin(), values.end(), [value](T one) { return one >= value; });
    return std::min<std::size_t>(static_cast<std::size_t>(found - values.begin()), N - 1);
}

/// The first of `values` that is more than `value`, or the least again.
template <class T, std::size_t N>
T following(const std::array<T, N>& values, T value) {
    for (const T one : values)
        if (one > value) return one;
    return values.front();
}

std::string secondsOf(Millis pace) {
    if (pace == 0) return "off";
    char text[16];
    std::snprintf(text, sizeof text, "%.1f s", static_cast<double>(pace) / 1000);
    return text;
}

std::string minutesOf(int minutes, int class_minutes) {
    if (minutes != 0) return "about " + std::to_string(minutes) + " min";
    return "class: " + std::to_string(class_minutes) + " min";
}

std::string onOff(bool on) {
    return on ? "on" : "off";
}

}  // namespace

TabletSettings setOn(TabletSettings settings, std::string_view thing) {
    if (thing == "volume") settings.volume_percent = following(kVolumes, settings.volume_percent);
    if (thing == "motion") settings.motion = !settings.motion;
    if (thing == "hands") settings.drags = !settings.drags;
    if (thing == "side") settings.left_hand = !settings.left_hand;
    if (thing == "minutes")
        settings.minutes = settings.minutes == 0              ? kLeastMinutes
                           : settings.minutes == kMostMinutes ? 0
                                                              : settings.minutes + 1;
    if (thing == "scan") settings.scan_pace = following(kPaces, settings.scan_pace);
    if (thing == "captions") settings.captions = !settings.captions;
    if (thing == "pause") settings.paused = true;
    return settings;
}

AdultScene::AdultScene(Setting setting, const Layout& layout, std::string title, int class_minutes,
                       std::size_t to_look_at)
    : Scene(setting, layout),
      title_(std::move(title)),
      class_minutes_(class_minutes),
      to_look_at_(to_look_at) {}

std::vector<Control> AdultScene::controls() const {
    const TabletSettings& tablet = setting_.tablet;
    const auto volume = nearest(kVolumes, tablet.volume_percent);
    const auto pace = nearest(kPaces, tablet.scan_pace);
    const std::string loudness = kVolumes[volume] == tablet.volume_percent
                                     ? std::string(kVolumeWords[volume])
                                     : std::to_string(tablet.volume_percent) + " %";
    const int minutes = tablet.minutes == 0 ? 0 : tablet.minutes - kLeastMinutes + 1;
    const std::string look =
        to_look_at_ == 0 ? "all is well" : std::to_string(to_look_at_) + " to look at";
    return {
        {"facts", "This tablet", look, "set-tablet", 0, 0, false, true},
        {"back", "Back to", "the child", "leaf-mark", 0, 0, false, true},
        {"pause", "Pause", tablet.paused ? "is on" : "is off", "set-pause", tablet.paused, 2},
        {"volume", "Loudness", loudness, "ctl-sound-on", static_cast<int>(volume), kVolumes.size(),
         true},
        {"motion", "Motion", onOff(tablet.motion), "ctl-motion", tablet.motion, 2},
        {"hands", "Pieces", tablet.drags ? "drag or touch" : "touch only", "set-hands",
         tablet.drags ? 1 : 0, 2},
        {"side", "Played with", tablet.left_hand ? "the left hand" : "the right hand", "set-side",
         tablet.left_hand ? 0 : 1, 2, false, false, true},
        {"minutes", "A session", minutesOf(tablet.minutes, class_minutes_), "set-minutes", minutes,
         kMinutesStates},
        {"scan", "One switch", secondsOf(tablet.scan_pace), "set-switch", static_cast<int>(pace),
         kPaces.size()},
        {"captions", "Captions", onOff(tablet.captions), "set-captions", tablet.captions, 2},
        {"badges", "Go to", "the badges", "badge-01", 0, 0, false, true},
        {"close", "Close", "Wrenlet", "ctl-leave", 0, 0, false, true},
    };
}

AdultScene::Page AdultScene::page() const {
    AdultGrid grid(layout_);
    Page page;
    page.title = grid.next(grid.columns() - (layout_.isPortrait() ? 0 : 2));
    for (Control& control : controls()) {
        const bool is_volume = control.thing == "volume";
        page.controls.push_back({std::move(control), grid.next()});
        if (is_volume) page.caution = grid.next(2);
    }
    return page;
}

std::vector<Thing> AdultScene::things() const {
    std::vector<Thing> all;
    for (const Placed& placed : page().controls) all.push_back({placed.control.thing, placed.box});
    return all;
}

void AdultScene::tapped(const std::string& thing, Millis) {
    if (thing == "back") return wish({Wish::Kind::let_go});
    if (thing == "badges") return wish({Wish::Kind::badges});
    if (thing == "facts") return wish({Wish::Kind::facts});
    if (thing == "close") return wish({Wish::Kind::close});
    wish({Wish::Kind::set, {}, setOn(setting_.tablet, thing)});
}

void AdultScene::drawGround(Painter& painter, Millis) const {
    painter.fill({0, 0, layout_.width(), layout_.height()}, palette::kPaper);
}

void AdultScene::drawPieces(Painter& painter, Millis) const {
    const Page page = this->page();
    const float big = layout_.linePx(52), line = layout_.linePx(34);
    const Box& title = page.title;
    const float top = title.centre().y - (big + line) / 2;
    painter.textFromLeft(title_, {title.x, top, title.w, big}, palette::kInk, true);
    painter.textFromLeft("For adults: how this tablet is set", {title.x, top + big, title.w, line});

    const float small = layout_.linePx(32);
    const auto caution = wrapped(kCaution, lettersIn(page.caution.w, small));
    const float height = small * static_cast<float>(caution.size());
    drawLines(painter, {page.caution.x, page.caution.centre().y - height / 2, page.caution.w, 0},
              caution, small);
    for (const Placed& placed : page.controls)
        drawControl(painter, layout_, placed.box, placed.control, holds(placed.control.thing));
}

}  // namespace wrenlet::game
