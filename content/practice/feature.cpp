#include "content/practice/feature.hpp"

#include <algorithm>
#include <cstddef>
#include <vector>

#include "content/practice/policy.hpp"
#include "content/speech/features.hpp"

namespace wrenlet::practice {
namespace {

using exercise::Task;
using exercise::Unit;
using speech::Phoneme;

/// FNV-1a, 64 bits.
class Key {
  public:
    explicit Key(Family family) { add(static_cast<unsigned char>(family)); }
    Key& operator()(std::string_view text) {
        for (const char c : text) add(static_cast<unsigned char>(c));
        add(0);
        return *this;
    }
    Key& operator()(std::uint8_t number) {
        add(number);
        return *this;
    }
    operator FeatureKey() const { return hash_; }

  private:
    void add(unsigned char byte) { hash_ = (hash_ ^ byte) * 0x100000001b3ull; }
    std::uint64_t hash_ = 0xcbf29ce484222325ull;
};

/// The longest symbol that `text` begins with; it has at most three letters of four bytes.
std::optional<Phoneme> leadingSound(std::string_view text, std::size_t& length) {
    for (length = std::min<std::size_t>(text.size(), 6); length > 0; --length)
        if (const auto sound = speech::fromIpa(text.substr(0, length))) return sound;
    return std::nullopt;
}

/// "æt" is two sounds; a letter, a number, a word or "asking" is none.
struct Sounds {
    static constexpr std::size_t kMost = 3;
    std::array<Phoneme, kMost> at{};
    std::size_t count = 0;
};

Sounds soundsIn(std::string_view text) {
    Sounds sounds;
    while (!text.empty() && sounds.count < Sounds::kMost) {
        std::size_t length = 0;
        const auto sound = leadingSound(text, length);
        if (!sound) return {};
        sounds.at[sounds.count++] = *sound;
        text.remove_prefix(length);
    }
    return sounds;
}

/// Stops, affricates, fricatives, nasals, the lateral, glides; then short and long vowels.
std::uint8_t classOf(Phoneme sound) {
    if (speech::isVowel(sound)) return speech::vowelFeatures(sound).is_long ? 101 : 100;
    return static_cast<std::uint8_t>(speech::consonantFeatures(sound).manner);
}

bool tellsSounds(exercise::Position position) {
    using exercise::Position;
    return position == Position::first || position == Position::middle ||
           position == Position::last || position == Position::rime;
}

bool turnsOnSound(exercise::Position position) {
    return tellsSounds(position) || position == exercise::Position::letter;
}

double easeOf(exercise::Skill skill) {
    return kModel.unit_ease[static_cast<std::size_t>(skill.unit)] +
           kModel.task_ease[static_cast<std::size_t>(skill.task)];
}

}  // namespace

Features featuresOf(std::string_view skill, const exercise::TurnsOn& turns_on) {
    Features features;
    const auto add = [&features](FeatureKey key, Family family, double share = 1) {
        features.parts[features.count++] = {key, family, share};
    };
    const auto place = static_cast<std::uint8_t>(turns_on.position);
    add(Key(Family::child), Family::child);
    if (const auto known = exercise::skillFromId(skill)) {
        add(Key(Family::unit)(static_cast<std::uint8_t>(known->unit)), Family::unit);
        features.task_ease = easeOf(*known);
    }
    add(Key(Family::skill)(skill), Family::skill);
    features.of_task = features.count;

    if (!turnsOnSound(turns_on.position)) {
        features.sound_ease = kModel.part_ease;
        add(Key(Family::part_at)(turns_on.sound)(place), Family::part_at);
        return features;
    }
    features.sound_ease = kModel.sound_ease;
    add(Key(Family::hearing), Family::hearing);
    add(Key(Family::sound_at)(turns_on.sound)(place), Family::sound_at);
    if (!tellsSounds(turns_on.position)) return features;
    add(Key(Family::position)(place), Family::position);
    const Sounds sounds = soundsIn(turns_on.sound);
    const double share = sounds.count > 1 ? kModel.share_of_several : 1;
    for (std::size_t i = 0; i < sounds.count; ++i) {
        add(Key(Family::sound)(speech::ipa(sounds.at[i])), Family::sound, share);
        add(Key(Family::class_at)(classOf(sounds.at[i]))(place), Family::class_at, share);
    }
    return features;
}

Answering answeringAmong(std::size_t choices) {
    const double chance = 1 / static_cast<double>(std::max<std::size_t>(1, choices));
    return {std::min(kModel.most_guess, chance + kModel.guess_over_chance), kModel.slip};
}

}  // namespace wrenlet::practice
