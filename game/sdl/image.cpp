#include "game/sdl/image.hpp"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace wrenlet::game {

Image blankImage(int w, int h) {
    Image image;
    image.w = image.size_w = w;
    image.h = image.size_h = h;
    image.rgba.assign(4 * static_cast<std::size_t>(w) * static_cast<std::size_t>(h), 0);
    return image;
}

Image trimmed(const Image& image) {
    int x0 = image.w, y0 = image.h, x1 = 0, y1 = 0;
    for (int y = 0; y < image.h; ++y) {
        for (int x = 0; x < image.w; ++x) {
            if (image.at(x, y)[3] == 0) continue;
            x0 = std::min(x0, x);
            x1 = std::max(x1, x + 1);
            y0 = std::min(y0, y);
            y1 = y + 1;
        }
    }
    if (x1 <= x0) x0 = y0 = 0, x1 = y1 = 1;
    if (x0 == 0 && y0 == 0 && x1 == image.w && y1 == image.h) return image;

    Image out = blankImage(x1 - x0, y1 - y0);
    out.left = image.left + x0;
    out.top = image.top + y0;
    out.size_w = image.size_w;
    out.size_h = image.size_h;
    for (int y = 0; y < out.h && !image.rgba.empty(); ++y)
        std::memcpy(out.at(0, y), image.at(x0, y + y0), 4 * static_cast<std::size_t>(out.w));
    return out;
}

Image flipped(const Image& image) {
    Image out = image;
    for (int y = 0; y < image.h; ++y)
        for (int x = 0; x < image.w; ++x)
            std::memcpy(out.at(x, y), image.at(image.w - 1 - x, y), 4);
    return out;
}

bool isOpaque(const Image& image) {
    for (std::size_t i = 3; i < image.rgba.size(); i += 4)
        if (image.rgba[i] != 255) return false;
    return true;
}

namespace {

// What one new pixel along one axis takes from the old ones: `weight[k]` of pixel first + k.
struct Share {
    int first = 0;
    std::vector<float> weight;
};

std::vector<Share> shares(int from, int to) {
    const double step = static_cast<double>(from) / to;
    std::vector<Share> out;
    for (int i = 0; i < to; ++i) {
        // Shrinking covers step pixels; growing a whole pixel's width around the middle, which
        // blends two neighbours.
        const double half = std::max(step, 1.0) / 2;
        const double middle = (i + 0.5) * step;
        const double from_at = std::max(0.0, middle - half);
        const double to_at = std::min<double>(from, middle + half);
        Share share;
        share.first = std::min(static_cast<int>(from_at), from - 1);
        for (int k = share.first; k < from && k < to_at; ++k) {
            const double covered = std::min<double>(k + 1, to_at) - std::max<double>(k, from_at);
            share.weight.push_back(static_cast<float>(covered / (to_at - from_at)));
        }
        out.push_back(std::move(share));
    }
    return out;
}

}  // namespace

Image resized(const Image& image, int w, int h) {
    if (w == image.w && h == image.h) return image;
    // Premultiplied while it is averaged: an empty pixel has no colour to give.
    std::vector<float> wide(4 * static_cast<std::size_t>(w) * static_cast<std::size_t>(image.h));
    const std::vector<Share> across = shares(image.w, w);
    for (int y = 0; y < image.h; ++y) {
        for (int x = 0; x < w; ++x) {
            float* out = &wide[4 * (static_cast<std::size_t>(y) * w + x)];
            const Share& share = across[static_cast<std::size_t>(x)];
            for (std::size_t k = 0; k < share.weight.size(); ++k) {
                const std::uint8_t* in = image.at(share.first + static_cast<int>(k), y);
                const float alpha = share.weight[k] * in[3];
                for (int c = 0; c < 3; ++c) out[c] += alpha * in[c];
                out[3] += alpha;
            }
        }
    }
    Image out = blankImage(w, h);
    const std::vector<Share> down = shares(image.h, h);
    for (int y = 0; y < h; ++y) {
        const Share& share = down[static_cast<std::size_t>(y)];
        for (int x = 0; x < w; ++x) {
            float sum[4] = {0, 0, 0, 0};
            for (std::size_t k = 0; k < share.weight.size(); ++k) {
                const std::size_t row = static_cast<std::size_t>(share.first) + k;
                const float* in = &wide[4 * (row * static_cast<std::size_t>(w) + x)];
                for (int c = 0; c < 4; ++c) sum[c] += share.weight[k] * in[c];
            }
            std::uint8_t* to = out.at(x, y);
            for (int c = 0; c < 3 && sum[3] > 0; ++c)
                to[c] = static_cast<std::uint8_t>(std::lround(std::min(sum[c] / sum[3], 255.f)));
            to[3] = static_cast<std::uint8_t>(std::lround(std::min(sum[3], 255.f)));
        }
    }
    return out;
}

Fit fitInto(int from_w, int from_h, int w, int h) {
    const double scale = std::min(static_cast<double>(w) / from_w, static_cast<double>(h) / from_h);
    return {std::clamp(static_cast<int>(std::lround(from_w * scale)), 1, std::max(w, 1)),
            std::clamp(static_cast<int>(std::lround(from_h * scale)), 1, std::max(h, 1))};
}

}  // namespace wrenlet::game
