// Random numbers that are the same on every machine and library: a session can be replayed from
// its seed. SplitMix64 (Steele, Lea & Flood 2014), whose state is one number.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

namespace wrenlet {

class Random {
  public:
    explicit Random(std::uint64_t seed) : state_(seed) {}

    std::uint64_t next();
    /// Uniform in [0, bound). REQUIRES: bound > 0.
    std::uint32_t below(std::uint32_t bound);
    /// Uniform in [0, 1).
    double unit();

    template <class T>
    void shuffle(std::vector<T>& items) {
        for (std::size_t i = items.size(); i > 1; --i)
            std::swap(items[i - 1], items[below(static_cast<std::uint32_t>(i))]);
    }

  private:
    std::uint64_t state_;
};

/// A seed for step `step` of what `seed` began, so that a step can be repeated on its own.
std::uint64_t stepSeed(std::uint64_t seed, std::uint64_t step);

}  // namespace wrenlet
