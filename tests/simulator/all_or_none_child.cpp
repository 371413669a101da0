// A, the all-or-none child: a skill or a sound in its place is known or it is not, an item takes
// both, and learning is a jump (Bower 1961; from memory). What was learned today may be gone
// tomorrow until it has lasted two nights. A child who does not know rules out some foils and
// guesses among the rest. Models of single cells see two hidden states behind each answer, and
// graded ones see jumps.
#include <algorithm>
#include <cmath>

#include "tests/simulator/child.hpp"
#include "tests/simulator/draw.hpp"

namespace wrenlet::simulator {

namespace {

constexpr double kJump = 0.035;  // of a typical child, in one practised item
constexpr double kOtherKnown = 1.6, kOtherUnknown = 0.5;
constexpr double kForgets = 0.35;  // overnight, what has not yet lasted
constexpr int kLasts = 2;          // nights
constexpr double kOddItem = 0.03;  // an item is not known for reasons of its own

class AllOrNoneChild final : public Child {
  public:
    AllOrNoneChild(const Bank& bank, const Nature& nature, Random& random)
        : Child(bank, nature), jump_(kJump * nature.pace), rules_out_(between(random, 0.0, 0.4)) {
        const auto holes = drawHoleChances(bank, nature, random);
        for (std::size_t i = 0; i < bank.components.size(); ++i) {
            const Component& component = bank.components[i];
            const bool is_skill = component.kind == Component::Kind::skill;
            // A skill is known where the strength lies over one half, more or less.
            const double likely =
                is_skill ? clamp01(1.6 * drawSkillStrength(component.skill, nature, random) - 0.05)
                         : 1 - 0.9 * holes[i];
            states_.push_back({chance(random, likely), kLasts, 0});
        }
        for (std::size_t i = 0; i < bank.items.size(); ++i)
            odd_.push_back(chance(random, kOddItem));
    }

    double known(int item) const override {
        const auto index = static_cast<std::size_t>(item);
        const BankItem& asked = bank_.items[index];
        return !odd_[index] && knows(asked.skill) && (asked.sound < 0 || knows(asked.sound)) ? 1
                                                                                             : 0;
    }

    double pRight(int item, double attention) const override {
        const auto foils = bank_.items[static_cast<std::size_t>(item)].item.choices.size() - 1;
        const double guess = guessAmong(static_cast<double>(foils));
        if (known(item) == 0) return guess;
        return attention * (1 - nature_.slip) + (1 - attention) * guess;
    }

    void practise(int item, Random& random) override {
        const BankItem& asked = bank_.items[static_cast<std::size_t>(item)];
        const bool skill = knows(asked.skill), sound = asked.sound < 0 || knows(asked.sound);
        learn(asked.skill, sound, random);
        if (asked.sound >= 0) learn(asked.sound, skill, random);
    }

    void night(Random& random) override {
        for (State& state : states_) {
            const double forgets = kForgets / (1 + state.practised_today);
            if (state.known && state.nights < kLasts) {
                if (chance(random, forgets))
                    state.known = false;
                else
                    ++state.nights;
            }
            state.practised_today = 0;
        }
    }

  private:
    struct State {
        bool known;
        int nights;  // that it has lasted
        int practised_today;
    };

    bool knows(int component) const { return states_[static_cast<std::size_t>(component)].known; }

    /// Mean of 1 / (1 + foils left), each foil left with the chance 1 - rules_out_.
    double guessAmong(double foils) const {
        const double left = 1 - rules_out_;
        return (1 - std::pow(rules_out_, foils + 1)) / ((foils + 1) * left);
    }

    void learn(int component, bool other, Random& random) {
        State& state = states_[static_cast<std::size_t>(component)];
        ++state.practised_today;
        const double jump = std::min(0.9, jump_ * (other ? kOtherKnown : kOtherUnknown));
        if (!chance(random, jump) || state.known) return;
        state.known = true;
        state.nights = 0;
    }

    const double jump_, rules_out_;
    std::vector<State> states_;
    std::vector<bool> odd_;
};

}  // namespace

std::unique_ptr<Child> makeAllOrNoneChild(const Bank& bank, const Nature& nature, Random& random) {
    return std::make_unique<AllOrNoneChild>(bank, nature, random);
}

}  // namespace wrenlet::simulator
