// How a tablet is set for the children who use it: what an adult chose on her page. It is kept
// beside the tablet's store as a small file of its own, and never in the classroom folder, for two
// tablets may stand in two corners.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"
#include "game/stage/mark.hpp"
#include "game/stage/voice.hpp"

namespace wrenlet::game {

inline constexpr int kLeastVolume = 25, kMostVolume = 100;  // percent
using pack::kLeastMinutes, pack::kMostMinutes;              // of a session

struct TabletSettings {
    int volume_percent = kMostVolume;  // bounds every sample: see Mixer::setVolume
    bool motion = true;                // off: the same states by cuts
    bool drags = true;                 // off: pieces are touched one after the other, never drawn
    bool left_hand = false;            // what is looked at lies right of the hand's place
    int minutes = 0;                   // of a session, 5 to 8; 0: as the class list says
    Millis scan_pace = 0;              // one switch: how long the mark stands; 0: it stays
    bool captions = false;             // what is said, written small for an adult beside the child
    bool paused = false;               // the game is quiet until an adult lets it go on
    bool operator==(const TabletSettings&) const = default;
};

/// Errors: broken JSON, a field out of its range.
Result<TabletSettings> readTabletSettings(std::string_view json, std::string_view where);
std::string writeTabletSettings(const TabletSettings& settings);

/// As they were kept; the usual ones where none were, and with a warning where they cannot be read.
/// Always a value.
Result<TabletSettings> openTabletSettings(const std::filesystem::path& file);
/// Replaces the file whole. Errors: folder gone, disk full, not writable.
Result<Done> keepTabletSettings(const std::filesystem::path& file, const TabletSettings& settings);

}  // namespace wrenlet::game
