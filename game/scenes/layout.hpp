// Where everything stands on a screen, for any size and way round: replay top left, the way out
// top right, the wren on the left bank (above, in portrait), the stage in the middle and the
// pieces in the lower third, in reach of a small hand.
//
// Sizes are those of the look at 1280x800 (800x1280 in portrait), scaled; where the display tells
// its size, nothing that can be touched is smaller than 20 mm, nor closer than 5 mm to another.
// What does not fit a row then goes into two.
//
// For a left hand the sides change places: the wren and the way out are where the arm is not, so
// that it covers neither. What is read from left to right stays so.
#pragma once

#include <vector>

#include "game/stage/frame.hpp"

namespace wrenlet::game {

/// A home to sort into: its head card above, the place where sorted cards lie in it, the drawing.
struct HomeBox {
    Box all;  // what can be touched
    Box head;
    Box art;
    float small = 0;  // side of a sorted card
    /// Where the sorted card number `index` lies.
    Box sorted(std::size_t index) const;
};

/// Whom a screen is laid out for.
struct LaidOutFor {
    bool left_hand = false;
    bool captions = false;  // there is room for them, which no piece ever takes
    bool operator==(const LaidOutFor&) const = default;
};

/// The least height of a line of Andika that an adult reads, in px: letters of 20 px.
inline constexpr float kLeastLine = 33;

class Layout {
  public:
    explicit Layout(ScreenSize screen, LaidOutFor whom = {});

    const ScreenSize& screen() const { return screen_; }
    bool isLeftHanded() const { return for_.left_hand; }
    const LaidOutFor& whom() const { return for_; }
    bool isPortrait() const { return screen_.h > screen_.w; }
    /// Pixels for a length of the look.
    float px(float length) const { return length * u_; }
    /// A line's height for a length of the look, and never less than an adult can read.
    float linePx(float length) const;
    /// The same for a touchable's side: at least 20 mm.
    float touchPx(float length) const;
    float gap() const { return gap_; }
    float margin() const { return margin_; }
    float width() const { return static_cast<float>(screen_.w); }
    float height() const { return static_cast<float>(screen_.h); }

    Box replay() const;
    Box leave() const;
    Box wren() const;
    /// Where captions are written: below the wren, or beside her in portrait; and a line of them.
    Box captions() const;
    float captionLine() const { return linePx(30); }
    /// Where pieces go, and where they wait.
    Box stage() const;
    Box pieces() const;

    std::vector<HomeBox> homes(std::size_t count) const;
    /// The card that waits to be sorted.
    Box card() const;
    /// Sound tiles on their pads; `leaning[i]` tells whether tile i touches the next one.
    std::vector<Box> tiles(const std::vector<bool>& leaning) const;
    /// The card of the word that is parted or changed, above its leaf or its tiles.
    Box subject() const;
    /// A leaf parted into `boxes`, or whole.
    std::vector<Box> leaf(std::size_t boxes) const;
    /// Tiles in a row below the subject; before each stands `open[i]` of a tile's width.
    std::vector<Box> row(const std::vector<float>& open) const;
    /// A single tile that waits below.
    Box waiting() const;
    /// Picture cards on stones.
    std::vector<Box> stones(std::size_t count) const;
    std::vector<Box> pads(std::size_t count) const;
    std::vector<Box> padsBelowSubject(std::size_t count) const;
    Box acorns() const;
    Box done() const;
    /// Two cards side by side on the stage, when both are explained.
    std::vector<Box> compared(std::size_t count) const;
    /// `rows` rows of `columns` small places on the stage, row by row.
    std::vector<Box> table(std::size_t rows, std::size_t columns) const;

    /// How many badges a page holds: up to 24, fewer where they would be too small; a page of
    /// several leaves room for the leaf that turns it.
    std::size_t badgesPerPage(std::size_t children) const;
    std::vector<Box> badges(std::size_t count) const;
    Box nextPage() const;

    /// The nest in the middle of the ending.
    Box nest() const;
    /// Buttons of the adult's page: `count` of them in rows below the page's text.
    std::vector<Box> buttons(std::size_t count) const;

  private:
    Box main() const;
    /// `box`, on the other side of the screen for a left hand.
    Box sided(const Box& box) const;
    bool fitsInARow(const Box& area, std::size_t count, float side) const;
    /// Pads in two rows, read like writing.
    std::vector<Box> inTwoRows(const Box& area, std::size_t count) const;
    /// What lies below the subject's card on the stage.
    Box belowSubject() const;
    /// The largest badges with which all children find room, or as many as a page holds.
    struct BadgeGrid {
        float side = 0, row_height = 0, top = 0, room = 0;
        std::size_t columns = 1, most = 1;
    };
    BadgeGrid badgeGrid(std::size_t children) const;

    ScreenSize screen_;
    LaidOutFor for_;
    float u_ = 1, gap_ = 24, margin_ = 16;
};

/// `count` boxes of w x h in a row in the middle of `area`, `gap` apart; made narrower, not
/// closer, where they do not fit.
std::vector<Box> rowIn(const Box& area, std::size_t count, float w, float h, float gap);

}  // namespace wrenlet::game
