// The Try out page: the skills, the tablet as the child sees it, the questions of the skill, and
// what is asked and heard beside them.
#include <algorithm>
#include <cmath>

#include "editor/look/wording.hpp"
#include "editor/tryout/question_words.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kSkills = 232, kPane = 280, kBezel = 10, kHead = 38;
constexpr float kButtons = 36, kCardHeight = 74, kBelowNarrow = 168;
constexpr float kTabletSides = 1.6f;  // 1280 to 800

/// The whole tablet, its frame too.
Area tabletIn(const Area& room, bool upright) {
    const float sides = upright ? 1 / kTabletSides : kTabletSides;
    const float width = std::min(room.width - 2 * kBezel, (room.height - 2 * kBezel) * sides);
    const float height = width / sides;
    return {std::floor(room.middleX() - width / 2) - kBezel, room.y, width + 2 * kBezel,
            height + 2 * kBezel};
}

/// Where the picture of a question stands on the glass: pixel by pixel where it was drawn for it.
/// The one before stays until the new one is there, in its own shape.
Area stillIn(const Area& glass, const ShownStill& still, float scale) {
    const float width = float(still.width) / scale, height = float(still.height) / scale;
    const float share = std::min(glass.width / width, glass.height / height);
    const bool is_for_it = std::abs(share - 1) * std::max(width, height) * scale <= 1;
    const float size = is_for_it ? 1 : share;
    const auto snapped = [scale](float u) { return std::floor(u * scale + 0.5f) / scale; };
    return {snapped(glass.middleX() - width * size / 2),
            snapped(glass.middleY() - height * size / 2), width * size, height * size};
}

void drawSign(Ui& ui, const Area& glass, const std::string& text) {
    const float wide = ui.width(Type::strong, text) + 32;
    const Area sign{std::floor(glass.middleX() - wide / 2), glass.bottom() - 52, wide, 40};
    ui.fill(sign, kCard, 8);
    ui.edge(sign, kEdge, 8);
    ui.text(Type::strong, sign.middleX(), sign.middleY(), kInk, text, Align::middle);
}

void drawTablet(View& view, const Area& tablet) {
    Ui& ui = view.ui;
    TryPlace& place = *view.try_out;
    const Area glass = tablet.inset(kBezel);
    ui.fill(tablet, kInk, 10);
    ui.fill(glass, kWash);
    ui.note("tablet", glass);
    place.wantStill(int(std::lround(glass.width * ui.scale())),
                    int(std::lround(glass.height * ui.scale())));
    const ShownStill* still = place.still();
    const ImTextureID texture = still == nullptr || still->png.empty() || view.pictures == nullptr
                                    ? nullptr
                                    : view.pictures->drawn(still->png);
    if (texture != nullptr) {
        ui.picture(texture, stillIn(glass, *still, ui.scale()));
    } else if (still == nullptr || still->problems.empty()) {
        ui.text(Type::body, glass.middleX(), glass.middleY(), kSoft, "One moment\u2026",
                Align::middle);
    }
    const std::vector<Problem>& problems =
        still != nullptr && !still->problems.empty() ? still->problems : place.problems();
    if (!problems.empty())
        warningCard(ui, glass.x + 16, glass.y + 16, glass.width - 32, problems.front().what,
                    problems.front().way_out, true);
    if (place.isPlaying())
        drawSign(ui, glass, "Playing in a window of its own");
    else if (place.item() != nullptr && place.isLeftOut(*place.item()))
        drawSign(ui, glass, "Left out: no child is asked this");
}

float drawHead(View& view, const Area& area) {
    Ui& ui = view.ui;
    TryPlace& place = *view.try_out;
    const Button back{"question back", "\u2039"}, on{"question on", "\u203a"};
    const float right = area.right();
    if (button(ui, on, {right - 34, area.y, 34, 32})) view.later([&place] { place.move(1); });
    if (button(ui, back, {right - 74, area.y, 34, 32})) view.later([&place] { place.move(-1); });
    const std::string where = "question " + wording::figure(std::int64_t(place.index() + 1)) +
                              " of " + wording::figure(std::int64_t(place.count()));
    const float wide = ui.text(Type::note, right - 84, area.y + 17, kSoft, where, Align::right);
    ui.text(Type::title, area.x, area.y + 16, kInk,
            ui.fitted(Type::title, std::string(exercise::rowOf(place.skillLook()->skill).name),
                      area.width - 84 - wide - 16));
    return kHead;
}

