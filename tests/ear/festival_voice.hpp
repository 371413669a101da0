// festival's voices, called as a command. Its diphones tell where each sound ends; a voice of
// another tongue says those of our phonemes that its diphones have.
#pragma once

#include "tests/ear/synth.hpp"

namespace wrenlet::ear {

bool hasFestivalVoice(const Voice& voice);

/// As sayAll.
std::vector<Spoken> festival(const Voice& voice, const std::vector<speech::Pronunciation>& all,
                             const std::filesystem::path& scratch);

}  // namespace wrenlet::ear
