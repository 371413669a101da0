// What a check found in a take, as a value: what, where, how much. A finding advises; she decides,
// and can silence it for a clip.
#pragma once

#include <cstdint>
#include <string>

namespace wrenlet::desk {

enum class Trouble : std::uint8_t {
    silent,
    clipped,
    too_quiet,
    noisy,
    cut_off_start,
    cut_off_end,
    two_tries,
    added_vowel,
    another_word,
};

struct Finding {
    Trouble trouble;
    double begin_s = 0, end_s = 0;  // where in the take; both 0: all of it
    double amount = 0;    // too_quiet: dB missing; noisy: dB above the room; added_vowel: s of it
    std::string instead;  // another_word: what it sounds more like
    bool operator==(const Finding&) const = default;
};

}  // namespace wrenlet::desk
