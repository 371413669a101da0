#include <ogg/ogg.h>

#include <cstring>

#include "content/pack/sound_facts.hpp"

namespace wrenlet::pack {
namespace {

/// `count` bits from `bit` on, the highest first.
std::int64_t bits(std::string_view bytes, std::size_t bit, std::size_t count) {
    std::int64_t value = 0;
    for (std::size_t i = bit; i < bit + count; ++i)
        value = value << 1 | ((static_cast<unsigned char>(bytes[i / 8]) >> (7 - i % 8)) & 1);
    return value;
}

/// The block STREAMINFO, which comes first: https://www.rfc-editor.org/rfc/rfc9639#section-8.2
std::optional<SoundFacts> flacFacts(std::string_view bytes, bool to_the_end) {
    constexpr std::size_t kHeader = 4 + 4 + 34;
    if (bytes.size() < kHeader || bits(bytes, 33, 7) != 0 || bits(bytes, 40, 24) != 34)
        return std::nullopt;
    SoundFacts facts;
    facts.is_flac = true;
    facts.rate = static_cast<int>(bits(bytes, 64 + 80, 20));
    facts.channels = static_cast<int>(bits(bytes, 64 + 100, 3)) + 1;
    facts.frames = bits(bytes, 64 + 108, 36);
    facts.whole = !to_the_end;
    return facts;
}

/// libogg's view of bytes in memory.
class Pages {
  public:
    explicit Pages(std::string_view bytes) {
        ogg_sync_init(&sync_);
        if (char* to = ogg_sync_buffer(&sync_, static_cast<long>(bytes.size()))) {
            std::memcpy(to, bytes.data(), bytes.size());
            ogg_sync_wrote(&sync_, static_cast<long>(bytes.size()));
        }
    }
    ~Pages() { ogg_sync_clear(&sync_); }
    Pages(const Pages&) = delete;
    Pages& operator=(const Pages&) = delete;

    /// False at the end, or where bytes are no page, or a damaged one.
    bool next(ogg_page& page) { return ogg_sync_pageout(&sync_, &page) == 1; }

  private:
    ogg_sync_state sync_{};
};

/// The identification header: https://xiph.org/vorbis/doc/Vorbis_I_spec.html#x1-630004.2.2
bool readIdentification(const ogg_page& page, SoundFacts& facts) {
    constexpr long kHeader = 30;
    if (page.body_len < kHeader || std::memcmp(page.body, "\x01vorbis\0\0\0\0", 11) != 0)
        return false;
    facts.is_vorbis = true;
    facts.channels = page.body[11];
    facts.rate = 0;
    for (int i = 3; i >= 0; --i) facts.rate = (facts.rate & 0xffffff) << 8 | page.body[12 + i];
    return true;
}

}  // namespace

std::optional<SoundFacts> factsByHeaders(std::string_view bytes, bool to_the_end) {
    if (bytes.substr(0, 4) == "fLaC") return flacFacts(bytes, to_the_end);
    Pages pages(bytes);
    ogg_page page{};
    SoundFacts facts;
    if (!pages.next(page) || ogg_page_bos(&page) == 0) return std::nullopt;
    if (!readIdentification(page, facts)) return SoundFacts{};  // something else in OGG
    bool ended = false;
    while (pages.next(page)) {
        if (const std::int64_t at = ogg_page_granulepos(&page); at > facts.frames)
            facts.frames = at;
        ended = ogg_page_eos(&page) != 0;
    }
    facts.whole = !to_the_end || ended;
    return facts;
}

}  // namespace wrenlet::pack
