// The Papers page: a child to choose, what can be written about that child and about the class, and
// where it lies.
#include <algorithm>
#include <cctype>

#include "editor/look/wording.hpp"
#include "editor/paper/tomorrow_pages.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/page_head.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kRow = 40, kBadge = 30, kPaperRow = 84, kShortRow = 62, kPad = 22;

struct Told {
    const char *name, *says, *button;
};

Told toldOf(Paper paper) {
    switch (paper) {
        case Paper::family:
            return {"For the family", "One page in plain words, with something to do at home.",
                    "Write the family page"};
        case Paper::specialist:
            return {"For a specialist", "Counts, likely ranges, and what was chosen instead.",
                    "Write the specialist page"};
        case Paper::answers:
            return {"Every answer (CSV)", "A table for any spreadsheet; ids, no names.",
                    "Write every answer"};
        case Paper::progress:
            return {"What is said of each child (CSV)",
                    "Counts and ranges, sound by sound; ids, no names.", "Write what is said"};
        case Paper::xapi:
            return {"Every answer (xAPI)", "Statements for a record store; ids, no names.",
                    "Write the statements"};
        default:
            return {"", "", ""};
    }
}

const practice::ChildProgress& childOf(const View& view) {
    return view.desk.opened().children[view.desk.child()];
}

void write(View& view, Paper paper) {
    view.later([place = view.papers, paper, opened = &view.desk.opened(),
                child = view.desk.child()] { place->write(paper, *opened, child); });
}

void show(View& view, Paper paper) {
    view.later(
        [place = view.papers, paper, id = childOf(view).child.id] { place->show(paper, id); });
}

void drawChild(View& view, const paper::Names& names, std::size_t index, const Area& row) {
    Ui& ui = view.ui;
    const pack::Child& child = view.desk.opened().children[index].child;
    const bool in_hand = index == view.desk.child();
    const Ui::Press press = ui.press("about:" + child.id, row, false);
    if (in_hand) {
        ui.fill(row, kPaleDeep, 8);
        ui.fill({row.x - 6, row.y + 6, 4, row.height - 12}, kDeep, 2);
    } else if (press.hovered) {
        ui.fill(row, kWash, 8);
    }
    const int pixels = static_cast<int>(kBadge * ui.scale());
    if (view.pictures != nullptr)
        if (const ImTextureID badge = view.pictures->picture(child.badge, pixels))
            ui.picture(badge, {row.x + 8, row.middleY() - kBadge / 2, kBadge, kBadge});
    ui.text(Type::strong, row.x + 48, row.middleY(), kInk,
            ui.fitted(Type::strong, names.at(child.id), row.width - 58));
    if (press.pressed) view.wish([index](Desk& desk) { desk.takeChild(index); });
}

void drawChildren(View& view, const Area& frame) {
    Ui& ui = view.ui;
    const auto& children = view.desk.opened().children;
    const paper::Names names = paper::namesOf(children);
    const float content = float(children.size()) * kRow, scale = ui.scale();
    const bool scrolls = content > frame.height;
    const float inner = frame.width - (scrolls ? (ui.finger() ? 28.f : 14.f) + 4 : 0);
    ImGui::SetCursorScreenPos({(frame.x - 6) * scale, frame.y * scale});
    ImGui::BeginChild(
        "papers children", {(frame.width + 6) * scale, frame.height * scale}, false,
        (scrolls ? ImGuiWindowFlags_AlwaysVerticalScrollbar : ImGuiWindowFlags_NoScrollbar) |
            ImGuiWindowFlags_NoNav);
    const float at = float(view.desk.child()) * kRow;
    if (view.papers_scroll.seen != view.desk.child()) {
        view.papers_scroll.seen = view.desk.child();
        const float from = ImGui::GetScrollY() / scale;
        if (at < from) ImGui::SetScrollY(at * scale);
        if (at + kRow > from + frame.height) ImGui::SetScrollY((at + kRow - frame.height) * scale);
    }
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    const float top = frame.y - ImGui::GetScrollY() / scale;
    for (std::size_t i = 0; i < children.size(); ++i) {
        const Area row{frame.x, top + float(i) * kRow, inner, kRow};
        if (row.bottom() > frame.y && row.y < frame.bottom()) drawChild(view, names, i, row);
    }
    ImGui::SetCursorScreenPos({frame.x * scale, (top + content) * scale});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
}

