// What a teacher would notice on the class map if she had the time: the sounds that most children
// miss and what they take them for, what is growing, what needs no lesson, who has not played.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "editor/document/class_map.hpp"

namespace wrenlet::desk {

struct Standout {
    Said said;         // the mark beside it
    std::string head;  // "Last sound t: 10 miss it"
    std::string body;
    std::optional<std::size_t> column;  // where it is on the map
};

/// The most urgent first.
std::vector<Standout> standsOut(const OpenedClass& opened, const ClassMap& map);

}  // namespace wrenlet::desk
