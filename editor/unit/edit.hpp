// A small change of a unit, by the id of what it changes, that can be taken back. Every key and
// press of the teacher that changes a unit becomes edits, so that undo reaches all of them.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "content/pack/unit.hpp"

namespace wrenlet::desk {

/// Of a word by its wordId(): another word in its place, or none. An empty id puts a new one in.
struct PutWord {
    std::string id;
    std::optional<pack::UnitWord> word;
    std::size_t at = 0;  // where it stands afterwards, from 0; past the end: last
};

struct PutSentence {
    std::string id;
    std::optional<pack::UnitSentence> sentence;
    std::size_t at = 0;
};

struct PutTitle {
    std::string title;
};

struct PutAccents {
    std::vector<speech::Accent> accents;
};

/// A skill, or a single item, is off or on again.
struct PutSkillOff {
    std::string skill;
    bool off = true;
};
struct PutItemOff {
    std::string item;
    bool off = true;
};

/// A sound (IPA) that the unit is about, or not any more.
struct PutFocusSound {
    std::string sound;
    bool on = true;
};

/// The recording of a clip; none: the demo voice again. The take's file stays where it is.
struct PutRecording {
    std::string clip;
    std::optional<pack::UnitRecording> recording;
};

using Edit = std::variant<PutWord, PutSentence, PutTitle, PutAccents, PutSkillOff, PutItemOff,
                          PutFocusSound, PutRecording>;

/// A unit as edits keep it: skills, items and recordings sorted, no id twice, no places.
pack::Unit inOrder(pack::Unit unit);

/// Changes `unit` and returns the edit that takes the change back. REQUIRES: `unit` is inOrder();
/// an id that an edit names is there, and one that it brings is not.
Edit apply(pack::Unit& unit, const Edit& edit);

}  // namespace wrenlet::desk
