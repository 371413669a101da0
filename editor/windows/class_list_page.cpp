// The class list: the box for names, who is in the class with badge, key and shields, and those who
// have left it.
#include <algorithm>

#include "content/pack/badges.hpp"
#include "editor/look/wording.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/notices.hpp"
#include "editor/windows/page_head.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr const char* kBox = "names box";
constexpr float kPane = 424, kBoxHeight = 38, kRow = 46, kHead = 24, kBadge = 36, kKeyPicture = 30;

void drawHead(View& view) {
    Ui& ui = view.ui;
    const pack::ClassList& list = view.class_list->list();
    const float right = drawPageButtons(view);
    const float x = view.frame.body.x;
    const float title = ui.text(Type::place, x, kTitleMiddle, kInk, "Class list");
    std::string counts = wording::counted(std::int64_t(list.children.size()), "child", "children");
    if (!list.left.empty())
        counts += ", " + std::to_string(list.left.size()) + " no longer in the class";
    ui.text(Type::body, x + title + 17, kTitleMiddle + 1, kSoft,
            ui.fitted(Type::body, counts, right - x - title - 33));
}

void drawBox(View& view, const Area& area) {
    Ui& ui = view.ui;
    ClassListPlace& place = view.class_place;
    const Button add{"add child", "Add"};
    const float width = std::max(76.f, buttonWidth(ui, add));
    const Area box{area.x, area.y, area.width - width - 8, kBoxHeight};
    const auto typing =
        ui.field(kBox, box, place.typed, "Type a name, paste a list, or drop a file, then Enter");
    const bool pressed = button(ui, add, {box.right() + 8, area.y, width, kBoxHeight});
    if (!typing.entered && !pressed) return;
    view.later([&place, list = view.class_list] { place.add(*list); });
    ui.focus(kBox);
}

/// A card with a word, and buttons under it. Returns its height with the gap below.
float drawCard(Ui& ui, const Area& area, const std::string& head, const std::string& body,
               const std::vector<Button>& buttons,
               const std::function<void(std::size_t)>& pressed) {
    const float told = warningCard(ui, area.x, area.y, area.width, head, body, false);
    const float height = told + (buttons.empty() ? 0 : 40);
    ui.fill({area.x, area.y, area.width, height}, kButter, 8);
    warningCard(ui, area.x, area.y, area.width, head, body, true);
    float x = area.x + 36;
    for (std::size_t i = 0; i < buttons.size(); ++i) {
        const float width = std::min(buttonWidth(ui, buttons[i]), area.width - 48);
        if (x + width > area.right() - 8) break;
        if (button(ui, buttons[i], {x, area.y + told - 2, width, 32})) pressed(i);
        x += width + 8;
    }
    return height + 8;
}

float drawOffer(View& view, const Area& area) {
    const NamesOffer* offer = view.class_place.offered(*view.class_list);
    if (offer == nullptr) return 0;
    return drawCard(view.ui, area, offer->head, offer->body,
                    {{"names offer", offer->button}, {"names offer: close", "Fine so"}},
                    [&](std::size_t i) {
                        view.later([&place = view.class_place, list = view.class_list, i] {
                            if (i == 0)
                                place.takeOffer(*list);
                            else
                                place.offer.reset();
                        });
                    });
}

/// The classes of a school's list, one to choose. Returns its height with the gap below.
float drawRoster(View& view, const Area& area) {
    Ui& ui = view.ui;
    const auto& roster = view.class_place.roster;
    if (!roster) return 0;
    constexpr std::size_t kMostShown = 8;
    const std::size_t shown = std::min(roster->classes.size(), kMostShown);
    const float height = 52 + 40 * float(shown + 1);
    card(ui, {area.x, area.y, area.width, height});
    ui.text(Type::title, area.x + 18, area.y + 26, kInk,
            ui.fitted(Type::title, "Which class of " + view.class_place.roster_from + " is yours?",
                      area.width - 36));
    float y = area.y + 46;
    const auto choose = [&](const Button& way, std::optional<std::size_t> of_class) {
        if (button(ui, way, {area.x + 18, y, area.width - 36, 34}))
            view.later([&place = view.class_place, list = view.class_list, of_class] {
                place.takeRoster(of_class, *list);
            });
        y += 40;
    };
    const auto count = [](const std::vector<NewChild>& children) {
        return wording::counted(std::int64_t(children.size()), "child", "children");
    };
    for (std::size_t i = 0; i < shown; ++i)
        choose({"roster:" + std::to_string(i),
                ui.fitted(Type::strong,
                          roster->classes[i].title + ", " + count(roster->classes[i].children),
                          area.width - 80)},
               i);
    const Button none{"roster: none", "None of them"};
    if (button(ui, none, {area.x + 18, y, buttonWidth(ui, none), 34}))
        view.later([&place = view.class_place] { place.roster.reset(); });
    if (roster->children.size() <= pack::kMostChildren) {
        const float x = area.x + 26 + buttonWidth(ui, none);
        const Button all{"roster: all", "All " + count(roster->children)};
        if (button(ui, all, {x, y, buttonWidth(ui, all), 34}))
            view.later([&place = view.class_place, list = view.class_list] {
                place.takeRoster(std::nullopt, *list);
            });
    }
    return height + 12;
}

