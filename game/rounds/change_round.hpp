// Change: a word lies there as a row of tiles. One is taken out, one put in, or one swapped for
// another, and then the picture of what comes out is picked. Words that come out one of another
// make a chain, which is played as one round until it is back at its first word.
#pragma once

#include <string>
#include <vector>

#include "content/exercise/change_tiles.hpp"
#include "game/rounds/question.hpp"

namespace wrenlet::game {

class ChangeRound {
  public:
    /// `chain` are the words before this item's that came out one of another, oldest first. What
    /// was asked before is changed already: the child picks again.
    ChangeRound(Question question, exercise::ChangeTiles tiles,
                std::vector<std::string> chain = {});

    const Question& question() const { return question_; }
    const exercise::ChangeTiles& tiles() const { return tiles_; }
    /// The words of the round so far, this item's first word at the end, and once it is right the
    /// one that came out.
    const std::vector<std::string>& chain() const { return chain_; }
    bool isClosed() const { return chain_.size() > 2 && chain_.front() == chain_.back(); }

    bool isTaken() const { return taken_; }  // the loose tile, out of the row
    bool isPut() const { return put_; }      // the new tile, into the row
    /// True once all is done to the tiles, and the pictures are there to be picked.
    bool isChanged() const { return taken_ == tiles_.takes && put_ == tiles_.puts; }

    bool canTake() const { return tiles_.takes && !taken_; }
    Outcome take();
    bool canPut() const { return tiles_.puts && !put_; }
    /// Puts the new tile in; one that stands in its place goes out.
    Outcome put();
    bool canPick(std::size_t place) const;
    Outcome pick(std::size_t place);
    void explained() { question_.explained(); }

    /// True iff `next` begins with the word that came out, and the chain is not closed.
    bool goesOnWith(const Question& next) const;
    /// REQUIRES: goesOnWith(next).
    void goOn(Question next, exercise::ChangeTiles tiles);

    bool operator==(const ChangeRound&) const = default;

  private:
    Question question_;
    exercise::ChangeTiles tiles_;
    std::vector<std::string> chain_;
    bool taken_ = false, put_ = false;
};

}  // namespace wrenlet::game
