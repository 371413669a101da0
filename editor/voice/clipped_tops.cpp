#include "editor/voice/clipped_tops.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::desk {
namespace {

constexpr float kSameTop = 0.0005f;     // of the top: samples this near to it are at it
constexpr float kCorner = 0.0006f;      // of the top: a rounded top falls off more slowly
constexpr float kThreeSteps = 0.0001f;  // of 16 bits: what rounding alone can fall by
constexpr float kSoftTop = 0.01f;       // -40 dBFS: softer, 16 bits make flat tops of their own
constexpr std::size_t kFlat = 3;        // samples
constexpr double kStep = 1.0 / 32768;   // of 16 bits
constexpr double kFewSteps = 16;        // rounding alone makes runs of a soft wave flat
constexpr double kSurprise = 12;        // bits: chance does so once in 4096 takes

/// Where runs at the top lie, and what speaks for their being cut.
struct Tops {
    int flat = 0;     // runs with corners
    double bits = 0;  // how surprising the exactly equal samples are, all runs together
    std::size_t first = 0, last = 0;
    void take(Stretch run) {
        first = last == 0 ? run.begin : std::min(first, run.begin);
        last = std::max(last, run.end);
    }
};

/// One side of the wave, turned upwards.
class Side {
  public:
    Side(const std::vector<float>& samples, float sign) : samples_(samples), sign_(sign) {
        for (std::size_t i = 0; i < samples_.size(); ++i) top_ = std::max(top_, at(i));
    }

    void look(Tops& tops) const {
        if (top_ < kSoftTop) return;
        const float beside = top_ - std::max(top_ * kCorner, kThreeSteps);
        for (const Stretch& run : runsWithin(top_ * kSameTop)) {
            if (run.size() < kFlat || at(run.begin - 1) > beside || at(run.end) > beside) continue;
            tops.take(run);
            ++tops.flat;
        }
        for (const Stretch& run : runsWithin(static_cast<float>(kStep / 4))) {
            const double bits = surprise(run);
            if (bits <= 0) continue;
            tops.take(run);
            tops.bits += bits;
        }
    }

  private:
    float at(std::size_t i) const { return sign_ * samples_[i]; }

    /// Those with two samples or more on both sides.
    std::vector<Stretch> runsWithin(float below_top) const {
        std::vector<Stretch> runs;
        for (std::size_t i = 0; i < samples_.size(); ++i) {
            if (at(i) < top_ - below_top) continue;
            const std::size_t begin = i;
            while (i < samples_.size() && at(i) >= top_ - below_top) ++i;
            if (begin >= 2 && i + 2 <= samples_.size()) runs.push_back({begin, i});
        }
        return runs;
    }

    /// Bits of chance that a wave not cut would need to be as flat there: a parabola is laid
    /// through the second samples outside. Of two samples, one may have any of the steps by which
    /// neighbours at such a top differ; of more, both ends may have those down from the middle.
    double surprise(Stretch run) const {
        if (run.size() < 2) return 0;
        const double n = static_cast<double>(run.size());
        const double fall = static_cast<double>(2 * top_ - at(run.begin - 2) - at(run.end + 1)) / 2;
        const double curve = fall / std::pow((n + 3) / 2, 2) / kStep;
        const double steps = n < 3 ? curve : curve * std::pow((n - 1) / 2, 2);
        return steps < kFewSteps ? 0 : (n < 3 ? 1 : 2) * std::log2(steps);
    }

    const std::vector<float>& samples_;
    float sign_, top_ = 0;
};

}  // namespace

std::optional<Finding> clippedTops(const Pcm& take) {
    Tops tops;
    Side(take.samples, 1).look(tops);
    Side(take.samples, -1).look(tops);
    if (tops.flat < 2 && tops.bits < kSurprise) return std::nullopt;
    return Finding{Trouble::clipped,
                   static_cast<double>(tops.first) / take.rate,
                   static_cast<double>(tops.last) / take.rate,
                   0,
                   {}};
}

}  // namespace wrenlet::desk