void drawPicture(View& view, const std::string& name, const Area& area) {
    const int pixels = static_cast<int>(area.width * view.ui.scale());
    const ImTextureID texture =
        view.pictures == nullptr ? nullptr : view.pictures->picture(name, pixels);
    if (texture != nullptr)
        view.ui.picture(texture, area);
    else
        view.ui.edge(area.inset(2), kEdge, 6);
}

/// A tag on butter that says what to look at.
void drawChip(Ui& ui, float right, float middle, const std::string& text) {
    const float width = ui.width(Type::note, text) + 34;
    const Area tag{right - width, middle - 12, width, 25};
    ui.fill(tag, kButter, 6);
    ui.edge(tag, kStrawInk, 6);
    ui.mark(Mark::warning, tag.x + 13, middle, kStrawInk, MarkSize::large);
    ui.text(Type::note, tag.x + 25, middle, kInk, text);
}

void drawChild(View& view, const pack::Child& child, bool has_left, const Area& row) {
    Ui& ui = view.ui;
    const bool in_hand = view.class_place.in_hand == child.id;
    const auto press = ui.press("child:" + child.id, row, false);
    if (in_hand) {
        ui.fill(row, kPaleDeep, 8);
        ui.fill({row.x - 6, row.y + 6, 4, row.height - 12}, kDeep, 2);
    } else if (press.hovered) {
        ui.fill(row, kWash, 8);
    }
    ui.level(row.x, row.bottom() - 1, row.width, kLine);
    const float middle = row.middleY();
    const float key = row.x + row.width * 0.44f, shields = key + 96;
    drawPicture(view, child.badge, {row.x + 6, middle - kBadge / 2, kBadge, kBadge});
    ui.text(Type::title, row.x + 52, middle, has_left ? kSoft : kInk,
            ui.fitted(Type::title, child.name, key - row.x - 62));
    const std::string shielded =
        child.shields.empty() ? "" : wording::counted(std::int64_t(child.shields.size()), "shield");
    if (has_left) {
        ui.text(Type::note, key, middle, kSoft, "no longer in the class; answers kept");
    } else {
        for (std::size_t i = 0; i < child.key.size(); ++i)
            drawPicture(view, "key-" + child.key[i],
                        {key + float(i) * (kKeyPicture + 4), middle - kKeyPicture / 2, kKeyPicture,
                         kKeyPicture});
        if (child.key.empty()) ui.level(key + 12, middle - 1, 8, kDot, 2);
        if (!shielded.empty()) {
            ui.mark(Mark::shield, shields + 8, middle, kSoft, MarkSize::large);
            ui.text(Type::body, shields + 24, middle, kInk, shielded);
        } else {
            ui.level(shields + 12, middle - 1, 8, kDot, 2);
        }
        const pack::Child* shares = view.class_list->work().sharesBadge(child);
        if (shares != nullptr)
            drawChip(ui, row.right() - 4, middle, "same badge as " + shares->name);
        else if (pack::badge(child.badge) == nullptr)
            drawChip(ui, row.right() - 4, middle, "no such badge");
    }
    if (press.pressed)
        view.later([&place = view.class_place, list = view.class_list, id = child.id] {
            place.take(id, *list);
            place.pane_open = true;
        });
}

