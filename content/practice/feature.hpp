// What a question asks of a child, as the parts that add up to how hard it is: for its task the
// child herself, the unit of sound and the skill; for its sound her hearing, the place in the word,
// the class of the sound, the sound, and that sound in that place. Mastery holds a belief of each
// part.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string_view>

#include "content/exercise/item.hpp"
#include "content/practice/gaussian.hpp"

namespace wrenlet::practice {

/// The kinds of parts. policy.hpp says how much children differ in each.
enum class Family : std::uint8_t {
    // of the task
    child,  // in every task
    unit,   // in every task on that unit of sound
    skill,  // task x unit
    // of the sound
    hearing,   // in every sound
    position,  // sounds in that place
    class_at,  // a class of sounds (stops, fricatives, short vowels …) in that place
    sound,     // one sound, wherever it stands
    sound_at,  // that sound in that place: what the desk tells of
    part_at,   // a part of a word, a number, a tune: no sound stands in its way
};
inline constexpr std::size_t kFamilyCount = 9;
constexpr bool isOfTask(Family family) {
    return family <= Family::skill;
}

/// Names one part for ever: FNV-1a over its family and names.
using FeatureKey = std::uint64_t;

struct Feature {
    FeatureKey key = 0;
    Family family = Family::child;
    double share = 1;  // how much of it goes in: below 1 where a question has several sounds
    bool operator==(const Feature&) const = default;
};

/// Of one question: z of the task and z of the sound (known.hpp) are the eases and the sums of
/// share x belief over their parts.
struct Features {
    static constexpr std::size_t kMost = 12;
    std::array<Feature, kMost> parts{};  // those of the task first
    std::size_t count = 0;
    std::size_t of_task = 0;
    double task_ease = 0, sound_ease = 0;  // in log-odds, before any answer

    std::span<const Feature> task() const { return std::span(parts).first(of_task); }
    std::span<const Feature> sound() const {
        return std::span(parts).subspan(of_task, count - of_task);
    }
    const Feature* begin() const { return parts.data(); }
    const Feature* end() const { return parts.data() + count; }
    bool operator==(const Features&) const = default;
};

/// `turns_on.sound` may be several sounds (a rime): each then goes in by a share, three at most.
/// A skill that is not in the table counts as one of its own with no unit.
Features featuresOf(std::string_view skill, const exercise::TurnsOn& turns_on);

/// The chance of guessing among so many choices, a little over 1 / n since children rule out what
/// is far off; and of a slip. Constants in policy.hpp.
Answering answeringAmong(std::size_t choices);

}  // namespace wrenlet::practice
