// The Child page: one sentence, then sound by sound, what was chosen instead, and day by day.
#include <algorithm>
#include <cmath>

#include "editor/document/dose.hpp"
#include "editor/look/wording.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/page_head.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

/// Returns where they end.
float drawNeighbours(View& view, float x, float right) {
    Ui& ui = view.ui;
    const auto& children = view.desk.opened().children;
    for (const int step : {-1, 1}) {
        const auto to = view.desk.neighbour(step);
        if (!to) continue;
        const Button way{step < 0 ? "neighbour:previous" : "neighbour:next",
                         ui.fitted(Type::strong, children[*to].child.name, 110),
                         ButtonKind::outlined, step < 0 ? "\u2190" : "\u2192"};
        const float width = buttonWidth(ui, way);
        if (x + width > right) return x;
        const bool by_key = hit(view, step < 0 ? Does::left : Does::right);
        if (button(ui, way, {x, 16, width, 34}) || by_key)
            view.wish([at = *to](Desk& desk) { desk.openChild(at); });
        x += width + 9;
    }
    return x;
}

void moveSkill(View& view) {
    const int step = hit(view, Does::down) ? 1 : hit(view, Does::up) ? -1 : 0;
    const auto& groups = view.desk.story().groups;
    for (std::size_t at = 0; step != 0 && at < groups.size(); ++at) {
        if (groups[at].skill != view.desk.skill()) continue;
        const auto to = std::clamp<std::ptrdiff_t>(std::ptrdiff_t(at) + step, 0,
                                                   std::ptrdiff_t(groups.size()) - 1);
        view.wish([skill = groups[std::size_t(to)].skill](Desk& desk) { desk.chooseSkill(skill); });
    }
}

/// A gauge and no lock: the hours here on a line up to what studies took in all. Returns its
/// height.
float drawDose(Ui& ui, const Dose& dose, float x, float y, float width) {
    constexpr float kBar = 150, kHeight = 18;
    const float middle = y + kHeight / 2;
    const auto at = [&](double hours) {
        return x + kBar * static_cast<float>(std::clamp(hours / kDoseTo, 0., 1.));
    };
    ui.fill({x, middle - 4, kBar, 8}, kWash, 4);
    ui.fill({at(kDoseFrom), middle - 4, at(kDoseTo) - at(kDoseFrom), 8}, kLine, 4);
    ui.fill({x, middle - 4, std::max(3.f, at(dose.hours) - x), 8}, kDeep, 4);
    ui.upright(at(kDoseMost), middle - 8, 16, kInk);
    ui.text(Type::note, x + kBar + 12, middle, kSoft,
            ui.fitted(Type::note, dose.says, width - kBar - 12));
    return kHeight;
}

}  // namespace

void drawChildPage(View& view) {
    Ui& ui = view.ui;
    const Area body = view.frame.body;
    const practice::ChildProgress& progress = view.desk.opened().children[view.desk.child()];
    const float right = drawPageButtons(view) - 16;
    float x = body.x;
    const int side = static_cast<int>(std::lround(46 * ui.scale()));
    if (view.pictures) {
        if (const ImTextureID badge = view.pictures->picture(progress.child.badge, side)) {
            const float u = static_cast<float>(side) / ui.scale();
            ui.picture(badge, {x, kTitleMiddle - u / 2, u, u});
            x += u + 12;
        }
    }
    const std::string name = ui.fitted(Type::place, progress.child.name, right - x - 240);
    ui.note("child:" + progress.child.id, {x, 16, ui.width(Type::place, name), 34});
    x += ui.text(Type::place, x, kTitleMiddle, kInk, name) + 22;
    x = drawNeighbours(view, x, right);
    if (!isAskedAloud(view.desk, view.ear)) moveSkill(view);
    const Button aloud{"ask aloud", "Ask aloud"};
    const float aloud_width = buttonWidth(ui, aloud);
    if (view.ask_aloud && !view.desk.skill().empty() && x + aloud_width < right &&
        button(ui, aloud, {x, 16, aloud_width, 34}))
        view.later([ask = view.ask_aloud] { ask(EarWords::practised); });

    const ChildStory& story = view.desk.story();
    const float most = std::min(body.width, 900.f);
    float y = 72;
    if (!story.groups.empty())
        y += ui.paragraph(Type::strong, body.x, y, most, kInk, story.summary) + 4;
    y += ui.paragraph(Type::note, body.x, y, most, kSoft, story.facts) + 4;
    y += drawDose(ui, doseOf(progress.practised_ms), body.x, y, body.width) + 10;

    const float bottom = body.bottom();
    if (story.groups.empty()) {
        emptyPlace(ui, {body.x, y, body.width, bottom - y},
                   progress.child.name + " has not played yet",
                   "What can be said of each sound stands here after the first session. On the "
                   "tablet, the child begins by touching the badge.");
        return;
    }
    const float left_width = std::floor(body.width * 0.527f);
    const float right_width = body.width - left_width - kGap;
    drawSoundsCard(view, {body.x, y, left_width, bottom - y});
    if (isAskedAloud(view.desk, view.ear)) {
        drawEarCard(view, {body.x + left_width + kGap, y, right_width, bottom - y});
        return;
    }
    if (view.desk.why()) {
        drawWhyCard(view, {body.x + left_width + kGap, y, right_width, bottom - y});
        return;
    }
    const float upper = std::floor((bottom - y - kGap) * 0.49f);
    drawChoicesCard(view, {body.x + left_width + kGap, y, right_width, upper});
    drawCourseCard(view, {body.x + left_width + kGap, y + upper + kGap, right_width,
                          bottom - y - upper - kGap});
}

}  // namespace wrenlet::desk
