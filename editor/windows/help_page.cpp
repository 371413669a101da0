// The Help page: what the place she came from is for, its keys, the words used there, and the
// cautions.
#include <algorithm>

#include "editor/help/help.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/scrolled.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 18, kHead = 44;

float keyRow(Ui& ui, float x, float y, float width, float keys, const KeyRow& row, bool off) {
    const float room = width - keys - 14;
    const float height = std::max(28.f, ui.paragraphHeight(Type::body, room, row.says) + 8);
    const float cap = ui.width(Type::note, row.cap) + 12;
    ui.edge({x, y + 4, cap, 20}, off ? kLine : kEdge, 4);
    ui.text(Type::note, x + cap / 2, y + 14, off ? kSoft : kInk, row.cap, Align::middle);
    ui.paragraph(Type::body, x + keys + 14, y + 4, room, off ? kSoft : kInk, row.says);
    return height;
}

float drawKeys(View& view, const Area& area, Spot spot, const char* head, bool draw) {
    Ui& ui = view.ui;
    const std::vector<KeyRow> rows = keysAt(spot);
    const bool letters = view.settings.now().letters;
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    float keys = 0;
    for (const KeyRow& row : rows) keys = std::max(keys, ui.width(Type::note, row.cap) + 12);
    float y = area.y + kHead;
    if (draw) ui.text(Type::title, x, area.y + 24, kInk, head);
    if (rows.empty()) {
        const char* none = "None of its own; Tab reaches everything.";
        if (draw) ui.paragraph(Type::body, x, y, width, kSoft, none);
        y += ui.paragraphHeight(Type::body, width, none);
    }
    bool is_off = false;
    for (const KeyRow& row : rows) {
        const bool off = row.isLetter() && !letters;
        is_off = is_off || off;
        if (draw)
            y += keyRow(ui, x, y, width, keys, row, off);
        else
            y += std::max(28.f, ui.paragraphHeight(Type::body, width - keys - 14, row.says) + 8);
    }
    if (is_off) {
        const char* note = "Single letters are switched off under Settings.";
        if (draw) ui.paragraph(Type::note, x, y + 4, width, kSoft, note);
        y += 4 + ui.paragraphHeight(Type::note, width, note);
    }
    return y + 12 - area.y;
}

/// Heads in bold with what they mean below.
struct Entry {
    const char* head;
    const char* says;
};

float drawEntries(Ui& ui, const Area& area, const char* head, const std::vector<Entry>& entries,
                  bool draw) {
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    if (draw) ui.text(Type::title, x, area.y + 24, kInk, head);
    float y = area.y + kHead;
    for (const Entry& entry : entries) {
        if (draw) ui.paragraph(Type::strong, x, y, width, kInk, entry.head);
        y += ui.paragraphHeight(Type::strong, width, entry.head);
        if (draw) ui.paragraph(Type::body, x, y, width, kSoft, entry.says);
        y += ui.paragraphHeight(Type::body, width, entry.says) + 8;
    }
    return y + 8 - area.y;
}

/// A card as high as what `drawn` says it takes, first asked and then drawn.
template <class Drawn>
float sheet(Ui& ui, Area area, const Drawn& drawn) {
    area.height = drawn(area, false);
    card(ui, area);
    drawn(area, true);
    return area.height + kGap;
}

float drawBody(View& view, const Area& area, const Help& help) {
    Ui& ui = view.ui;
    std::vector<Entry> words, cautious;
    for (const HelpWord& word : help.words) words.push_back({word.word, word.means});
    for (const Caution& caution : cautions()) cautious.push_back({caution.head, caution.says});
    const auto here = [&](const Area& at, bool draw) {
        return drawKeys(view, at, view.spot, "Keys here", draw);
    };
    const auto everywhere = [&](const Area& at, bool draw) {
        return drawKeys(view, at, Spot::everywhere, "Keys everywhere", draw);
    };
    const auto said = [&](const Area& at, bool draw) {
        return drawEntries(ui, at, "Words we use", words, draw);
    };
    const auto care = [&](const Area& at, bool draw) {
        return drawEntries(ui, at, "Take care", cautious, draw);
    };
    const int columns = area.width < 900 ? 2 : 3;
    const float wide = (area.width - kGap * float(columns - 1)) / float(columns);
    float bottoms[3] = {area.y, area.y, area.y};
    const auto put = [&](const auto& drawn) {  // where most room is left
        const auto column = std::min_element(bottoms, bottoms + columns) - bottoms;
        bottoms[column] +=
            sheet(ui, {area.x + float(column) * (wide + kGap), bottoms[column], wide, 0}, drawn);
    };
    put(here);
    put(said);
    put(care);
    put(everywhere);
    return *std::max_element(bottoms, bottoms + 3) - kGap - area.y;
}

}  // namespace

void drawHelpPage(View& view) {
    Ui& ui = view.ui;
    const Area body = view.frame.body;
    const Help& help = helpFor(view.spot);
    const float title =
        ui.text(Type::place, body.x, kTitleMiddle, kInk, std::string("Help: ") + help.name);
    const Button close{"help: close", "Close", ButtonKind::outlined, "Esc"};
    const float width = buttonWidth(ui, close);
    if (button(ui, close, {body.right() - width, 16, width, 34}))
        view.later([show = view.show] { show(Sheet::none); });
    const float room = body.width - title - width - 44;
    const bool fits = ui.width(Type::body, help.what_for) <= room;
    if (fits) ui.text(Type::body, body.x + title + 17, kTitleMiddle + 1, kSoft, help.what_for);
    Area below = body;
    if (!fits) {
        const float taken =
            ui.paragraph(Type::body, body.x, body.y, body.width, kSoft, help.what_for) + 10;
        below.y += taken;
        below.height -= taken;
    }
    drawScrolled(view, "help", below, [&](const Area& area) { return drawBody(view, area, help); });
}

}  // namespace wrenlet::desk
