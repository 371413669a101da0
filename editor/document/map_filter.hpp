// What the class map is narrowed to: a task, a place in the word, a unit, the newest days. Narrowed
// by unit or days everything is read anew from those answers alone, so every figure still says from
// how many.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "editor/document/opened_class.hpp"

namespace wrenlet::desk {

struct MapFilter {
    std::string skill;                           // id; empty: all
    std::optional<exercise::Position> position;  // in the word; nothing: all
    std::string unit;                            // id; empty: all
    int days = 0;                                // the newest days played; 0: all
    bool operator==(const MapFilter&) const = default;
    bool isAll() const { return *this == MapFilter{}; }
};

/// One thing that can be chosen: the filter as it would be then.
struct FilterChoice {
    std::string name;
    MapFilter filter;
    bool is_chosen = false;
};

/// What there is to choose in this class, in columns: task, place, unit, days. The first of each is
/// everything.
struct FilterColumn {
    std::string heading;
    std::vector<FilterChoice> choices;
};
std::vector<FilterColumn> filterColumns(const OpenedClass& opened, const MapFilter& now);

/// "everything", or what is chosen: "Sort by last sound, last 5 days".
std::string filterWords(const MapFilter& filter);

/// The class as if there were nothing else. Days are counted from the class's newest.
OpenedClass narrowed(const OpenedClass& opened, const MapFilter& filter);

/// "by-the-pond" of "by-the-pond 3".
std::string unitOf(std::string_view pack_name);

}  // namespace wrenlet::desk
