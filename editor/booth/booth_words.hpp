// What the booth says: what to speak and how, for each kind of thing that needs a voice.
#pragma once

#include <string>

#include "editor/booth/booth.hpp"

namespace wrenlet::desk {

struct BoothWords {
    std::string shown;  // large: "duck", "b", "The duck sits."
    std::string about;  // under it: "as in bus"; may be empty
    std::string head;   // "Say the word duck"
    std::string how;    // "Short and quick. No \u201cuh\u201d after it."
    std::string kind;   // in the queue: "word", "sound", "part", "sentence", "for the game"
};
/// `words` are the unit's, to name one where a lone sound or a part is heard.
BoothWords boothWords(const pack::VoiceNeed& need, const exercise::Vocabulary& words);

}  // namespace wrenlet::desk
