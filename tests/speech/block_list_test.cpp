#include "content/speech/block_list.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/fixtures/dictionary.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::speech;
using practice::samples::Folder;
using practice::samples::writeBytes;

namespace {

BlockList built() {
    auto list = BlockList::open(WRENLET_TEST_SHARE "/blocked.bin");
    REQUIRE(list.ok());
    return std::move(list.value());
}

Pronunciation without(Pronunciation sounds, std::size_t place) {
    sounds.erase(sounds.begin() + static_cast<std::ptrdiff_t>(place));
    return sounds;
}

}  // namespace

TEST_CASE("Block list: what is left of a plain word can be rude, and is blocked by its sounds") {
    const BlockList list = built();
    CHECK_FALSE(list.blocks(fixtures::said("clock")));
    CHECK(list.blocks(without(fixtures::said("clock"), 1)));
    CHECK_FALSE(list.blocks(fixtures::said("glass")));
    CHECK(list.blocks(without(without(fixtures::said("glass"), 0), 0)));
}

TEST_CASE("Block list: words that only look or sound a little like one are not blocked") {
    const BlockList list = built();
    for (const char* word :
         {"duck", "ship", "sheet", "shirt", "peak", "sit", "pea", "hose", "class", "grass",
          "peacock", "button", "hello", "shell", "pick", "bath"}) {
        CAPTURE(word);
        CHECK_FALSE(list.blocks(std::string_view(word)));
        CHECK_FALSE(list.blocks(fixtures::said(word)));
    }
}

TEST_CASE("Block list: writing is compared in any case, and stress does not hide a word") {
    const std::vector<std::uint64_t> hashes = {blockHash("plonk"),
                                               blockHash(fixtures::said("basket"))};
    const Folder folder;
    writeBytes(folder / "list", writeBlockList(hashes));
    const auto list = BlockList::open(folder / "list");
    REQUIRE(list.ok());
    CHECK(list.value().size() == 2);
    CHECK(list.value().blocks(std::string_view("PLonk")));
    CHECK_FALSE(list.value().blocks(std::string_view("plonks")));
    CHECK_FALSE(list.value().blocks(std::string_view("basket")));
    Pronunciation flat = fixtures::said("basket");
    for (Sound& sound : flat) sound.stress = Stress::none;
    CHECK(list.value().blocks(flat));
    CHECK_FALSE(BlockList().blocks(flat));
}

TEST_CASE("Block list: a file that is not there, cut, or another's is refused") {
    const Folder folder;
    CHECK_FALSE(BlockList::open(folder / "none").ok());
    const std::string good = writeBlockList({1, 2, 3});
    for (const std::string& bad : {std::string(), good.substr(0, good.size() - 1),
                                   good.substr(0, 8), "X" + good.substr(1)}) {
        writeBytes(folder / "list", bad);
        CHECK_FALSE(BlockList::open(folder / "list").ok());
    }
    writeBytes(folder / "list", good);
    CHECK(BlockList::open(folder / "list").ok());
}
