// The Words page: the box for typing and pasting, the list, and the word in hand beside it.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/notices.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr const char* kBox = "words box";
constexpr float kPane = 300, kBoxHeight = 38;

std::string countsText(const OpenUnit& unit) {
    const auto words = std::int64_t(unit.unit().words.size());
    const auto sentences = std::int64_t(unit.unit().sentences.size());
    std::string text = wording::counted(words, "word");
    if (sentences > 0) text += " and " + wording::counted(sentences, "sentence");
    return text;
}

float drawHead(View& view, float right) {
    Ui& ui = view.ui;
    const float x = view.frame.body.x;
    const float title = ui.text(Type::place, x, kTitleMiddle, kInk, "Words");
    using Filter = WordsPlace::Filter;
    const bool all = view.words.filter == Filter::all;
    const auto kind = [](bool on) { return on ? ButtonKind::on : ButtonKind::outlined; };
    const Button look{"filter:look", "To look at " + std::to_string(view.unit->look().to_look_at),
                      kind(!all)};
    const auto rows = view.unit->unit().words.size() + view.unit->unit().sentences.size();
    const Button every{"filter:all", "All " + std::to_string(rows), kind(all)};
    const float look_width = buttonWidth(ui, look), every_width = buttonWidth(ui, every);
    const float every_x = right - look_width - 8 - every_width;
    if (button(ui, every, {every_x, 16, every_width, 34}))
        view.later([&words = view.words] { words.filter = Filter::all; });
    if (button(ui, look, {right - look_width, 16, look_width, 34}))
        view.later([&words = view.words] { words.filter = Filter::to_look_at; });
    float end = every_x;
    const Button bring{"bring in", "Bring in\u2026"};
    const float bring_width = buttonWidth(ui, bring);
    if (view.unit->canChange()) {
        end -= bring_width + 8;
        if (button(ui, bring, {end, 16, bring_width, 34}))
            view.later(
                [&view] { view.bring.begin(view.desk.opened().classroom.folder, *view.unit); });
    }
    const float from = x + title + 17;
    ui.text(Type::body, from, kTitleMiddle + 1, kSoft,
            ui.fitted(Type::body, countsText(*view.unit), end - from - 12));
    return end;
}

void addTyped(View& view) {
    view.later([&words = view.words, unit = view.unit] { words.add(*unit); });
    view.ui.focus(kBox);
}

void drawBox(View& view, const Area& area) {
    Ui& ui = view.ui;
    const Button add{"add", "Add"};
    const float width = std::max(76.f, buttonWidth(ui, add));
    const Area box{area.x, area.y, area.width - width - 8, kBoxHeight};
    const auto typing = ui.field(kBox, box, view.words.typed,
                                 "Type or paste words or a sentence, then press Enter");
    const bool pressed = button(ui, add, {box.right() + 8, area.y, width, kBoxHeight});
    if (typing.entered || pressed) addTyped(view);
}

/// What was not taken of the last words added. Returns its height.
void drawNoUnit(View& view) {
    Ui& ui = view.ui;
    const Area body = view.frame.body;
    ui.text(Type::place, body.x, kTitleMiddle, kInk, "Words");
    if (!view.make_unit) {
        emptyPlace(ui, body, "No classroom is open",
                   "Drop a classroom folder on this window, or start the desk with the folder's "
                   "name. Units of words are kept in it.");
        return;
    }
    const float width = std::min(body.width, 640.f);
    const Area sheet{body.x, body.y, width, 96.f + 42 * float(view.units.size())};
    card(ui, sheet);
    ui.text(Type::title, sheet.x + 22, sheet.y + 26, kInk,
            view.units.empty() ? "Begin a unit of words" : "Open a unit, or begin another");
    float y = sheet.y + 46;
    for (const UnitFolder& unit : view.units) {
        const std::string name = unit.folder.filename().string();
        if (button(ui, {"unit:" + name, name}, {sheet.x + 22, y, width - 44, 36}))
            view.later([&view, folder = unit.folder] { view.open_unit(folder); });
        y += 42;
    }
    const Button make{"make unit", "Begin", ButtonKind::outlined};
    const float make_width = std::max(80.f, buttonWidth(ui, make));
    const Area box{sheet.x + 22, y, width - 44 - make_width - 8, kBoxHeight};
    const auto typing = ui.field("unit title", box, view.new_title, "What is it about?");
    if (button(ui, make, {box.right() + 8, y, make_width, kBoxHeight}) || typing.entered)
        view.later([&view] {
            if (!view.new_title.empty()) view.make_unit(view.new_title);
        });
}

void keys(View& view) {
    const auto move = [&](int by) {
        view.later([&words = view.words, unit = view.unit, by] { words.move(by, *unit); });
    };
    if (hit(view, Does::down)) move(1);
    if (hit(view, Does::up)) move(-1);
    if (hit(view, Does::page_down)) move(10);
    if (hit(view, Does::page_up)) move(-10);
    if (hit(view, Does::first)) move(-100'000);
    if (hit(view, Does::last)) move(100'000);
    if (hit(view, Does::leave_out))
        view.later([&words = view.words, unit = view.unit] { words.removeInHand(*unit); });
    if (hit(view, Does::open)) view.later([&words = view.words] { words.pane_open = true; });
    if (hit(view, Does::back)) view.later([&words = view.words] { words.pane_open = false; });
    if (hit(view, Does::hear) && view.hear && view.unit)
        if (const WordLook* word = view.unit->look().word(view.words.in_hand.id))
            view.hear({exercise::wordClip(word->id), word->text, word->sounds});
}

}  // namespace

void drawWordsPage(View& view) {
    if (view.unit == nullptr) {
        drawNoUnit(view);
        return;
    }
    const Area body = view.frame.body;
    const bool has_pane = view.frame.pane_open;
    const float right = has_pane ? body.right() - kPane - 18 : body.right();
    drawHead(view, right);
    Area left{body.x, body.y, right - body.x, body.height};
    if (view.unit->canChange()) {
        drawBox(view, left);
        left.y += kBoxHeight + 8;
    }
    left.y += drawNotTaken(view, left, view.words.not_taken,
                           {"not taken: close", "One thing did not go in", " things did not go in"},
                           [&words = view.words] { words.not_taken.clear(); });
    left.y += drawProblems(view.ui, left, view.unit->problems());
    left.height = body.bottom() - left.y;
    keys(view);
    if (view.unit->unit().words.empty() && view.unit->unit().sentences.empty()) {
        emptyPlace(view.ui, left, "No words yet",
                   "Type the words of your unit above, or paste a list: one a line or with commas. "
                   "A sentence goes in with its full stop or question mark. A text or CSV file can "
                   "be dropped on this window.");
        return;
    }
    const bool covers = !has_pane && view.words.pane_open && !view.words.in_hand.id.empty();
    if (covers) {
        drawWordPane(view, left);
        return;
    }
    drawWordList(view, left);
    if (has_pane) drawWordPane(view, {body.right() - kPane, 16, kPane, body.bottom() - 16});
}

}  // namespace wrenlet::desk
