// The desk's look held to its own rules: contrast, marks that differ without colour, room to press.
#include <doctest/doctest.h>

#include <set>
#include <vector>

#include "editor/look/layout.hpp"
#include "editor/look/said.hpp"
#include "editor/look/wording.hpp"
#include "editor/windows/marks.hpp"

namespace wrenlet::desk {

using namespace colour;

// WCAG 2.2, understanding 1.4.3: #777777 on white is the known pair just under 4.5:1, and black on
// white is 21:1.
TEST_CASE("Contrast is what WCAG computes") {
    CHECK(contrast({0, 0, 0}, {255, 255, 255}) == doctest::Approx(21));
    CHECK(contrast({0x77, 0x77, 0x77}, {255, 255, 255}) == doctest::Approx(4.48).epsilon(0.002));
}

TEST_CASE("The desk's text reads on every ground it stands on") {
    const std::vector<std::pair<Colour, Colour>> pairs{
        {kInk, kPaper},  {kInk, kCard},     {kInk, kRail},       {kInk, kWash},
        {kInk, kButter}, {kInk, kPaleDeep}, {kInk, kPaleBrick},  {kInk, kMidBrick},
        {kSoft, kPaper}, {kSoft, kCard},    {kSoft, kRail},      {kSoft, kWash},
        {kPaper, kInk},  {kWhite, kDeep},   {kWhite, kDeeper},   {kWhite, kBrick},
        {kBrick, kCard}, {kBrick, kPaper},  {kDeeper, kPaleDeep}};
    for (const auto& [text, ground] : pairs) CHECK(contrast(text, ground) >= 4.5);
}

TEST_CASE("Edges, marks and the focus ring stand out from what is around them") {
    for (const Colour ground : {kPaper, kCard, kRail, kWash}) CHECK(contrast(kEdge, ground) >= 3);
    for (const Colour ground : {kPaper, kCard, kRail}) CHECK(contrast(kFocus, ground) >= 6);
    for (const Said said :
         {Said::missed, Said::growing, Said::steady, Said::too_little, Said::shielded}) {
        const SaidLook look = lookOf(said);
        CHECK(contrast(look.on_ground, look.ground) >= 3);
        CHECK(contrast(look.alone, kCard) >= 3);
    }
}

TEST_CASE("What can be said differs in word and in shape, not only in colour") {
    std::set<std::string_view> words;
    std::set<std::vector<std::uint8_t>> shapes;
    for (const Said said : {Said::missed, Said::growing, Said::steady, Said::too_little,
                            Said::shielded, Said::not_asked}) {
        words.insert(wordOf(said));
        shapes.insert(markCoverage(lookOf(said).mark, markSide(MarkSize::small, 1)));
    }
    CHECK(words.size() == 6);
    CHECK(shapes.size() == 6);
}

TEST_CASE("A shielded sound is never called missed") {
    practice::SoundLine line;
    line.evidence.seen = 12;
    line.said = practice::Standing::missed;
    CHECK(saidOf(line) == Said::missed);
    line.said = practice::Standing::too_little;
    line.shielded = line.held_back = true;
    CHECK(saidOf(line) == Said::shielded);
}

TEST_CASE("A wider or taller window gets larger letters, a tiny one smaller") {
    CHECK(scaleFor(1280, 720, 1) == doctest::Approx(1));
    CHECK(scaleFor(1920, 1080, 1) == doctest::Approx(1.25));
    CHECK(scaleFor(3840, 2160, 1) == doctest::Approx(2.5));
    CHECK(scaleFor(1920, 1080, 1.5f) == doctest::Approx(1.25 * 1.5).epsilon(0.11));
    CHECK(scaleFor(800, 500, 1) < 0.8);
}

namespace {

MapShape shapeOf(std::vector<std::size_t> groups, std::size_t rows, float label) {
    MapShape shape;
    shape.rows = rows;
    for (const std::size_t columns : groups) {
        shape.groups.push_back({columns, 110});
        shape.label_widths.insert(shape.label_widths.end(), columns, label);
    }
    return shape;
}

}  // namespace

TEST_CASE("Cells of the map never overlap, leave it, or shrink below a finger") {
    const Area cells{298, 160, 674, 478};
    for (const std::size_t rows : {1u, 5u, 22u, 40u}) {
        for (const float label : {12.f, 30.f, 56.f}) {
            const MapShape shape = shapeOf({4, 9, 3, 20}, rows, label);
            const MapLayout laid = layMap(cells, shape, 0, 0);
            REQUIRE(!laid.columns.empty());
            REQUIRE(!laid.rows.empty());
            for (std::size_t i = 0; i < laid.columns.size(); ++i) {
                CHECK(laid.columns[i].width >= 30);
                CHECK(laid.columns[i].width >= label);
                if (i > 0)
                    CHECK(laid.columns[i].x >= laid.columns[i - 1].x + laid.columns[i - 1].width);
            }
            CHECK(laid.columns.back().x + laid.columns.back().width <= cells.right());
            for (std::size_t i = 1; i < laid.rows.size(); ++i)
                CHECK(laid.rows[i].y >= laid.rows[i - 1].y + laid.row_height);
            CHECK(laid.row_height >= 21);
            CHECK(laid.rows.back().y + laid.row_height <= cells.bottom());
        }
    }
}

TEST_CASE("Every column and row of a large map can be brought into view") {
    const Area cells{298, 160, 674, 478};
    const MapShape shape = shapeOf({5, 12, 9, 20, 30}, 60, 34);
    std::set<std::size_t> columns, rows;
    for (std::size_t first = 0; first < 76; ++first)
        for (const auto& column : layMap(cells, shape, 0, first).columns)
            columns.insert(column.index);
    for (std::size_t first = 0; first < 60; ++first)
        for (const auto& row : layMap(cells, shape, first, 0).rows) rows.insert(row.index);
    CHECK(columns.size() == 76);
    CHECK(rows.size() == 60);
    CHECK(layMap(cells, shape, 999, 999).columns.back().index == 75);
    CHECK(layMap(cells, shape, 999, 999).rows.back().index == 59);
}

TEST_CASE("Counts, names, times and places are put in a teacher's words") {
    using namespace wording;
    CHECK(figure(2140) == "2,140");
    CHECK(figure(1234567) == "1,234,567");
    CHECK(counted(1, "child", "children") == "1 child");
    CHECK(counted(22, "child", "children") == "22 children");
    CHECK(times(1) == "once");
    CHECK(times(5) == "five times");
    CHECK(times(12) == "12 times");
    const std::vector<std::string> three{"Leo", "Maya", "Nils"};
    CHECK(names(three) == "Leo, Maya and Nils");
    CHECK(names(three, 2) == "Leo, Maya and 1 more");
    CHECK(ago(20'000) == "just now");
    CHECK(ago(2 * 60'000) == "2 minutes ago");
    CHECK(ago(26 * 3'600'000) == "1 day ago");
    CHECK(dayShort(0) == "Th 1");  // 1970-01-01 was a Thursday
    CHECK(date(0) == "1 Jan");
    CHECK(date(11'016) == "29 Feb");
    CHECK(dayShort(11'016) == "Tu 29");  // 2000-02-29 was a Tuesday
    CHECK(word("bow~rain") == "bow");
    CHECK(place(exercise::TurnsOn{"t", exercise::Position::last}) == "last sound t");
    CHECK(placeShort(exercise::TurnsOn{"æt", exercise::Position::rime}) == "–æt");
}

}  // namespace wrenlet::desk
