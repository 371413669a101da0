// Builds a frame from back to front out of the look's few shapes, so that every scene draws a
// card, a tile or the pond in the same way.
#pragma once

#include <string>
#include <string_view>

#include "game/scenes/layout.hpp"
#include "game/session/growth.hpp"
#include "game/stage/frame.hpp"
#include "game/stage/palette.hpp"

namespace wrenlet::game {

/// How a card or tile stands: the states of the look. What is done cannot be touched any more; what
/// is past, and is not asked about now, can.
enum class Stand : std::uint8_t { resting, lifted, done, past };

class Painter {
  public:
    explicit Painter(const Layout& layout) : layout_(layout) {}

    /// Everything painted from now on is this much there, 0 to 1; for a change of scene.
    void setPresence(float presence) { presence_ = presence; }

    void art(std::string_view name, const Box& box, float alpha = 1);
    /// Art that faces the stage: it is drawn facing right, and turned round for a left hand.
    void facingArt(std::string_view name, const Box& box);
    void picture(std::string_view name, const Box& box, float alpha = 1);
    void text(std::string_view text, Point centre, float height, Colour colour = palette::kInk,
              bool bold = false);
    /// A line as high as `box`, in its middle or from its left; made smaller, not cut, where it is
    /// too long.
    void textWithin(std::string_view text, const Box& box, Colour colour = palette::kInk,
                    bool bold = false);
    void textFromLeft(std::string_view text, const Box& box, Colour colour = palette::kInk,
                      bool bold = false);
    void fill(const Box& box, Colour colour, float alpha = 1);
    void card(const Box& box, Stand stand, float radius);
    /// `radius` in the look's px.
    void panel(const Box& box, Colour colour, Colour edge, float radius = 20);
    void ring(const Box& box, int part, Colour colour);
    /// One of several small squares that tell a state by their place: full, or only an edge.
    void pip(const Box& box, bool full);

    /// A white card with a picture in the middle of `box`, or the mark of something that is only
    /// heard; lifted ones are 4 % larger.
    void pictureCard(std::string_view picture, const Box& box, Stand stand);
    /// A sound tile with its mark (1 to 4).
    void tile(std::size_t mark, const Box& box, Stand stand);
    /// A card with a sign of the game's own art.
    void signCard(std::string_view sign, const Box& box, Stand stand);
    /// A tile with a letter, or two that are one sound.
    void letterTile(std::string_view letter, const Box& box, Stand stand);
    /// The pad below tiles that lie together, from the first to the last.
    void joinedPad(const Box& first, const Box& last);
    /// Says without words: this is the one thing to touch next. Goes below the piece.
    void sunBelow(const Box& box, float radius);
    /// A bracket below `box`: this part sounds.
    void bracket(const Box& box, Colour colour = palette::kInk);
    /// What is sounding, at the upper right of `box`.
    void speaking(const Box& box);
    void leafMark(const Box& box);
    /// A thick frame around what is marked for a touch by key or switch, open at its corners.
    void markFrame(const Box& box);

    /// Sky, water and banks, as far as the pond-side has grown.
    void pond(const Growth& growth);
    /// The nest in `box`, with the reeds beside it, as far as they have grown.
    void grownNest(const Box& box, const Growth& growth);
    /// The clump of reeds in front.
    void reedsInFront();

    Frame take() { return std::move(frame_); }

  private:
    void put(Sprite sprite, Point centre, float alpha);

    const Layout& layout_;
    Frame frame_;
    float presence_ = 1;
};

}  // namespace wrenlet::game
