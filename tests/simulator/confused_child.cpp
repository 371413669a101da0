// C, the child who confuses: chooses among what could have been said by Luce's rule (R. D. Luce,
// "Detection and recognition", 1963: similarity times bias, over the sum of them), where alike is
// what sounds.hpp says. There is no state for a sound at all: learning makes two sounds less alike
// in one place, and what a row is worth follows from the foils it is asked with. Foils that name no
// sounds are as alike as the child is weak at the skill (weaker where a letter is a hole). A
// quarter of the children do not make one or two contrasts of English (facts on Spanish speakers
// and American mergers): those they never tell apart, never learn, and are not blamed for.
#include <algorithm>
#include <array>
#include <cmath>

#include "tests/simulator/child.hpp"
#include "tests/simulator/draw.hpp"
#include "tests/simulator/sounds.hpp"

namespace wrenlet::simulator {

namespace {

using speech::Phoneme;

constexpr double kShielded = 0.25;                   // of the children
constexpr double kFog[] = {0.24, 0.19, 0.16, 0.12};  // by profile: how alike the alike are
constexpr double kHole = 0.8;                        // more of it, for a sound that is a hole
constexpr double kPaceOfContrast = 0.07, kPaceOfSkill = 0.05;
constexpr double kElsewhere = 0.35, kSameAsked = 0.12;  // of it, to related contrasts
constexpr double kOvernightLoss = 0.35, kSpacing = 0.7;

struct Level {
    double now = 0, today = 0;
    int days = 0;
    bool practised = false;

    void move(double by) {
        now += by;
        today += by;
    }
    void sleep() {
        now -= today * kOvernightLoss * std::pow(kSpacing, days);
        if (practised) ++days;
        today = 0;
        practised = false;
    }
};

class ConfusedChild final : public Child {
  public:
    ConfusedChild(const Bank& bank, const Nature& nature, Random& random) : Child(bank, nature) {
        if (chance(random, kShielded)) drawShields(random);
        const auto holes = drawHoleChances(bank, nature, random);
        std::vector<bool> is_hole;
        for (const double hole : holes) is_hole.push_back(chance(random, hole));
        for (const Component& component : bank.components)
            skills_.push_back({component.kind == Component::Kind::skill
                                   ? drawSkillStrength(component.skill, nature, random)
                                   : 0});
        const double fog = kFog[static_cast<std::size_t>(nature.profile)] * logNormal(random, 0.15);
        for (const Contrast& contrast : bank.contrasts) {
            const double alike = contrast.heard ? likeness(contrast.asked, *contrast.heard)
                                                : likenessToNothing(contrast.position);
            const double hole = holeAt(contrast, is_hole) ? kHole : 0;
            alike_.push_back({std::min(
                0.97, std::sqrt(alike) * (fog + hole) * logNormal(random, 0.25) + 0.4 * hole)});
            shielded_.push_back(isShielded(contrast));
        }
        for (std::size_t i = 0; i < bank.items.size(); ++i)
            hidden_.push_back(bank.items[i].sound >= 0 && !bank.isRow(bank.items[i].sound) &&
                              is_hole[static_cast<std::size_t>(bank.items[i].sound)]);
        bias_ = {1, logNormal(random, 0.15), logNormal(random, 0.15), logNormal(random, 0.15)};
    }

    double known(int item) const override {
        const double n =
            static_cast<double>(bank_.items[static_cast<std::size_t>(item)].item.choices.size());
        return clamp01((rightShare(item, 1, false) - 1 / n) / (1 - 1 / n));
    }

    double pRight(int item, double attention) const override {
        return (1 - nature_.slip) * rightShare(item, attention, true);
    }

    void practise(int item, Random&) override {
        const BankItem& asked = bank_.items[static_cast<std::size_t>(item)];
        Level& skill = skills_[static_cast<std::size_t>(asked.skill)];
        const double follows = 0.35 + 0.65 * skill.now;
        double heard = 1;  // how far the foils are told apart: it carries the skill's explanation
        for (const int contrast : asked.contrasts) {
            if (contrast < 0) continue;
            const auto index = static_cast<std::size_t>(contrast);
            heard = std::min(heard, 1 - alike_[index].now);
            if (shielded_[index]) continue;
            const double share = std::min(0.6, kPaceOfContrast * nature_.pace * follows);
            alike_[index].move(-share * alike_[index].now);
            alike_[index].practised = true;
            spread(index, share);
        }
        const double middle = 4 * skill.now * (1 - skill.now);
        skill.move(std::min(0.5, kPaceOfSkill * nature_.pace * (0.3 + 0.7 * middle) *
                                     (0.4 + 0.6 * heard)) *
                   (1 - skill.now));
        skill.practised = true;
    }

