// Guesses how an unknown word is said from its letters, with the rules of the synthesizer flite.
// Near perfect on simple made-up words, wrong in half of all unusual ones: a guess is offered, and
// the teacher confirms it by ear.
#pragma once

#include <memory>

#include "content/speech/how_said.hpp"

namespace wrenlet::desk {

class FliteRules : public speech::LetterToSound {
  public:
    FliteRules();
    ~FliteRules() override;
    speech::Pronunciation guess(std::string_view word) const override;

  private:
    struct Engine;
    std::unique_ptr<Engine> engine_;
};

}  // namespace wrenlet::desk
