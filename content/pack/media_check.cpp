#include "content/pack/media_check.hpp"

#include "content/pack/sound_facts.hpp"
#include "content/pack/svg_check.hpp"

namespace wrenlet::pack {
namespace {

ClipCheck checkSound(std::string_view bytes, bool to_the_end) {
    const auto facts = soundFacts(bytes, false);
    if (!facts) return {"is not a recording", 0};
    if (!facts->is_vorbis && !facts->is_flac) return {"is neither OGG Vorbis nor FLAC", 0};
    if (facts->rate != 48'000) return {"is not at 48,000 samples a second", 0};
    if (facts->channels != 1) return {"is not mono", 0};
    const double seconds = static_cast<double>(facts->frames) / facts->rate;
    if (!(seconds >= kLeastClipSeconds)) return {"is too short to be heard", seconds};
    if (!(seconds <= kMostClipSeconds)) return {"is longer than 30 seconds", seconds};
    if (to_the_end && !soundFacts(bytes, true)->whole)
        return {"breaks off before its end", seconds};
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
