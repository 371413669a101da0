// What a recording says of itself, and whether it can be decoded. There are two readers: libsndfile
// natively; libogg and the headers in the web page, for which libsndfile's decoders are too much. A
// test holds one against the other.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace wrenlet::pack {

struct SoundFacts {
    bool is_vorbis = false, is_flac = false;
    int rate = 0;  // samples a second
    int channels = 0;
    std::int64_t frames = 0;
    bool whole = true;  // so many frames are there, to its end; looked at when that is asked for
};

/// Nothing when the library takes it for no recording; decodes it when asked `to_the_end`.
std::optional<SoundFacts> factsBySndfile(std::string_view bytes, bool to_the_end);
/// Decodes nothing: of OGG, pages that are whole up to the last; of FLAC, its header alone, which
/// is never enough `to_the_end`.
std::optional<SoundFacts> factsByHeaders(std::string_view bytes, bool to_the_end);

/// The one of the two that this build has for its packs.
std::optional<SoundFacts> soundFacts(std::string_view bytes, bool to_the_end);

}  // namespace wrenlet::pack
