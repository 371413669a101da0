// One question of a pack by itself, for the teacher who wants to meet it as a child does: played in
// a window until it is answered, or drawn as it stands when the child may answer. The desk calls
// the program for both, and so never needs to know how the game draws.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

#include "content/common/result.hpp"
#include "game/stage/voice.hpp"
#include "game/start/tablet_settings.hpp"

namespace wrenlet::game {

struct TryOut {
    std::filesystem::path pack;
    std::string item;  // id; empty: the pack's first
    std::filesystem::path assets;
    TabletSettings tablet{};
    std::uint64_t random = 0;
    int width = 1280, height = 800;  // px
};

struct Still {
    std::string place;  // "pick: asked"
    Utterance said;     // what puts the question, clip by clip
};

/// Writes the picture as PNG; makes no sound. Errors: no good pack, no such question, not writable.
Result<Still> drawStill(const TryOut& tried, const std::filesystem::path& png);

/// Stays until the question is answered right, the way out was held open or the window is closed.
Result<Done> playTried(const TryOut& tried);

}  // namespace wrenlet::game
