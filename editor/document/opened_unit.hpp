// A unit as it is opened to be looked at: what can be read of it, and what cannot, word by word.
// Building a pack wants every word; looking goes on with those that are known.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/pack/unit.hpp"
#include "editor/document/known_words.hpp"

namespace wrenlet::desk {

struct OpenedUnit {
    pack::Unit unit;
    exercise::Vocabulary vocabulary;    // the known words, and the parts of compounds
    std::vector<exercise::Word> asked;  // the unit's own words in order; unknown ones lack sounds
    std::vector<Problem> problems;
};

/// A unit's JSON, or a plain list of words (a file that ends in .txt): those get their picture,
/// sense, parts and sounds from the classroom list. Errors: the file cannot be read, is neither,
/// or is too large. `pictures` is the folder of the picture set.
Result<OpenedUnit> openUnit(const std::filesystem::path& path, const KnownWords& known,
                            const std::filesystem::path& pictures);

}  // namespace wrenlet::desk
