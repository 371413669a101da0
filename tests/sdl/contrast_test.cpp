// Contrast as it is really drawn: each screen is painted, and the pixels beside every letter and
// every edge of what can be touched are looked at.
//
// WCAG 2.2, https://www.w3.org/TR/WCAG22/: SC 1.4.3 Contrast (Minimum), text 4.5:1 (here for large
// text too, of which 3:1 is asked); SC 1.4.11 Non-text Contrast, what is needed to see where a
// control is 3:1. What cannot be touched just now is exempt in both, and faint for that reason.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "content/common/files.hpp"
#include "game/sdl/screenshot.hpp"
#include "game/stage/palette.hpp"
#include "tests/fixtures/visit.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using exercise::Skill;
using exercise::Task;
using exercise::Unit;
using fixtures::Room;
using fixtures::Visit;
using practice::samples::Folder;

namespace {

/// So much of an outline has to stand out. No standard names a share; the rest is where an edge
/// passes before something as dark as itself.
constexpr double kOutline = 0.9;

/// A frame as pixels.
class Painted {
  public:
    Painted(Table& table, const Frame& frame) {
        table.canvas().draw(frame);
        const SurfacePtr read = readBack(table.renderer());
        REQUIRE(read != nullptr);
        surface_.reset(SDL_ConvertSurfaceFormat(read.get(), SDL_PIXELFORMAT_RGBA32, 0));
        REQUIRE(surface_ != nullptr);
    }
    bool has(int x, int y) const { return x >= 0 && y >= 0 && x < surface_->w && y < surface_->h; }
    Colour at(int x, int y) const {
        const auto* p =
            static_cast<const std::uint8_t*>(surface_->pixels) + y * surface_->pitch + 4 * x;
        return {p[0], p[1], p[2]};
    }

