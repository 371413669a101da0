// True deletion: a child is taken out of every file of a classroom folder, and a receipt says what
// went, what could not be reached, and who has to look after the rest. It cannot be taken back.
//
// The right to it: Regulation (EU) 2016/679, article 17 (erasure) with article 19 (telling those
// whom the data was passed to); elsewhere local rules say who may ask and what has to be kept.
#pragma once

#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"

namespace wrenlet::desk {

/// What became of one file. `name` is within the classroom folder.
struct FileCleared {
    std::string name;
    std::size_t answers = 0;  // that went with it
    bool is_removed = false;  // the whole file
};

struct ChildDeleted {
    std::size_t answers = 0;  // each once, in however many files it lay
    std::vector<FileCleared> files;
    std::vector<std::string> tablets;  // that handed something in: each forgets her by itself
    std::vector<Problem> problems;     // what could not be cleared, by name
    std::filesystem::path receipt;     // empty: it could not be written
};

/// Deletes the child for good: on the list (class.json), in what tablets handed in, in papers,
/// which are removed whole where they name her, and in every other JSON file of the folder. Her id
/// stays on the list of the deleted, so that tablets forget her too and no old copy brings her
/// back. The receipt has her id and no name. Packs and units hold nothing of children and are left
/// alone. Can be repeated: what was not reached is tried again. `id` is a child in the class, one
/// who left it, or one deleted before. `day` counts from 1970-01-01. Errors: no class list that can
/// be read and written, nobody of that id; then nothing was changed.
Result<ChildDeleted> deleteChild(const pack::Classroom& classroom, const std::string& id,
                                 std::int64_t day);

/// Takes out of what tablets handed in since whoever is on the list of the deleted: a tablet that
/// has not seen the list yet still hands her in. Problems name files that could not be cleared.
std::vector<Problem> clearHandedIn(const pack::Classroom& classroom,
                                   std::span<const std::string> deleted);

}  // namespace wrenlet::desk
