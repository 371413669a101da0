// What tablets are called that join over the network: a plain word that a teacher can say across
// the room, and four signs more, so that a name is never given twice.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "content/link/bytes.hpp"

namespace wrenlet::desk {

/// "pebble-x4k2": practice::isTabletName(), and not one that `is_taken`. A word that no tablet has
/// comes first.
std::string nameForTablet(const std::function<bool(std::string_view)>& is_taken,
                          const std::function<bool(std::string_view)>& word_is_taken,
                          link::Entropy& entropy);

/// "Pebble" of "pebble-x4k2"; any other name as it is.
std::string shownTablet(std::string_view tablet);
/// "pebble" of "pebble-x4k2"; empty for a name that was not made here.
std::string_view wordOfTablet(std::string_view tablet);

}  // namespace wrenlet::desk
