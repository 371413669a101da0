#include <doctest/doctest.h>

#include "tests/house/listing.hpp"
#include "tests/house/sources.hpp"

using namespace wrenlet::house;

namespace {

const std::vector<std::string> kFolders = {"content", "game", "editor", "assets", "tests"};
constexpr int kMostLines = 500;

// A folder's list may stand in its own CMakeLists.txt or in that of a folder above it.
bool isListed(const std::string& path, const std::vector<Source>& lists_of_folders) {
    for (const Source& list : lists_of_folders) {
        const std::string folder = list.path.substr(0, list.path.rfind('/'));
        if (lists(list.text, folder, path)) return true;
    }
    return false;
}

}  // namespace

TEST_CASE("Every source is listed in a CMakeLists.txt") {
    const auto lists_of_folders = filesUnder(kFolders, {"CMakeLists.txt"});
    const auto sources = filesUnder(kFolders, {".cpp"});
    REQUIRE(sources.size() > 5);
    for (const Source& source : sources)
        CHECK_MESSAGE(isListed(source.path, lists_of_folders), source.path << " is listed nowhere");
}

TEST_CASE("A source that is not listed is caught") {
    const std::string text = "add_library(pack\n    pack/pack.cpp\n    # pack/old.cpp\n)\n";
    CHECK(lists(text, "content", "content/pack/pack.cpp"));
    CHECK_FALSE(lists(text, "content", "content/pack/old.cpp"));
    CHECK_FALSE(lists(text, "content", "content/pack/pack"));
    CHECK_FALSE(lists(text, "content", "content/pack.cpp"));
    CHECK_FALSE(lists(text, "game", "content/pack/pack.cpp"));
    CHECK(lists("add_executable(a b.cpp c.cpp)", "game", "game/c.cpp"));
}

TEST_CASE("Every header opens with a comment that says what it is") {
    for (const Source& header : filesUnder(kFolders, {".hpp"}))
        CHECK_MESSAGE(header.text.compare(0, 3, "// ") == 0, header.path << " opens without one");
}

TEST_CASE("No source grows past 500 lines") {
    auto sources = filesUnder(kFolders, {".cpp", ".hpp", ".js", ".mjs", ".sh", "CMakeLists.txt"});
    for (const char* path : {"CMakeLists.txt", "play", "check"}) sources.push_back(sourceAt(path));
    for (const Source& source : sources)
        CHECK_MESSAGE(linesOf(source) <= kMostLines, source.path << " has " << linesOf(source));
}

TEST_CASE("No test's name holds a semicolon, at which the build would cut it in two") {
    const std::string opening = "TEST_CASE(\"";
    for (const Source& source : filesUnder({"tests"}, {"_test.cpp"})) {
        for (std::size_t at = source.text.find(opening); at != source.text.npos;
             at = source.text.find(opening, at + 1)) {
            const std::size_t begin = at + opening.size();
            const std::string name =
                source.text.substr(begin, source.text.find('"', begin) - begin);
            CHECK_MESSAGE(name.find(';') == name.npos, source.path << ": " << name);
        }
    }
}

TEST_CASE("What the build asks of pkg-config is what the set-up brings") {
    const std::string setup = sourceAt("assets/make/setup.sh").text;
    const std::string cmake = sourceAt("CMakeLists.txt").text;
    const std::string asking = "IMPORTED_TARGET ";
    int asked = 0;
    for (std::size_t at = cmake.find(asking); at != cmake.npos; at = cmake.find(asking, at + 1)) {
        const std::size_t begin = at + asking.size();
        const std::string module = cmake.substr(begin, cmake.find(')', begin) - begin);
        CHECK_MESSAGE(setup.find("module  " + module + " ") != setup.npos, module);
        ++asked;
    }
    CHECK(asked > 5);
}

TEST_CASE("The lock of the npm packages names no registry") {
    const Source lock = sourceAt("assets/package-lock.json");
    CHECK(lock.text.find("integrity") != lock.text.npos);
    CHECK(lock.text.find("\"resolved\"") == lock.text.npos);
    CHECK(lock.text.find("://") == lock.text.npos);
}
