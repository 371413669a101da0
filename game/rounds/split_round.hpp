// Split: a word is a long leaf that the child parts into as many boxes as she hears parts, and
// says when that is all. Boxes can be put together again until then. Only their number is an
// answer, so they lie alike: what would lie in each is not told before it.
#pragma once

#include "game/rounds/question.hpp"

namespace wrenlet::game {

class SplitRound {
  public:
    /// The item's choices are "2", "3", … in this order.
    explicit SplitRound(Question question) : question_(std::move(question)) {}

    const Question& question() const { return question_; }
    /// 1 while the leaf is whole.
    int boxes() const { return boxes_; }
    int right() const { return question_.item().answer + kFewest; }

    /// Into one box more; when it is done together, no further than is right.
    bool canPart() const;
    Outcome part();
    /// Two boxes become one.
    bool canJoin() const { return isOpen() && boxes_ > 1; }
    Outcome join();
    Outcome makeWhole();
    bool canFinish() const;
    /// "That is all": answers with the number of boxes.
    Outcome finish();
    /// The leaf is whole again.
    void explained();

    bool operator==(const SplitRound&) const = default;

    static constexpr int kFewest = 2;  // that a leaf can be parted into

  private:
    bool isOpen() const;

    Question question_;
    int boxes_ = 1;
};

}  // namespace wrenlet::game
