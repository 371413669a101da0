// "Asked, and what Maya chose": a table of sounds against sounds where the choices stand for
// sounds, and else the wrong choices in words.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 17;

void drawCount(Ui& ui, int times, bool is_right, const Area& cell) {
    const Colour ground = is_right     ? kPaleDeep
                          : times >= 5 ? kBrick
                          : times >= 2 ? kMidBrick
                          : times == 1 ? kPaleBrick
                                       : kPaper;
    ui.fill(cell, ground, 4);
    if (is_right) ui.edge(cell, kDeep, 4);
    if (times == 0) {
        ui.mark(Mark::dot, cell.middleX(), cell.middleY(), kDot);
    } else {
        ui.text(times >= 2 && !is_right ? Type::strong : Type::body, cell.middleX(), cell.middleY(),
                times >= 5 && !is_right ? kWhite : kInk, wording::figure(times), Align::middle);
    }
}

void drawTable(Ui& ui, const ConfusionTable& table, const Area& area) {
    const auto count = static_cast<float>(table.labels.size());
    float label_width = 0;
    for (const std::string& label : table.labels)
        label_width = std::max(label_width, ui.width(Type::title, label));
    const float left = area.x + ui.width(Type::note, "asked") + 10 + label_width + 10;
    const float cell_width = std::min(110.f, (area.right() - left) / count);
    const float cell_height = std::clamp((area.height - 26) / count, 17.f, 36.f);
    for (std::size_t asked = 0; asked < table.labels.size(); ++asked) {
        const float y = area.y + 26 + static_cast<float>(asked) * cell_height;
        const float middle = y + (cell_height - 3) / 2;
        const float column_x = left + static_cast<float>(asked) * cell_width;
        ui.text(Type::title, column_x + (cell_width - 3) / 2, area.y + 11, kInk,
                table.labels[asked], Align::middle);
        if (asked == 0) ui.text(Type::note, area.x, middle, kSoft, "asked");
        ui.text(Type::title, left - 10, middle, kInk, table.labels[asked], Align::right);
        for (std::size_t chosen = 0; chosen < table.labels.size(); ++chosen)
            drawCount(ui, table.times[asked][chosen], asked == chosen,
                      {left + static_cast<float>(chosen) * cell_width, y, cell_width - 3,
                       cell_height - 3});
    }
}

// A column as wide as the widest of its texts, 110 u at most.
template <class TextOf>
float columnWidth(const Ui& ui, const ChoicesTaken& choices, std::size_t rows, TextOf text_of) {
    float width = 44;
    for (std::size_t at = 0; at < rows; ++at)
        width = std::max(width, ui.width(Type::strong, text_of(choices.foils[at])));
    return std::min(width, 110.f) + 16;
}

std::string timesOf(const FoilTaken& foil) {
    return wording::figure(foil.times) + " of " + wording::figure(foil.of);
}

void drawFoils(Ui& ui, const ChoicesTaken& choices, const Area& area) {
    constexpr float kRow = 27, kHead = 23, kMore = 22;
    const std::size_t count = choices.foils.size();
    auto rows = static_cast<std::size_t>((area.height - kHead) / kRow);
    if (rows < count) rows = static_cast<std::size_t>((area.height - kHead - kMore) / kRow);
    rows = std::min(rows, count);
    const auto asked = [](const FoilTaken& foil) { return foil.asked; };
    const auto chosen = [](const FoilTaken& foil) { return foil.chosen; };
    const float chosen_x = area.x + columnWidth(ui, choices, rows, asked);
    const float times_right = chosen_x + columnWidth(ui, choices, rows, chosen) +
                              columnWidth(ui, choices, rows, timesOf) - 16;
    const float means_x = times_right + 18;

    ui.text(Type::note, area.x, area.y + 8, kSoft, "asked");
    ui.text(Type::note, chosen_x, area.y + 8, kSoft, "chose");
    ui.text(Type::note, times_right, area.y + 8, kSoft, "times", Align::right);
    ui.text(Type::note, means_x, area.y + 8, kSoft, "so it seems");
    ui.level(area.x, area.y + 20, area.width, kLine);
    for (std::size_t at = 0; at < rows; ++at) {
        const FoilTaken& foil = choices.foils[at];
        const float middle = area.y + kHead + (static_cast<float>(at) + 0.5f) * kRow;
        const bool again = foil.times > 1;
        ui.text(Type::strong, area.x, middle, kInk,
                ui.fitted(Type::strong, foil.asked, chosen_x - area.x - 8));
        ui.text(again ? Type::strong : Type::body, chosen_x, middle, again ? kBrick : kInk,
                ui.fitted(Type::strong, foil.chosen, 110));
        ui.text(Type::body, times_right, middle, kInk, timesOf(foil), Align::right);
        ui.text(Type::note, means_x, middle, kSoft,
                ui.fitted(Type::note, foil.means, area.right() - means_x));
    }
    if (rows < count)
        ui.text(Type::note, area.x, area.y + kHead + static_cast<float>(rows) * kRow + 11, kSoft,
                "and " + wording::figure(std::int64_t(count - rows)) + " more, taken less often");
}

}  // namespace

void drawChoicesCard(View& view, const Area& area) {
    Ui& ui = view.ui;
    const ChoicesTaken& choices = view.desk.choices();
    const std::string& name = view.desk.opened().children[view.desk.child()].child.name;
    card(ui, area);
    ui.note("choices", area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    ui.text(Type::title, x, area.y + 22, kInk,
            ui.fitted(Type::title, "Asked, and what " + name + " chose", width));
    std::string note = choices.heading + ", " + wording::counted(choices.answers, "answer") + ".";
    if (choices.table) note += " Rows: asked. Columns: chosen.";
    ui.text(Type::note, x, area.y + 45, kSoft, ui.fitted(Type::note, note, width));

    const Area inner{x, area.y + 60, width, area.height - 60 - 10};
    if (choices.table) {
        drawTable(ui, *choices.table, {inner.x, inner.y, inner.width, inner.height - 22});
        ui.text(Type::note, x, area.bottom() - 17, kSoft,
                "Outlined: right. Dark: taken for it most often.");
    } else if (choices.foils.empty()) {
        ui.paragraph(Type::body, x, inner.y + 8, width, kInk,
                     "Every first answer is right so far.");
    } else {
        drawFoils(ui, choices, inner);
    }
}

}  // namespace wrenlet::desk