float drawButtons(View& view, const Area& area) {
    Ui& ui = view.ui;
    TryPlace& place = *view.try_out;
    float x = area.x;
    const Button play{"play it", place.isPlaying() ? "Playing\u2026" : "Play it",
                      ButtonKind::outlined, "Space"};
    const float play_wide = buttonWidth(ui, play);
    if (button(ui, play, {x, area.y, play_wide, kButtons})) view.later([&place] { place.play(); });
    x += play_wide + 8;
    if (view.unit->canChange()) {
        const bool off = place.isLeftOut(*place.item());
        const Button out{"leave out", off ? "Ask this again" : "Leave this one out",
                         ButtonKind::outlined, capOf(view, Does::leave_out)};
        const float out_wide = buttonWidth(ui, out);
        if (button(ui, out, {x, area.y, out_wide, kButtons}))
            view.later([&place] { place.leaveOut(); });
        x += out_wide + 8;
    }
    const Button turn{"turn tablet", place.upright() ? "On its side" : "Upright",
                      ButtonKind::quiet};
    const float turn_wide = buttonWidth(ui, turn);
    if (x + turn_wide <= area.right() + 1 &&
        button(ui, turn, {area.right() - turn_wide, area.y, turn_wide, kButtons}))
        view.later([&place] { place.setUpright(!place.upright()); });
    return kButtons;
}

void drawCard(View& view, std::size_t index, const Area& area) {
    Ui& ui = view.ui;
    TryPlace& place = *view.try_out;
    const exercise::Item& item = place.at(index);
    const exercise::Vocabulary& vocabulary = view.unit->look().vocabulary;
    const bool here = index == place.index(), off = place.isLeftOut(item);
    const auto press = ui.press("question:" + std::to_string(index), area, false);
    ui.fill(area, here ? kPaleDeep : press.hovered ? kWash : kCard, 8);
    ui.edge(area, here ? kDeep : kEdge, 8, here ? 2.f : 1.f);
    constexpr float kPicture = 34;
    float x = area.x + 10;
    const std::string picture = pictureOf(item, vocabulary);
    const int pixels = static_cast<int>(kPicture * ui.scale());
    const ImTextureID texture = picture.empty() || view.pictures == nullptr
                                    ? nullptr
                                    : view.pictures->picture("word:" + picture, pixels);
    if (texture != nullptr) {
        ui.picture(texture, {x, area.y + 6, kPicture, kPicture});
        x += kPicture + 8;
    }
    ui.text(Type::strong, x, area.y + 23, kInk,
            ui.fitted(Type::strong, choiceText(item.subject, vocabulary), area.right() - 8 - x));
    const std::string right =
        "\u2192 " + choiceText(item.choices[item.answer].id, vocabulary);  // what is right
    ui.text(Type::note, area.x + 10, area.y + 56, kSoft,
            ui.fitted(Type::note, off ? "left out" : right, area.width - 20));
    if (off) ui.level(area.x + 10, area.y + 23, area.width - 20, kInk, 2);
    if (press.pressed) view.later([&place, index] { place.choose(index); });
}

/// The skill's questions, a page of cards around the present one.
void drawCards(View& view, const Area& area) {
    const TryPlace& place = *view.try_out;
    constexpr float kGapBetween = 8, kLeastWidth = 118;
    const auto across =
        std::size_t(std::max(1.f, (area.width + kGapBetween) / (kLeastWidth + kGapBetween)));
    const auto down =
        std::size_t(std::max(0.f, (area.height + kGapBetween) / (kCardHeight + kGapBetween)));
    if (down == 0) return;
    const float width = (area.width - kGapBetween * float(across - 1)) / float(across);
    const std::size_t shown = across * down, first = place.index() - place.index() % shown;
    for (std::size_t i = first; i < std::min(place.count(), first + shown); ++i) {
        const std::size_t at = i - first;
        drawCard(view, i,
                 {area.x + float(at % across) * (width + kGapBetween),
                  area.y + float(at / across) * (kCardHeight + kGapBetween), width, kCardHeight});
    }
}

void drawOff(View& view, const Area& area) {
    Ui& ui = view.ui;
    emptyPlace(ui, area, "This skill is left out",
               "No child is asked it in this unit. What the words give stays and can be asked "
               "again at any time.");
    const Button on{"skill off", "Ask it again"};
    const float wide = buttonWidth(ui, on);
    if (view.unit->canChange() &&
        button(ui, on, {std::floor(area.middleX() - wide / 2), area.bottom() - 60, wide, 36}))
        view.later([place = view.try_out] { place->turnSkill(); });
}

