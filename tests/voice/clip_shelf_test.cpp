#include "editor/voice/clip_shelf.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>

#include "content/common/files.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;

namespace {

pack::Clip clipOf(const std::string& bytes) {
    pack::Clip clip;
    clip.seconds = 0.1 + 0.2;
    clip.bytes = bytes;
    return clip;
}

const std::string kBytes("OggS\0\n\nbytes", 12);

}  // namespace

TEST_CASE("Clip shelf: what was laid on it is found after a new start, byte for byte") {
    const practice::samples::Folder folder;
    ClipShelf(folder.path() / "clips", "today").put("word cat\nshort", clipOf(kBytes));
    const ClipShelf shelf(folder.path() / "clips", "today");
    const auto clip = shelf.find("word cat\nshort");
    REQUIRE(clip);
    CHECK(clip->bytes == kBytes);
    CHECK(clip->seconds == 0.1 + 0.2);
    CHECK_FALSE(clip->demo_voice);
    CHECK_FALSE(shelf.find("word cat\nlong"));
    CHECK_FALSE(shelf.find("word cat"));
}

TEST_CASE("Clip shelf: another build of the program finds nothing, and lets the old go") {
    const practice::samples::Folder folder;
    ClipShelf(folder.path(), "today").put("word cat", clipOf(kBytes));
    CHECK_FALSE(ClipShelf(folder.path(), "tomorrow").find("word cat"));
    CHECK(std::filesystem::is_empty(folder.path()));
}

TEST_CASE("Clip shelf: a damaged clip is not taken") {
    const practice::samples::Folder folder;
    const ClipShelf shelf(folder.path(), "today");
    shelf.put("word cat", clipOf(kBytes));
    const auto file = listFiles(folder.path(), ".clip").front();
    const std::string whole = readWhole(file, 1000).value();
    for (std::size_t length = 0; length < whole.size(); ++length) {
        std::ofstream(file, std::ios::binary) << whole.substr(0, length);
        CHECK_FALSE(shelf.find("word cat"));
    }
    for (std::size_t at = whole.size() - kBytes.size(); at < whole.size(); ++at) {
        std::string changed = whole;
        changed[at] ^= 1;
        std::ofstream(file, std::ios::binary) << changed;
        CHECK_FALSE(shelf.find("word cat"));
    }
}

TEST_CASE("Clip shelf: the oldest clips go when it is full") {
    const practice::samples::Folder folder;
    {
        const ClipShelf shelf(folder.path(), "today");
        for (const char* key : {"old", "new"}) shelf.put(key, clipOf(std::string(1000, 'x')));
        for (const auto& file : listFiles(folder.path(), ".clip"))
            if (readWhole(file, 2000).value().find("\nold\n") != std::string::npos)
                std::filesystem::last_write_time(
                    file, std::filesystem::last_write_time(file) - std::chrono::hours(1));
    }
    const ClipShelf shelf(folder.path(), "today", {}, 1500);
    CHECK(shelf.find("new"));
    CHECK_FALSE(shelf.find("old"));
}

TEST_CASE("Clip shelf: a folder that cannot be made keeps nothing, and nothing else happens") {
    const practice::samples::Folder folder;
    std::ofstream(folder.path() / "file") << "in the way";
    const ClipShelf shelf(folder.path() / "file", "today");
    shelf.put("word cat", clipOf(kBytes));
    CHECK_FALSE(shelf.find("word cat"));
}
