// The Child page: one sentence, then sound by sound, what was chosen instead, and day by day.
#include <algorithm>
#include <cmath>

#include "editor/look/wording.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/page_head.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

void drawNeighbours(View& view, float x, float right) {
    Ui& ui = view.ui;
    const auto& children = view.desk.opened().children;
    for (const int step : {-1, 1}) {
        const auto to = view.desk.neighbour(step);
        if (!to) continue;
        const Button way{step < 0 ? "neighbour:previous" : "neighbour:next",
                         ui.fitted(Type::strong, children[*to].child.name, 110),
                         ButtonKind::outlined, step < 0 ? "\u2190" : "\u2192"};
        const float width = buttonWidth(ui, way);
        if (x + width > right) return;
        const bool by_key = hit(view, step < 0 ? Does::left : Does::right);
        if (button(ui, way, {x, 16, width, 34}) || by_key)
            view.wish([at = *to](Desk& desk) { desk.openChild(at); });
        x += width + 9;
    }
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
    drawNeighbours(view, x, right);
    moveSkill(view);

    const ChildStory& story = view.desk.story();
    const float most = std::min(body.width, 900.f);
    float y = 72;
    if (!story.groups.empty())
        y += ui.paragraph(Type::strong, body.x, y, most, kInk, story.summary) + 4;
    y += ui.paragraph(Type::note, body.x, y, most, kSoft, story.facts) + 10;

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
    const float upper = std::floor((bottom - y - kGap) * 0.49f);
    drawChoicesCard(view, {body.x + left_width + kGap, y, right_width, upper});
    drawCourseCard(view, {body.x + left_width + kGap, y + upper + kGap, right_width,
                          bottom - y - upper - kGap});
}

}  // namespace wrenlet::desk
