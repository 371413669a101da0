// The course: one dot a day with its likely range, the counts under it, guessing as a dashed line.
#include <algorithm>
#include <cmath>
#include <span>

#include "editor/look/wording.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 17, kDayWidth = 54;

}  // namespace

void drawCourseCard(View& view, const Area& area) {
    Ui& ui = view.ui;
    const Course& course = view.desk.course();
    card(ui, area);
    ui.note("course", area);
    ui.text(Type::title, area.x + kPad, area.y + 22, kInk,
            ui.fitted(Type::title, wording::skill(view.desk.skill()) + ", day by day",
                      area.width - 2 * kPad));
    if (course.days.empty()) return;

    const float labels = ui.width(Type::note, "guessing") + 10;
    const Area plot{area.x + kPad + labels, area.y + 50, area.width - 2 * kPad - labels,
                    area.height - 50 - 50};
    const auto yOf = [&](double share) {
        return plot.bottom() - static_cast<float>(share) * plot.height;
    };
    const auto rule = [&](double share, std::string_view name) {
        ui.level(plot.x, yOf(share), plot.width, kLine);
        ui.text(Type::note, plot.x - 10, yOf(share), kSoft, name, Align::right);
    };
    rule(1, "all");
    rule(0, "none");
    const bool half_is_free = course.guess <= 0 || std::abs(course.guess - 0.5) * plot.height > 15;
    if (half_is_free) rule(0.5, "half");
    if (course.guess > 0) {
        ui.dashes(plot.x, yOf(course.guess) - 1, plot.width, kInk);
        ui.text(Type::note, plot.x - 10, yOf(course.guess), kInk, "guessing", Align::right);
    }

    const auto most = static_cast<std::size_t>(std::max(1.f, plot.width / kDayWidth));
    const std::span<const CourseDay> days =
        std::span(course.days).last(std::min(most, course.days.size()));
    const float step = plot.width / static_cast<float>(days.size());
    const auto xOf = [&](std::size_t at) {
        return std::round(plot.x + step * (static_cast<float>(at) + 0.5f));
    };
    for (std::size_t at = 1; at < days.size(); ++at)
        ui.segment(xOf(at - 1), yOf(days[at - 1].range.middle), xOf(at), yOf(days[at].range.middle),
                   kLine, 2);
    for (std::size_t at = 0; at < days.size(); ++at) {
        const CourseDay& day = days[at];
        const float x = xOf(at), y = std::round(yOf(day.range.middle));
        Colour bar = day.isThin() ? kLine : kDeep;
        if (!day.isThin()) bar.alpha = 120;
        ui.fill({x - 2, yOf(day.range.high), 4, yOf(day.range.low) - yOf(day.range.high)}, bar);
        ui.disc(x, y, 8, kCard);
        ui.disc(x, y, 6, day.isThin() ? kDot : kDeep);
        if (day.isThin()) ui.disc(x, y, 4, kCard);
        ui.text(Type::note, x, plot.bottom() + 17, kInk,
                wording::figure(day.right) + " of " + wording::figure(day.seen), Align::middle);
        ui.text(Type::note, x, plot.bottom() + 34, kSoft, day.label, Align::middle);
    }
}

}  // namespace wrenlet::desk
