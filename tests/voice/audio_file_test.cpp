#include "editor/voice/audio_file.hpp"

#include <doctest/doctest.h>
#include <sndfile.h>

#include <cmath>
#include <fstream>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "tests/fixtures/sounds.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using namespace wrenlet::fixtures;

namespace {

void put(std::string& bytes, std::uint32_t number, int size) {
    for (int i = 0; i < size; ++i) bytes += static_cast<char>(number >> (8 * i) & 0xff);
}

/// A WAV file of 16 bits, as RIFF lays it out, whose head may promise what it likes.
std::string wav(std::size_t frames, std::uint32_t promised_bytes, int channels = 1,
                std::uint32_t rate = 48000) {
    std::string bytes = "RIFF";
    put(bytes, promised_bytes + 36, 4);
    bytes += "WAVEfmt ";
    put(bytes, 16, 4);
    put(bytes, 1, 2);
    put(bytes, static_cast<std::uint32_t>(channels), 2);
    put(bytes, rate, 4);
    put(bytes, rate * 2 * static_cast<std::uint32_t>(channels), 4);
    put(bytes, static_cast<std::uint32_t>(2 * channels), 2);
    put(bytes, 16, 2);
    bytes += "data";
    put(bytes, promised_bytes, 4);
    bytes.resize(bytes.size() + frames * 2 * static_cast<std::size_t>(channels), '\1');
    return bytes;
}

std::string refused(std::string bytes) {
    const auto take = decodeTake(std::move(bytes), "duck.wav");
    if (take.ok()) return {};
    CHECK(take.problems()[0].where == "duck.wav");
    CHECK_FALSE(take.problems()[0].way_out.empty());
    return take.problems()[0].what;
}

}  // namespace

TEST_CASE("Audio files: a take kept as FLAC comes back to the bit") {
    Pcm take = room(-12, 0.3, 7, 44100);
    take.samples[0] = -1;
    take.samples[1] = 32767.0f / 32768;
    for (float& sample : take.samples) sample = std::round(sample * 32768) / 32768;
    const auto bytes = encodeFlac(take);
    REQUIRE(bytes.ok());
    const auto back = decodeTake(bytes.value(), "take");
    REQUIRE(back.ok());
    CHECK(back.value().rate == 44100);
    CHECK(back.value().samples == take.samples);
    CHECK(encodeFlac(Pcm{{2.0f, -2.0f}, 48000}).ok());
}

TEST_CASE("Audio files: WAV of several rates and channels is read") {
    CHECK(refused(wav(4800, 9600)).empty());
    CHECK(refused(wav(4800, 19200, 2, 44100)).empty());
    const auto ogg = encodeOgg(tone(440, -12, 0.5));
    REQUIRE(ogg.ok());
    CHECK(refused(ogg.value()).empty());
    // What a program that writes into a pipe leaves for a length is no lie.
    CHECK(refused(wav(4800, 0xffffffff)).empty());
}

TEST_CASE("Audio files: a bad one is refused in plain words") {
    CHECK(refused(wav(48000, 96'000'000)) == "This recording breaks off before its end.");
    CHECK(refused(wav(48000 * 31, 2 * 48000 * 31)) == "This recording is longer than 30 seconds.");
    CHECK(refused(wav(0, 0)) == "This recording is empty.");
    CHECK(refused(wav(10, 0, 0)) == "This is not a recording that can be read.");
    CHECK(refused(wav(10, 200, 10)) == "This is not a recording that can be read.");
    CHECK(refused(wav(10, 20, 1, 7)) == "This is not a recording that can be read.");
    CHECK(refused("") == "This is not a recording that can be read.");
    CHECK(refused("RIFF\1\2\3\4WAVE") == "This is not a recording that can be read.");
    const std::string ogg = encodeOgg(tone(440, -12, 0.5)).value();
    for (const std::size_t size : {std::size_t{4}, std::size_t{60}, std::size_t{400}})
        CHECK_FALSE(refused(ogg.substr(0, size)).empty());
}

TEST_CASE("Audio files: MP3 is read, and one cut short is a shorter take or a problem") {
    const auto path = std::filesystem::temp_directory_path() / "wrenlet-tone.mp3";
    SF_INFO info{};
    info.samplerate = 44100;
    info.channels = 1;
    info.format = SF_FORMAT_MPEG | SF_FORMAT_MPEG_LAYER_III;
    SNDFILE* file = sf_open(path.string().c_str(), SFM_WRITE, &info);
    REQUIRE(file != nullptr);
    const Pcm sound = tone(440, -12, 1, 44100);
    sf_writef_float(file, sound.samples.data(), static_cast<sf_count_t>(sound.samples.size()));
    sf_close(file);
    std::string bytes = readWhole(path, 1 << 20).value();
    std::filesystem::remove(path);
    const auto take = decodeTake(bytes, "tone.mp3");
    REQUIRE(take.ok());
    CHECK(std::fabs(take.value().seconds() - 1) < 0.1);
    const auto half = decodeTake(bytes.substr(0, bytes.size() / 2), "tone.mp3");
    if (half.ok()) CHECK(half.value().seconds() < 0.9);
}

TEST_CASE("Audio files: two hours of WAV are refused without being read") {
    const auto path = std::filesystem::temp_directory_path() / "wrenlet-two-hours.wav";
    std::ofstream(path, std::ios::binary) << wav(0, 2u * 3600 * 48000 * 2);
    std::filesystem::resize_file(path, 44 + 2ull * 3600 * 48000 * 2);  // takes no room on the disk
    const auto take = readTake(path);
    std::filesystem::remove(path);
    REQUIRE_FALSE(take.ok());
    CHECK(take.problems()[0].what == "This recording is longer than 30 seconds.");
    CHECK_FALSE(readTake(path).ok());
}

TEST_CASE("Audio files: any damage to a file gives a take or a problem, never a crash") {
    const std::string flac = encodeFlac(buzz(-20, 0.2)).value();
    const std::string ogg = encodeOgg(buzz(-20, 0.2)).value();
    Random random(5);
    for (const std::string& whole : {flac, ogg, wav(4800, 9600)}) {
        for (int i = 0; i < 60; ++i) {
            std::string bytes =
                whole.substr(0, 1 + random.below(static_cast<std::uint32_t>(whole.size())));
            for (int k = 0; k < 3; ++k)
                bytes[random.below(static_cast<std::uint32_t>(bytes.size()))] =
                    static_cast<char>(random.next());
            const auto take = decodeTake(bytes, "x");
            if (!take.ok()) continue;
            for (const float sample : take.value().samples) REQUIRE(std::isfinite(sample));
        }
    }
}
