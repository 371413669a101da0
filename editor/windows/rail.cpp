// The rail: whose classroom this is and the places of the desk; and the foot line: what was
// gathered, what could not be read, and the next step.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/input.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

void drawTinyMap(Ui& ui, float x, float y) {
    constexpr Colour kCells[9] = {kBrick, kStraw, kDeep,  kStraw, kDeep,
                                  kBrick, kDeep,  kBrick, kStraw};
    for (int i = 0; i < 9; ++i)
        ui.fill({x + float(i % 3) * 8, y + float(i / 3) * 8, 6, 6}, kCells[i], 2);
}

// "by-the-pond 3" for by-the-pond-3.zip
std::string packName(const std::string& file) {
    std::string name = file.substr(0, file.rfind(".zip"));
    const auto dash = name.rfind('-');
    if (dash != std::string::npos) name[dash] = ' ';
    return name;
}

std::string gatheredText(const View& view) {
    const int tablets = view.desk.gathering().tablets;
    const std::string when = wording::ago(view.now_ms - view.desk.opened().gathered_ms);
    if (tablets == 0) return "No answers here, looked " + when;
    return wording::counted(tablets, "tablet") + " gathered " + when;
}

std::string problemText(const std::vector<Problem>& problems) {
    if (problems.size() == 1) return problems.front().what;
    return wording::counted(std::int64_t(problems.size()), "thing") +
           " to look at, told on the map page";
}

void runNext(View& view, const NextStep& next) {
    switch (next.kind) {
        case NextStep::Kind::see_child:
            view.wish([child = next.child](Desk& desk) { desk.openChild(child); });
            break;
        case NextStep::Kind::see_map:
            view.wish([](Desk& desk) { desk.showMap(); });
            break;
        case NextStep::Kind::gather:
            view.gather();
            break;
    }
}

}  // namespace

void drawRail(View& view) {
    Ui& ui = view.ui;
    const Area rail = view.frame.rail;
    ui.fill(rail, kRail);
    ui.upright(rail.right() - 1, rail.y, rail.height, kLine);
    float x = 14;
    if (view.pictures) {
        const int side = static_cast<int>(32 * ui.scale());
        if (const ImTextureID logo = view.pictures->picture("logo", side)) {
            const float u = static_cast<float>(side) / ui.scale();
            ui.picture(logo, {9, 29 - u / 2, u, u});
            x = 46;
        }
    }
    ui.text(Type::title, x, 29, kInk, "Wrenlet desk");

    const OpenedClass& opened = view.desk.opened();
    if (opened.listed) {
        const Area box{13, 57, rail.width - 28, 46};
        ui.fill(box, kCard, 8);
        ui.edge(box, kLine, 8);
        ui.text(Type::note, box.x + 11, box.y + 14, kSoft,
                ui.fitted(Type::note,
                          opened.list.pack.empty() ? "no pack yet" : packName(opened.list.pack),
                          box.width - 22));
        ui.text(Type::strong, box.x + 11, box.y + 31, kInk,
                ui.fitted(Type::strong, opened.list.title, box.width - 22));
    }
    const Area place{8, 122, rail.width - 8, 60};
    ui.fill(place, kPaper, 10, Corners::left);
    ui.fill({8, place.y + 10, 4, 40}, kDeep, 2);
    drawTinyMap(ui, 25, place.middleY() - 11);
    ui.text(Type::title, 60, place.y + 19, kInk, "Class");
    ui.text(Type::note, 60, place.y + 40, kSoft,
            opened.listed
                ? wording::counted(std::int64_t(opened.children.size()), "child", "children")
                : std::string("none open"));

    const float y = rail.bottom() - 47;
    ui.text(Type::note, 27, y + 16, kSoft, "Text size");
    if (button(ui, {"text smaller", "\u2212", ButtonKind::quiet, ""}, {96, y, 34, 32}))
        view.set_text_size(-1);
    if (button(ui, {"text larger", "+", ButtonKind::quiet, ""}, {134, y, 34, 32}))
        view.set_text_size(1);
}

void drawFoot(View& view) {
    Ui& ui = view.ui;
    const Area foot = view.frame.foot;
    const Desk& desk = view.desk;
    ui.fill(foot, kCard);
    ui.level(foot.x, foot.y, foot.width, kLine);
    if (desk.state() == ClassState::no_folder) return;

    const NextStep next = desk.next();
    const Button way{"next", next.button, ButtonKind::filled, ""};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area place{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, place) || (input::ctrl() && input::pressed(Key::enter)))
        runNext(view, next);

    const float left = foot.x + 22;
    const float text_left = left + 22;
    const bool offers_gather = next.kind != NextStep::Kind::gather;
    const Button again{"gather", "Gather again", ButtonKind::outlined, "F5"};
    const float again_width = offers_gather ? buttonWidth(ui, again) + 24 : 0;
    const std::string lead = "Next: ";
    const float lead_width = ui.width(Type::strong, lead);
    const float sentence_width = lead_width + ui.width(Type::body, next.sentence);
    float right = place.x - 16;
    // where there is little room the caution stays and the sentence goes: its button says as much
    const float needed = ui.width(Type::note, kCaution) + again_width;
    if (right - sentence_width - needed > text_left) {
        ui.text(Type::body, right, foot.middleY(), kInk, next.sentence, Align::right);
        right -= sentence_width;
        ui.text(Type::strong, right, foot.middleY(), kInk, lead);
        right -= 24;
    }
    if (offers_gather) {
        right -= again_width - 24;
        if (button(ui, again, {right, foot.y + 12, again_width - 24, 32})) view.gather();
        right -= 16;
    }
    const auto& problems = desk.opened().problems;
    const float upper = foot.y + 19, lower = foot.y + 39;
    if (problems.empty()) {
        ui.mark(Mark::tick, left + 6, upper, kDeep);
    } else {
        ui.mark(Mark::warning, left + 6, upper, kStrawInk, MarkSize::large);
    }
    ui.text(Type::body, text_left, upper, problems.empty() ? kSoft : kInk,
            ui.fitted(Type::body, problems.empty() ? gatheredText(view) : problemText(problems),
                      right - text_left));
    ui.text(Type::note, text_left, lower, kSoft,
            ui.fitted(Type::note, kCaution, right - text_left));
}

}  // namespace wrenlet::desk
