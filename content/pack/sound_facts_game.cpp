#include "content/pack/sound_facts.hpp"

namespace wrenlet::pack {

std::optional<SoundFacts> soundFacts(std::string_view bytes, bool to_the_end) {
    return factsByHeaders(bytes, to_the_end);
}

}  // namespace wrenlet::pack
