// Counts flashes as WCAG 2.2 defines them (success criterion 2.3.1, Three Flashes or Below
// Threshold; glossary: "flash", "general flash and red flash thresholds"): pairs of opposing
// changes in relative luminance of a tenth or more of the most there is, the darker image below
// 0.80, over a quarter or more of any 10 degrees of the field of sight, which on a screen of 1024 x
// 768 is any rectangle of 341 x 256. Changes to and from a saturated red are counted apart.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

namespace wrenlet::flash {

/// What was seen within a second over a quarter of some field, at most. Two opposing changes are
/// one flash.
struct Changes {
    int general = 0;
    int red = 0;
};

class FlashMeter {
  public:
    static constexpr int kWidth = 1024, kHeight = 768;

    FlashMeter();
    /// The screen is `rgb` from `now` on, in milliseconds: three bytes a pixel, row by row.
    void see(std::int64_t now, std::span<const std::uint8_t> rgb);
    Changes worst() const { return {general_.worst, red_.worst}; }

  private:
    // Measured in squares of 4 x 4 pixels.
    static constexpr int kSide = 4, kColumns = kWidth / kSide, kRows = kHeight / kSide;
    static constexpr int kFieldColumns = 341 / kSide, kFieldRows = 256 / kSide;
    static constexpr int kQuarter = 341 * 256 / 4 / (kSide * kSide);
    static constexpr int kMostCounted = 16;

    /// Changes of one kind, where and when they were.
    struct Kind {
        std::vector<std::array<std::int64_t, kMostCounted>> times;  // of each square, the last ones
        std::vector<std::uint8_t> next;                             // where the next one goes
        int worst = 0;
        Kind();
        void note(std::size_t square, std::int64_t now);
        /// Looks whether there were more changes than ever within the second before `now`.
        void count(std::int64_t now);
        bool coversAQuarter(const std::vector<std::uint8_t>& counts, int least) const;
    };
    struct Square {
        float least = 0, most = 0;  // since the last change
        std::int8_t last = 0;       // it was up, down; 0: none yet
        bool red = false;
    };

    Kind general_, red_;
    std::vector<Square> squares_;
    std::vector<std::uint8_t> last_;  // what was seen before
    std::array<float, 256> linear_;
};

}  // namespace wrenlet::flash
