// Where the teacher stands with another's pack: what is opened, which of its things she takes, and
// whose voice it is.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "editor/bring/brought_lines.hpp"
#include "editor/unit/open_unit.hpp"

namespace wrenlet::desk {

struct BringPlace {
    bool open = false;                             // the page is shown in place of the words
    std::vector<std::filesystem::path> to_choose;  // packs and units of the classroom folder
    std::string typed;                             // a path
    std::optional<Brought> brought;
    std::vector<BroughtLine> lines;
    std::size_t at = 0;  // the line in hand
    std::string whose;   // whose voice, as it is kept with each recording
    std::vector<Problem> problems;
    std::string said;  // what was brought in last; empty: nothing

    void begin(const std::filesystem::path& classroom, const OpenUnit& unit);
    void openFile(const std::filesystem::path& path, const OpenUnit& unit);
    void move(int by);
    void turn(std::size_t line);
    void chooseAll();
    void chooseNew();
    void chooseNone();
    std::size_t chosen() const;
    /// One step of undo. What could not be done is in problems(), and then nothing is changed.
    void take(OpenUnit& unit);
    void close() { *this = {}; }
};

}  // namespace wrenlet::desk
