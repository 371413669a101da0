// The child in hand at the class list: name, badge, key, accent shields, and leaving the class.
#include <algorithm>
#include <cmath>

#include "content/pack/badges.hpp"
#include "content/pack/picture_key.hpp"
#include "editor/classlist/shield_choices.hpp"
#include "editor/windows/input.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 16, kBadge = 56, kSmall = 30, kCheck = 27;

void drawPicture(View& view, const std::string& name, const Area& area) {
    const int pixels = static_cast<int>(area.width * view.ui.scale());
    const ImTextureID texture =
        view.pictures == nullptr ? nullptr : view.pictures->picture(name, pixels);
    if (texture != nullptr)
        view.ui.picture(texture, area);
    else
        view.ui.edge(area.inset(2), kEdge, 6);
}

/// A picture that can be pressed; `on` is what stands now.
bool drawChoice(View& view, const std::string& label, const std::string& picture, const Area& area,
                bool on) {
    Ui& ui = view.ui;
    const auto press = ui.press(label, area);
    if (on) {
        ui.fill(area, kPaleDeep, 6);
        ui.edge(area, kDeep, 6, 2);
    } else if (press.hovered) {
        ui.fill(area, kWash, 6);
    }
    drawPicture(view, picture, area.inset(3));
    if (press.held) ui.focusRing(area, 6);
    return press.pressed;
}

float drawTop(View& view, const pack::Child& child, const Area& area) {
    Ui& ui = view.ui;
    ClassListPlace& place = view.class_place;
    const float x = area.x + kPad;
    drawPicture(view, child.badge, {x, area.y + 10, kBadge, kBadge});
    if (place.name_seen != child.name) place.name_typed = place.name_seen = child.name;
    const float from = x + kBadge + 12;
    const Button rename{"rename child", "Change"};
    const float width = buttonWidth(ui, rename);
    const bool is_other = place.name_typed != child.name;
    const Area box{from, area.y + 19, area.right() - kPad - from - (is_other ? width + 8 : 0), 38};
    const auto typing = ui.field("child name", box, place.name_typed, "A name");
    const bool pressed =
        is_other && button(ui, rename, {box.right() + 8, box.y, width, box.height});
    if (typing.entered || pressed)
        view.later([&place, list = view.class_list, id = child.id] {
            const std::string before = list->work().child(id)->name;
            if (!list->change().rename(id, place.name_typed))
                place.not_taken = {{"Name",
                                    "This cannot be the name: it is empty, too long, or "
                                    "another child's.",
                                    "Write another one.", Problem::Weight::warning}};
            place.take(id, *list);
        });
    return kBadge + 18;
}

float drawBadges(View& view, const pack::Child& child, float x, float y, float width) {
    Ui& ui = view.ui;
    ui.text(Type::strong, x, y + 9, kInk, "Badge");
    const float lead = ui.width(Type::strong, "Badge") + 10;
    ui.disc(x + lead + 4, y + 9, 4, kDot);
    ui.text(Type::note, x + lead + 14, y + 9, kSoft,
            "another child's; touched, the two change badges");
    const auto across = static_cast<std::size_t>(std::floor((width + 2) / (kSmall + 2)));
    const float top = y + 22;
    for (std::size_t i = 0; i < pack::kBadges.size(); ++i) {
        const std::string id(pack::kBadges[i].id);
        const Area area{x + float(i % across) * (kSmall + 2),
                        top + float(i / across) * (kSmall + 2), kSmall, kSmall};
        if (drawChoice(view, "badge:" + id, id, area, id == child.badge))
            view.later([list = view.class_list, child_id = child.id, id] {
                list->change().giveBadge(child_id, id);
            });
        const auto& all = view.class_list->list().children;
        const bool is_taken = std::any_of(all.begin(), all.end(), [&](const pack::Child& other) {
            return other.id != child.id && other.badge == id;
        });
        if (is_taken) ui.disc(area.right() - 5, area.bottom() - 5, 4, kDot);
    }
    const std::size_t rows = (pack::kBadges.size() + across - 1) / across;
    return 22 + float(rows) * (kSmall + 2) + 8;
}

