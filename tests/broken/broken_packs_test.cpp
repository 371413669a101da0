// Packs that a stick, a sync program or a stranger spoiled: each is refused by name and place.
#include <doctest/doctest.h>

#include <map>
#include <nlohmann/json.hpp>
#include <string>

#include "content/common/files.hpp"
#include "content/pack/archive.hpp"
#include "content/pack/pack_builder.hpp"
#include "content/pack/pack_file.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;

namespace {

using Entries = std::map<std::string, std::string>;

const std::filesystem::path kStarter = WRENLET_TEST_STARTER;

std::string starterBytes() {
    const auto bytes = readWhole(kStarter / "packs/by-the-pond-1.zip", pack::kMostPackBytes);
    REQUIRE(bytes.ok());
    return bytes.value();
}

Entries starterEntries() {
    const std::string bytes = starterBytes();
    const auto archive = pack::Archive::open(bytes, "", {1 << 28, 1 << 24, 1 << 28, 9999});
    REQUIRE(archive.ok());
    Entries entries;
    for (const std::string& name : archive.value().names())
        entries[name] = archive.value().read(name).value();
    return entries;
}

/// What is said of a pack with these entries; "good" when it is read.
std::string said(const Entries& entries) {
    std::vector<pack::ArchiveEntry> list;
    for (const auto& [name, bytes] : entries) list.push_back({name, bytes, true});
    const auto read = pack::readPack(pack::writeArchive(list).value(), "pond.zip");
    if (read.ok()) return "good";
    std::string all;
    for (const Problem& problem : read.problems()) all += sentence(problem) + "\n";
    return all;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("Broken packs: the starter pack is good, and good again when written anew") {
    const auto read = pack::readPack(starterBytes(), "pond.zip");
    REQUIRE(read.ok());
    CHECK(read.problems().empty());
    const auto again = pack::writePack(read.value());
    REQUIRE(again.ok());
    CHECK(again.value() == starterBytes());
}

TEST_CASE("Broken packs: clips that are one recording lie in the pack once") {
    const auto read = pack::readPack(starterBytes(), "pond.zip");
    REQUIRE(read.ok());
    std::map<std::string, std::string> files, recordings;  // by each other
    for (const pack::Clip& clip : read.value().clips) {
        CAPTURE(clip.id);
        CHECK(clip.bytes == files.try_emplace(clip.file, clip.bytes).first->second);
        CHECK(clip.file == recordings.try_emplace(clip.bytes, clip.file).first->second);
    }
    CHECK(files.size() < read.value().clips.size());

    pack::Pack mixed_up = read.value();
    mixed_up.clips.back().file = mixed_up.clips.front().file;
    CHECK_FALSE(pack::writePack(mixed_up).ok());
}

TEST_CASE("Broken packs: an older pack is read, and one of a program to come is not") {
    const auto ofVersion = [](const std::string& version) {
        Entries entries = starterEntries();
        std::string& json = entries["pack.json"];
        const std::string now = "\"format_version\": 2";
        REQUIRE(json.find(now) != std::string::npos);
        json.replace(json.find(now), now.size(), "\"format_version\": " + version);
        return said(entries);
    };
    CHECK(ofVersion("1") == "good");
    for (const char* version : {"0", "-1", "3"}) {
        CAPTURE(version);
        CHECK(has(ofVersion(version), "another version of Wrenlet"));
    }
}

TEST_CASE("Broken packs: one large file under many names takes no more than a pack may") {
    Entries entries = starterEntries();
    auto json = nlohmann::json::parse(entries["pack.json"]);
    SUBCASE("as clips") {
        for (auto& clip : json["clips"]) clip["file"] = "voice/0001.ogg";
        entries["voice/0001.ogg"] = std::string(pack::kMostEntryBytes, '\0');
        entries["pack.json"] = json.dump();
        CHECK(has(said(entries), "More clips than in any pack"));
    }
    SUBCASE("as pictures") {
        for (auto& picture : json["pictures"]) picture["file"] = "pictures/0001.svg";
        entries["pack.json"] = json.dump();
        CHECK(has(said(entries), "stands there twice"));
    }
}

TEST_CASE("Broken packs: a missing clip is named, with what it should say") {
    Entries entries = starterEntries();
    const std::string file = "voice/0007.ogg";
    REQUIRE(entries.erase(file) == 1);
    const std::string text = said(entries);
    CHECK(has(text, "pond.zip"));
    CHECK(has(text, file));
    CHECK(has(text, "It should say"));
}

TEST_CASE("Broken packs: a clip that is noise, a picture that is no picture") {
    Entries entries = starterEntries();
    entries["voice/0009.ogg"] = "not a recording";
    entries["pictures/0003.svg"] = "GIF89a, they said";
    const std::string text = said(entries);
    CHECK(has(text, "pond.zip, voice/0009.ogg"));
    CHECK(has(text, "is not a recording"));
    CHECK(has(text, "pond.zip, pictures/0003.svg"));
}

TEST_CASE("Broken packs: broken JSON is named with its line") {
    Entries entries = starterEntries();
    std::string& json = entries["pack.json"];
    const std::size_t place = json.find('\n', json.size() / 2);
    REQUIRE(place != std::string::npos);
    json.insert(place, " oops ");
    const std::string text = said(entries);
    CHECK(has(text, "pond.zip, pack.json"));
    CHECK(has(text, "line "));
}

TEST_CASE("Broken packs: a path that leaves the archive is refused") {
    Entries entries = starterEntries();
    entries["../../outside.svg"] = "<svg></svg>";
    const std::string text = said(entries);
    CHECK(has(text, "pond.zip"));
    CHECK(has(text, "outside.svg"));
}

TEST_CASE("Broken packs: a zip bomb is refused by what it declares, before it is unpacked") {
    Entries entries = starterEntries();
    entries["voice/0001.ogg"] = std::string(pack::kMostEntryBytes + 1, '\0');
    const std::string text = said(entries);
    CHECK(has(text, "pond.zip"));
    CHECK(has(text, "voice/0001.ogg"));
}

TEST_CASE("Broken packs: a bomb that lies about its size is refused while it is unpacked") {
    // One entry of zeros, its declared size cut to 100 bytes in both headers of the zip.
    const std::string zeros(40 << 20, '\0');
    std::string bytes = pack::writeArchive({{"pack.json", zeros, true}}).value();
    const std::string size{'\0', '\0', static_cast<char>(0x80), '\2'};  // 40 MB, low byte first
    std::size_t found = 0;
    for (std::size_t at = bytes.find(size); at != std::string::npos;
         at = bytes.find(size, at + 4)) {
        bytes.replace(at, 4, std::string{100, '\0', '\0', '\0'});
        ++found;
    }
    REQUIRE(found >= 1);
    const auto read = pack::readPack(bytes, "pond.zip");
    REQUIRE_FALSE(read.ok());
    CHECK(has(sentence(read.problems().front()), "pond.zip"));
}

TEST_CASE("Broken packs: cut short, empty, or something else altogether") {
    const std::string bytes = starterBytes();
    for (const std::string& bad : {bytes.substr(0, bytes.size() / 2), std::string(),
                                   std::string("<html>not found</html>"), bytes.substr(100)}) {
        const auto read = pack::readPack(bad, "pond.zip");
        REQUIRE_FALSE(read.ok());
        CHECK(has(sentence(read.problems().front()), "pond.zip"));
    }
}

TEST_CASE("Broken units: an unknown word is named with its place, and a way out is given") {
    const auto unit = pack::readUnit(R"({"format": "wrenlet unit", "format_version": 1,
        "id": "u", "title": "U", "words": ["duck", "dukk", {"text": "blorb", "sounds": ["b"]}]})",
                                     "my-unit.json");
    REQUIRE(unit.ok());
    const auto read = pack::readVocabulary(unit.value(), fixtures::dictionary());
    REQUIRE_FALSE(read.ok());
    const std::string text = sentence(read.problems().front());
    CHECK(has(text, "my-unit.json, words, 2"));
    CHECK(has(text, "dukk"));
    CHECK(has(text, "give its sounds"));
}