  private:
    SurfacePtr surface_;
};

/// A sprite's own pixels, and where they lie on the screen.
struct Own {
    Image image;
    int x = 0, y = 0;
    int alpha(int column, int row) const {
        if (column < 0 || row < 0 || column >= image.w || row >= image.h) return 0;
        return image.at(column, row)[3];
    }
};

int side(float centre, int size) {
    return static_cast<int>(std::floor(centre - static_cast<float>(size) / 2 + 0.5f));
}

std::optional<Own> own(Baker& baker, const Blit& blit) {
    auto image = baker.draw(blit.sprite);
    if (!image) return std::nullopt;
    Own own{std::move(*image), 0, 0};
    own.x = side(blit.centre.x, own.image.size_w) + own.image.left;
    own.y = side(blit.centre.y, own.image.size_h) + own.image.top;
    return own;
}

/// The least contrast of a text's colour with what lies under its ink and right beside it.
double textContrast(const Own& ink, Colour colour, const Painted& below) {
    double least = 21;
    for (int row = -1; row <= ink.image.h; ++row)
        for (int column = -1; column <= ink.image.w; ++column) {
            bool near = false;
            for (int dy = -1; dy <= 1; ++dy)
                for (int dx = -1; dx <= 1; ++dx)
                    near = near || ink.alpha(column + dx, row + dy) > 127;
            if (near && below.has(ink.x + column, ink.y + row))
                least = std::min(least, contrast(colour, below.at(ink.x + column, ink.y + row)));
        }
    return least;
}

/// The share of a shape's outline at which something within 5 px inside it stands out 3:1 from what
/// lies right outside.
double shownShare(const Own& shape, const Painted& below, const Painted& above) {
    constexpr int kSolid = 150, kReach = 6;
    int seen = 0, all = 0;
    for (int row = 0; row < shape.image.h; ++row)
        for (int column = 0; column < shape.image.w; ++column) {
            if (shape.alpha(column, row) < kSolid) continue;
            for (const auto& [dx, dy] : {std::pair{-1, 0}, {1, 0}, {0, -1}, {0, 1}}) {
                if (shape.alpha(column + dx, row + dy) >= kSolid) continue;
                const int x = shape.x + column, y = shape.y + row;
                if (!below.has(x + 2 * dx, y + 2 * dy)) continue;
                const Colour outside = below.at(x + 2 * dx, y + 2 * dy);
                bool stands_out = false;
                for (int in = 0; in < kReach && !stands_out; ++in)
                    stands_out = below.has(x - in * dx, y - in * dy) &&
                                 contrast(above.at(x - in * dx, y - in * dy), outside) >= 3;
                ++all;
                seen += stands_out;
            }
        }
    return all == 0 ? 1 : static_cast<double>(seen) / all;
}

/// True iff the blit is what is seen of the thing: as large as it, or nearly, and in its middle.
bool isOf(const Blit& blit, const Box& thing) {
    using Kind = Sprite::Kind;
    if (blit.sprite.kind != Kind::art && blit.sprite.kind != Kind::card) return false;
    if (blit.sprite.name.rfind("bg-", 0) == 0) return false;
    const auto w = static_cast<float>(blit.sprite.width),
               h = static_cast<float>(blit.sprite.height);
    return thing.contains(blit.centre) && w >= thing.w * 0.6f && w <= thing.w * 1.3f &&
           h >= thing.h * 0.35f && h <= thing.h * 1.5f;
}

/// What was found on the screens that were looked at.
struct Found {
    std::set<std::string> looked_at;  // things and texts
    int texts = 0, edges = 0;
    double least = 1;  // share of an outline
};

void look(Visit& visit, Found& found) {
    for (int i = 0; i < 200 && visit.isMoving(); ++i) visit.wait(16);
    const std::string place = visit.app().place();
    const Frame frame = visit.frame();
    Baker& baker = visit.table().baker();
    CAPTURE(place);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        const Blit& blit = frame[i];
        if (blit.sprite.kind != Sprite::Kind::text) continue;
        if (!found.looked_at.insert(place + "/" + blit.sprite.name).second) continue;
        Frame without = frame;
        without.erase(without.begin() + static_cast<std::ptrdiff_t>(i));
        const auto ink = own(baker, blit);
        REQUIRE(ink.has_value());
        CAPTURE(blit.sprite.name);
        CHECK(blit.alpha == 255);
        ++found.texts;
        CHECK(textContrast(*ink, blit.sprite.colour, Painted(visit.table(), without)) >= 4.5);
    }
    for (const std::string& name : visit.app().touchables()) {
        // The wren says what replay says, and an example is anywhere on the screen.
        if (name == "wren" || name == "example") continue;
        const Box box = *visit.app().boxOf(name);
        CAPTURE(name);
        double best = -1;
        for (std::size_t i = 0; i < frame.size(); ++i) {
            if (!isOf(frame[i], box)) continue;
            const Sprite& sprite = frame[i].sprite;
            const std::string state = place + " " + name + " " + std::to_string(sprite.width) +
                                      " " + std::to_string(sprite.edge_colour.g) + " " +
                                      std::to_string(frame[i].alpha);
            if (!found.looked_at.insert(state).second) continue;
            const auto shape = own(baker, frame[i]);
            if (!shape) continue;
            const auto here = frame.begin() + static_cast<std::ptrdiff_t>(i);
            const Painted below(visit.table(), Frame(frame.begin(), here));
            const Painted above(visit.table(), Frame(frame.begin(), here + 1));
            best = std::max(best, shownShare(*shape, below, above));
        }
        if (best < 0) continue;  // seen before, or by what belongs to it, as a heap of acorns is
        ++found.edges;
        found.least = std::min(found.least, best);
        CHECK(best >= kOutline);
    }
}

std::unique_ptr<Visit> begin(const Room& room, const TabletSettings& tablet,
                             std::optional<Skill> skill = {}) {
    auto visit = Visit::begin(room, {1280, 800, 0}, tablet, skill);
    REQUIRE(visit != nullptr);
    return visit;
}

}  // namespace

