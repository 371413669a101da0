// Count: one acorn is laid for each thing heard, and the child says when that is all. Acorns can
// be taken back until then.
#pragma once

#include "game/rounds/question.hpp"

namespace wrenlet::game {

class CountRound {
  public:
    /// The item's choices are "1", "2", … in this order.
    explicit CountRound(Question question);

    const Question& question() const { return question_; }
    int pads() const { return static_cast<int>(question_.places()); }
    int laid() const { return laid_; }
    int right() const { return question_.item().answer + 1; }

    bool canLay() const;
    Outcome lay();
    bool canTake() const { return laid_ > 0 && isOpen(); }
    Outcome take();
    bool canFinish() const;
    /// "That is all": answers with the number laid.
    Outcome finish();
    /// The pads are empty again.
    void explained();

    bool operator==(const CountRound&) const = default;

  private:
    bool isOpen() const;

    Question question_;
    int laid_ = 0;
};

}  // namespace wrenlet::game
