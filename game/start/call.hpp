// How the game was called: the classroom, where the tablet keeps its own, and what is set for this
// time over what the tablet keeps.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "game/start/tablet_settings.hpp"

namespace wrenlet::game {

extern const char* const kUsage;

struct Call {
    std::filesystem::path classroom, data, script, pictures;
    std::filesystem::path tried, drawn;  // a pack of which one question is tried; a picture of it
    std::string item;                    // that question's id
    std::optional<int> width, height;    // px
    std::optional<std::uint64_t> seed;
    bool off_screen = false, full_screen = false, announce = false, first_frame = false;

    std::optional<int> volume_percent, minutes;
    std::optional<Millis> scan_pace;
    bool motion_off = false, touch_only = false, left_hand = false, captions = false;

    /// What the tablet keeps, with what was called for instead.
    TabletSettings over(TabletSettings kept) const;
};

/// Nothing when an argument is unknown or out of its range, or there is neither a classroom nor a
/// pack to try.
std::optional<Call> callOf(const std::vector<std::string>& args);

}  // namespace wrenlet::game
