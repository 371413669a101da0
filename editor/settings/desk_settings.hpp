// How the desk is set for her eyes, hands and ears, and the small file on this machine that keeps
// it across starts. It is never in the classroom folder: two desks may share one.
#pragma once

#include <array>
#include <filesystem>
#include <string>
#include <string_view>

#include "content/common/result.hpp"

namespace wrenlet::desk {

/// Sizes of text in percent of the usual.
inline constexpr std::array<int, 5> kTextPercents{90, 100, 115, 130, 150};

struct DeskSettings {
    int text_percent = 100;   // one of kTextPercents
    bool motion = true;       // off: the ring while it listens and the bar of long work stand still
    bool letters = true;      // off: a letter alone is no key
    std::string microphone;   // by its system's name; empty: the system's own choice
    std::string loudspeaker;  // the same
    bool operator==(const DeskSettings&) const = default;
};

/// The next size in that direction (1 or -1), or the same at the end.
int nextTextPercent(int percent, int step);

/// Errors: broken JSON, a field out of its range.
Result<DeskSettings> readDeskSettings(std::string_view json, std::string_view where);
std::string writeDeskSettings(const DeskSettings& settings);

/// As they were kept; the usual ones where none were, and with a warning where they cannot be read.
/// Always a value.
Result<DeskSettings> openDeskSettings(const std::filesystem::path& file);
/// Replaces the file whole. Errors: folder gone, disk full, not writable.
Result<Done> keepDeskSettings(const std::filesystem::path& file, const DeskSettings& settings);

}  // namespace wrenlet::desk
