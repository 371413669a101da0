// Choosing another picture for a word: which of the picture set and of her own are offered, and in
// which order.
#pragma once

#include <string>
#include <vector>

#include "editor/unit/open_unit.hpp"

namespace wrenlet::desk {

struct PictureChoice {
    std::string word;                // the id of the word that it is for
    std::string sought;              // as typed
    std::vector<std::string> names;  // of all pictures, her own first
    std::size_t shown = 0;           // how many are drawn so far: a few more with each frame
    bool all_shown = false;

    static PictureChoice of(const std::string& word, const OpenUnit& unit);

    /// At most `most` whose names begin with what is sought, then those that have it inside.
    std::vector<std::string> offered(std::size_t most) const;
};

}  // namespace wrenlet::desk
