// The pictures that a word may have, in place of its sounds: typed for, pressed, or her own
// dropped.
#include "editor/windows/input.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr std::size_t kAcross = 4, kMost = 20, kNewEachFrame = 3;
constexpr float kBetween = 8, kName = 18;

void choose(View& view, const std::string& picture) {
    view.later([&words = view.words, unit = view.unit, picture] {
        const std::string word = words.choosing->word;
        unit->change([&](UnitAtWork& work) { work.choosePicture(word, picture); });
        words.choosing.reset();
    });
}

void drawOne(View& view, const std::string& name, const Area& area) {
    Ui& ui = view.ui;
    const auto press = ui.press("picture:" + name, area);
    ui.fill(area, press.hovered ? kWash : kCard, 8);
    ui.edge(area, kEdge, 8);
    const Area drawn{area.x + 6, area.y + 5, area.width - 12, area.width - 12};
    const int pixels = static_cast<int>(drawn.width * ui.scale());
    const ImTextureID texture =
        view.pictures == nullptr ? nullptr : view.pictures->picture("word:" + name, pixels);
    if (texture != nullptr) ui.picture(texture, drawn);
    ui.text(Type::note, area.middleX(), area.bottom() - 11, kSoft,
            ui.fitted(Type::note, name, area.width - 6), Align::middle);
    if (press.held) ui.focusRing(area, 8);
    if (press.pressed) choose(view, name);
}

}  // namespace

void drawPictureChooser(View& view, const Area& area) {
    Ui& ui = view.ui;
    PictureChoice& choice = *view.words.choosing;
    if (input::pressed(Key::escape)) view.later([&words = view.words] { words.choosing.reset(); });
    const float x = area.x, width = area.width;
    float y = area.y + 4;
    const std::string before = choice.sought;
    ui.field("picture sought", {x, y, width, 36}, choice.sought, "Find a picture by its name");
    if (choice.sought != before) choice.shown = 0;
    y += 44;
    const std::vector<std::string> names = choice.offered(kMost);
    const float side = (width - kBetween * float(kAcross - 1)) / float(kAcross);
    const float height = side + kName - 4;
    choice.shown = std::min(names.size(), choice.shown + kNewEachFrame);
    const float notes = 96;
    for (std::size_t i = 0; i < choice.shown; ++i) {
        const Area one{x + float(i % kAcross) * (side + kBetween),
                       y + float(i / kAcross) * (height + kBetween), side, height};
        if (one.bottom() > area.bottom() - notes) {
            choice.shown = names.size();
            break;
        }
        drawOne(view, names[i], one);
    }
    choice.all_shown = choice.shown == names.size();
    if (names.empty())
        ui.paragraph(Type::note, x, y, width, kSoft,
                     "No picture has this in its name. Try another word for it.");
    const Button none{"no picture", "No picture"},
        close{"close pictures", "Leave it", ButtonKind::outlined, "Esc"};
    const float low = area.bottom() - notes + 6;
    ui.paragraph(Type::note, x, low, width, kSoft,
                 "Your own: drop a picture (PNG, JPEG or SVG) on this window.");
    const float none_width = buttonWidth(ui, none);
    if (button(ui, none, {x, low + 42, none_width, 34})) choose(view, "");
    if (button(ui, close, {x + none_width + 8, low + 42, buttonWidth(ui, close), 34}))
        view.later([&words = view.words] { words.choosing.reset(); });
}

}  // namespace wrenlet::desk
