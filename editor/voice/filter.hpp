// Filters of second order, for looking at one band of a sound: hum out, hiss alone, a vowel's
// middle. The formulas are R. Bristow-Johnson's "Cookbook formulae for audio EQ biquad filters"
// (W3C note).
#pragma once

#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

class Filter {
  public:
    /// Butterworth's shape when `q` is left alone. REQUIRES: 0 < hertz < rate / 2.
    static Filter highPass(double hertz, int rate, double q = 0.7071);
    static Filter lowPass(double hertz, int rate, double q = 0.7071);

    double next(double sample);

  private:
    Filter(double b0, double b1, double b2, double a0, double a1, double a2);
    double b0_, b1_, b2_, a1_, a2_;
    double z1_ = 0, z2_ = 0;
};

/// Two of them make 24 dB an octave, 3 dB down at `hertz` (Butterworth of fourth order).
class SteepFilter {
  public:
    static SteepFilter highPass(double hertz, int rate);
    static SteepFilter lowPass(double hertz, int rate);
    double next(double sample) { return second_.next(first_.next(sample)); }

  private:
    SteepFilter(Filter first, Filter second) : first_(first), second_(second) {}
    Filter first_, second_;
};

inline constexpr double kHumBelow = 80;  // Hz: mains hum and rumble, which are no speech

/// Without what lies below kHumBelow.
Pcm withoutHum(const Pcm& sound);

}  // namespace wrenlet::desk
