#include "content/pack/sound_facts.hpp"

namespace wrenlet::pack {

std::optional<SoundFacts> soundFacts(std::string_view bytes, bool to_the_end) {
    return factsBySndfile(bytes, to_the_end);
}

}  // namespace wrenlet::pack
