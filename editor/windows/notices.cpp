#include "editor/windows/notices.hpp"

#include <algorithm>

#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

constexpr float kGapBelow = 8;

std::string moreThan(std::size_t told, std::size_t all) {
    return all > told ? " And " + std::to_string(all - told) + " more." : "";
}

}  // namespace

float drawProblems(Ui& ui, const Area& area, const std::vector<Problem>& problems,
                   std::size_t most) {
    float y = area.y;
    const std::size_t told = std::min(problems.size(), most);
    for (std::size_t i = 0; i < told; ++i) {
        const Problem& problem = problems[i];
        const bool has_both = !problem.where.empty() && !problem.way_out.empty();
        y += warningCard(ui, area.x, y, area.width, problem.what,
                         problem.where + (has_both ? ". " : "") + problem.way_out +
                             (i + 1 == told ? moreThan(told, problems.size()) : ""),
                         true) +
             kGapBelow;
    }
    return y - area.y;
}

float drawNotTaken(View& view, const Area& area, const std::vector<Problem>& left,
                   const NotTaken& told, std::function<void()> close) {
    if (left.empty()) return 0;
    constexpr std::size_t kTold = 2;
    std::string body;
    for (std::size_t i = 0; i < std::min(left.size(), kTold); ++i)
        body += (i > 0 ? " " : "") + (told.says_where ? left[i].where + ": " : "") + left[i].what +
                (left[i].way_out.empty() ? "" : " " + left[i].way_out);
    body += moreThan(kTold, left.size());
    const std::string head = left.size() == 1 ? told.one : std::to_string(left.size()) + told.many;
    Ui& ui = view.ui;
    const Button way{told.label, "All right", ButtonKind::quiet};
    const float width = buttonWidth(ui, way);
    const float height = warningCard(ui, area.x, area.y, area.width, head, body, true);
    if (button(ui, way, {area.right() - width - 6, area.y + 4, width, 30}))
        view.later(std::move(close));
    return height + kGapBelow;
}

}  // namespace wrenlet::desk
