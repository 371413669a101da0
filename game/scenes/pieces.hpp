// What is shown and heard of a question that is picked or sorted: pieces are picture cards,
// letters, sounds and signs, each with what it says. The prompts and the scenes ask here, so that
// what is told and what is pointed at are always the same.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/pack/pack.hpp"
#include "game/scenes/painter.hpp"
#include "game/scenes/telling.hpp"

namespace wrenlet::game {

struct Piece {
    enum class Kind : std::uint8_t { picture, letter, sound, sign };
    Kind kind = Kind::picture;
    std::string shown;  // the picture, the letters, a sound's mark (1 to 4) or a sign's art
    std::string clip;   // what it says; empty for nothing
    std::string part;   // the clip of what decides in it; empty where it is no word, or all of it
    exercise::Position at = exercise::Position::whole;  // of that part
};

/// One of the two things compared when an answer is explained.
struct Compared {
    std::string_view lead;  // a phrase before it
    std::vector<Piece> pieces;
    std::string_view close = {};  // a phrase after it
};

class Pieces {
  public:
    /// Both must outlive it.
    Pieces(const pack::Pack& pack, const exercise::Item& item) : pack_(pack), item_(item) {}

    /// What the question is about, in the order in which it is heard; empty for an odd one out.
    std::vector<Piece> heard() const;
    Piece choice(std::size_t index) const;
    Piece answer() const { return choice(item_.answer); }
    /// What was chosen and what was asked.
    std::array<Compared, 2> compared(std::size_t chosen) const;
    /// Of an odd one out: the words that rhyme.
    std::vector<Piece> mates() const;

  private:
    Piece word(std::string_view id) const;
    Piece letter(std::string_view id) const;
    Piece sound(std::string_view clip, std::size_t mark) const;
    std::vector<Piece> letterAndSounds(std::size_t choice) const;
    Compared ofSign(std::size_t choice) const;

    const pack::Pack& pack_;
    const exercise::Item& item_;
};

void paint(Painter& painter, const Piece& piece, const Box& box, Stand stand);
/// The part of a piece's box under which its deciding part is bracketed.
Box partOf(const Piece& piece, const Box& box);

/// Both rows of an explanation in `rows`, as far as it has been told, bracketed as it sounds. The
/// boxes of each row's last piece, for what else belongs to it.
std::array<Box, 2> paintCompared(Painter& painter, const Layout& layout,
                                 const std::array<Compared, 2>& both,
                                 const std::array<Box, 2>& rows, const Telling& telling,
                                 Millis now);

}  // namespace wrenlet::game
