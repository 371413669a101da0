// libsndfile decodes a recording, the web page reads its headers: both must say the same of it.
#include "content/pack/sound_facts.hpp"

#include <doctest/doctest.h>

#include <string>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/voice/audio_file.hpp"
#include "tests/fixtures/sounds.hpp"

using namespace wrenlet;
using namespace wrenlet::pack;

namespace {

void checkAlike(std::string_view bytes) {
    const auto decoded = factsBySndfile(bytes, true), read = factsByHeaders(bytes, true);
    REQUIRE(decoded);
    REQUIRE(read);
    CHECK(read->is_vorbis == decoded->is_vorbis);
    CHECK(read->is_flac == decoded->is_flac);
    CHECK(read->rate == decoded->rate);
    CHECK(read->channels == decoded->channels);
    CHECK(read->frames == decoded->frames);
    if (read->is_vorbis) CHECK(read->whole == decoded->whole);
}

}  // namespace

TEST_CASE("A recording's headers say what decoding it does, of every clip of the starter") {
    const auto bytes = readWhole(
        std::filesystem::path(WRENLET_TEST_STARTER) / "packs/by-the-pond-1.zip", kMostPackBytes);
    REQUIRE(bytes.ok());
    const auto pack = readPack(bytes.value(), "pond.zip");
    REQUIRE(pack.ok());
    REQUIRE(pack.value().clips.size() > 100);
    for (const Clip& clip : pack.value().clips) {
        CAPTURE(clip.file);
        checkAlike(clip.bytes);
    }
}

TEST_CASE("A recording's headers say what decoding it does, of the desk's own files") {
    const auto tone = fixtures::tone(440, -12, 0.7);
    checkAlike(desk::encodeOgg(tone).value());
    checkAlike(desk::encodeFlac(tone).value());
    checkAlike(desk::encodeOgg(fixtures::tone(440, -12, 0.7, 22'050)).value());
}

TEST_CASE("A recording that is cut short or damaged is not whole by its headers") {
    const std::string ogg = desk::encodeOgg(fixtures::tone(440, -12, 2)).value();
    CHECK(factsByHeaders(ogg, true)->whole);
    CHECK_FALSE(factsByHeaders(ogg.substr(0, ogg.size() - 200), true)->whole);
    std::string damaged = ogg;
    damaged[damaged.size() - 300] ^= 0x20;
    CHECK_FALSE(factsByHeaders(damaged, true)->whole);
    CHECK_FALSE(factsByHeaders("OggS but no more", false));
    CHECK_FALSE(factsByHeaders("fLaC", false));
    CHECK_FALSE(factsByHeaders("", false));
}