TEST_CASE("contrast: letters and edges on the pond, in every mechanic, with captions") {
    Found found;
    for (const Skill skill : {Skill{Unit::onset_rime, Task::rhyme_sort},
                              {Unit::phoneme, Task::blend},
                              {Unit::phoneme, Task::segment},
                              {Unit::syllable, Task::count},
                              {Unit::onset_rime, Task::rhyme_judge},
                              {Unit::letter, Task::sound},
                              {Unit::letter, Task::build},
                              {Unit::compound, Task::remove}}) {
        const Folder folder;
        const Room room(folder / "room");
        TabletSettings captioned;
        captioned.captions = true;
        const auto visit = begin(room, captioned, skill);
        look(*visit, found);
        visit->touch("badge:c-03");
        for (const char* place : {"example", "asked"}) {
            if (!visit->waitFor(place, 20'000)) continue;
            visit->wait(2'500);
            look(*visit, found);
        }
        for (int i = 0; i < 200 && visit->app().place().find("asked") != std::string::npos; ++i) {
            look(*visit, found);
            if (visit->app().rightTouch())
                visit->touch(*visit->app().rightTouch());
            else
                visit->wait(96);
        }
        CHECK(visit->app().place().find("right") != std::string::npos);
        look(*visit, found);
    }
    CHECK(found.texts > 40);
    CHECK(found.edges > 60);
    MESSAGE(found.texts << " texts, " << found.edges << " edges, the least of which stands out at "
                        << found.least << " of its length");
}

TEST_CASE("contrast: the mark stands out from whatever lies below it") {
    const Folder folder;
    const Room room(folder / "room");
    const auto visit = begin(room, {}, Skill{Unit::onset_rime, Task::rhyme_sort});
    visit->touch("badge:c-03");
    REQUIRE(visit->waitFor("asked"));
    visit->wait(1'000);
    int bars = 0;
    for (std::size_t moves = 0; moves < visit->app().touchables().size(); ++moves) {
        visit->key(Key::next);
        REQUIRE(visit->app().marked().has_value());
        const Frame frame = visit->frame();
        const Painted painted(visit->table(), frame);
        for (std::size_t i = frame.size() - 8; i < frame.size(); ++i) {
            const Blit& bar = frame[i];
            REQUIRE(bar.sprite.kind == Sprite::Kind::fill);
            if (bar.sprite.colour == palette::kPaper)
                continue;  // the rim, which is looked at below
            ++bars;
            const int left = side(bar.centre.x, bar.sprite.width),
                      top = side(bar.centre.y, bar.sprite.height);
            for (const auto& [x, y] : {std::pair{left - 1, top},
                                       {left + bar.sprite.width, top},
                                       {left, top - 1},
                                       {left, top + bar.sprite.height}})
                if (painted.has(x, y)) CHECK(contrast(bar.sprite.colour, painted.at(x, y)) >= 3);
        }
    }
    CHECK(bars > 12);
}

TEST_CASE("contrast: letters and edges of the adult's pages, of the key and of the pause") {
    Found found;
    const Folder folder;
    const Room room(folder / "room");
    auto list = pack::openClassList(room.classroom);
    REQUIRE(list.ok());
    list.value().children[2].key = {"sock", "apple"};
    REQUIRE(writeWhole(room.classroom.classFile(), pack::writeClassList(list.value())).ok());
    const auto visit = begin(room, {});
    visit->touch("badge:c-03");
    REQUIRE(visit->app().place() == "key");
    look(*visit, found);
    visit->touch("picture:sock");
    look(*visit, found);
    visit->touch("leave", 1'800);
    REQUIRE(visit->app().place() == "question");
    look(*visit, found);
    visit->touch(*visit->app().rightTouch());
    REQUIRE(visit->app().place() == "adult");
    look(*visit, found);
    visit->touch("facts");
    look(*visit, found);
    visit->touch("settings");
    visit->touch("pause");
    REQUIRE(visit->app().place() == "paused");
    look(*visit, found);
    CHECK(found.texts > 30);
    CHECK(found.edges > 30);
}
