#include "content/exercise/change_tiles.hpp"

#include <doctest/doctest.h>

#include <string>

#include "content/exercise/item_maker.hpp"
#include "tests/fixtures/pond.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

std::string row(const std::vector<Part>& parts) {
    std::string text;
    for (const Part& part : parts) text += (text.empty() ? "" : " ") + part.label;
    return text;
}

/// "s n eɪ l -0 n eɪ l": the tiles before, where one goes out or in, the tiles after.
std::string tilesOf(const char* from, const char* to, Skill skill) {
    static const Vocabulary words = fixtures::pond();
    for (const Item& item : makeItems(words, skill)) {
        if (item.subject != from || item.choices[item.answer].id != to) continue;
        const ChangeTiles tiles = changeTiles(item, words);
        return row(tiles.before) + (tiles.takes ? " -" : " ") + (tiles.puts ? "+" : "") +
               std::to_string(tiles.at) + " " + row(tiles.after);
    }
    return "no such item";
}

}  // namespace

TEST_CASE("A sound's tile lies where the sound is heard") {
    CHECK(tilesOf("snail", "nail", {Unit::phoneme, Task::remove}) == "s n eɪ l -0 n eɪ l");
    CHECK(tilesOf("rain", "train", {Unit::phoneme, Task::add}) == "ɹ eɪ n +0 t ɹ eɪ n");
    CHECK(tilesOf("cat", "cap", {Unit::phoneme, Task::substitute}) == "k æ t -+2 k æ p");
    CHECK(tilesOf("soup", "soap", {Unit::phoneme, Task::substitute}) == "s u p -+1 s oʊ p");
}

TEST_CASE("A compound lies as its words, and a word without a syllable as one tile") {
    CHECK(tilesOf("rainbow", "rain", {Unit::compound, Task::remove}) == "rain bow -1 rain");
    CHECK(tilesOf("bow", "rainbow", {Unit::compound, Task::add}) == "bow +0 rain bow");
    CHECK(tilesOf("rainbow", "raincoat", {Unit::compound, Task::substitute}) ==
          "rain bow -+1 rain coat");
    CHECK(tilesOf("candy", "can", {Unit::syllable, Task::remove}) == "can di -1 can");
}

TEST_CASE("In every change, what is heard is the tile that goes out or comes in") {
    const Vocabulary words = fixtures::pond();
    for (const SkillRow& skill : skillTable()) {
        if (skill.mechanic != Mechanic::change) continue;
        const auto items = makeItems(words, skill.skill);
        CHECK_MESSAGE(!items.empty(), skill.id);
        for (const Item& item : items) {
            CAPTURE(item.id);
            const ChangeTiles tiles = changeTiles(item, words);
            const Part& first = item.parts[1];
            if (tiles.takes) CHECK(tiles.before[tiles.at].clip == first.clip);
            if (tiles.puts) CHECK(tiles.after[tiles.at].clip == item.parts.back().clip);
            auto left = tiles.before, stays = tiles.after;
            if (tiles.takes) left.erase(left.begin() + static_cast<std::ptrdiff_t>(tiles.at));
            if (tiles.puts) stays.erase(stays.begin() + static_cast<std::ptrdiff_t>(tiles.at));
            CHECK(row(left) == row(stays));
        }
    }
}

TEST_CASE("A change follows another that gave its word, where parts are swapped") {
    const Vocabulary words = fixtures::pond();
    int following = 0;
    const auto items = makeItems(words, {Unit::compound, Task::substitute});
    for (const Item& last : items)
        for (const Item& next : items) {
            const bool follows = followsInChain(last, next);
            CHECK(follows == (next.subject == last.choices[last.answer].id));
            following += follows ? 1 : 0;
        }
    CHECK(following > 3);
}
