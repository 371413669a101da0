// A take as a picture of its wave: for each column how far it swings, where the ends are and where
// trouble is marked. Made once per take; the window only draws it.
#pragma once

#include <vector>

#include "editor/voice/take.hpp"

namespace wrenlet::desk {

struct WavePicture {
    struct Column {
        float low = 0, high = 0;  // -1 to 1
    };
    struct Mark {
        double begin, end;    // 0 to 1 of the width
        std::size_t finding;  // index into CheckedTake::findings
    };
    std::vector<Column> columns;
    double kept_begin = 0, kept_end = 1;  // 0 to 1 of the width; outside is left off
    std::vector<Mark> marks;              // findings that have a place
};

/// REQUIRES: columns > 0. The loudest swing reaches 1, unless the take is silent.
WavePicture wavePicture(const CheckedTake& checked, std::size_t columns);

/// The sample of the take under `part` (0 to 1) of the width: for a grip that is dragged.
std::size_t sampleAt(const CheckedTake& checked, double part);

}  // namespace wrenlet::desk
