// The rail: whose classroom this is, the unit that is open, and the places of the desk.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

void drawTinyMap(Ui& ui, float x, float y) {
    constexpr Colour kCells[9] = {kBrick, kStraw, kDeep,  kStraw, kDeep,
                                  kBrick, kDeep,  kBrick, kStraw};
    for (int i = 0; i < 9; ++i)
        ui.fill({x + float(i % 3) * 8, y + float(i / 3) * 8, 6, 6}, kCells[i], 2);
}

// "by-the-pond 3" for by-the-pond-3.zip
std::string packName(const std::string& file) {
    std::string name = file.substr(0, file.rfind(".zip"));
    const auto dash = name.rfind('-');
    if (dash != std::string::npos) name[dash] = ' ';
    return name;
}

/// Whose room it is, and the unit that is open; pressed, it leads to the other units.
void drawUnitBox(View& view, const Area& box) {
    Ui& ui = view.ui;
    const OpenedClass& opened = view.desk.opened();
    if (!opened.listed) return;
    const bool has_choice = view.close_unit != nullptr && view.unit != nullptr;
    const auto press = ui.press("unit chooser", box, has_choice);
    ui.fill(box, press.hovered && has_choice ? kWash : kCard, 8);
    ui.edge(box, has_choice ? kEdge : kLine, 8);
    const std::string over = view.unit != nullptr       ? opened.list.title
                             : opened.list.pack.empty() ? "no pack yet"
                                                        : packName(opened.list.pack);
    const float room = box.width - (has_choice ? 44.f : 22.f);
    ui.text(Type::note, box.x + 11, box.y + 14, kSoft, ui.fitted(Type::note, over, room));
    ui.text(Type::strong, box.x + 11, box.y + 31, kInk,
            ui.fitted(Type::strong,
                      view.unit != nullptr ? view.unit->unit().title : opened.list.title, room));
    if (has_choice) {
        const float x = box.right() - 18, y = box.middleY();
        ui.segment(x - 5, y - 3, x, y + 3, kInk, 2);
        ui.segment(x, y + 3, x + 5, y - 3, kInk, 2);
    }
    if (press.held) ui.focusRing(box, 8);
    if (press.pressed && has_choice) view.later(view.close_unit);
}

/// True when pressed.
bool drawStation(View& view, const Area& area, Place place, const std::string& name,
                 const std::string& count) {
    Ui& ui = view.ui;
    const bool here = view.place == place && view.sheet == Sheet::none;
    const auto press = ui.press("place:" + name, area);
    if (here) {
        ui.fill(area, kPaper, 10, Corners::left);
        ui.fill({area.x, area.y + 10, 4, 40}, kDeep, 2);
    } else if (press.hovered) {
        ui.fill(area, kWash, 10, Corners::left);
    }
    ui.text(Type::title, 60, area.y + 19, kInk, name);
    ui.text(Type::note, 60, area.y + 40, kSoft, ui.fitted(Type::note, count, area.right() - 64));
    if (press.held) ui.focusRing(area.inset(6), 8);
    if (press.pressed) view.later([go = view.go, place] { go(place); });
    return press.pressed;
}

/// Settings and Help, below the places: shown over them, and closed by a second press.
void drawSheetRow(View& view, const Area& area, Sheet sheet, const std::string& name,
                  const std::string& key) {
    Ui& ui = view.ui;
    const bool here = view.sheet == sheet;
    const auto press = ui.press("sheet:" + name, area);
    if (here) {
        ui.fill(area, kPaper, 10, Corners::left);
        ui.fill({area.x, area.y + 8, 4, area.height - 16}, kDeep, 2);
    } else if (press.hovered) {
        ui.fill(area, kWash, 10, Corners::left);
    }
    const float x = 27, middle = area.middleY();
    const float wide = ui.text(Type::strong, x, middle, kInk, name);
    if (sheet == Sheet::settings && !view.settings.problems().empty())
        ui.mark(Mark::warning, x + wide + 16, middle, kStrawInk, MarkSize::large);
    if (!key.empty()) {
        const Area cap{x + wide + 10, middle - 9, ui.width(Type::note, key) + 10, 18};
        ui.edge(cap, kEdge, 4);
        ui.text(Type::note, cap.middleX(), middle, kInk, key, Align::middle);
    }
    if (press.held) ui.focusRing(area.inset(6), 8);
    if (press.pressed)
        view.later([show = view.show, to = here ? Sheet::none : sheet] { show(to); });
}

