// What another teacher made, opened to be brought into a unit: a pack that was handed out, or the
// folder of a unit. It may come from anywhere, so all of it is bounded and checked.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/pack/unit.hpp"
#include "content/speech/lexicon.hpp"

namespace wrenlet::desk {

struct BroughtRecording {
    std::string clip;   // "word:duck"
    std::string said;   // what was to be said, as UnitRecording has it
    std::string text;   // for showing: "duck"
    std::string whose;  // whose voice, where it is known
    std::int64_t from_us = 0, to_us = 0;
    std::string bytes;           // of the recording, or
    std::filesystem::path file;  // where it lies
};

struct BroughtPicture {
    std::string name;   // as the words have it
    std::string bytes;  // SVG or PNG; empty: of the picture set
};

struct Brought {
    std::string title;  // "By the pond"
    std::string from;   // the file's name: "by-the-pond-3.zip"
    std::vector<pack::UnitWord> words;
    std::vector<pack::UnitSentence> sentences;
    exercise::Vocabulary vocabulary;           // how each word is said there
    std::vector<BroughtRecording> recordings;  // none of the demo voice
    std::vector<BroughtPicture> pictures;
    std::vector<Problem> problems;  // warnings: what could not be read of it
};

/// A .zip is read as a pack, a folder with unit.json as a unit. Errors: neither; not there; what
/// readPack() and readUnit() refuse.
Result<Brought> openBrought(const std::filesystem::path& path, const speech::Lexicon& lexicon);

/// Packs and units in a classroom folder that are not of the unit itself: what there is to choose.
std::vector<std::filesystem::path> broughtIn(const std::filesystem::path& classroom,
                                             const std::string& unit_id);

}  // namespace wrenlet::desk
