#include "content/pack/archive.hpp"

#include <doctest/doctest.h>

using namespace wrenlet;
using pack::Archive;

namespace {

constexpr pack::ArchiveLimits kSmall{1 << 20, 1000, 1500, 3};

std::string zipOf(const std::vector<pack::ArchiveEntry>& entries) {
    const auto bytes = pack::writeArchive(entries);
    REQUIRE(bytes.ok());
    return bytes.value();
}

std::string problemsOf(std::string_view bytes) {
    const auto opened = Archive::open(bytes, "farm.zip", kSmall);
    std::string all;
    for (const Problem& problem : opened.problems()) all += sentence(problem) + "\n";
    return all;
}

}  // namespace

TEST_CASE("An archive reads back as it was written, and the same entries give the same bytes") {
    const std::vector<pack::ArchiveEntry> entries{{"pack.json", "{}", true},
                                                  {"voice/001.ogg", "sound", false}};
    const std::string bytes = zipOf(entries);
    CHECK(bytes == zipOf(entries));
    const auto archive = Archive::open(bytes, "farm.zip", kSmall);
    REQUIRE(archive.ok());
    CHECK(archive.value().names() == std::vector<std::string>{"pack.json", "voice/001.ogg"});
    CHECK(archive.value().read("voice/001.ogg").value() == "sound");
    CHECK_FALSE(archive.value().read("voice/002.ogg").ok());
}

TEST_CASE("A name that leads out of the archive is refused before anything is unpacked") {
    for (const char* name : {"../up.json", "voice/../../up", "/etc/x", "C:/x", "a\\b", "a//b",
                             "./a", "a/.hidden", "bell\x07", "\xC3\xA9"}) {
        CAPTURE(std::string(name));
        CHECK(problemsOf(zipOf({{name, "x", false}})).find("farm.zip, \"") == 0);
    }
}

TEST_CASE("An entry, a sum and a number above the limits are refused as declared") {
    const std::string big(1001, 'a'), half(800, 'a');
    CHECK(problemsOf(zipOf({{"a", big, true}})).find("farm.zip, \"a\"") == 0);
    CHECK(problemsOf(zipOf({{"a", half, true}, {"b", half, true}})).find("Unpacked") !=
          std::string::npos);
    CHECK(problemsOf(zipOf({{"a", "", true}, {"b", "", true}, {"c", "", true}, {"d", "", true}}))
              .find("4 files") != std::string::npos);
    CHECK(problemsOf(zipOf({{"a", half, true}})).empty());
}

TEST_CASE("Two names that differ by capitals alone are one name twice") {
    CHECK(problemsOf(zipOf({{"A", "1", false}, {"a", "2", false}})).find("twice") !=
          std::string::npos);
}

TEST_CASE("An archive cut anywhere is refused or reads no wrong byte") {
    const std::string bytes = zipOf({{"pack.json", std::string(900, 'x'), true}});
    for (std::size_t length = 0; length < bytes.size(); ++length) {
        const auto cut = Archive::open(std::string_view(bytes).substr(0, length), "cut", kSmall);
        if (!cut.ok()) continue;
        const auto read = cut.value().read("pack.json");
        if (read.ok()) CHECK(read.value() == std::string(900, 'x'));
    }
}

TEST_CASE("A flipped bit anywhere is refused or reads no wrong byte") {
    const std::string text(64, 'x');
    const std::string bytes = zipOf({{"pack.json", text, false}});
    for (std::size_t at = 0; at < bytes.size(); ++at) {
        std::string bent = bytes;
        bent[at] = static_cast<char>(bent[at] ^ 0x10);
        const auto archive = Archive::open(bent, "bent", kSmall);
        if (!archive.ok() || !archive.value().has("pack.json")) continue;
        const auto read = archive.value().read("pack.json");
        if (read.ok()) CHECK(read.value() == text);
    }
}