float drawKey(View& view, const pack::Child& child, float x, float y, float width) {
    Ui& ui = view.ui;
    ClassListPlace& place = view.class_place;
    ui.text(Type::strong, x, y + 9, kInk, "Key");
    const float lead = ui.width(Type::strong, "Key") + 10;
    const std::string told = !place.key_first.empty() ? place.key_first + ", then the second one"
                             : child.key.empty()      ? "none; one prevents mix-ups, no more"
                                                      : child.key[0] + ", then " + child.key[1];
    ui.text(Type::note, x + lead, y + 9, place.key_first.empty() ? kSoft : kInk, told);
    const Button give{"give key", "By chance"}, none{"no key", "None"};
    float right = x + width;
    const auto change = [&](bool by_chance) {
        view.later([&place, list = view.class_list, id = child.id, by_chance] {
            place.key_first.clear();
            if (by_chance)
                list->change().giveKeyByChance(id);
            else
                list->change().giveKey(id, {});
        });
    };
    if (!child.key.empty()) {
        right -= buttonWidth(ui, none);
        if (button(ui, none, {right, y - 5, buttonWidth(ui, none), 30})) change(false);
        right -= 6;
    }
    right -= buttonWidth(ui, give);
    if (button(ui, give, {right, y - 5, buttonWidth(ui, give), 30})) change(true);
    for (std::size_t i = 0; i < pack::kKeyPictures.size(); ++i) {
        const std::string name(pack::kKeyPictures[i]);
        const Area area{x + float(i) * (kSmall + 4), y + 29, kSmall, kSmall};
        const bool is_in = place.key_first.empty() ? std::find(child.key.begin(), child.key.end(),
                                                               name) != child.key.end()
                                                   : place.key_first == name;
        if (drawChoice(view, "key:" + name, "key-" + name, area, is_in))
            view.later([&place, list = view.class_list, name] { place.touchKey(name, *list); });
        if (!is_in || !place.key_first.empty() || child.key.size() != 2) continue;
        const Area number{area.right() - 12, area.bottom() - 12, 15, 15};
        ui.fill(number, kDeep, 7);
        ui.text(Type::note, number.middleX(), number.middleY(), kWhite,
                child.key[0] == name ? "1" : "2", Align::middle);
    }
    return 29 + kSmall + 12;
}

void drawShield(View& view, const pack::Child& child, const ShieldChoice& choice,
                const Area& area) {
    Ui& ui = view.ui;
    ClassListPlace& place = view.class_place;
    const std::string id(choice.id);
    const bool on =
        std::find(child.shields.begin(), child.shields.end(), id) != child.shields.end();
    const auto press = ui.press("shield:" + id, area);
    if (press.hovered) ui.fill(area, kWash, 6);
    const Area box{area.x + 2, area.middleY() - 9, 18, 18};
    ui.fill(box, on ? kDeep : kCard, 4);
    ui.edge(box, on ? kDeep : kEdge, 4);
    if (on) ui.mark(Mark::tick, box.middleX(), box.middleY(), kCard);
    ui.text(Type::body, area.x + 28, area.middleY(), kInk,
            ui.fitted(Type::body, choice.example, area.width - 30));
    if (press.held) ui.focusRing(area.inset(2), 6);
    if (press.hovered || press.held) place.shield_told = id;
    if (press.pressed)
        view.later([list = view.class_list, child_id = child.id, id, on, name = choice.example] {
            list->change().setShields(child_id, {id}, !on, name);
        });
}

float drawShields(View& view, const pack::Child& child, float x, float y, float width) {
    Ui& ui = view.ui;
    ui.mark(Mark::shield, x + 8, y + 9, kSoft, MarkSize::large);
    ui.text(Type::strong, x + 24, y + 9, kInk, "Shields");
    float right = x + width;
    for (const ShieldSet& set : shieldSets()) {
        const bool on = std::all_of(set.shields.begin(), set.shields.end(), [&](const auto& id) {
            return std::find(child.shields.begin(), child.shields.end(), id) != child.shields.end();
        });
        const Button way{"shields:" + std::string(set.name), std::string(set.name),
                         on ? ButtonKind::on : ButtonKind::outlined};
        const float wide = buttonWidth(ui, way);
        right -= wide;
        if (button(ui, way, {right, y - 6, wide, 30}))
            view.later([list = view.class_list, id = child.id, &set, on] {
                list->change().setShields(id, set.shields, !on, set.name);
            });
        right -= 6;
    }
    const auto choices = shieldChoices();
    const std::size_t rows = (choices.size() + 2) / 3;
    const float wide = width / 3, top = y + 28;
    for (std::size_t i = 0; i < choices.size(); ++i)
        drawShield(view, child, choices[i],
                   {x + float(i / rows) * wide, top + float(i % rows) * kCheck, wide - 4, kCheck});
    const ShieldChoice* told = shieldChoice(view.class_place.shield_told);
    const float words = top + float(rows) * kCheck + 4;
    float height = ui.paragraph(Type::note, x, words, width, kInk, kWhatShieldsDo);
    height += ui.paragraph(
        Type::note, x, words + height, width, kSoft,
        told != nullptr ? "For " + child.name + ", " + std::string(told->says)
                        : "What is said at home decides; a shield is no finding about a child.");
    return words + height - y;
}

