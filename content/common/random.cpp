#include "content/common/random.hpp"

namespace wrenlet {

std::uint64_t Random::next() {
    state_ += 0x9E3779B97F4A7C15ULL;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31);
}

std::uint32_t Random::below(std::uint32_t bound) {
    const std::uint64_t high = next() >> 32;
    return static_cast<std::uint32_t>((high * bound) >> 32);
}

double Random::unit() { return static_cast<double>(next() >> 11) * 0x1.0p-53; }

std::uint64_t stepSeed(std::uint64_t seed, std::uint64_t step) {
    Random mixer(seed ^ (step * 0xD1B54A32D192ED03ULL + 0x2545F4914F6CDD1DULL));
    return mixer.next();
}

}  // namespace wrenlet