void keys(View& view) {
    TryPlace* place = view.try_out;
    Finder* finder = view.finder;
    TryScroll& scroll = view.try_scroll;
    const bool finding = view.spot == Spot::finder;
    const auto move = [&](int by) {
        view.later([=] { finding ? finder->move(by) : place->moveSkill(by); });
    };
    if (hit(view, Does::up)) move(-1);
    if (hit(view, Does::down)) move(1);
    if (hit(view, Does::add)) view.later([finder] { finder->add(); });
    if (hit(view, Does::add_all)) view.later([finder] { finder->addAll(); });
    if (hit(view, Does::back)) view.later([&scroll] { scroll.finding = false; });
    if (hit(view, Does::play)) view.later([place] { place->play(); });
    if (hit(view, Does::another)) view.later([place] { place->another(); });
    if (hit(view, Does::hear)) view.later([place] { place->hear(); });
    if (hit(view, Does::leave_out)) view.later([place] { place->leaveOut(); });
    if (hit(view, Does::find)) view.later([&scroll] { scroll.finding = true; });
    if (hit(view, Does::left)) view.later([place] { place->move(-1); });
    if (hit(view, Does::right)) view.later([place] { place->move(1); });
    constexpr int kPage = 8;
    if (hit(view, Does::page_up)) view.later([place] { place->moveSkill(-kPage); });
    if (hit(view, Does::page_down)) view.later([place] { place->moveSkill(kPage); });
}

/// Tablet, buttons and cards, and the pane where it has no room of its own.
void drawQuestion(View& view, Area area, bool pane_below) {
    area.y += drawHead(view, area);
    area.height -= kHead;
    const float below = pane_below ? kBelowNarrow : kCardHeight + 12;
    const Area room{area.x, area.y, area.width, area.height - kButtons - 24 - below};
    const Area tablet = tabletIn(room, view.try_out->upright());
    drawTablet(view, tablet);
    float y = tablet.bottom() + 12;
    y += drawButtons(view, {area.x, y, area.width, kButtons}) + 12;
    const Area rest{area.x, y, area.width, area.bottom() - y};
    pane_below ? drawTryPane(view, rest) : drawCards(view, rest);
}

}  // namespace

bool isFindingMore(const TryPlace& place, const TryScroll& scroll) {
    const SkillLook* skill = place.skillLook();
    return skill != nullptr && !skill->off && (scroll.finding || place.count() == 0);
}

void drawTryPage(View& view) {
    Ui& ui = view.ui;
    const Area body = view.frame.body;
    const float title = ui.text(Type::place, body.x, kTitleMiddle, kInk, "Try out");
    if (view.unit == nullptr || view.try_out == nullptr) {
        emptyPlace(ui, body, "No unit is open",
                   "Open a unit of words under Words; here you meet its questions as a child "
                   "does.");
        return;
    }
    ui.text(Type::body, body.x + title + 17, kTitleMiddle + 1, kSoft,
            ui.fitted(Type::body,
                      "The question just as a child meets it. Nothing here counts for anyone.",
                      body.width - title - 30));
    if (view.unit->unit().words.empty() && view.unit->unit().sentences.empty()) {
        emptyPlace(ui, body, "No words yet",
                   "Write the unit's words first; then their questions are shown here, as a "
                   "child will meet them.");
        return;
    }
    const TryPlace& place = *view.try_out;
    const SkillLook* skill = place.skillLook();
    const bool has_pane = view.frame.pane_open;
    const bool finding = view.spot == Spot::finder;
    keys(view);
    drawTrySkills(view, {body.x, body.y, kSkills, body.height});
    const float left = body.x + kSkills + kGap;
    const Area whole{left, body.y, body.right() - left, body.height};
    if (skill == nullptr) {
        ui.text(Type::body, whole.x, whole.y + 16, kSoft, "Looking at the words\u2026");
        return;
    }
    if (skill->off) {
        drawOff(view, {whole.x, whole.y, whole.width, std::min(whole.height, 320.f)});
    } else if (finding) {
        drawFinder(view, whole);
    } else if (has_pane) {
        drawQuestion(view, {left, body.y, whole.width - kPane - kGap, body.height}, false);
        drawTryPane(view, {body.right() - kPane, body.y, kPane, body.height});
    } else {
        drawQuestion(view, whole, true);
    }
}

}  // namespace wrenlet::desk
