// The Settings page: text size, motion, single letter keys, microphone and loudspeaker, and where
// everything lies. Each press takes effect at once.
#include <algorithm>

#include "editor/windows/keyed.hpp"
#include "editor/windows/notices.hpp"
#include "editor/windows/scrolled.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 18, kHead = 44, kButton = 36, kRow = 34;

/// What one card says and offers, line below line.
struct Column {
    View& view;
    float x, y, width;

    void note(std::string_view text, Colour colour = kSoft) {
        y += view.ui.paragraph(Type::body, x, y, width, colour, text) + 8;
    }
    void gap() {
        view.ui.level(x, y + 6, width, kLine);
        y += 20;
    }
};

void change(View& view, const std::function<void(DeskSettings&)>& what) {
    view.later([&place = view.settings, what] {
        DeskSettings settings = place.now();
        what(settings);
        place.set(settings);
    });
}

void drawTextSize(Column& sheet) {
    View& view = sheet.view;
    view.ui.text(Type::strong, sheet.x, sheet.y + 10, kInk, "Text size");
    sheet.y += 26;
    float x = sheet.x;
    for (const int percent : kTextPercents) {
        const std::string number = std::to_string(percent);
        const Button size{
            "text size:" + number, number,
            view.settings.now().text_percent == percent ? ButtonKind::on : ButtonKind::outlined};
        const float wide = buttonWidth(view.ui, size);
        if (x + wide > sheet.x + sheet.width && x > sheet.x) {
            x = sheet.x;
            sheet.y += kButton + 8;
        }
        if (button(view.ui, size, {x, sheet.y, wide, kButton}))
            change(view, [percent](DeskSettings& settings) { settings.text_percent = percent; });
        x += wide + 8;
    }
    sheet.y += kButton + 8;
    sheet.note("In percent of the usual. A small window may leave less room than you ask for.");
}

/// Two buttons, of which one is on.
void drawSwitch(Column& sheet, const char* name, std::string_view says, bool is_on,
                bool DeskSettings::*field) {
    View& view = sheet.view;
    view.ui.text(Type::strong, sheet.x, sheet.y + 10, kInk, name);
    sheet.y += 26;
    float x = sheet.x;
    for (const bool on : {true, false}) {
        const Button way{std::string(name) + (on ? ":on" : ":off"), on ? "On" : "Off",
                         is_on == on ? ButtonKind::on : ButtonKind::outlined};
        const float wide = std::max(64.f, buttonWidth(view.ui, way));
        if (button(view.ui, way, {x, sheet.y, wide, kButton}))
            change(view, [field, on](DeskSettings& settings) { settings.*field = on; });
        x += wide + 8;
    }
    sheet.y += kButton + 8;
    sheet.note(says);
}

void drawDevice(Column& sheet, SoundWay way, const std::string& name, const std::string& label) {
    View& view = sheet.view;
    Ui& ui = view.ui;
    const Area row{sheet.x - 6, sheet.y, sheet.width + 12, kRow};
    const auto press = ui.press(label, row);
    const bool on = view.settings.chosen(way) == name;
    if (on)
        ui.fill(row, kPaleDeep, 8);
    else if (press.hovered)
        ui.fill(row, kWash, 8);
    ui.disc(row.x + 17, row.middleY(), 8, on ? kDeep : kEdge);
    ui.disc(row.x + 17, row.middleY(), 6, on ? kPaleDeep : kCard);
    if (on) ui.disc(row.x + 17, row.middleY(), 4, kDeep);
    const bool gone = !name.empty() && !view.settings.isHere(way, name);
    const std::string text =
        name.empty() ? "The system's own choice" : name + (gone ? " (not here now)" : "");
    ui.text(on ? Type::strong : Type::body, row.x + 36, row.middleY(), kInk,
            ui.fitted(on ? Type::strong : Type::body, text, row.width - 46));
    if (press.held) ui.focusRing(row.inset(3), 8);
    if (press.pressed) view.later([&place = view.settings, way, name] { place.choose(way, name); });
    sheet.y += kRow + 2;
}

void drawDevices(Column& sheet, SoundWay way, const char* head, const std::string& label) {
    View& view = sheet.view;
    view.ui.text(Type::strong, sheet.x, sheet.y + 10, kInk, head);
    sheet.y += 26;
    drawDevice(sheet, way, "", label + ":own");
    const auto& names = view.settings.names(way);
    for (std::size_t i = 0; i < names.size(); ++i)
        drawDevice(sheet, way, names[i], label + ":" + std::to_string(i));
    sheet.y += 8;
}

