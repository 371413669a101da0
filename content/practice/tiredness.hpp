// Whether a child tires in the course of a session: her answers come slower and less right, little
// by little, than they did at its beginning.
//
// Tiredness that begins with answer o takes attention away in equal steps until `depth` of it is
// gone, `grows` answers later. With a lost, what she knows is right with g + (p - g)(1 - a), and
// her times are (1 + slower a) times as long. Each o gives a log-likelihood ratio of all answers of
// the session, tired from o against not at all; what is told is the ratio averaged over a few o
// (the mixture that Shiryaev 1963 and Pollak 1985 take when the moment of a change is not known).
// How quick she is today is not known either: an offset of all times of the session, a bell curve,
// is integrated out, so that a slow day alone is no tiredness.
//
// Constants: kAttending in policy.hpp.
#pragma once

#include <array>
#include <cstddef>

namespace wrenlet::practice {

class Tiredness {
  public:
    /// A first answer of the session.
    struct Sign {
        bool tells = true;  // false: right or wrong says nothing of attention
        bool right = false;
        double known = 0;      // share she is believed to know, 0 to 1
        double by_chance = 0;  // of a right answer where she does not know
        double slower = 0;     // ln of her time, above what was expected before the session
        double variance = 1;   // of it, where she is awake; above 0
    };
    void add(const Sign& sign);

    /// How far this session's answers speak for tiredness, in nats; 0 before any.
    double nats() const;

    bool operator==(const Tiredness&) const = default;

  private:
    static constexpr std::size_t kOnsets = 6;
    /// Sums over the session for one moment of its beginning, times weighed by 1 / variance.
    struct Since {
        double answers = 0;  // log-likelihood ratio of right and wrong
        double slowing = 0, slowing_squares = 0, slower_slowing = 0;
        bool operator==(const Since&) const = default;
    };

    std::array<Since, kOnsets> since_{};
    double weight_ = 0, slower_ = 0;
    std::size_t asked_ = 0;
};

}  // namespace wrenlet::practice