void drawPaper(View& view, std::size_t index, const Area& row) {
    Ui& ui = view.ui;
    const Paper paper = PapersPlace::offered()[index];
    const Told told = toldOf(paper);
    const PaperWritten* written = view.papers->written(paper, childOf(view).child.id);
    const bool in_hand = view.papers->at() == index;
    if (in_hand) {
        ui.fill(row, kPaleDeep, 8);
        ui.fill({row.x - 6, row.y + 6, 4, row.height - 12}, kDeep, 2);
    }
    float right = row.right() - 10;
    const std::string label = "paper:" + std::to_string(index);
    if (written != nullptr) {
        const Button open{label + ":open", "Open"};
        const float width = buttonWidth(ui, open);
        right -= width;
        if (button(ui, open, {right, row.y + 13, width, 32})) show(view, paper);
        right -= 8;
    }
    const Button make{label + ":write", written != nullptr ? "Write anew" : "Write"};
    const float width = buttonWidth(ui, make);
    right -= width;
    if (button(ui, make, {right, row.y + 13, width, 32})) {
        view.later([place = view.papers, index] { place->take(index); });
        write(view, paper);
    }
    const float x = row.x + 12, room = right - x - 16;
    ui.text(Type::strong, x, row.y + 19, kInk, ui.fitted(Type::strong, told.name, room));
    ui.text(Type::body, x, row.y + 42, kSoft, ui.fitted(Type::body, told.says, room));
    if (written != nullptr) {
        ui.mark(Mark::tick, x + 6, row.y + 65, kDeep);
        ui.text(Type::note, x + 20, row.y + 65, kInk,
                ui.fitted(Type::note, "It lies in papers/" + written->file.filename().string(),
                          row.right() - x - 36));
    }
    const Ui::Press press = ui.press(label, row, false);
    if (press.pressed) view.later([place = view.papers, index] { place->take(index); });
}

/// A card with some of the papers offered. Returns its height.
float drawPapers(View& view, const Area& at, const std::string& head, bool of_a_child) {
    Ui& ui = view.ui;
    const std::vector<Paper> offered = PapersPlace::offered();
    float height = 52;
    for (const Paper paper : offered)
        if (isOfAChild(paper) == of_a_child)
            height += view.papers->written(paper, childOf(view).child.id) != nullptr ? kPaperRow
                                                                                     : kShortRow;
    height += 10;
    card(ui, {at.x, at.y, at.width, height});
    ui.text(Type::title, at.x + kPad, at.y + 28, kInk,
            ui.fitted(Type::title, head, at.width - 2 * kPad));
    float y = at.y + 52;
    for (std::size_t i = 0; i < offered.size(); ++i) {
        if (isOfAChild(offered[i]) != of_a_child) continue;
        const bool is_written = view.papers->written(offered[i], childOf(view).child.id) != nullptr;
        const Area row{at.x + kPad - 10, y, at.width - 2 * kPad + 20,
                       is_written ? kPaperRow : kShortRow};
        drawPaper(view, i, row);
        y += is_written ? kPaperRow : kShortRow;
    }
    return height;
}

void keys(View& view) {
    PapersPlace* place = view.papers;
    const Paper paper = PapersPlace::offered()[place->at()];
    const auto child = [&](int by) {
        const auto last = std::int64_t(view.desk.opened().children.size()) - 1;
        const auto to = std::clamp<std::int64_t>(std::int64_t(view.desk.child()) + by, 0, last);
        view.wish([to](Desk& desk) { desk.takeChild(static_cast<std::size_t>(to)); });
    };
    if (hit(view, Does::left)) child(-1);
    if (hit(view, Does::right)) child(1);
    if (hit(view, Does::down)) view.later([place] { place->move(1); });
    if (hit(view, Does::up)) view.later([place] { place->move(-1); });
    if (hit(view, Does::open) || hit(view, Does::print))
        place->written(paper, childOf(view).child.id) != nullptr ? show(view, paper)
                                                                 : write(view, paper);
}

