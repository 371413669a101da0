// What a teacher heard when she asked one child aloud: her mark, and nothing of the voice. It is
// kept apart from what tablets bring, and weighed as what it is: an answer that is spoken is hardly
// ever right by chance, and "almost" speaks for neither side.
#pragma once

#include <cstdint>
#include <string>

#include "content/exercise/item.hpp"

namespace wrenlet::practice {

enum class HeardAs : std::uint8_t { right, almost, wrong };

struct Heard {
    std::string child;     // id
    std::int64_t day = 0;  // days since 1970-01-01
    std::string skill;     // id
    exercise::TurnsOn turns_on;
    std::string asked;  // the item's subject
    HeardAs mark = HeardAs::right;
    bool is_new_word = false;  // of a probe: a word that the class had not practised
    bool operator==(const Heard&) const = default;
};

/// Marks at one cell, or over several.
struct HeardCounts {
    int right = 0, almost = 0, wrong = 0;
    int all() const { return right + almost + wrong; }
    void add(HeardAs mark) {
        ++(mark == HeardAs::right ? right : mark == HeardAs::almost ? almost : wrong);
    }
    bool operator==(const HeardCounts&) const = default;
};

}  // namespace wrenlet::practice
