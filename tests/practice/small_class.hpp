// A small class of simulated children to try attention on, and answers given without listening. No
// evidence about real children.
#pragma once

#include <vector>

#include "content/common/random.hpp"
#include "content/practice/learner.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::practice::samples {

/// A way to touch without listening.
struct Tapping {
    bool slow = false;  // in her own times; else 0.5 to 1.2 s
    int habit = 0;      // 0 any place, 1 always the same, 2 from side to side
};

class SmallChild {
  public:
    /// `level`: the share of sounds that she knows, about; two
    /// tasks she can surely do, at the others she is as able.
    SmallChild(std::uint64_t seed, double level);

    /// Puts forty questions to her in session `session`, those that `learner` is to be asked when
    /// it is in doubt, and adds her answers to it. From the `taps_from`th on she doesn't listen.
    /// Returns after how many answers she was first found guessing, or 0.
    int play(Learner& learner, int session, int taps_from = 1'000, Tapping tapping = {});

    const std::vector<Response>& given() const { return given_; }

  private:
    Response ask(int session);
    double known(const Response& question) const;
    void answer(Response& question, double attention);

    Random random_;
    std::vector<double> skills_, sounds_;  // shares known; a question takes both
    double median_ms_, tires_;
    std::size_t last_place_ = 0;
    std::vector<Response> given_;
};

}  // namespace wrenlet::practice::samples
