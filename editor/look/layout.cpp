#include "editor/look/layout.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::desk {

namespace {

constexpr float kRail = 186, kFoot = 56, kLeftMargin = 22, kRightMargin = 16, kAboveFoot = 12;
constexpr float kSmallestCell = 30, kWidestCell = 44, kGroupGap = 12, kLabelRoom = 8;
constexpr float kLowestRow = 21, kHighestRow = 26, kBreath = 4;
constexpr std::size_t kRowsToABreath = 5;

// Cell widths when a cell is at least `cell` wide: equal within a group, as wide as its widest
// label asks, and so that the heading fits over them.
std::vector<float> columnWidths(const MapShape& shape, float cell) {
    std::vector<float> widths;
    std::size_t at = 0;
    for (const MapShape::Group& group : shape.groups) {
        float width = cell;
        for (std::size_t i = 0; i < group.columns; ++i)
            width = std::max(width, shape.label_widths[at + i] + kLabelRoom);
        const auto count = static_cast<float>(group.columns);
        width = std::ceil(std::max(width, (group.heading_width + 4) / count));
        widths.insert(widths.end(), group.columns, width);
        at += group.columns;
    }
    return widths;
}

std::vector<std::size_t> groupOfColumns(const MapShape& shape) {
    std::vector<std::size_t> groups;
    for (std::size_t g = 0; g < shape.groups.size(); ++g)
        groups.insert(groups.end(), shape.groups[g].columns, g);
    return groups;
}

// From column `first` on: how many fit, and the width they take.
std::size_t columnsThatFit(const std::vector<float>& widths, const std::vector<std::size_t>& groups,
                           std::size_t first, float room) {
    float x = 0;
    std::size_t at = first;
    for (; at < widths.size(); ++at) {
        if (at > first && groups[at] != groups[at - 1]) x += kGroupGap;
        if (x + widths[at] > room) break;
        x += widths[at];
    }
    return at - first;
}

float rowTop(std::size_t from_top, float row_height) {
    const auto breaths = static_cast<float>(from_top / kRowsToABreath);
    return static_cast<float>(from_top) * row_height + breaths * kBreath;
}

}  // namespace

float scaleFor(float pixel_width, float pixel_height, float text_size) {
    const float fit = std::min(pixel_width / 1536, pixel_height / 864);
    const float stepped = std::max(1.f, std::floor(fit * 4 + 0.01f) / 4);
    const float most = std::min(pixel_width / 1024, pixel_height / 640);
    return std::clamp(std::min(stepped * text_size, most), 0.5f, 4.f);
}

Frame frameFor(float width, float height) {
    Frame frame;
    frame.rail = {0, 0, kRail, height};
    frame.foot = {kRail, height - kFoot, width - kRail, kFoot};
    frame.body = {kRail + kLeftMargin, 62, width - kRail - kLeftMargin - kRightMargin,
                  height - kFoot - kAboveFoot - 62};
    frame.pane_open = width >= 1240;
    return frame;
}

MapLayout layMap(const Area& cells, const MapShape& shape, std::size_t first_row,
                 std::size_t first_column) {
    MapLayout laid;
    const std::size_t count = shape.label_widths.size();
    if (count == 0 || shape.rows == 0) return laid;

    const auto groups = groupOfColumns(shape);
    std::vector<float> widths = columnWidths(shape, kSmallestCell);
    for (float cell = kSmallestCell + 1; cell <= kWidestCell; ++cell) {
        auto wider = columnWidths(shape, cell);
        if (columnsThatFit(wider, groups, 0, cells.width) < count) break;
        widths = std::move(wider);
    }

    laid.first_column = std::min(first_column, count - 1);
    while (laid.first_column > 0 &&
           laid.first_column - 1 +
                   columnsThatFit(widths, groups, laid.first_column - 1, cells.width) ==
               count)
        --laid.first_column;
    const std::size_t shown =
        std::max<std::size_t>(1, columnsThatFit(widths, groups, laid.first_column, cells.width));
    laid.all_columns = shown == count;
    float x = cells.x;
    for (std::size_t at = laid.first_column; at < laid.first_column + shown; ++at) {
        const bool opens = at == laid.first_column || groups[at] != groups[at - 1];
        if (opens && at > laid.first_column) x += kGroupGap;
        if (opens)
            laid.headings.push_back({groups[at], x, 0, at > 0 && groups[at] == groups[at - 1]});
        laid.columns.push_back({at, x, widths[at]});
        x += widths[at];
        laid.headings.back().width = x - laid.headings.back().x;
    }

    laid.row_height = kHighestRow;
    while (laid.row_height > kLowestRow &&
           rowTop(shape.rows - 1, laid.row_height) + laid.row_height > cells.height)
        --laid.row_height;
    std::size_t room = 0;
    while (room < shape.rows && rowTop(room, laid.row_height) + laid.row_height <= cells.height)
        ++room;
    room = std::max<std::size_t>(room, 1);
    laid.all_rows = room == shape.rows;
    laid.first_row = std::min(first_row, shape.rows - room);
    for (std::size_t i = 0; i < room; ++i)
        laid.rows.push_back({laid.first_row + i, cells.y + rowTop(i, laid.row_height)});
    return laid;
}

}  // namespace wrenlet::desk
