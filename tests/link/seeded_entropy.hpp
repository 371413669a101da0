// Chance that repeats, for tests of the link: never for a key that is used.
#pragma once

#include "content/common/random.hpp"
#include "content/link/bytes.hpp"

namespace wrenlet::link::samples {

class SeededEntropy final : public Entropy {
  public:
    explicit SeededEntropy(std::uint64_t seed) : random_(seed) {}
    void fill(std::span<std::uint8_t> bytes) override {
        for (std::uint8_t& byte : bytes) byte = static_cast<std::uint8_t>(random_.below(256));
    }

  private:
    Random random_;
};

}  // namespace wrenlet::link::samples