void drawSound(Column& sheet) {
    View& view = sheet.view;
    if (view.settings.home().devices == nullptr) {
        sheet.note("This machine's sound is not in use here.");
        return;
    }
    drawDevices(sheet, SoundWay::in, "Microphone", "microphone");
    drawDevices(sheet, SoundWay::out, "Loudspeaker", "loudspeaker");
    const Button again{"sound: look again", "Look again"};
    if (button(view.ui, again, {sheet.x, sheet.y, buttonWidth(view.ui, again), kButton}))
        view.later([&place = view.settings] { place.lookAgain(); });
    sheet.y += kButton + 10;
    sheet.note(
        "One that is not plugged in gives way to the system's own choice. Start quietly, "
        "with headphones all the more.");
}

/// The end of a path says more than its beginning.
std::string fittedEnd(const Ui& ui, Type type, const std::string& path, float room) {
    if (ui.width(type, path) <= room) return path;
    std::size_t from = 0;
    while (from < path.size()) {
        ++from;
        while (from < path.size() && (static_cast<unsigned char>(path[from]) & 0xC0) == 0x80)
            ++from;
        if (ui.width(type, "\u2026" + path.substr(from)) <= room) break;
    }
    return "\u2026" + path.substr(from);
}

void drawFolders(Column& sheet) {
    View& view = sheet.view;
    const std::filesystem::path& room = view.desk.opened().classroom.folder;
    const SettingsHome& home = view.settings.home();
    const struct {
        const char* what;
        std::filesystem::path path;
        const char* none;
    } lines[] = {
        {"The classroom folder: class list, packs, the tablets' answers", room, "none is open"},
        {"Your units, takes and pictures", room.empty() ? room : room / "units", "none is open"},
        {"Work that the classroom folder could not take",
         home.own.empty() ? "" : home.own / "units", "not kept"},
        {"Clips made before; may be deleted", home.own.empty() ? "" : home.own / "clips",
         "not kept"},
        {"These settings", home.file, "not kept"},
    };
    for (const auto& line : lines) {
        sheet.y += view.ui.paragraph(Type::note, sheet.x, sheet.y, sheet.width, kSoft, line.what);
        view.ui.text(Type::body, sheet.x, sheet.y + 10, kInk,
                     line.path.empty()
                         ? std::string(line.none)
                         : fittedEnd(view.ui, Type::body, line.path.string(), sheet.width));
        sheet.y += 32;
    }
    sheet.note(
        "Nothing is sent anywhere. Another classroom folder opens when you drop it on this "
        "window.");
}

/// A card around what `draw` leaves on it. Its height is that of the frame before, kept by Dear
/// ImGui, for it is painted first.
template <class Draw>
float cardOf(View& view, const char* name, const Area& area, const Draw& draw) {
    const ImGuiID id = ImGui::GetID(name);
    ImGuiStorage& kept = *ImGui::GetStateStorage();
    card(view.ui, {area.x, area.y, area.width, kept.GetFloat(id, 40)});
    view.ui.text(Type::title, area.x + kPad, area.y + 24, kInk, name);
    Column sheet{view, area.x + kPad, area.y + kHead, area.width - 2 * kPad};
    draw(sheet);
    const float height = sheet.y + 8 - area.y;
    kept.SetFloat(id, height);
    return height + kGap;
}

float drawBody(View& view, const Area& area) {
    const DeskSettings& now = view.settings.now();
    const float above = drawProblems(view.ui, area, view.settings.problems());
    const int columns = area.width < 900 ? 2 : 3;
    const float wide = (area.width - kGap * float(columns - 1)) / float(columns);
    const auto column = [&](int at) { return area.x + float(at) * (wide + kGap); };
    const float top = area.y + above;
    float left = top, right = top, last = top;
    left += cardOf(view, "To see and to press", {column(0), left, wide, 0}, [&](Column& sheet) {
        drawTextSize(sheet);
        sheet.gap();
        drawSwitch(sheet, "Motion",
                   "Off: the ring while it listens and the bar of long work stand still. The level "
                   "of the microphone still moves.",
                   now.motion, &DeskSettings::motion);
        sheet.gap();
        drawSwitch(sheet, "Single letter keys",
                   "Off: H, S, L and the like do nothing alone. Help lists every key.", now.letters,
                   &DeskSettings::letters);
    });
    right += cardOf(view, "Sound", {column(1), right, wide, 0}, drawSound);
    float& under = columns == 3 ? last : right;
    under +=
        cardOf(view, "Where everything lies", {column(columns - 1), under, wide, 0}, drawFolders);
    return std::max({left, right, last}) - area.y;
}

}  // namespace

void drawSettingsPage(View& view) {
    Ui& ui = view.ui;
    const Area body = view.frame.body;
    ui.text(Type::place, body.x, kTitleMiddle, kInk, "Settings");
    const Button close{"settings: close", "Close", ButtonKind::outlined, capOf(view, Does::back)};
    const float width = buttonWidth(ui, close);
    if (button(ui, close, {body.right() - width, 16, width, 34}))
        view.later([show = view.show] { show(Sheet::none); });
    drawScrolled(view, "settings", body, [&](const Area& area) { return drawBody(view, area); });
}

}  // namespace wrenlet::desk
