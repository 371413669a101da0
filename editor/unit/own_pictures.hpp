// Pictures that she drops: read and made small aside, kept beside the unit, each written once, and
// put onto the word that has the file's name, or else onto the word in hand.
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "editor/unit/open_unit.hpp"

namespace wrenlet::desk {

/// By its ending: a file that is meant as a picture, whether it can be read here or not.
bool isMeantAsPicture(const std::filesystem::path& file);

class OwnPictures {
  public:
    /// `unit` must outlive it.
    explicit OwnPictures(OpenUnit& unit);

    /// `in_hand` is the id of a word, or empty. Nothing is lost when several come at once.
    void take(const std::filesystem::path& file, const std::string& in_hand);
    bool isBusy() const;
    /// Puts what was read onto its words. Returns what went wrong, and with which file.
    std::vector<Problem> step();

  private:
    struct Shared;
    OpenUnit& unit_;
    std::shared_ptr<Shared> shared_;
};

}  // namespace wrenlet::desk
