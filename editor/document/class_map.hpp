// The class at a glance: a row for each child, a column for each sound of each skill, and in each
// cell what can be said. Those who miss most stand first, and within a skill what is missed most.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "editor/document/opened_class.hpp"
#include "editor/look/said.hpp"

namespace wrenlet::desk {

struct MapColumn {
    practice::Cell cell;
    std::string label;  // "–t"
    std::size_t group = 0;
    int missed = 0, growing = 0, steady = 0, too_little = 0;  // children
};

struct MapGroup {
    std::string skill;    // id
    std::string heading;  // "Sort by rhyme"
    std::size_t first = 0, count = 0;
};

struct MapCell {
    Said said = Said::not_asked;
    std::optional<std::size_t> line;  // into the child's lines
};

struct MapRow {
    std::size_t child = 0;  // into OpenedClass::children
    int missed = 0;
    std::vector<MapCell> cells;  // one a column
};

struct ClassMap {
    std::vector<MapGroup> groups;  // in the table's order
    std::vector<MapColumn> columns;
    std::vector<MapRow> rows;
    bool any_shielded = false;
};

enum class RowOrder : std::uint8_t { most_missed, by_name };

ClassMap mapOf(const OpenedClass& opened, RowOrder order);

/// Up to `most` words that were asked for this cell, in any child's answers: "cat, hat".
std::string examplesOf(const OpenedClass& opened, const practice::Cell& cell, std::size_t most);

}  // namespace wrenlet::desk
