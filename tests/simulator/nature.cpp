#include "tests/simulator/nature.hpp"

#include <algorithm>
#include <array>

#include "tests/simulator/draw.hpp"
#include "tests/simulator/sounds.hpp"

namespace wrenlet::simulator {

using exercise::Position;
using exercise::Task;
using exercise::Unit;

namespace {

Profile drawProfile(Random& random) {
    const double throw_of_dice = random.unit();
    if (throw_of_dice < 0.12) return Profile::very_low;
    if (throw_of_dice < 0.32) return Profile::low;
    if (throw_of_dice < 0.82) return Profile::typical;
    return Profile::high;
}

constexpr double kLevel[] = {-0.44, -0.10, 0.13, 0.21};
constexpr double kHoleShare[] = {0.50, 0.28, 0.15, 0.06};
constexpr double kPaceOf[] = {0.65, 0.85, 1.0, 1.15};

double easeOf(Unit unit) {
    switch (unit) {
        case Unit::sentence:
        case Unit::compound:
            return 0.86;
        case Unit::syllable:
            return 0.82;
        case Unit::onset_rime:
            return 0.78;
        case Unit::letter:
            return 0.76;
        case Unit::phoneme:
            return 0.70;
    }
    return 0.7;
}

double easeOf(Task task) {
    switch (task) {
        case Task::rhyme_judge:
        case Task::blend:
            return 0.05;
        case Task::name:
        case Task::first:
            return 0.1;
        case Task::sound:
        case Task::rhyme_sort:
        case Task::rhyme_pick:
        case Task::last:
            return 0.02;
        case Task::segment:
        case Task::odd_one_out:
        case Task::both_sounds:
        case Task::digraph:
            return -0.06;
        case Task::add:
        case Task::build:
        case Task::long_short:
            return -0.1;
        case Task::remove:
        case Task::substitute:
            return -0.15;
        default:
            return 0;
    }
}

std::size_t placeGroup(Position position) {
    return position == Position::first ? 0 : position == Position::last ? 2 : 1;
}

}  // namespace

Nature drawNature(Random& random) {
    Nature nature;
    nature.profile = drawProfile(random);
    const auto profile = static_cast<std::size_t>(nature.profile);
    nature.level = kLevel[profile] + 0.05 * normal(random);
    nature.hole_share = kHoleShare[profile] * logNormal(random, 0.25);
    nature.guess_factor = between(random, 0.85, 1.25);
    nature.slip = between(random, 0.03, 0.11);
    nature.pace = kPaceOf[profile] * logNormal(random, 0.35);
    nature.median_ms = 3800 * logNormal(random, 0.3);
    nature.tempo_spread = between(random, 0.3, 0.5);
    nature.tires = chance(random, 0.35) ? between(random, 0.1, 0.4) : 0;
    nature.tires_from = between(random, 15, 30);
    return nature;
}

double drawSkillStrength(exercise::Skill skill, const Nature& nature, Random& random) {
    const double mean = easeOf(skill.unit) + easeOf(skill.task) + nature.level;
    return std::clamp(mean + 0.11 * normal(random), 0.08, 0.98);
}

std::vector<double> drawHoleChances(const Bank& bank, const Nature& nature, Random& random) {
    std::array<double, kSoundClasses> by_class{};
    for (double& factor : by_class) factor = logNormal(random, 0.8);
    std::array<double, 3> by_place{0.7, 1.0, 1.3};
    for (double& factor : by_place) factor *= logNormal(random, 0.3);
    constexpr double kByAge[] = {0.7, 0.9, 1.1, 1.4, 1.7};  // expected at 2, 3, 4, 5, 6
    std::vector<double> chances;
    for (const Component& component : bank.components) {
        double factor = 1;
        if (component.phoneme)
            factor = by_class[static_cast<std::size_t>(classOf(*component.phoneme))] *
                     by_place[placeGroup(component.turns_on.position)] *
                     kByAge[expectedAge(*component.phoneme) - 2];
        const bool is_skill = component.kind == Component::Kind::skill;
        chances.push_back(is_skill ? 0 : std::min(0.9, 0.75 * nature.hole_share * factor));
    }
    return chances;
}

double attention(const Nature& nature, int asked) {
    const double tired = (asked - nature.tires_from) / (40 - nature.tires_from);
    return 1 - nature.tires * clamp01(tired);
}

}  // namespace wrenlet::simulator
