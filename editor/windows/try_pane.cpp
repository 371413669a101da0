// Beside the tablet at the Try out place: what is asked and what each choice would tell, what the
// child hears and in whose voice.
#include <algorithm>

#include "editor/booth/booth_words.hpp"
#include "editor/look/asking.hpp"
#include "editor/look/wording.hpp"
#include "editor/tryout/question_words.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 16, kLineRow = 30;

float drawAsked(View& view, const exercise::Item& item, float x, float y, float width,
                bool tells_all) {
    Ui& ui = view.ui;
    const exercise::Vocabulary& vocabulary = view.unit->look().vocabulary;
    const float from = y;
    y += ui.paragraph(Type::strong, x, y, width, kInk, asking(item, vocabulary).read) + 8;
    for (const ChoiceLine& line : choiceLines(item, vocabulary)) {
        if (line.is_right) {
            ui.disc(x + 8, y + 10, 8, kDeep);
            ui.mark(Mark::tick, x + 8, y + 10, kCard);
        } else {
            ui.mark(Mark::dot, x + 8, y + 10, kDot);
        }
        y += ui.paragraph(line.is_right ? Type::strong : Type::body, x + 26, y, width - 26, kInk,
                          line.text);
        if (tells_all && !line.means.empty())
            y += ui.paragraph(Type::note, x + 26, y, width - 26, kSoft, line.means);
        y += tells_all ? 4 : 2;
    }
    return y - from;
}

/// Draws as many of the clips as there is room for. Returns its height.
float drawHeard(View& view, float x, float y, float width, float room) {
    Ui& ui = view.ui;
    TryPlace& place = *view.try_out;
    const float from = y;
    const Button all{"hear it", "Hear it", ButtonKind::outlined, capOf(view, Does::hear)};
    const float wide = buttonWidth(ui, all);
    ui.text(Type::strong, x, y + 16, kInk,
            ui.fitted(Type::strong, "The child hears", width - wide));
    if (button(ui, all, {x + width - wide, y, wide, 32})) view.later([&place] { place.hear(); });
    y += 40;
    if (!place.isStillNow()) {
        ui.text(Type::note, x, y + 10, kSoft, "One moment\u2026");
        return y + 24 - from;
    }
    const auto& said = place.still()->said;
    for (std::size_t i = 0; i < said.size(); ++i) {
        if (y + kLineRow > from + room) break;
        const pack::VoiceNeed& need = said[i].need;
        const Area row{x - 6, y, width + 12, kLineRow - 2};
        const auto press = ui.press("hear:" + std::to_string(i), row);
        if (press.hovered) ui.fill(row, kWash, 6);
        ui.edge({x, y + 4, 20, 20}, kEdge, 10);
        ui.segment(x + 8, y + 9, x + 13, y + 14, kInk, 2);
        ui.segment(x + 13, y + 14, x + 8, y + 19, kInk, 2);
        const std::string voice = place.isHers(need) ? "yours" : "demo";
        const float note = ui.width(Type::note, voice);
        ui.text(Type::note, x + width, row.middleY(), kSoft, voice, Align::right);
        ui.text(Type::body, x + 28, row.middleY(), kInk,
                ui.fitted(Type::body, need.text, width - 28 - note - 10));
        if (press.held) ui.focusRing(row, 6);
        if (press.pressed) view.later([&place, i] { place.hear(i); });
        y += kLineRow;
    }
    return y - from;
}

/// In the demo voice still; with the way to the booth.
void drawVoice(View& view, float x, float width, float bottom) {
    Ui& ui = view.ui;
    const TryPlace& place = *view.try_out;
    if (!place.isStillNow() || view.booth == nullptr) return;
    const auto& said = place.still()->said;
    const auto demo = std::count_if(said.begin(), said.end(), [&](const ShownStill::Line& line) {
        return !place.isHers(line.need);
    });
    if (demo == 0) return;
    const std::string head =
        wording::counted(demo, "clip") + (demo == 1 ? " is" : " are") + " in the demo voice";
    const Button booth{"to booth", "Say it in the booth"};
    const float text = warningCard(ui, x, 0, width, head, "", false);
    const Area card{x, bottom - text - 44, width, text + 44};
    ui.fill(card, kButter, 8);
    warningCard(ui, x, card.y, width, head, "", true);
    if (button(ui, booth, {x + 12, card.bottom() - 46, buttonWidth(ui, booth), 34}))
        view.later([&view, id = said.front().need.id] {
            for (std::size_t i = 0; i < view.booth->queue().size(); ++i)
                if (view.booth->queue()[i].need.id == id) view.booth->choose(i);
            view.go(Place::booth);
        });
}