    void night(Random&) override {
        for (Level& level : skills_) level.sleep();
        for (Level& level : alike_) level.sleep();
    }

    const std::vector<std::string>& shields() const override { return names_; }

  protected:
    int choose(int item, double attention, Random& random) const override {
        const BankItem& asked = bank_.items[static_cast<std::size_t>(item)];
        if (chance(random, nature_.slip)) return anyFoil(item, random);
        double at = random.unit() * weights(asked, item, attention, true);
        for (std::size_t i = 0; i + 1 < asked.item.choices.size(); ++i) {
            at -= weight_[i];
            if (at < 0) return static_cast<int>(i);
        }
        return static_cast<int>(asked.item.choices.size()) - 1;
    }

  private:
    void drawShields(Random& random) {
        const int count = chance(random, 0.4) ? 2 : 1;
        while (static_cast<int>(names_.size()) < count) {
            const std::string name = kShields[random.below(std::size(kShields))].name;
            if (std::find(names_.begin(), names_.end(), name) == names_.end())
                names_.push_back(name);
        }
    }

    bool isShielded(const Contrast& contrast) const {
        return std::any_of(std::begin(kShields), std::end(kShields), [&](const Shield& shield) {
            if (std::find(names_.begin(), names_.end(), shield.name) == names_.end()) return false;
            return isAlong(contrast, shield);
        });
    }

    bool holeAt(const Contrast& contrast, const std::vector<bool>& is_hole) const {
        for (std::size_t i = 0; i < bank_.components.size(); ++i)
            if (bank_.components[i].phoneme == contrast.asked &&
                bank_.components[i].turns_on.position == contrast.position)
                return is_hole[i];
        return false;
    }

    /// Similarity times bias of each choice, into weight_; their sum. What attention misses is
    /// heard as anything. The truth leaves shields aside: as if the child made those contrasts.
    double weights(const BankItem& asked, int item, double attention, bool with_shields) const {
        const double skill = skills_[static_cast<std::size_t>(asked.skill)].now *
                             (hidden_[static_cast<std::size_t>(item)] ? 0.6 : 1);
        double sum = 0;
        for (std::size_t i = 0; i < asked.item.choices.size(); ++i) {
            double similar = 1;
            if (static_cast<int>(i) != asked.item.answer) {
                const double by_skill = std::pow(1 - skill, 3);
                double by_sound = 0;
                if (const int contrast = asked.contrasts[i]; contrast >= 0) {
                    const auto index = static_cast<std::size_t>(contrast);
                    by_sound = !shielded_[index] ? alike_[index].now : with_shields ? 1 : 0.1;
                }
                similar = 1 - attention * (1 - by_skill) * (1 - by_sound);
            }
            weight_[i] = similar * (with_shields ? bias_[i % bias_.size()] : 1);
            sum += weight_[i];
        }
        return sum;
    }

    double rightShare(int item, double attention, bool with_shields) const {
        const BankItem& asked = bank_.items[static_cast<std::size_t>(item)];
        const double sum = weights(asked, item, attention, with_shields);
        return weight_[asked.item.answer] / sum;
    }

    /// The same two sounds in another place learn along, and the same sound against others.
    void spread(std::size_t practised, double share) {
        const Contrast& from = bank_.contrasts[practised];
        for (std::size_t i = 0; i < bank_.contrasts.size(); ++i) {
            const Contrast& to = bank_.contrasts[i];
            if (i == practised || shielded_[i]) continue;
            const bool same = to.asked == from.asked && to.heard == from.heard;
            const bool turned =
                from.heard && to.heard && to.asked == *from.heard && *to.heard == from.asked;
            if (same || turned)
                alike_[i].move(-kElsewhere * share * alike_[i].now);
            else if (to.asked == from.asked && to.position == from.position)
                alike_[i].move(-kSameAsked * share * alike_[i].now);
        }
    }

    std::vector<std::string> names_;
    std::vector<Level> skills_;  // by component; those of skills are used
    std::vector<Level> alike_;   // by contrast
    std::vector<bool> shielded_;
    std::vector<bool> hidden_;  // by item: turns on a letter or a part that is a hole
    std::array<double, 4> bias_{};
    mutable std::array<double, 8> weight_{};
};

}  // namespace

std::unique_ptr<Child> makeConfusedChild(const Bank& bank, const Nature& nature, Random& random) {
    return std::make_unique<ConfusedChild>(bank, nature, random);
}

}  // namespace wrenlet::simulator
