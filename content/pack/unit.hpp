// A teacher's unit, as she types it: a name, words and sentences, before anything is looked up.
// One JSON file, written by the desk or by hand.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"

namespace wrenlet::pack {

struct UnitWord {
    std::string text;                   // "rainbow"
    std::string sense;                  // "" or what tells two words of one spelling apart: "rain"
    std::vector<std::string> sounds;    // IPA symbols she confirmed by ear; empty: look it up
    std::vector<std::string> compound;  // its parts' words; empty: not a compound
    std::string picture;                // name in the picture set ("rainbow"); empty: none
};

struct UnitSentence {
    std::string id;    // "pond-1"
    std::string text;  // "The duck sits on the pond."
};

struct Unit {
    std::string id;     // "by-the-pond"; letters, digits and hyphens
    std::string title;  // "By the pond"
    std::vector<UnitWord> words;
    std::vector<UnitSentence> sentences;
};

/// Reads a unit's JSON. `where` names the file in problems. Errors: broken JSON with its line, a
/// field of the wrong kind, more than 2,000 words or sentences, a text longer than 200 letters.
Result<Unit> readUnit(std::string_view json, std::string_view where);

}  // namespace wrenlet::pack
