#include "tests/flash/flash_meter.hpp"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace wrenlet::flash {

namespace {

constexpr float kTenth = 0.1f, kDark = 0.8f;
constexpr float kSaturated = 0.8f;  // R / (R + G + B), linear
constexpr std::int64_t kSecond = 1000, kNever = -1'000'000;

}  // namespace

FlashMeter::Kind::Kind()
    : times(static_cast<std::size_t>(kColumns * kRows)),
      next(static_cast<std::size_t>(kColumns * kRows), 0) {
    for (auto& all : times) all.fill(kNever);
}

void FlashMeter::Kind::note(std::size_t square, std::int64_t now) {
    times[square][next[square]] = now;
    next[square] = static_cast<std::uint8_t>((next[square] + 1) % kMostCounted);
}

bool FlashMeter::Kind::coversAQuarter(const std::vector<std::uint8_t>& counts, int least) const {
    // sums[y][x]: how many squares above and left of there changed so often.
    constexpr std::size_t kLine = static_cast<std::size_t>(kColumns) + 1;
    std::vector<int> sums(kLine * (static_cast<std::size_t>(kRows) + 1), 0);
    for (std::size_t y = 0; y < static_cast<std::size_t>(kRows); ++y)
        for (std::size_t x = 0; x < static_cast<std::size_t>(kColumns); ++x)
            sums[(y + 1) * kLine + x + 1] =
                (counts[y * static_cast<std::size_t>(kColumns) + x] >= least) +
                sums[y * kLine + x + 1] + sums[(y + 1) * kLine + x] - sums[y * kLine + x];
    for (std::size_t y = 0; y + kFieldRows <= static_cast<std::size_t>(kRows); ++y)
        for (std::size_t x = 0; x + kFieldColumns <= static_cast<std::size_t>(kColumns); ++x) {
            const int inside = sums[(y + kFieldRows) * kLine + x + kFieldColumns] -
                               sums[y * kLine + x + kFieldColumns] -
                               sums[(y + kFieldRows) * kLine + x] + sums[y * kLine + x];
            if (inside >= kQuarter) return true;
        }
    return false;
}

void FlashMeter::Kind::count(std::int64_t now) {
    std::vector<std::uint8_t> counts(times.size(), 0);
    int most = 0;
    for (std::size_t i = 0; i < times.size(); ++i) {
        counts[i] = static_cast<std::uint8_t>(
            std::count_if(times[i].begin(), times[i].end(),
                          [now](std::int64_t time) { return time > now - kSecond; }));
        most = std::max<int>(most, counts[i]);
    }
    while (worst < most && coversAQuarter(counts, worst + 1)) ++worst;
}

FlashMeter::FlashMeter() : squares_(static_cast<std::size_t>(kColumns * kRows)) {
    // Relative luminance of sRGB, as WCAG 2.2 gives it.
    for (std::size_t i = 0; i < linear_.size(); ++i) {
        const float c = static_cast<float>(i) / 255;
        linear_[i] = c <= 0.04045f ? c / 12.92f : std::pow((c + 0.055f) / 1.055f, 2.4f);
    }
}

void FlashMeter::see(std::int64_t now, std::span<const std::uint8_t> rgb) {
    bool any = false, any_red = false;
    const bool is_first = last_.empty();
    for (std::size_t i = 0; i < squares_.size(); ++i) {
        constexpr std::size_t kBytes = 3 * kSide, kRow = 3 * kWidth;
        const std::size_t corner = i / kColumns * kSide * kRow + i % kColumns * kBytes;
        bool same = !is_first;
        for (std::size_t y = 0; same && y < kSide; ++y)
            same = std::memcmp(&rgb[corner + y * kRow], &last_[corner + y * kRow], kBytes) == 0;
        if (same) continue;
        float r = 0, g = 0, b = 0;
        for (std::size_t y = 0; y < kSide; ++y)
            for (std::size_t x = 0; x < kBytes; x += 3) {
                const std::uint8_t* pixel = &rgb[corner + y * kRow + x];
                r += linear_[pixel[0]];
                g += linear_[pixel[1]];
                b += linear_[pixel[2]];
            }
        constexpr float kPixels = kSide * kSide;
        const float light = (0.2126f * r + 0.7152f * g + 0.0722f * b) / kPixels;
        const bool red = r > kSaturated * (r + g + b) && r > 0;
        Square& square = squares_[i];
        if (is_first) {
            square = {light, light, 0, red};
            continue;
        }
        if (red != square.red) {
            red_.note(i, now);
            any_red = true;
            square.red = red;
        }
        square.least = std::min(square.least, light);
        square.most = std::max(square.most, light);
        const bool up = square.last <= 0 && light >= square.least + kTenth && square.least < kDark;
        const bool down = square.last >= 0 && light <= square.most - kTenth && light < kDark;
        if (!up && !down) continue;
        general_.note(i, now);
        any = true;
        square.last = up ? 1 : -1;
        square.least = square.most = light;
    }
    last_.assign(rgb.begin(), rgb.end());
    if (any) general_.count(now);
    if (any_red) red_.count(now);
}

}  // namespace wrenlet::flash
