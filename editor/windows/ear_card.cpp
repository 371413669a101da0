// Asking one child aloud: ten things to say, and what she heard. Keys 1, 2 and 3 mark the one in
// hand.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;
using practice::HeardAs;

constexpr float kPad = 17, kMarkWidth = 74;

/// What a row leaves to the question, beside its mark.
float askWidth(float row_width) {
    return row_width - 20 - kMarkWidth;
}

struct Way {
    HeardAs mark;
    const char* label;
    const char* word;
    Does does;
};
constexpr Way kWays[] = {{HeardAs::right, "ear right", "Right", Does::mark_right},
                         {HeardAs::almost, "ear almost", "Almost", Does::mark_almost},
                         {HeardAs::wrong, "ear wrong", "Wrong", Does::mark_wrong}};

/// The two kinds of words, of which one is on. Returns its height.
float drawKinds(View& view, float x, float y) {
    const auto way = [&](EarWords words, const char* label, const char* text) {
        const Button kind{label, text,
                          view.ear.words() == words ? ButtonKind::on : ButtonKind::outlined};
        const float width = buttonWidth(view.ui, kind);
        if (button(view.ui, kind, {x, y, width, 32}))
            view.later([ask = view.ask_aloud, words] { ask(words); });
        x += width + 8;
    };
    way(EarWords::practised, "ear practised", "Words of the pack");
    way(EarWords::fresh, "ear fresh", "New words: a probe");
    return 32;
}

void drawItem(View& view, std::size_t index, const Area& row) {
    Ui& ui = view.ui;
    const AskedAloud& item = view.ear.items()[index];
    const bool here = index == view.ear.at();
    const auto press = ui.press("ear item " + std::to_string(index), row, false);
    if (here) {
        ui.fill(row, kPaleDeep, 6);
        ui.fill({row.x, row.y + 4, 4, row.height - 8}, kDeep, 2);
    } else if (press.hovered) {
        ui.fill(row, kWash, 6);
    }
    const float mark_width = kMarkWidth, x = row.x + 14, width = askWidth(row.width);
    if (here) {
        const float asked = ui.paragraph(Type::strong, x, row.y + 6, width, kInk, item.said.ask);
        ui.text(Type::note, x, row.y + 6 + asked + 10, kSoft,
                ui.fitted(Type::note, "Answer: " + item.said.answer, width));
    } else {
        ui.text(Type::body, x, row.middleY(), kInk, ui.fitted(Type::body, item.said.ask, width));
    }
    if (const auto mark = view.ear.markOf(index)) {
        const bool is_right = *mark == HeardAs::right;
        const float at = row.right() - mark_width;
        ui.mark(is_right                   ? Mark::tick
                : *mark == HeardAs::almost ? Mark::half_disc
                                           : Mark::diamond,
                at, row.middleY(),
                is_right                   ? kDeep
                : *mark == HeardAs::almost ? kStrawInk
                                           : kBrick);
        ui.text(Type::note, at + 13, row.middleY(), kInk, wording::heardAs(*mark));
    }
    if (press.pressed) view.later([&ear = view.ear, index] { ear.moveTo(index); });
}

void drawWays(View& view, float x, float y) {
    for (const Way& way : kWays) {
        const Button shown{way.label, way.word, ButtonKind::outlined, capOf(view, way.does)};
        const float width = std::max(104.f, buttonWidth(view.ui, shown));
        const bool by_key = hit(view, way.does);
        if (button(view.ui, shown, {x, y, width, 36}) || by_key)
            view.later([give = view.mark_aloud, mark = way.mark] { give(mark); });
        x += width + 8;
    }
}

}  // namespace

bool isAskedAloud(const Desk& desk, const EarPlace& ear) {
    return ear.isOpen() && desk.child() < desk.opened().children.size() &&
           desk.opened().children[desk.child()].child.id == ear.child();
}

void drawEarCard(View& view, const Area& area) {
    Ui& ui = view.ui;
    const std::string& name = view.desk.opened().children[view.desk.child()].child.name;
    card(ui, area);
    ui.note("ear", area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    const Button done{"ear done", "Done", ButtonKind::outlined, "Esc"};
    const float wide = buttonWidth(ui, done);
    if (button(ui, done, {area.right() - kPad - wide, area.y + 8, wide, 32}) ||
        hit(view, Does::back))
        view.later(view.close_aloud);
    ui.text(Type::title, x, area.y + 24, kInk,
            ui.fitted(Type::title, "Ask " + name + " aloud: " + wording::skill(view.ear.skill()),
                      width - wide - 10));
    float y = area.y + 46;
    y += drawKinds(view, x, y) + 8;
    y += ui.paragraph(Type::note, x, y, width, kSoft,
                      view.ear.words() == EarWords::fresh
                          ? "Words that nobody here has practised: what carries over? Once a month "
                            "is enough. Nobody is recorded."
                          : "Mark what you hear. Nobody is recorded.") +
         6;
    if (!view.ear.problems().empty())
        y += warningCard(ui, x, y, width, view.ear.problems().front().what,
                         view.ear.problems().front().way_out, true) +
             6;
    const OpenedClass& opened = view.desk.opened();
    const Transfer transfer =
        transferOf(opened.responses, opened.heard, view.ear.child(), view.ear.skill());
    if (transfer.new_words.all() > 0)
        y += ui.paragraph(Type::body, x, y, width, kInk,
                          "Practised words: " + wording::figure(transfer.practised_right) + " of " +
                              wording::figure(transfer.practised) + " right. New words, aloud: " +
                              wording::heard(transfer.new_words) + ".") +
             6;
    const std::size_t count = view.ear.items().size();
    if (count == 0) {
        ui.paragraph(Type::body, x, y + 8, width, kInk,
                     view.ear.words() == EarWords::fresh
                         ? "No words are left that are new here for this task."
                         : "The pack that is handed out asks nothing in this task. Try new words, "
                           "or hand out another pack.");
        return;
    }
    const float ways = area.bottom() - 12 - 36;
    drawWays(view, x, ways);
    // The one in hand is there whole, to be read out, with its answer.
    const float in_hand = 36 + ui.paragraphHeight(Type::strong, askWidth(width + 12),
                                                  view.ear.items()[view.ear.at()].said.ask);
    const float row = std::min(34.f, (ways - 10 - y - in_hand) / std::max(1.f, float(count) - 1));
    for (std::size_t i = 0; i < count; ++i) {
        const float height = i == view.ear.at() ? in_hand : row;
        drawItem(view, i, {x - 6, y, width + 12, height - 2});
        y += height;
    }
    const int step = hit(view, Does::down) ? 1 : hit(view, Does::up) ? -1 : 0;
    if (step != 0)
        view.later([&ear = view.ear, step] {
            if (step > 0 || ear.at() > 0) ear.moveTo(ear.at() + static_cast<std::size_t>(step));
        });
}

}  // namespace wrenlet::desk