void drawList(View& view, const Area& area) {
    Ui& ui = view.ui;
    const pack::ClassList& list = view.class_list->list();
    const std::size_t count = list.children.size() + list.left.size();
    const float content = float(count) * kRow;
    const Area frame{area.x, area.y + kHead, area.width, area.height - kHead};
    const bool scrolls = content > frame.height;
    const float inner = frame.width - (scrolls ? (ui.finger() ? 28.f : 14.f) + 4 : 0);
    const float key = area.x + inner * 0.44f;
    ui.text(Type::note, area.x + 6, area.y + 10, kSoft, "Badge and name");
    ui.text(Type::note, key, area.y + 10, kSoft, "Key");
    ui.text(Type::note, key + 96, area.y + 10, kSoft, "Accent shields");
    ui.level(area.x, frame.y - 1, inner, kEdge);
    const float scale = ui.scale();
    ImGui::SetCursorScreenPos({(frame.x - 6) * scale, frame.y * scale});
    ImGui::BeginChild(
        "children", {(frame.width + 6) * scale, frame.height * scale}, false,
        (scrolls ? ImGuiWindowFlags_AlwaysVerticalScrollbar : ImGuiWindowFlags_NoScrollbar) |
            ImGuiWindowFlags_NoNav);
    const std::vector<std::string> ids = view.class_place.rows(*view.class_list);
    const auto at = std::find(ids.begin(), ids.end(), view.class_place.in_hand);
    if (at != ids.end() && view.class_scroll.seen != *at) {
        view.class_scroll.seen = *at;
        const float top = float(at - ids.begin()) * kRow, from = ImGui::GetScrollY() / scale;
        if (top < from) ImGui::SetScrollY(top * scale);
        if (top + kRow > from + frame.height)
            ImGui::SetScrollY((top + kRow - frame.height) * scale);
    }
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    const float top = frame.y - ImGui::GetScrollY() / scale;
    for (std::size_t i = 0; i < count; ++i) {
        const Area row{frame.x, top + float(i) * kRow, inner, kRow};
        const bool has_left = i >= list.children.size();
        if (row.bottom() > frame.y && row.y < frame.bottom())
            drawChild(view, has_left ? list.left[i - list.children.size()] : list.children[i],
                      has_left, row);
    }
    ImGui::SetCursorScreenPos({frame.x * scale, (top + content) * scale});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
}

void keys(View& view) {
    const auto move = [&](int by) {
        view.later(
            [&place = view.class_place, list = view.class_list, by] { place.move(by, *list); });
    };
    if (hit(view, Does::down)) move(1);
    if (hit(view, Does::up)) move(-1);
    if (hit(view, Does::page_down)) move(10);
    if (hit(view, Does::page_up)) move(-10);
    if (hit(view, Does::first)) move(-100'000);
    if (hit(view, Does::last)) move(100'000);
    if (hit(view, Does::open)) view.later([&place = view.class_place] { place.pane_open = true; });
    if (hit(view, Does::back)) view.later([&place = view.class_place] { place.pane_open = false; });
}

}  // namespace

void drawClassListPage(View& view) {
    const Area body = view.frame.body;
    const pack::ClassList& list = view.class_list->list();
    const bool has_pane = view.frame.pane_open;
    const bool has_any = !list.children.empty() || !list.left.empty();
    drawHead(view);
    Area left{body.x, body.y, body.width - (has_pane && has_any ? kPane + 18 : 0), body.height};
    drawBox(view, left);
    left.y += kBoxHeight + 8;
    left.y += drawNotTaken(view, left, view.class_place.not_taken,
                           {"names not taken: close", "One thing to know of what came in",
                            " things to know of what came in", true},
                           [&place = view.class_place] { place.not_taken.clear(); });
    left.y += drawOffer(view, left);
    left.y += drawProblems(view.ui, left, view.class_list->problems());
    left.y += drawRoster(view, left);
    left.height = body.bottom() - left.y;
    keys(view);
    if (!has_any) {
        if (!view.class_place.roster)
            emptyPlace(view.ui, left, "No children yet",
                       "Type the children's names above, or paste a list: one a line or with "
                       "commas. A text or CSV file can be dropped on this window, also the "
                       "OneRoster export (users.csv) of your school's program. Given names are "
                       "enough; each child gets a badge.");
        return;
    }
    if (!has_pane && view.class_place.pane_open && !view.class_place.in_hand.empty()) {
        const Button back{"class list: back", "The whole list", ButtonKind::outlined, "Esc"};
        if (button(view.ui, back, {left.x, left.y, buttonWidth(view.ui, back), 34}))
            view.later([&place = view.class_place] { place.pane_open = false; });
        drawClassListPane(view, {left.x, left.y + 42, left.width, left.height - 42});
        return;
    }
    drawList(view, left);
    if (has_pane)
        drawClassListPane(view, {body.right() - kPane, body.y, kPane, body.bottom() - body.y});
}

}  // namespace wrenlet::desk
