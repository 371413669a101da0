// Voices that are not the demo's, to make test recordings with: espeak-ng and festival, called as
// commands, and flite's other voices. Each says phonemes, so that what is said is known.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "content/speech/phoneme.hpp"
#include "editor/voice/pcm.hpp"

namespace wrenlet::ear {

/// One way of speaking.
struct Voice {
    enum class Maker { espeak, festival, flite };
    Maker maker;
    std::string name;  // "en-us+m3", "kal_diphone", "awb"
    int pitch = 50;    // espeak: 0 to 99; festival's diphones: Hz
    double pace = 1;   // how long sounds are held; 1: the voice's own
    std::string id() const;
};

/// What is said, and where its sounds end.
struct Spoken {
    desk::Pcm sound;
    std::vector<double> ends;  // s, of each phoneme asked for; empty where the voice doesn't tell
    double begin = 0;          // s, of the first phoneme; 0 where it doesn't tell
};

/// Says each run of phonemes by itself. One that the voice can't say comes back without samples.
std::vector<Spoken> sayAll(const Voice& voice, const std::vector<speech::Pronunciation>& all,
                           const std::filesystem::path& scratch);

/// True iff that maker and voice are on this machine.
bool isHere(const Voice& voice);

}  // namespace wrenlet::ear
