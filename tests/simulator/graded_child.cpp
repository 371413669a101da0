// G, the graded child: a strength from 0 to 1 for every skill and every sound in its place. An item
// takes both, and a surplus of one makes up for no lack of the other (a product of powers): the
// shape that additive models get wrong. Practice moves both, most in the middle range, where a
// child can follow but has something to learn, and the more the better the other part carries the
// explanation; some of it reaches the same sound elsewhere, sounds of its class, skills of its
// unit. Overnight part of the day's gain is lost, less of what was practised on several days
// (spacing keeps more: Cepeda et al. 2006, from memory; for letter sounds 72 % against 38 %).
#include <algorithm>
#include <cmath>

#include "tests/simulator/child.hpp"
#include "tests/simulator/draw.hpp"
#include "tests/simulator/sounds.hpp"

namespace wrenlet::simulator {

namespace {

constexpr double kSkillPower = 0.7, kSoundPower = 0.9;
constexpr double kPace = 0.07;
constexpr double kOvernightLoss = 0.4, kSpacing = 0.7;
constexpr double kSameSound = 0.2, kSameClass = 0.04, kSameUnit = 0.06;

struct Strength {
    double now = 1;
    double today = 0;  // gained today
    int days = 0;      // practised on
    bool practised = false;
};

class GradedChild final : public Child {
  public:
    GradedChild(const Bank& bank, const Nature& nature, Random& random) : Child(bank, nature) {
        const auto holes = drawHoleChances(bank, nature, random);
        for (std::size_t i = 0; i < bank.components.size(); ++i) {
            const Component& component = bank.components[i];
            double now = 0;
            if (component.kind == Component::Kind::skill)
                now = drawSkillStrength(component.skill, nature, random);
            else
                now = chance(random, holes[i]) ? between(random, 0.1, 0.5)
                                               : drawBeta(random, 12, 1.2);
            strengths_.push_back({now, 0, 0, false});
        }
        for (std::size_t i = 0; i < bank.items.size(); ++i) {
            const int nearest = bank.items[i].nearest;
            const double near = nearest == 1 ? 1.2 : nearest == 2 ? 1.1 : 1.0;
            hardness_.push_back(near * logNormal(random, 0.2));
        }
    }

    double known(int item) const override {
        const auto index = static_cast<std::size_t>(item);
        const BankItem& asked = bank_.items[index];
        double logarithm = kSkillPower * std::log(of(asked.skill).now);
        if (asked.sound >= 0) logarithm += kSoundPower * std::log(of(asked.sound).now);
        return std::exp(hardness_[index] * logarithm);
    }

    double pRight(int item, double attention) const override {
        const double n =
            static_cast<double>(bank_.items[static_cast<std::size_t>(item)].item.choices.size());
        const double guess = std::min(0.6, nature_.guess_factor / n);
        return guess + (1 - guess - nature_.slip) * known(item) * attention;
    }

    void practise(int item, Random&) override {
        const BankItem& asked = bank_.items[static_cast<std::size_t>(item)];
        const double skill = of(asked.skill).now;
        const double sound = asked.sound >= 0 ? of(asked.sound).now : 0.7;
        const double of_skill = learn(asked.skill, sound);
        for (std::size_t i = 0; i < bank_.components.size(); ++i)
            if (bank_.components[i].kind == Component::Kind::skill &&
                static_cast<int>(i) != asked.skill &&
                bank_.components[i].skill.unit == asked.item.skill.unit)
                gain(strengths_[i], kSameUnit * of_skill);
        if (asked.sound < 0) return;
        const double of_sound = learn(asked.sound, skill);
        const auto& phoneme = bank_.components[static_cast<std::size_t>(asked.sound)].phoneme;
        if (!phoneme) return;
        for (std::size_t i = 0; i < bank_.components.size(); ++i) {
            const auto& other = bank_.components[i].phoneme;
            if (!other || static_cast<int>(i) == asked.sound) continue;
            if (*other == *phoneme)
                gain(strengths_[i], kSameSound * of_sound);
            else if (classOf(*other) == classOf(*phoneme))
                gain(strengths_[i], kSameClass * of_sound);
        }
    }

    void night(Random&) override {
        for (Strength& strength : strengths_) {
            strength.now -= strength.today * kOvernightLoss * std::pow(kSpacing, strength.days);
            if (strength.practised) ++strength.days;
            strength.today = 0;
            strength.practised = false;
        }
    }

  private:
    const Strength& of(int component) const {
        return strengths_[static_cast<std::size_t>(component)];
    }

    static void gain(Strength& strength, double share) {
        const double more = share * (1 - strength.now);
        strength.now += more;
        strength.today += more;
    }

    /// Share of what was lacking that is learned, by what the other part of the item carries.
    double learn(int component, double other) {
        Strength& strength = strengths_[static_cast<std::size_t>(component)];
        const double middle = 4 * strength.now * (1 - strength.now);
        const double share =
            std::min(0.5, kPace * nature_.pace * (0.3 + 0.7 * middle) * (0.25 + 0.75 * other));
        gain(strength, share);
        strength.practised = true;
        return share;
    }

    std::vector<Strength> strengths_;
    std::vector<double> hardness_;
};

}  // namespace

std::unique_ptr<Child> makeGradedChild(const Bank& bank, const Nature& nature, Random& random) {
    return std::make_unique<GradedChild>(bank, nature, random);
}

}  // namespace wrenlet::simulator
