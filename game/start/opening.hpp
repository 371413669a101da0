// What happens between switching a tablet on and the first badge: the classroom folder is read, its
// pack checked and kept, the tablet's own store opened. Whatever is bad in the folder, the tablet
// goes on with the last good list and pack it kept, and tells the adult.
#pragma once

#include <cstdint>
#include <filesystem>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"
#include "content/pack/pack.hpp"
#include "content/practice/store.hpp"
#include "game/start/tablet_settings.hpp"

namespace wrenlet::game {

/// Where a tablet keeps what is its own: its responses, how it is set, and the last good list and
/// pack.
struct TabletFolder {
    std::filesystem::path folder;
    std::filesystem::path store() const { return folder / "store.db"; }
    std::filesystem::path keptList() const { return folder / "class.json"; }
    std::filesystem::path keptPack() const { return folder / "pack.zip"; }
    std::filesystem::path settings() const { return folder / "settings.json"; }
};

struct Opened {
    pack::ClassList list;
    pack::Pack pack;
    practice::Store store;
    std::filesystem::path snapshot;  // this tablet's file in the classroom folder
    std::vector<Problem> problems;   // for the adult's page
    TabletSettings settings{};
    std::filesystem::path settings_file{};  // where they are kept
};

/// What can be seen at once: the class list and how the tablet is set, small files, so that the
/// badges need not wait for the pack. Problems of a list that was found or kept are in `problems`.
struct OpenedList {
    pack::ClassList list;
    std::vector<Problem> problems;
    TabletSettings settings{};
};
Result<OpenedList> openList(const pack::Classroom& classroom, const TabletFolder& tablet);

/// Opens the rest of a classroom on a tablet, and checks a pack that is new. `random` names a
/// tablet that has no name yet. Errors only when there is nothing good to play, neither in the
/// folder nor kept, or no store can be opened.
Result<Opened> openRest(OpenedList list, const pack::Classroom& classroom,
                        const TabletFolder& tablet, std::uint64_t random);

/// Both, one after the other.
Result<Opened> openClassroom(const pack::Classroom& classroom, const TabletFolder& tablet,
                             std::uint64_t random);

}  // namespace wrenlet::game