void drawWordsStation(View& view, const Area& area) {
    std::string count = "no unit open";
    double share = 0;
    if (view.unit != nullptr) {
        const std::size_t words = view.unit->unit().words.size();
        const std::size_t left = view.unit->look().to_look_at;
        count = left > 0 ? std::to_string(words) + " \u00b7 " + std::to_string(left) + " to look at"
                         : wording::counted(std::int64_t(words), "word");
        if (words > 0) share = double(words - std::min(left, words)) / double(words);
    }
    drawStation(view, area, Place::words, "Words", count);
    view.ui.ring(share, 36, area.middleY());
}

void drawBoothStation(View& view, const Area& area) {
    const Booth* booth = view.booth;
    const std::size_t all = booth != nullptr ? booth->queue().size() : 0;
    const std::size_t hers = booth != nullptr ? booth->hers() : 0;
    drawStation(view, area, Place::booth, "Booth",
                all == 0 ? "nothing to say yet"
                         : std::to_string(hers) + " of " + std::to_string(all) + " clips");
    view.ui.ring(all == 0 ? 0 : double(hers) / double(all), 36, area.middleY());
}

void drawTryStation(View& view, const Area& area) {
    const TryPlace* place = view.try_out;
    const std::size_t all = place != nullptr ? place->toTry() : 0;
    const std::size_t tried = place != nullptr ? place->tried() : 0;
    drawStation(
        view, area, Place::try_out, "Try out",
        all == 0 ? "nothing to try yet"
                 : std::to_string(tried) + " of " + wording::counted(std::int64_t(all), "skill"));
    view.ui.ring(all == 0 ? 0 : double(tried) / double(all), 36, area.middleY());
}

void drawHandOutStation(View& view, const Area& area) {
    const HandOutPlace* place = view.hand_out;
    std::string count = "no pack yet";
    double share = 0;
    if (place != nullptr && !place->packs().empty()) {
        const std::string& out =
            place->handedOut().empty() ? view.desk.opened().list.pack : place->handedOut();
        count = std::to_string(place->packs().size()) +
                (place->packs().size() == 1 ? " pack" : " packs");
        for (const PackFile& pack : place->packs())
            if (pack.name == out) count = "pack " + std::to_string(pack.version) + " is out";
        share = place->packs().front().name == out ? 1 : 0.5;
    }
    if (view.serve != nullptr && view.serve->isOn()) {
        const auto& tablets = view.serve->tablets();
        const auto playing = std::count_if(tablets.begin(), tablets.end(), [](const auto& tablet) {
            return tablet.state == SeenTablet::State::playing;
        });
        count = std::to_string(playing) + " of " + std::to_string(tablets.size()) + " playing";
    }
    drawStation(view, area, Place::hand_out, "Hand out", count);
    view.ui.ring(share, 36, area.middleY());
}

void drawClassStation(View& view, const Area& area) {
    const OpenedClass& opened = view.desk.opened();
    const std::size_t count = view.class_list != nullptr ? view.class_list->list().children.size()
                                                         : opened.children.size();
    drawStation(view, area, Place::klass, "Class",
                opened.listed || view.class_list != nullptr
                    ? wording::counted(std::int64_t(count), "child", "children")
                    : std::string("none open"));
    drawTinyMap(view.ui, 25, area.middleY() - 11);
}

}  // namespace

void drawRail(View& view) {
    Ui& ui = view.ui;
    const Area rail = view.frame.rail;
    ui.fill(rail, kRail);
    ui.upright(rail.right() - 1, rail.y, rail.height, kLine);
    float x = 14;
    if (view.pictures) {
        const int side = static_cast<int>(32 * ui.scale());
        if (const ImTextureID logo = view.pictures->picture("logo", side)) {
            const float u = static_cast<float>(side) / ui.scale();
            ui.picture(logo, {9, 29 - u / 2, u, u});
            x = 46;
        }
    }
    ui.text(Type::title, x, 29, kInk, "Wrenlet desk");

    drawUnitBox(view, {13, 57, rail.width - 28, 46});
    drawWordsStation(view, {8, 122, rail.width - 8, 60});
    drawBoothStation(view, {8, 188, rail.width - 8, 60});
    drawTryStation(view, {8, 254, rail.width - 8, 60});
    drawHandOutStation(view, {8, 320, rail.width - 8, 60});
    drawClassStation(view, {8, 386, rail.width - 8, 60});

    drawSheetRow(view, {8, rail.bottom() - 88, rail.width - 8, 38}, Sheet::settings, "Settings",
                 "");
    drawSheetRow(view, {8, rail.bottom() - 48, rail.width - 8, 38}, Sheet::help, "Help",
                 capOf(view, Does::help));
}

}  // namespace wrenlet::desk
