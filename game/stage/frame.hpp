// A picture as a value: what a scene wants to be seen, as a list of sprites and places. Nothing
// here knows a screen, so a frame can be compared, hashed and tested; the outer layer bakes each
// sprite once at its size in pixels and copies it one to one.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace wrenlet::game {

/// Pixels of the screen, from its top left corner.
struct Point {
    float x = 0, y = 0;
    bool operator==(const Point&) const = default;
};

struct Box {
    float x = 0, y = 0, w = 0, h = 0;
    bool operator==(const Box&) const = default;
    Point centre() const { return {x + w / 2, y + h / 2}; }
    bool contains(Point p) const { return p.x >= x && p.x < x + w && p.y >= y && p.y < y + h; }
    Box grown(float by) const { return {x - by, y - by, w + 2 * by, h + 2 * by}; }
};

struct ScreenSize {
    int w = 1280, h = 800;
    float mm_per_px = 0;  // 0 where the display does not tell its size
    bool operator==(const ScreenSize&) const = default;
};

struct Colour {
    std::uint8_t r = 0, g = 0, b = 0, a = 255;
    bool operator==(const Colour&) const = default;
};

/// Something to bake: equal sprites are baked once.
struct Sprite {
    enum class Kind : std::uint8_t {
        art,      // assets/art/<name>.svg, filling width x height
        picture,  // the pack's picture <name>, fitted into width x height
        text,     // <name> in Andika, height = line height in px; width = 0: as wide as it comes
        card,  // a rounded rectangle: colour, radius, edge of edge_px in edge_colour, soft shadow
        ring,  // an open ring, edge_px thick, filled clockwise from the top by <part> of 24
        fill,  // a plain rectangle of colour
    };
    Kind kind = Kind::art;
    std::string name;
    int width = 0, height = 0;  // px
    Colour colour{};
    Colour edge_colour{};
    int radius = 0, edge_px = 0, shadow_px = 0;  // px; the shadow falls below and outside the size
    int part = 24;
    bool bold = false;
    bool flipped = false;    // art: what faces right faces left
    bool from_left = false;  // text with a width: begins at its left end
    bool operator==(const Sprite&) const = default;
};

/// A sprite at a place. Its middle stands at `centre` (rounded to whole pixels when drawn).
struct Blit {
    Sprite sprite;
    Point centre;
    std::uint8_t alpha = 255;
    bool operator==(const Blit&) const = default;
};

/// From back to front.
using Frame = std::vector<Blit>;

}  // namespace wrenlet::game
