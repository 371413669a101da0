// flite's voices besides the demo's, linked as the demo voice is.
#pragma once

#include "tests/ear/synth.hpp"

namespace wrenlet::ear {

/// REQUIRES: voice.name is "awb", "slt" or "kal16".
Spoken flite(const Voice& voice, const speech::Pronunciation& sounds);

}  // namespace wrenlet::ear
