// A scripted session of one skill, with every sample that it gave, and beside them what the scenes
// asked to be said.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "content/exercise/skill.hpp"
#include "game/script/scripted_child.hpp"
#include "game/stage/mixer.hpp"
#include "game/stage/voice.hpp"

namespace wrenlet::heard {

struct Said {
    std::size_t since = 0;  // the recording's sample at which it was to begin
    game::Utterance words;
};
struct NotedCue {
    std::size_t at = 0;
    std::string name;
};

struct Overheard {
    std::vector<std::int16_t> recording;  // one side, 48 kHz
    bool sides_alike = true;
    std::vector<Said> said;
    std::vector<NotedCue> cues;
    std::map<std::string, std::vector<std::int16_t>> clips;  // of what was said, decoded
    std::size_t answers = 0;
};

/// The starter classroom's items of `skill`, played as `tape` says, for its minutes at most.
Overheard overhear(exercise::Skill skill, const game::Tape& tape);

}  // namespace wrenlet::heard
