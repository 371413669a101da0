#include "content/pack/media_check.hpp"

#include <sndfile.h>

#include <algorithm>
#include <cctype>
#include <cstring>
#include <memory>
#include <vector>

#include "content/pack/svg_check.hpp"

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

ClipCheck checkSound(std::string_view bytes, bool to_the_end) {
    Memory memory{bytes};
    SF_VIRTUAL_IO io{memoryLength, memorySeek, memoryRead, nullptr, memoryTell};
    SF_INFO info{};
    const std::unique_ptr<SNDFILE, decltype(&sf_close)> file(
        sf_open_virtual(&io, SFM_READ, &info, &memory), sf_close);
    if (!file) return {"is not a recording", 0};
    const int kind = info.format & SF_FORMAT_TYPEMASK;
    const bool vorbis =
        kind == SF_FORMAT_OGG && (info.format & SF_FORMAT_SUBMASK) == SF_FORMAT_VORBIS;
    if (!vorbis && kind != SF_FORMAT_FLAC) return {"is neither OGG Vorbis nor FLAC", 0};
    if (info.samplerate != 48'000) return {"is not at 48,000 samples a second", 0};
    if (info.channels != 1) return {"is not mono", 0};
    const double seconds = static_cast<double>(info.frames) / info.samplerate;
    if (!(seconds >= kLeastClipSeconds)) return {"is too short to be heard", seconds};
    if (!(seconds <= kMostClipSeconds)) return {"is longer than 30 seconds", seconds};
    if (to_the_end) {
        std::vector<float> block(48'000);
        sf_count_t frames = 0;
        while (const sf_count_t n =
                   sf_readf_float(file.get(), block.data(), static_cast<sf_count_t>(block.size())))
            frames += n;
        if (frames != info.frames || sf_error(file.get()) != SF_ERR_NO_ERROR)
            return {"breaks off before its end", seconds};
    }
    return {"", seconds};
}

unsigned bigEndian(std::string_view bytes, std::size_t at) {
    unsigned value = 0;
    for (std::size_t i = 0; i < 4; ++i)
        value = (value << 8) | static_cast<unsigned char>(bytes[at + i]);
    return value;
}

std::string whyNoPng(std::string_view bytes) {
    constexpr std::size_t kHeader = 33;
    if (bytes.size() < kHeader + 12 || bytes.substr(12, 4) != "IHDR" ||
        bytes.substr(bytes.size() - 8, 4) != "IEND")
        return "is cut short";
    const unsigned width = bigEndian(bytes, 16), height = bigEndian(bytes, 20);
    if (width == 0 || height == 0 || width > kMostPictureSide || height > kMostPictureSide)
        return "is larger than " + std::to_string(kMostPictureSide) + " pixels a side";
    return "";
}

}  // namespace

ClipCheck checkClip(std::string_view bytes) {
    return checkSound(bytes, false);
}

ClipCheck checkClipWhole(std::string_view bytes) {
    return checkSound(bytes, true);
}

std::string whyNoPicture(std::string_view bytes) {
    if (bytes.size() > kMostPictureBytes) return "is larger than 1 MB";
    if (bytes.substr(0, 8) == "\x89PNG\r\n\x1A\n") return whyNoPng(bytes);
    return whyNoSvg(bytes);
}

}  // namespace wrenlet::pack
