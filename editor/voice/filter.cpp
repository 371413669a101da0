#include "editor/voice/filter.hpp"

#include <cmath>
#include <numbers>

namespace wrenlet::desk {
namespace {

// The two halves of a Butterworth filter of fourth order.
constexpr double kFirstQ = 0.5412, kSecondQ = 1.3066;

}  // namespace

Filter::Filter(double b0, double b1, double b2, double a0, double a1, double a2)
    : b0_(b0 / a0), b1_(b1 / a0), b2_(b2 / a0), a1_(a1 / a0), a2_(a2 / a0) {}

Filter Filter::highPass(double hertz, int rate, double q) {
    const double w = 2 * std::numbers::pi * hertz / rate;
    const double c = std::cos(w), alpha = std::sin(w) / (2 * q);
    return {(1 + c) / 2, -(1 + c), (1 + c) / 2, 1 + alpha, -2 * c, 1 - alpha};
}

Filter Filter::lowPass(double hertz, int rate, double q) {
    const double w = 2 * std::numbers::pi * hertz / rate;
    const double c = std::cos(w), alpha = std::sin(w) / (2 * q);
    return {(1 - c) / 2, 1 - c, (1 - c) / 2, 1 + alpha, -2 * c, 1 - alpha};
}

double Filter::next(double sample) {
    const double out = b0_ * sample + z1_;
    z1_ = b1_ * sample - a1_ * out + z2_;
    z2_ = b2_ * sample - a2_ * out;
    return out;
}

SteepFilter SteepFilter::highPass(double hertz, int rate) {
    return {Filter::highPass(hertz, rate, kFirstQ), Filter::highPass(hertz, rate, kSecondQ)};
}

SteepFilter SteepFilter::lowPass(double hertz, int rate) {
    return {Filter::lowPass(hertz, rate, kFirstQ), Filter::lowPass(hertz, rate, kSecondQ)};
}

Pcm withoutHum(const Pcm& sound) {
    Pcm out = sound;
    SteepFilter filter = SteepFilter::highPass(kHumBelow, sound.rate);
    for (float& sample : out.samples)
        sample = static_cast<float>(filter.next(static_cast<double>(sample)));
    return out;
}

}  // namespace wrenlet::desk
