// What is said around a question, and what each clip points at: the question, both sides of a
// correction, the word itself when it is right. Clips that the pack does not have are left out.
// Each mechanic's part is written in a file of its own: sort_prompts.cpp, join_prompts.cpp, ...
#pragma once

#include "content/pack/pack.hpp"
#include "game/rounds/count_round.hpp"
#include "game/rounds/join_round.hpp"
#include "game/rounds/sort_round.hpp"
#include "game/scenes/telling.hpp"

namespace wrenlet::game {

/// Silence between parts that lie apart, and between parts that lean together.
inline constexpr Millis kApart = 450, kTogether = 120;

/// How a question is put: first of its kind in a turn, first of its round, or one more.
enum class Asking : std::uint8_t { first_time, first, next, again };

class Prompts {
  public:
    explicit Prompts(const pack::Pack& pack) : pack_(pack) {}

    Script phrase(std::string_view id) const;
    /// "Listen again", and then what is to be listened to.
    Script listenAgain(const Script& then) const;

    Script ask(const SortRound& round, Asking asking) const;
    Script together(const SortRound& round) const;
    /// "cat ... bee, at ... ee", then "cat ... hat, at ... at".
    Script explain(const SortRound& round) const;
    Script right(const SortRound& round) const;

    /// The tiles of a run, or all when they are joined.
    Script tiles(const JoinRound& round, std::size_t first, std::size_t last, Millis gap) const;
    Script ask(const JoinRound& round, Asking asking) const;
    /// All parts close together, then each picture named once.
    Script pick(const JoinRound& round, bool again) const;
    Script together(const JoinRound& round) const;
    /// The chosen word's own parts, then the asked one's.
    Script explain(const JoinRound& round) const;
    Script right(const JoinRound& round) const;
    /// The parts of another word, as an item of the same skill has them; empty if none has.
    std::vector<exercise::Part> partsOf(exercise::Skill skill, std::string_view word) const;

    Script ask(const CountRound& round, Asking asking) const;
    Script together(const CountRound& round) const;
    /// The sentence word by word.
    Script explain(const CountRound& round) const;
    Script right(const CountRound& round) const;

  private:
    void add(Script& script, const std::string& clip, Millis gap, Show show = {}) const;
    void addPhrase(Script& script, std::string_view id, Millis gap, Show show = {}) const;
    /// The clip of what a word rhymes by; empty when there is none.
    std::string rimeClip(const SortRound& round, std::string_view word) const;

    const pack::Pack& pack_;
};

}  // namespace wrenlet::game