/// The sounds that the unit's words give questions on, to choose those it is about. Returns its
/// height; draws only if `draw`.
float drawFocus(View& view, float x, float y, float width, bool draw) {
    Ui& ui = view.ui;
    TryPlace& place = *view.try_out;
    const SkillLook* skill = place.skillLook();
    if (skill == nullptr || skill->sounds.size() < 2 || !view.unit->canChange()) return 0;
    constexpr float kChip = 28, kBetween = 5;
    const float from = y;
    const bool any = std::any_of(skill->sounds.begin(), skill->sounds.end(),
                                 [&](const SoundCount& one) { return place.isFocus(one.ipa); });
    if (draw)
        ui.text(Type::note, x, y + 8, kSoft,
                any ? "This unit's sounds; the others are foils" : "Choose this unit's sounds");
    y += 20;
    float at = x;
    for (const SoundCount& one : skill->sounds) {
        const float sound = ui.width(Type::strong, one.ipa), wide = sound + 20;
        if (at + wide > x + width) {
            at = x;
            y += kChip + kBetween;
        }
        if (draw) {
            const Area area{at, y, wide, kChip};
            const bool on = place.isFocus(one.ipa);
            const auto press = ui.press("focus:" + one.ipa, area);
            ui.fill(area, on ? kPaleDeep : press.hovered ? kWash : kCard, 6);
            ui.edge(area, on ? kDeep : kEdge, 6, on ? 2.f : 1.f);
            ui.text(Type::strong, area.middleX(), area.middleY(), on ? kDeeper : kInk, one.ipa,
                    Align::middle);
            if (press.held) ui.focusRing(area, 6);
            if (press.pressed) view.later([&place, ipa = one.ipa] { place.turnFocus(ipa); });
        }
        at += wide + kBetween;
    }
    return y + kChip - from;
}

/// What is done with the whole skill. Returns its height.
float drawSkillWays(View& view, float x, float width, float bottom) {
    Ui& ui = view.ui;
    TryPlace& place = *view.try_out;
    const SkillLook* skill = place.skillLook();
    if (skill == nullptr || !view.unit->canChange()) return 0;
    const Button more{"find more", "Find me more", ButtonKind::outlined, capOf(view, Does::find)};
    const Button off{"skill off", "Leave skill out"};
    const float more_wide = buttonWidth(ui, more), off_wide = buttonWidth(ui, off);
    const bool in_a_row = more_wide + 8 + off_wide <= width;
    float y = bottom - 34;
    if (button(ui, off, {in_a_row ? x + more_wide + 8 : x, y, off_wide, 34}))
        view.later([&place] { place.turnSkill(); });
    if (!in_a_row) y -= 42;
    if (button(ui, more, {x, y, more_wide, 34}))
        view.later([&scroll = view.try_scroll] { scroll.finding = true; });
    return bottom - y;
}

}  // namespace

void drawTryPane(View& view, const Area& area) {
    Ui& ui = view.ui;
    const exercise::Item* item = view.try_out->item();
    card(ui, area);
    if (item == nullptr) return;
    const bool in_columns = area.width > 460;
    const float x = area.x + kPad;
    const float width = in_columns ? (area.width - 3 * kPad) / 2 : area.width - 2 * kPad;
    const float ways = drawSkillWays(view, x, in_columns ? area.width - 2 * kPad : width,
                                     area.bottom() - (in_columns ? 10 : kPad));
    const float asked = drawAsked(view, *item, x, area.y + kPad - 4, width, !in_columns);
    if (in_columns) {
        drawHeard(view, x + width + kPad, area.y + 8, width, area.height - ways - 26);
        return;
    }
    float y = area.y + kPad + asked + 8;
    ui.level(x, y, width, kLine);
    y += 12;
    const float focus = drawFocus(view, x, 0, width, false);
    float below = area.bottom() - kPad - ways - 12;
    if (focus > 0) {
        drawFocus(view, x, below - focus, width, true);
        below -= focus + 12;
    }
    constexpr float kVoiceCard = 96;
    const float heard = drawHeard(view, x, y, width, below - y);
    if (y + heard + kVoiceCard < below) drawVoice(view, x - 6, width + 12, below);
}

}  // namespace wrenlet::desk
