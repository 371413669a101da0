// What one line of a report is about: several questions, such as every one on /t/ at the end, or
// every one of a skill.
#pragma once

#include <span>
#include <vector>

#include "content/practice/feature.hpp"
#include "content/practice/known.hpp"

namespace wrenlet::practice {

class Mastery;

class Place {
  public:
    /// REQUIRES: at least one question.
    explicit Place(std::span<const Features> questions);

    /// Task and sound of the place as a whole: their mean shares known are the means over its
    /// questions, and only what its questions have in common keeps its uncertainty; what is theirs
    /// alone is averaged out.
    Known known(const Mastery& mastery) const;

  private:
    std::vector<Features> questions_;
    std::vector<Feature> task_, sound_;  // each part once; share: the mean over the questions
};

}  // namespace wrenlet::practice