constexpr const char* kPapersCaution =
    "A page about a child is for that child's family, or for a specialist whom the family knows "
    "of. "
    "Whether you may hand it on, and how long papers and tables are kept, your local rules decide. "
    "They lie in the classroom folder, under papers.";

}  // namespace

void drawPapersPage(View& view) {
    Ui& ui = view.ui;
    const Area body = view.frame.body;
    const float right = drawPageButtons(view);
    const float title = ui.text(Type::place, body.x, kTitleMiddle, kInk, "Papers");
    ui.text(Type::body, body.x + title + 17, kTitleMiddle + 1, kSoft,
            ui.fitted(Type::body, "pages to print, and tables for other programs",
                      right - body.x - title - 33));
    keys(view);
    const float list = std::min(260.f, body.width * 0.3f);
    drawChildren(view, {body.x, body.y, list, body.height});
    const Area sheet{body.x + list + kGap, body.y, std::min(body.width - list - kGap, 900.f),
                     body.height};
    const float caution = warningCard(ui, sheet.x, 0, sheet.width, kCaution, kPapersCaution, false);
    const Area inner{sheet.x, sheet.y, sheet.width, sheet.height - caution - 12};
    const float scale = ui.scale();
    const float content = view.papers_scroll.height;
    const bool scrolls = content > inner.height;
    const float width = inner.width - (scrolls ? (ui.finger() ? 28.f : 14.f) + 4 : 0);
    ImGui::SetCursorScreenPos({(inner.x - 6) * scale, inner.y * scale});
    ImGui::BeginChild(
        "papers", {(inner.width + 6) * scale, inner.height * scale}, false,
        (scrolls ? ImGuiWindowFlags_AlwaysVerticalScrollbar : ImGuiWindowFlags_NoScrollbar) |
            ImGuiWindowFlags_NoNav);
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    const float top = inner.y - ImGui::GetScrollY() / scale;
    float y = top;
    for (const Problem& problem : view.papers->problems())
        y += warningCard(ui, inner.x, y, width, problem.what,
                         problem.where + ". " + problem.way_out, true) +
             8;
    const practice::ChildProgress& child = childOf(view);
    const std::string about =
        "About " + paper::namesOf(view.desk.opened().children).at(child.child.id);
    y += drawPapers(view, {inner.x, y, width, 0},
                    child.answers > 0 ? about : about + ", who has not played yet", true) +
         12;
    y += drawPapers(view, {inner.x, y, width, 0}, "The whole class, for other programs", false);
    view.papers_scroll.height = y - top;
    ImGui::SetCursorScreenPos({inner.x * scale, y * scale});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
    warningCard(ui, sheet.x, sheet.bottom() - caution, sheet.width, kCaution, kPapersCaution, true);
}

void drawPapersFoot(View& view, const Area& foot) {
    Ui& ui = view.ui;
    const PapersPlace& place = *view.papers;
    const Paper paper = PapersPlace::offered()[place.at()];
    const Told told = toldOf(paper);
    const bool is_written = place.written(paper, childOf(view).child.id) != nullptr;
    const Button way{"next",
                     place.isBusy() ? "One moment"
                     : is_written   ? "Open it"
                                    : told.button,
                     ButtonKind::filled, capOf(view, Does::print)};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area at{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, at) || hit(view, Does::next_step))
        is_written ? show(view, paper) : write(view, paper);
    std::string about = told.name;
    about[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(about[0])));
    if (isOfAChild(paper)) about = childOf(view).child.name + ", " + about;
    const float lead = ui.width(Type::strong, "Next: ");
    const std::string said = ui.fitted(Type::body, about, at.x - foot.x - 60 - lead);
    const float wide = ui.text(Type::body, at.x - 16, foot.middleY(), kInk, said, Align::right);
    ui.text(Type::strong, at.x - 16 - wide, foot.middleY(), kInk, "Next: ", Align::right);
}

}  // namespace wrenlet::desk
