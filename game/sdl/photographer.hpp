// Takes the pictures of a scripted session: each place once it has settled, an explanation when all
// of it stands there, and each kind of place with a piece in hand.
#pragma once

#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "game/script/hash.hpp"
#include "game/sdl/table.hpp"

namespace wrenlet::game {

struct PhotoWishes {
    std::filesystem::path folder;  // empty: the pixels are hashed, no file is left
    std::string prefix;            // of the files' names
    bool each_once = false;        // leave out what has a picture already, and number nothing
};

class Photographer {
  public:
    /// `table` must outlive it.
    Photographer(Table& table, PhotoWishes wishes) : table_(table), wishes_(std::move(wishes)) {}

    /// Looks at the frame of `now`; call it once a frame. `drags`: a finger moved a piece in it.
    void look(Millis now, const Frame& frame, bool drags);

    /// Of the pixels of every picture taken.
    std::uint64_t hash() const { return hash_.value(); }
    const std::vector<std::string>& places() const { return places_; }  // in their order
    const std::vector<std::string>& files() const { return files_; }
    const std::vector<Problem>& problems() const { return problems_; }

  private:
    void take(const Frame& frame, const std::string& what);
    std::filesystem::path pathOf(const std::string& what);

    Table& table_;
    PhotoWishes wishes_;
    Hash hash_;
    Frame last_;
    std::string place_;
    std::set<std::string> seen_, lifted_;
    std::vector<std::string> places_, files_;
    std::vector<Problem> problems_;
    Millis since_ = 0;
    int dragged_ = 0;  // frames in which the piece in hand moved
    bool taken_ = false;
    int count_ = 0;
};

}  // namespace wrenlet::game
