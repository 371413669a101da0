// Join: sound tiles are brought together, heard closer and closer, and then the picture of the
// whole is picked. The whole itself is not said before: hearing it would be the answer.
#pragma once

#include <utility>
#include <vector>

#include "game/rounds/question.hpp"

namespace wrenlet::game {

class JoinRound {
  public:
    explicit JoinRound(Question question);

    const Question& question() const { return question_; }
    std::size_t tiles() const { return question_.item().parts.size(); }
    /// True iff tile `left` leans against the one after it.
    bool leans(std::size_t left) const { return leaning_[left]; }
    /// First and last tile of the run that `tile` belongs to.
    std::pair<std::size_t, std::size_t> runOf(std::size_t tile) const;
    /// True once all tiles lean together, and the pictures are there to be picked.
    bool isJoined() const;

    /// Neighbouring runs can be brought together, by any of their tiles.
    bool canBring(std::size_t tile, std::size_t other) const;
    Outcome bring(std::size_t tile, std::size_t other);
    bool canPick(std::size_t place) const;
    Outcome pick(std::size_t place);
    void explained() { question_.explained(); }

    bool operator==(const JoinRound&) const = default;

  private:
    Question question_;
    std::vector<bool> leaning_;  // one for each gap
};

}  // namespace wrenlet::game
