#include "editor/windows/marks.hpp"

#include <cmath>

namespace wrenlet::desk {

namespace {

constexpr int kSamples = 8;

struct Point {
    double x, y;  // -1 to 1 over the square, y down
};

bool inDisc(Point p, double radius) {
    return p.x * p.x + p.y * p.y <= radius * radius;
}

bool nearSegment(Point p, Point a, Point b, double half_width) {
    const double dx = b.x - a.x, dy = b.y - a.y;
    const double along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy);
    const double t = along < 0 ? 0 : along > 1 ? 1 : along;
    return std::hypot(p.x - a.x - t * dx, p.y - a.y - t * dy) <= half_width;
}

bool inShield(Point p) {
    if (p.y < -0.8 || p.y > 0.9) return false;
    const double half = p.y < 0 ? 0.7 : 0.7 * std::sqrt(1 - std::pow(p.y / 0.9, 2));
    return std::fabs(p.x) <= half;
}

bool inWarning(Point p) {
    const bool in_tag = std::fabs(p.x) <= 0.86 && std::fabs(p.y) <= 0.86 && p.x - p.y <= 1.3;
    const bool in_stroke = std::fabs(p.x) <= 0.12 && p.y > -0.55 && p.y < 0.16;
    const bool in_point = std::fabs(p.x) <= 0.13 && p.y > 0.34 && p.y < 0.6;
    return in_tag && !in_stroke && !in_point;
}

bool inside(Mark mark, Point p) {
    switch (mark) {
        case Mark::diamond:
            return std::fabs(p.x) + std::fabs(p.y) <= 0.98;
        case Mark::half_disc:
            return inDisc(p, 0.88) && (p.y >= 0 || !inDisc(p, 0.64));
        case Mark::disc:
            return inDisc(p, 0.82);
        case Mark::dot:
            return inDisc(p, 0.32);
        case Mark::shield: {
            const bool inner = inShield({p.x * 1.5, p.y * 1.5 + 0.05});
            return inShield(p) && (!inner || p.x > 0);
        }
        case Mark::tick:
            return nearSegment(p, {-0.72, 0.1}, {-0.22, 0.58}, 0.17) ||
                   nearSegment(p, {-0.22, 0.58}, {0.76, -0.56}, 0.17);
        case Mark::warning:
            return inWarning(p);
        case Mark::none:
            break;
    }
    return false;
}

// Share of each pixel for which `is_inside`, from 8×8 samples.
template <class Inside>
std::vector<std::uint8_t> sampled(int side, Inside is_inside) {
    std::vector<std::uint8_t> coverage;
    coverage.reserve(static_cast<std::size_t>(side) * static_cast<std::size_t>(side));
    for (int row = 0; row < side; ++row) {
        for (int column = 0; column < side; ++column) {
            int hits = 0;
            for (int sample = 0; sample < kSamples * kSamples; ++sample)
                hits += is_inside(column + (sample % kSamples + 0.5) / kSamples,
                                  row + (sample / kSamples + 0.5) / kSamples)
                            ? 1
                            : 0;
            coverage.push_back(static_cast<std::uint8_t>(hits * 255 / (kSamples * kSamples)));
        }
    }
    return coverage;
}

}  // namespace

int markSide(MarkSize size, float scale) {
    const float units = size == MarkSize::small ? 12.f : 16.f;
    return 2 * static_cast<int>(std::lround(units * scale / 2));
}

std::vector<std::uint8_t> markCoverage(Mark mark, int side) {
    return sampled(side, [&](double x, double y) {
        return inside(mark, {2 * x / side - 1, 2 * y / side - 1});
    });
}

std::vector<std::uint8_t> discCoverage(int radius, int line) {
    return sampled(2 * radius, [&](double x, double y) {
        const double from_middle = std::hypot(x - radius, y - radius);
        return from_middle <= radius && (line == 0 || from_middle >= radius - line);
    });
}

std::vector<std::uint8_t> arcCoverage(int radius, int line, double share) {
    constexpr double kTurn = 6.283185307179586;
    return sampled(2 * radius, [&](double x, double y) {
        const double from_middle = std::hypot(x - radius, y - radius);
        double turned = std::atan2(x - radius, radius - y) / kTurn;
        if (turned < 0) turned += 1;
        return from_middle <= radius && from_middle >= radius - line && turned <= share;
    });
}

}  // namespace wrenlet::desk
