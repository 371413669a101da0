// A teacher's unit, as she types it: a name, words and sentences, before anything is looked up;
// what of it she leaves out, and which takes of her voice belong to it. One JSON file, written by
// the desk or by hand.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/exercise/item.hpp"
#include "content/speech/accent.hpp"

namespace wrenlet::pack {

struct UnitWord {
    std::string text;                   // "rainbow"
    std::string sense;                  // "" or what tells two words of one spelling apart: "rain"
    std::vector<std::string> sounds;    // IPA symbols she confirmed by ear, a vowel's stress before
                                        // it ("ˈæ", "ˌoʊ"); empty: look it up
    std::vector<std::string> compound;  // its parts' words; empty: not a compound
    std::string picture;                // name in the picture set ("rainbow"), or of her own
                                        // beside the unit ("own-0f3a"); empty: none
    std::vector<std::string> not_for;   // ids of skills that do not ask it: "phoneme.segment"
    std::vector<std::string> kept;      // codes of warnings she has looked at: "ends-in-ks"
    std::size_t place = 0;              // where it stands in the file's list, from 1; 0: nowhere
    bool operator==(const UnitWord&) const = default;
};

/// The id that its word gets: "rainbow", or "bow~rain" with a sense.
std::string wordId(const UnitWord& word);

struct UnitSentence {
    std::string id;    // "pond-1"
    std::string text;  // "The duck sits on the pond."
    std::size_t place = 0;
    bool operator==(const UnitSentence&) const = default;
};

/// A take of her voice, and the part of it that becomes the clip. The take itself is never changed.
struct UnitRecording {
    std::string clip;          // the clip's id: "word:duck"
    std::string take;          // a file in the folder of takes: "take-0012.flac"
    std::string said;          // what was to be said: "duck", so that a changed word is noticed
    std::int64_t from_us = 0;  // microseconds into the take
    std::int64_t to_us = 0;    // past the end; more than from_us
    std::vector<std::string> kept;  // codes of checks she has silenced for it: "added-vowel"
    std::string voice{};            // whose it is: "Ms Field"; empty: her own
    bool operator==(const UnitRecording&) const = default;
};

struct Unit {
    std::string id;     // "by-the-pond"; letters, digits and hyphens
    std::string title;  // "By the pond"
    std::vector<UnitWord> words;
    std::vector<UnitSentence> sentences;
    std::vector<speech::Accent> accents;  // of the room, beyond those that item makers heed anyway
    std::vector<std::string> skills_off;  // ids of skills that it does not practise
    std::vector<std::string> items_off;   // ids of single items that are not asked
    std::vector<std::string> focus_sounds;  // IPA of the sounds it is about; empty: all
    std::vector<UnitRecording> recordings;  // one a clip at most
    std::string where;  // the file it came from, for problems: "by-the-pond.json"
    bool operator==(const Unit&) const = default;
};

inline constexpr std::uint64_t kMostUnitBytes = 4ull << 20;
inline constexpr std::size_t kMostUnitWords = 2'000;
inline constexpr std::size_t kMostItemsOff = 20'000;
inline constexpr std::size_t kMostRecordings = 10'000;
inline constexpr std::int64_t kLongestTakeUs = 120'000'000;

/// Reads a unit's JSON. `where` names the file in problems. Errors: more than kMostUnitBytes,
/// broken JSON with its line, a field of the wrong kind, more than kMostUnitWords words or
/// sentences. A word or sentence that cannot be said (digits, emoji, control characters, broken
/// UTF-8, other scripts, more than 40 letters in a word or 200 in a sentence), a word with accents
/// and no sounds given, an accent of a name that is not known, and what stands there twice is left
/// out with a warning. So is a skill that is not known, and a recording whose file or times cannot
/// be.
Result<Unit> readUnit(std::string_view json, std::string_view where);

/// The JSON that readUnit reads: the same bytes for the same unit. `where` and places are not
/// written.
std::string writeUnit(const Unit& unit);

/// `items` without those of skills that are off, those that are off themselves, those that ask a
/// word of a skill it is not for (as subject, as a choice or as something heard), and, of a skill
/// that asks for first, last or middle sounds and has some on the sounds in focus, those on others.
std::vector<exercise::Item> withoutLeftOut(std::vector<exercise::Item> items, const Unit& unit);

}  // namespace wrenlet::pack
