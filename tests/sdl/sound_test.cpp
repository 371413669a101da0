#include "game/sdl/sound_device.hpp"

#include <doctest/doctest.h>
#include <sndfile.h>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <cstring>
#include <string>
#include <vector>

#include "game/sdl/clips.hpp"

using namespace wrenlet;
using namespace wrenlet::game;

namespace {

std::vector<std::int16_t> tone(std::size_t samples) {
    std::vector<std::int16_t> out;
    for (std::size_t i = 0; i < samples; ++i)
        out.push_back(static_cast<std::int16_t>(9000 * std::sin(0.05 * static_cast<double>(i))));
    return out;
}

// A sound file in memory, by libsndfile.
std::string encoded(const std::vector<std::int16_t>& mono, int format, int rate) {
    struct Memory {
        std::string bytes;
        sf_count_t at = 0;
    } memory;
    SF_VIRTUAL_IO io{
        [](void* m) { return static_cast<sf_count_t>(static_cast<Memory*>(m)->bytes.size()); },
        [](sf_count_t to, int whence, void* m) {
            auto& file = *static_cast<Memory*>(m);
            const auto size = static_cast<sf_count_t>(file.bytes.size());
            file.at = whence == SEEK_SET ? to : whence == SEEK_CUR ? file.at + to : size + to;
            return file.at;
        },
        [](void*, sf_count_t, void*) { return sf_count_t{0}; },
        [](const void* data, sf_count_t count, void* m) {
            auto& file = *static_cast<Memory*>(m);
            const auto end = static_cast<std::size_t>(file.at + count);
            if (file.bytes.size() < end) file.bytes.resize(end);
            std::memcpy(file.bytes.data() + file.at, data, static_cast<std::size_t>(count));
            file.at += count;
            return count;
        },
        [](void* m) { return static_cast<Memory*>(m)->at; }};
    SF_INFO info{};
    info.samplerate = rate;
    info.channels = 1;
    info.format = format;
    SNDFILE* file = sf_open_virtual(&io, SFM_WRITE, &info, &memory);
    REQUIRE(file != nullptr);
    sf_write_short(file, mono.data(), static_cast<sf_count_t>(mono.size()));
    sf_close(file);
    return memory.bytes;
}

}  // namespace

TEST_CASE("sound: clips are decoded to the sample") {
    Mixer mixer;
    SoundDevice device(mixer);
    device.open(SoundDevice::Use::decode_only);
    const auto wanted = tone(12'345);
    for (const int format : {SF_FORMAT_WAV | SF_FORMAT_PCM_16, SF_FORMAT_FLAC | SF_FORMAT_PCM_16}) {
        const auto pcm = decodeClip(encoded(wanted, format, 48'000));
        REQUIRE(pcm != nullptr);
        REQUIRE(pcm->samples.size() == wanted.size());
        int apart = 0;
        for (std::size_t i = 0; i < wanted.size(); ++i)
            apart = std::max(apart, std::abs(pcm->samples[i] - wanted[i]));
        CHECK(apart <= 1);  // SDL goes by way of floating point
    }
    const auto vorbis = decodeClip(encoded(wanted, SF_FORMAT_OGG | SF_FORMAT_VORBIS, 48'000));
    REQUIRE(vorbis != nullptr);
    CHECK(vorbis->samples.size() == wanted.size());
    CHECK(decodeClip("no sound at all") == nullptr);
    CHECK(decodeClip("") == nullptr);
}

TEST_CASE("sound: clips are decoded when wanted, or one by one when idle") {
    pack::Pack pack;
    const std::string wav = encoded(tone(4800), SF_FORMAT_WAV | SF_FORMAT_PCM_16, 48'000);
    for (const char* id : {"word:cat", "word:dog", "word:owl", "word:pig"}) {
        pack::Clip clip;
        clip.id = id;
        clip.bytes = pack.clips.size() == 2 ? "broken" : wav;
        pack.clips.push_back(clip);
    }
    Mixer mixer;
    SoundDevice device(mixer);
    int opened = 0;
    DecodedClips clips(pack, [&] {
        ++opened;
        device.open(SoundDevice::Use::decode_only);
    });
    CHECK(clips.bytes() == 0);
    CHECK_FALSE(device.isOpen());
    int decoded = 0;
    while (clips.decodeOne()) ++decoded;
    CHECK(decoded == 4);
    CHECK(clips.bytes() == 3u * 4800 * 2);
}

TEST_CASE("sound: no more clips are held than there is room for, and each is had when wanted") {
    const std::string wav = encoded(tone(4800), SF_FORMAT_WAV | SF_FORMAT_PCM_16, 48'000);
    pack::Pack pack;
    for (const char* id : {"word:cat", "word:dog", "word:owl", "word:pig"}) {
        pack::Clip clip;
        clip.id = id;
        clip.bytes = wav;
        pack.clips.push_back(clip);
    }
    Mixer mixer;
    SoundDevice device(mixer);
    device.open(SoundDevice::Use::decode_only);
    constexpr std::size_t kOne = 4800 * 2;
    DecodedClips clips(
        pack, [] {}, 2 * kOne);
    while (clips.decodeOne()) {
    }
    CHECK(clips.bytes() == 2 * kOne);
    const auto cat = clips.clip("word:cat");
    CHECK(clips.clip("word:cat") == cat);
    const auto owl = clips.clip("word:owl");  // the dog goes, who was wanted before the cat
    CHECK(clips.clip("word:cat") == cat);
    REQUIRE(clips.clip("word:pig") != nullptr);  // and now the owl
    CHECK(clips.bytes() == 2 * kOne);
    CHECK(clips.clip("word:cat") == cat);
    CHECK(owl->samples.size() == 4800);  // whoever plays it has it
    CHECK(clips.clip("word:owl") != owl);
    CHECK(clips.bytes() == 2 * kOne);
}

TEST_CASE("sound: a device pulls what is said") {
    SDL_SetHint(SDL_HINT_AUDIODRIVER, "dummy");
    Mixer mixer;
    std::atomic<int> loudest{0};
    Pcm pcm;
    pcm.samples = tone(48'000);
    {
        SoundDevice device(mixer);
        device.setHeard([&](const std::int16_t* stereo, std::size_t frames) {
            for (std::size_t i = 0; i < 2 * frames; ++i)
                if (std::abs(stereo[i]) > loudest) loudest = std::abs(stereo[i]);
        });
        device.open(SoundDevice::Use::play);
        CHECK(device.trouble().empty());
        CHECK(device.bufferFrames() == 512);
        const Mixer::Line line{&pcm, 0};
        device.lock();
        mixer.begin(Mixer::Lane::voice, {&line, 1});
        device.unlock();
        for (int i = 0; i < 400 && loudest == 0; ++i) SDL_Delay(5);
    }
    CHECK(loudest > 1000);
}

TEST_CASE("sound: without a device the game goes on in silence and says why") {
    SDL_SetHintWithPriority(SDL_HINT_AUDIODRIVER, "no-such-driver", SDL_HINT_OVERRIDE);
    Mixer mixer;
    SoundDevice device(mixer);
    device.open(SoundDevice::Use::play);
    CHECK(device.trouble().find("No sound") != std::string::npos);
    CHECK(device.bufferFrames() == 0);
    const auto pcm = decodeClip(encoded(tone(480), SF_FORMAT_WAV | SF_FORMAT_PCM_16, 48'000));
    CHECK(pcm != nullptr);  // so that what is said still takes its time
}
