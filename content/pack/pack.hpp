// What a teacher hands out: a unit's words, the items computed from them, and every clip and
// picture those items need. A pack is whole in itself and never changes once handed out.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::pack {

/// A recording, encoded (OGG Vorbis or FLAC, 48 kHz mono), by the id of what is heard.
struct Clip {
    std::string id;           // "word:rainbow"; see exercise/vocabulary.hpp
    std::string text;         // what is said, for adults
    std::string file;         // its name in the pack: "voice/017.ogg"; alike ones may share it
    double seconds = 0;       // how long it sounds
    bool demo_voice = false;  // synthesized, and so asking for a recording
    std::string bytes;
    std::string voice{};  // whose it is: "Ms Field"; empty: the teacher's who made the pack
};

inline constexpr std::size_t kMostVoice = 60;  // letters in whose voice it is

struct Picture {
    std::string id;     // "rainbow"
    std::string file;   // "pictures/rainbow.svg"
    std::string bytes;  // SVG or PNG
};

struct Pack {
    std::string unit_id;
    std::string title;
    std::uint32_t version = 1;  // grows with each hand-out of the unit
    exercise::Vocabulary vocabulary;
    std::vector<exercise::Item> items;
    std::vector<Clip> clips;        // sorted by id
    std::vector<Picture> pictures;  // sorted by id

    /// Null when it has no such clip, picture or item.
    const Clip* clip(std::string_view id) const;
    const Picture* picture(std::string_view id) const;
    const exercise::Item* item(std::string_view id) const;

    /// "by-the-pond 3", the name that responses record.
    std::string name() const;
};

}  // namespace wrenlet::pack
