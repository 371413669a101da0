#include <sndfile.h>

#include <algorithm>
#include <cstring>
#include <memory>
#include <vector>

#include "content/pack/sound_facts.hpp"

namespace wrenlet::pack {
namespace {

/// Bytes in memory as libsndfile reads a file.
struct Memory {
    std::string_view bytes;
    sf_count_t at = 0;
};

sf_count_t memoryLength(void* user) {
    return static_cast<sf_count_t>(static_cast<Memory*>(user)->bytes.size());
}

sf_count_t memorySeek(sf_count_t offset, int whence, void* user) {
    auto& memory = *static_cast<Memory*>(user);
    const sf_count_t base = whence == SEEK_SET   ? 0
                            : whence == SEEK_CUR ? memory.at
                                                 : memoryLength(user);
    const sf_count_t to = base + offset;
    if (to < 0 || to > memoryLength(user)) return -1;
    return memory.at = to;
}

sf_count_t memoryRead(void* out, sf_count_t count, void* user) {
    auto& memory = *static_cast<Memory*>(user);
    const sf_count_t n = std::max<sf_count_t>(0, std::min(count, memoryLength(user) - memory.at));
    std::memcpy(out, memory.bytes.data() + memory.at, static_cast<std::size_t>(n));
    memory.at += n;
    return n;
}

sf_count_t memoryTell(void* user) {
    return static_cast<Memory*>(user)->at;
}

bool decodes(SNDFILE* file, sf_count_t frames) {
    std::vector<float> block(48'000);
    const auto size = static_cast<sf_count_t>(block.size());
    sf_count_t decoded = 0;
    while (const sf_count_t n = sf_readf_float(file, block.data(), size)) decoded += n;
    return decoded == frames && sf_error(file) == SF_ERR_NO_ERROR;
}

}  // namespace

std::optional<SoundFacts> factsBySndfile(std::string_view bytes, bool to_the_end) {
    Memory memory{bytes};
    SF_VIRTUAL_IO io{memoryLength, memorySeek, memoryRead, nullptr, memoryTell};
    SF_INFO info{};
    const std::unique_ptr<SNDFILE, decltype(&sf_close)> file(
        sf_open_virtual(&io, SFM_READ, &info, &memory), sf_close);
    if (!file) return std::nullopt;
    SoundFacts facts;
    const int kind = info.format & SF_FORMAT_TYPEMASK;
    facts.is_vorbis =
        kind == SF_FORMAT_OGG && (info.format & SF_FORMAT_SUBMASK) == SF_FORMAT_VORBIS;
    facts.is_flac = kind == SF_FORMAT_FLAC;
    facts.rate = info.samplerate;
    facts.channels = info.channels;
    facts.frames = info.frames;
    if (to_the_end && facts.channels == 1) facts.whole = decodes(file.get(), info.frames);
    return facts;
}

}  // namespace wrenlet::pack
