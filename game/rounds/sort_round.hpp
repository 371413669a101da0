// Sort: one card at a time goes into the home it belongs to. Cards that share their homes follow
// one another in the same round, and those already sorted stay in sight.
#pragma once

#include <string>
#include <vector>

#include "game/rounds/question.hpp"

namespace wrenlet::game {

class SortRound {
  public:
    /// `sorted[place]` holds the subjects that already lie in that home; empty or one for each.
    explicit SortRound(Question question, std::vector<std::vector<std::string>> sorted = {});

    const Question& question() const { return question_; }
    std::size_t homes() const { return question_.places(); }
    /// The word that heads a home.
    const std::string& head(std::size_t home) const;
    const std::vector<std::string>& sorted(std::size_t home) const { return sorted_[home]; }

    bool canPut(std::size_t home) const;
    /// Puts the card into a home. A wrong home does not keep it.
    Outcome put(std::size_t home);
    void explained() { question_.explained(); }

    /// True iff the card is sorted and `next` is for the same homes, standing as they do.
    bool goesOnWith(const Question& next) const;
    /// REQUIRES: goesOnWith(next).
    void goOn(Question next) { question_ = std::move(next); }

    bool operator==(const SortRound&) const = default;

  private:
    Question question_;
    std::vector<std::vector<std::string>> sorted_;
};

/// True iff two questions are played alike and have the same words in the same places.
bool sameHomes(const Question& a, const Question& b);

}  // namespace wrenlet::game
