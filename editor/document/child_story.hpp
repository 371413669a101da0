// One child's page in words and rows: what can be said in a sentence, then sound by sound.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "editor/document/class_map.hpp"
#include "editor/document/likely_range.hpp"

namespace wrenlet::desk {

struct SoundRow {
    practice::Cell cell;
    std::string label;     // "–t"
    std::string examples;  // "cat, hat"
    Said said = Said::not_asked;
    bool shielded = false;
    int right = 0, seen = 0;
    LikelyRange range;
    double guess = 0;  // share that guessing gets
};

struct SoundGroup {
    std::string skill;    // id
    std::string heading;  // "Sort by rhyme"
    int answers = 0;
    std::vector<SoundRow> rows;  // most missed first
};

struct ChildStory {
    std::string summary;  // "Misses rhyme æt: heard /ʌt/ for /æt/. Steady on 7 of 12 sounds."
    std::string facts;  // "214 answers on 6 days, 41 minutes of answering. 12 answers on 3 Nov not
                        // counted: answered without listening."
    std::vector<SoundGroup> groups;  // where most is missed first
};

/// "12 answers on 3 Nov not counted: answered without listening." The last days when there are
/// several; empty when all are counted.
std::string notCountedSentence(const practice::ChildProgress& child);

/// REQUIRES: child < opened.children.size().
ChildStory storyOf(const OpenedClass& opened, std::size_t child);

/// How many of its sounds are missed.
std::ptrdiff_t missedIn(const SoundGroup& group);

/// What the map's foot reads out of one place: "Takes it for d five times.", or why nothing is
/// said.
std::string takenSentence(const practice::SoundLine& line);

}  // namespace wrenlet::desk
