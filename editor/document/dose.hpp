// How long a child has practised here, beside what studies of such teaching found. A gauge and no
// lock: lessons and small tables count as much and are not measured.
#pragma once

#include <cstdint>
#include <string>

namespace wrenlet::desk {

/// Hours in all, lessons and practice together. From 5 to 18: National Reading Panel 2000, chapter
/// 2; the gain was greatest near 10.2: Erbeli et al. 2024.
inline constexpr double kDoseFrom = 5, kDoseMost = 10.2, kDoseTo = 18;

struct Dose {
    double hours = 0;
    std::string says;  // "41 minutes here. Studies of …"
};
Dose doseOf(std::int64_t practised_ms);

}  // namespace wrenlet::desk
