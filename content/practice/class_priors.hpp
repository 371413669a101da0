// What is believed of a child before her first answer: of each part of what questions ask, how well
// children of this class know it and how much they differ. Fitted from the class itself (empirical
// Bayes: Robbins 1956; Efron & Morris 1973), so that a sound nobody in the room knows is not taken
// for one child's gap.
#pragma once

#include <array>
#include <span>
#include <unordered_map>

#include "content/practice/feature.hpp"

namespace wrenlet::practice {

class Mastery;

class ClassPriors {
  public:
    /// Those of policy.hpp, before any class is known.
    ClassPriors();

    /// Fits class means and the spread of each family to what is believed of the class's children:
    /// one step of expectation and maximization (Dempster, Laird & Rubin 1977), best from the
    /// priors of the step before. What policy.hpp says stays in, with the weight it gives, so that
    /// one child or an empty class changes little or nothing.
    static ClassPriors fittedTo(std::span<const Mastery* const> children);

    Gaussian of(const Feature& feature) const;

    bool operator==(const ClassPriors&) const = default;

  private:
    std::array<double, kFamilyCount> variance_;     // between children, by family
    std::unordered_map<FeatureKey, double> means_;  // of the class; 0 where it is not named
};

}  // namespace wrenlet::practice
