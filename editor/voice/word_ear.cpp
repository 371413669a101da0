#include "editor/voice/word_ear.hpp"

namespace wrenlet::desk {

std::unique_ptr<WordEar> openWordEar() {
    return nullptr;
}

}  // namespace wrenlet::desk
