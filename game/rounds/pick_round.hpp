// Pick: one of two to four choices is the answer. Pictures, letters and signs are told apart by
// looking and by the prompt, so a touch answers; sounds can only be told apart by hearing them, so
// a first touch lets one sound and the next touch of the same one answers.
#pragma once

#include <optional>
#include <string>

#include "game/rounds/question.hpp"

namespace wrenlet::game {

class PickRound {
  public:
    explicit PickRound(Question question) : question_(std::move(question)) {}

    const Question& question() const { return question_; }
    std::size_t places() const { return question_.places(); }
    const std::string& choiceAt(std::size_t place) const;
    /// True iff the choices are sounds.
    bool picksSounds() const;
    /// The sound that was touched last and waits for a second touch.
    std::optional<std::size_t> chosen() const { return chosen_; }

    bool canTouch(std::size_t place) const;
    /// `settled` when a sound was chosen to be heard, else an answer.
    Outcome touch(std::size_t place);
    /// Brought to the stage: answers at once.
    Outcome bring(std::size_t place);
    /// Nothing is chosen again.
    void explained();

    bool operator==(const PickRound&) const = default;

  private:
    Question question_;
    std::optional<std::size_t> chosen_;
};

}  // namespace wrenlet::game
