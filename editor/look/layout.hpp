// Where things stand on the desk, in u (1 u is 1 px at scale 1): the frame around every place, and
// the class map's grid. Values only, so that a test can hold them to the look's rules.
#pragma once

#include <cstddef>
#include <vector>

namespace wrenlet::desk {

struct Area {
    float x = 0, y = 0, width = 0, height = 0;
    float right() const { return x + width; }
    float bottom() const { return y + height; }
    float middleX() const { return x + width / 2; }
    float middleY() const { return y + height / 2; }
    Area inset(float by) const { return {x + by, y + by, width - 2 * by, height - 2 * by}; }
};

/// Pixels to a u for a window of so many pixels at a text size of 0.9 to 1.5: 1 at 1280×720, 1.25
/// at 1920×1080. Falls below 1 only when less than 1024×640 u would be left.
float scaleFor(float pixel_width, float pixel_height, float text_size);

/// The frame: rail on the left, foot line below, the place between them.
struct Frame {
    Area rail, foot, body;
    bool pane_open = true;  // wide enough for the right-hand pane
};
Frame frameFor(float width, float height);

inline constexpr float kTitleMiddle = 33;  // y of a place's title
inline constexpr float kPaneWidth = 270;
inline constexpr float kGap = 16;

/// What the map has to hold. Widths in u.
struct MapShape {
    struct Group {
        std::size_t columns = 0;
        float heading_width = 0;
    };
    std::vector<Group> groups;
    std::vector<float> label_widths;  // one a column
    std::size_t rows = 0;
};

/// The part of the map that is in view.
struct MapLayout {
    struct Column {
        std::size_t index;
        float x, width;
    };
    struct Row {
        std::size_t index;
        float y;
    };
    struct Heading {
        std::size_t group;
        float x, width;
        bool goes_on;  // its first columns are out of view
    };
    float row_height = 0;
    std::vector<Column> columns;
    std::vector<Row> rows;
    std::vector<Heading> headings;
    std::size_t first_row = 0, first_column = 0;
    bool all_rows = true, all_columns = true;  // nothing is out of view
};

/// Lays the map's cells into `cells`, from `first_row` and `first_column` on, or from further back
/// where that leaves room unused.
MapLayout layMap(const Area& cells, const MapShape& shape, std::size_t first_row,
                 std::size_t first_column);

}  // namespace wrenlet::desk
