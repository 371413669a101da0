// The golden pictures: what each state looks like on the software renderer, kept as a hash of its
// pixels in one table, exact on the font and the libraries that the table names. With
// WRENLET_GOLDEN=update the table is written anew instead of compared.
#pragma once

#include <filesystem>
#include <map>
#include <string>

#include "game/sdl/table.hpp"

namespace wrenlet::golden {

class Gallery {
  public:
    /// `table`: pictures.txt. `changed`: the folder in which a picture that is another is left.
    Gallery(std::filesystem::path table, std::filesystem::path changed);

    /// What the hashes hold on: "SDL", "Andika-Bold.ttf" ... and which of each.
    static std::map<std::string, std::string> pins(const std::filesystem::path& fonts);
    /// Where the table was made with other ones than these, in words; empty when with the same.
    std::string otherPins(const std::map<std::string, std::string>& pins) const;

    /// Draws the frame anew from nothing and once more with all that is kept of it. An empty answer
    /// when both are the picture of this name; otherwise what is wrong, and where the new picture
    /// lies. `name`: "1280x800 sort asked".
    std::string compare(game::Table& table, const game::Frame& frame, const std::string& name);

    bool updates() const { return updates_; }
    /// Writes what was compared into the table, with these pins, beside what it had.
    bool write(const std::map<std::string, std::string>& pins);

  private:
    std::filesystem::path table_, changed_;
    std::map<std::string, std::string> pins_, hashes_;
    bool updates_ = false;
};

}  // namespace wrenlet::golden
