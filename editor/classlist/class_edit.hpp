// A small change of a class list, by the child's id, that can be taken back: what undo at the class
// list is made of.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>

#include "content/pack/classroom.hpp"

namespace wrenlet::desk {

/// Of a child in the class by id: another value in its place, or none. An empty id puts a new one
/// in.
struct PutChild {
    std::string id;
    std::optional<pack::Child> child;
    std::size_t at = 0;  // where it stands afterwards, from 0; past the end: last
};

/// The same of those who have left the class.
struct PutLeft {
    std::string id;
    std::optional<pack::Child> child;
    std::size_t at = 0;
};

struct PutClassTitle {
    std::string title;
};

using ClassEdit = std::variant<PutChild, PutLeft, PutClassTitle>;

/// Changes `list` and returns the edit that takes the change back. REQUIRES: an id that an edit
/// names is there, and one that it brings is not.
ClassEdit apply(pack::ClassList& list, const ClassEdit& edit);

}  // namespace wrenlet::desk
