#include "game/sdl/shapes.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::game {

namespace {

constexpr float kPi = 3.14159265f;

/// A colour being laid over others: premultiplied, 0 to 1.
struct Paint {
    float r = 0, g = 0, b = 0, a = 0;
};

Paint paint(Colour colour, float covered) {
    const float a = covered * static_cast<float>(colour.a) / 255;
    return {a * colour.r / 255, a * colour.g / 255, a * colour.b / 255, a};
}

Paint over(Paint top, Paint below) {
    const float through = 1 - top.a;
    return {top.r + below.r * through, top.g + below.g * through, top.b + below.b * through,
            top.a + below.a * through};
}

Paint beside(Paint one, Paint other) {
    return {one.r + other.r, one.g + other.g, one.b + other.b, one.a + other.a};
}

void put(std::uint8_t* to, Paint p) {
    if (p.a <= 0) return;
    const auto byte = [](float share) {
        return static_cast<std::uint8_t>(std::lround(std::clamp(share, 0.f, 1.f) * 255));
    };
    to[0] = byte(p.r / p.a);
    to[1] = byte(p.g / p.a);
    to[2] = byte(p.b / p.a);
    to[3] = byte(p.a);
}

// How much of a pixel lies inside an edge `distance` away (less than 0: inside), where the edge
// goes from all to nothing over `soft` px.
float covered(float distance, float soft = 1) {
    return std::clamp(0.5f - distance / soft, 0.f, 1.f);
}

struct Rounded {
    float x = 0, y = 0;            // its middle
    float half_w = 0, half_h = 0;  // px
    float radius = 0;

    float distance(float px, float py) const {
        const float dx = std::abs(px - x) - (half_w - radius);
        const float dy = std::abs(py - y) - (half_h - radius);
        if (dx <= 0 || dy <= 0) return std::max(dx, dy) - radius;
        return std::sqrt(dx * dx + dy * dy) - radius;
    }
    Rounded grown(float by, float lower) const {
        return {x, y + lower, half_w + by, half_h + by, std::max(radius + by, 0.f)};
    }
};

// The shadow's layers, as shares of shadow_px and of full black-blue.
struct Layer {
    float grow, lower, alpha;
};
constexpr Layer kShadow[] = {{0.10f, 0.30f, 0.10f}, {0.40f, 0.45f, 0.06f}, {0.80f, 0.60f, 0.04f}};
constexpr float kShadowSoft = 0.40f;
constexpr float kShadowReach = 0.80f + kShadowSoft / 2;  // grow and half the softness of the last
constexpr float kShadowBelow = kShadowReach + 0.60f;
constexpr Colour kShadowColour{0x22, 0x31, 0x3A};

Paint shadowAt(const Rounded& card, float shadow, float x, float y) {
    Paint sum;
    for (const Layer& layer : kShadow) {
        const float d = card.grown(layer.grow * shadow, layer.lower * shadow).distance(x, y);
        const float cover = covered(d, std::max(kShadowSoft * shadow, 1.f));
        sum = over(paint(kShadowColour, cover * layer.alpha), sum);
    }
    return sum;
}

}  // namespace

Image drawCard(const Sprite& sprite) {
    const auto shadow = static_cast<float>(std::max(sprite.shadow_px, 0));
    const int side = static_cast<int>(std::ceil(kShadowReach * shadow));
    const int below = static_cast<int>(std::ceil(kShadowBelow * shadow));
    Image image = blankImage(sprite.width + 2 * side, sprite.height + side + below);
    image.left = image.top = -side;
    image.size_w = sprite.width;
    image.size_h = sprite.height;

    Rounded card;
    card.half_w = static_cast<float>(sprite.width) / 2;
    card.half_h = static_cast<float>(sprite.height) / 2;
    card.x = static_cast<float>(side) + card.half_w;
    card.y = static_cast<float>(side) + card.half_h;
    card.radius =
        std::clamp(static_cast<float>(sprite.radius), 0.f, std::min(card.half_w, card.half_h));
    const auto edge = static_cast<float>(std::max(sprite.edge_px, 0));

    for (int y = 0; y < image.h; ++y) {
        for (int x = 0; x < image.w; ++x) {
            const float px = static_cast<float>(x) + 0.5f, py = static_cast<float>(y) + 0.5f;
            const float d = card.distance(px, py);
            const float whole = covered(d);
            const float inner = edge > 0 ? covered(d + edge) : whole;
            const Paint body = beside(paint(sprite.colour, inner),
                                      paint(sprite.edge_colour, std::max(whole - inner, 0.f)));
            const bool needs_shadow = shadow > 0 && body.a < 1;
            put(image.at(x, y), needs_shadow ? over(body, shadowAt(card, shadow, px, py)) : body);
        }
    }
    return image;
}

Image drawRing(const Sprite& sprite) {
    Image image = blankImage(sprite.width, sprite.height);
    const float cx = static_cast<float>(sprite.width) / 2;
    const float cy = static_cast<float>(sprite.height) / 2;
    const float half = static_cast<float>(std::max(sprite.edge_px, 1)) / 2;
    const float radius = std::max(std::min(cx, cy) - half, 0.5f);
    const int part = std::clamp(sprite.part, 0, 24);
    const float sweep = static_cast<float>(part) / 24 * 2 * kPi;
    const float end_x = radius * std::sin(sweep), end_y = -radius * std::cos(sweep);

    for (int y = 0; y < image.h; ++y) {
        for (int x = 0; x < image.w; ++x) {
            const float px = static_cast<float>(x) + 0.5f - cx;
            const float py = static_cast<float>(y) + 0.5f - cy;
            const float whole = covered(std::abs(std::hypot(px, py) - radius) - half);
            float arc = whole;
            if (part == 0) {
                arc = 0;
            } else if (part < 24) {
                float turn = std::atan2(px, -py);  // clockwise from the top
                if (turn < 0) turn += 2 * kPi;
                if (turn > sweep)
                    arc = covered(
                        std::min(std::hypot(px, py + radius), std::hypot(px - end_x, py - end_y)) -
                        half);
            }
            put(image.at(x, y), over(paint(sprite.colour, arc), paint(sprite.edge_colour, whole)));
        }
    }
    return image;
}

}  // namespace wrenlet::game
