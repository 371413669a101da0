// What a simulated child brings along, whichever way the child learns: profile, guessing, slips,
// tempo, tiredness, and where the holes in what it hears are likely.
//
// Why it is shaped so. Profiles: a class is mixed, and the very low matter most. Holes come in
// clusters (a child who lacks one fricative often lacks another; ends are harder than beginnings:
// Treiman & Weatherston 1992) and follow the age at which a sound is expected (Crowe & McLeod
// 2020). Larger units are easier, and blending easier than segmenting and deleting (Anthony et al.
// 2003; Stahl & Murray 1994; Yopp 1988); the figures themselves are from memory of no study: they
// are chosen, once, so that items asked at random go as they went for the prototypes (a random
// policy's rows missed at first, bad sessions, gains), before any policy of the project was run.
#pragma once

#include <string>
#include <vector>

#include "content/common/random.hpp"
#include "tests/simulator/bank.hpp"

namespace wrenlet::simulator {

enum class Profile : std::uint8_t { very_low, low, typical, high };

struct Nature {
    Profile profile = Profile::typical;
    double level = 0;           // what is added to the strength of every skill
    double hole_share = 0;      // mean chance that a sound is a hole
    double guess_factor = 1;    // times the even chance, when the child guesses
    double slip = 0.05;         // wrong although known
    double pace = 1;            // of learning, against other children
    double median_ms = 4000;    // of the child's honest answers
    double tempo_spread = 0.4;  // of their logarithms
    double tires = 0;           // attention lost by the end of 40 items, 0 to 0.5
    double tires_from = 20;     // items into the session
};

/// Half of the children are typical, 20 % low, 12 % very low, 18 % high.
Nature drawNature(Random& random);

/// How strong a child with this nature is at a skill before any practice, 0 to 1.
double drawSkillStrength(exercise::Skill skill, const Nature& nature, Random& random);

/// By component that is no skill: the chance that it is a hole, clustered by class and place.
std::vector<double> drawHoleChances(const Bank& bank, const Nature& nature, Random& random);

/// Share of attention that is left, 0 to 1, `asked` items into the session.
double attention(const Nature& nature, int asked);

}  // namespace wrenlet::simulator
