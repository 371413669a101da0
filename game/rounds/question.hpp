// One question between a child and the game: asked, answered, and after a wrong answer explained
// and asked again, until it is right. Nothing in it is timed or lost, and it can't end on a
// failure: after two wrong answers running it is done together, where only the right choice can
// be made.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "content/exercise/item.hpp"

namespace wrenlet::game {

/// What a move of the child's hand came to.
struct Outcome {
    enum class Kind : std::uint8_t {
        nothing,   // not a move now; all stays as it was
        settled,   // a piece found its place; no answer yet
        answered,  // an answer, right or wrong
    };
    Kind kind = Kind::nothing;
    std::uint8_t choice = 0;  // of an answer: index into the item's choices
    bool right = false;
    bool operator==(const Outcome&) const = default;
};

class Question {
  public:
    enum class Phase : std::uint8_t { asked, explain, together, right };

    /// `order[place]` is an index into the item's choices, each once. `tries_before` answers, all
    /// wrong, were given before the program was last closed.
    Question(exercise::Item item, std::vector<std::uint8_t> order, int tries_before = 0);

    const exercise::Item& item() const { return item_; }
    Phase phase() const { return phase_; }
    /// Of the answer that is asked for now, from 1.
    int tryNumber() const { return tries_ + 1; }

    std::size_t places() const { return order_.size(); }
    std::uint8_t choiceAt(std::size_t place) const { return order_[place]; }
    std::size_t placeOf(std::uint8_t choice) const;
    std::size_t rightPlace() const { return placeOf(item_.answer); }
    /// The last wrong answer, while it matters.
    std::optional<std::uint8_t> wrongChoice() const { return wrong_; }

    bool canAnswer(std::uint8_t choice) const;
    Outcome answer(std::uint8_t choice);
    /// The child has heard both: asked again, or together after two wrong answers running.
    void explained();

    const std::vector<std::uint8_t>& order() const { return order_; }
    bool operator==(const Question&) const = default;

  private:
    exercise::Item item_;
    std::vector<std::uint8_t> order_;
    int tries_ = 0;
    std::optional<std::uint8_t> wrong_;
    Phase phase_ = Phase::asked;
};

}  // namespace wrenlet::game