void drawLeaving(View& view, const std::string& name, bool has_left, float x, float y) {
    Ui& ui = view.ui;
    const Button way{"leave class", has_left ? "Back in the class" : "Leaves the class"};
    const float width = buttonWidth(ui, way);
    if (button(ui, way, {x, y, width, 32}))
        view.later([&place = view.class_place, list = view.class_list] {
            place.leaveOrComeBack(*list);
            place.take(place.in_hand, *list);
        });
    ui.text(Type::note, x + width + 12, y + 16, kSoft,
            has_left ? name + "'s answers are all kept." : "All answers are kept.");
}

/// The one thing that undo does not bring back, so her whole name has to be typed.
void drawDeleting(View& view, const pack::Child& left, float x, float y, float width) {
    Ui& ui = view.ui;
    ClassListPlace& place = view.class_place;
    ui.level(x, y, width, kLine);
    y += 12;
    ui.text(Type::strong, x, y + 11, kInk, "Delete for good");
    y += 26;
    y += ui.paragraph(Type::body, x, y, width, kInk,
                      "Takes " + left.name +
                          " and every answer out of this folder, out of papers kept in it, and off "
                          "each tablet that next sees the folder. Undo does not bring this back.");
    y += 6;
    y += ui.paragraph(Type::note, x, y, width, kSoft,
                      "Sticks, backups and printed papers are yours to look after; a receipt lists "
                      "them. Ask first whether your school has to keep something.");
    y += 10;
    const Button way{"delete child", "Delete for good"};
    const float wide = buttonWidth(ui, way);
    const Area box{x, y, std::min(width - wide - 8, 280.f), 38};
    const auto typing =
        ui.field("name to delete", box, place.delete_typed, "Type " + left.name + " to delete");
    const bool ready = place.mayDelete(*view.class_list);
    const bool pressed = ready && button(ui, way, {box.right() + 8, y + 1, wide, 36});
    if (ready && (pressed || typing.entered))
        view.later([remove = view.delete_child, id = left.id] { remove(id); });
}

}  // namespace

void drawClassListPane(View& view, const Area& area) {
    Ui& ui = view.ui;
    const ClassAtWork& work = view.class_list->work();
    const std::string& id = view.class_place.in_hand;
    const pack::Child* child = work.child(id);
    const pack::Child* left = work.leftChild(id);
    card(ui, area);
    const float x = area.x + kPad, width = std::min(area.width - 2 * kPad, 520.f);
    if (child == nullptr && left == nullptr) {
        const float told =
            ui.paragraph(Type::body, x, area.y + 20, width, kInk, view.class_place.deleted_told);
        ui.paragraph(Type::body, x, area.y + 20 + (told > 0 ? told + 12 : 0), width, kSoft,
                     "Choose a child in the list: name, badge, key and accent shields stand here.");
        return;
    }
    if (child == nullptr) {
        drawPicture(view, left->badge, {x, area.y + 12, kBadge, kBadge});
        ui.text(Type::place, x + kBadge + 12, area.y + 12 + kBadge / 2, kInk,
                ui.fitted(Type::place, left->name, width - kBadge - 12));
        drawLeaving(view, left->name, true, x, area.y + kBadge + 32);
        drawDeleting(view, *left, x, area.y + kBadge + 84, width);
        return;
    }
    float y = area.y + drawTop(view, *child, area);
    y += drawBadges(view, *child, x, y, width);
    ui.level(x, y, width, kLine);
    y += 12;
    y += drawKey(view, *child, x, y, width);
    ui.level(x, y, width, kLine);
    y += 12;
    drawShields(view, *child, x, y, width);
    ui.level(x, area.bottom() - 52, width, kLine);
    drawLeaving(view, child->name, false, x, area.bottom() - 42);
}

}  // namespace wrenlet::desk
