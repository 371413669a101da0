// What is said around a question, and what each clip points at: the question, both sides of a
// correction, the word itself when it is right. Clips that the pack does not have are left out.
// Each mechanic's part is written in a file of its own: sort_prompts.cpp, join_prompts.cpp, ...
#pragma once

#include <array>
#include <functional>

#include "content/pack/pack.hpp"
#include "game/rounds/change_round.hpp"
#include "game/rounds/count_round.hpp"
#include "game/rounds/join_round.hpp"
#include "game/rounds/pick_round.hpp"
#include "game/rounds/sort_round.hpp"
#include "game/rounds/split_round.hpp"
#include "game/scenes/pieces.hpp"
#include "game/scenes/telling.hpp"

namespace wrenlet::game {

/// Silence between parts that lie apart, and between parts that lean together.
inline constexpr Millis kApart = 450, kTogether = 120;

/// How a question is put: first of its kind in a turn, first of its round, or one more.
enum class Asking : std::uint8_t { first_time, first, next, again };

/// How far the example of a change has come.
enum class ChangeStep : std::uint8_t { begin, take, put, changed, come_out };

/// How far the example of a pick or a sort has come: which piece is heard, which choice is named,
/// then the right one found, the deciding parts of both, and what that tells.
struct SolvedStep {
    static constexpr int intro = 0, heard = 1, named = 10, found = 20, heard_part = 21,
                         found_part = 22, done = 23;
};

class Prompts {
  public:
    explicit Prompts(const pack::Pack& pack) : pack_(pack) {}

    Script phrase(std::string_view id) const;
    /// "Listen again", and then what is to be listened to.
    Script listenAgain(const Script& then) const;

    /// With an example, another card is sorted first.
    Script ask(const SortRound& round, Asking asking, const exercise::Item* example) const;
    Script together(const SortRound& round) const;
    /// "cat ... bee, at ... ee", then "cat ... hat, at ... at".
    Script explain(const SortRound& round) const;
    Script right(const SortRound& round) const;

    /// The tiles of a run, or all when they are joined.
    Script tiles(const JoinRound& round, std::size_t first, std::size_t last, Millis gap) const;
    /// With an example, its tiles come together first, and its picture is named.
    Script ask(const JoinRound& round, Asking asking, const exercise::Item* example) const;
    /// All parts close together, then each picture named once.
    Script pick(const JoinRound& round, bool again) const;
    Script together(const JoinRound& round) const;
    /// The chosen word's own parts, then the asked one's.
    Script explain(const JoinRound& round) const;
    Script right(const JoinRound& round) const;
    /// The parts of another word, as an item of the same skill has them; empty if none has.
    std::vector<exercise::Part> partsOf(exercise::Skill skill, std::string_view word) const;

    /// With an example, that is counted first.
    Script ask(const CountRound& round, Asking asking, const exercise::Item* example) const;
    Script together(const CountRound& round) const;
    /// The sentence word by word, or the word beat by beat.
    Script explain(const CountRound& round) const;
    Script right(const CountRound& round) const;

    /// The word that is asked about.
    Script word(const Question& question) const;
    /// An item of the same skill about other words, for an example; null if the pack has none.
    const exercise::Item* exampleFor(const exercise::Item& asked) const;

    /// The leaf's parts are not said before the answer. With an example, that comes first.
    Script ask(const SplitRound& round, Asking asking, const exercise::Item* example) const;
    Script part(const SplitRound& round, std::size_t box) const;
    Script together(const SplitRound& round) const;
    /// The word, then its parts, one for each box.
    Script explain(const SplitRound& round) const;
    Script right(const SplitRound& round) const;

    /// The word, and what is done to it.
    Script ask(const ChangeRound& round, Asking asking, const exercise::Item* example) const;
    /// Each picture named once, and once more what was done. What comes out is heard in parts only
    /// after a first answer, for finding it is what was asked.
    Script pick(const ChangeRound& round, bool again) const;
    Script tiles(const ChangeRound& round, Millis gap) const;
    Script tile(const ChangeRound& round, std::size_t index) const;
    Script together(const ChangeRound& round) const;
    /// The chosen word and its tiles, then the asked one and its.
    Script explain(const ChangeRound& round) const;
    Script right(const ChangeRound& round) const;
    /// The tiles of another word, for the same kind of change.
    std::vector<exercise::Part> changeParts(const exercise::Item& item,
                                            std::string_view word) const;

    /// What is asked, and each choice named that is not told by looking. With an example, another
    /// question is answered first.
    Script ask(const PickRound& round, Asking asking, const exercise::Item* example) const;
    /// One choice, because it was touched.
    Script choice(const PickRound& round, std::size_t place) const;
    Script together(const PickRound& round) const;
    /// What was chosen and what was asked, each with its deciding part.
    Script explain(const PickRound& round) const;
    Script right(const PickRound& round) const;

  private:
    /// The phrase that asks, and what it asks about; `heard` is shown with each piece of that.
    void addQuestion(Script& script, const exercise::Item& item, const Show& lead,
                     const std::function<Show(std::size_t)>& heard) const;
    /// Another question and its answer; `names`: with each of its choices.
    void addSolved(Script& script, const exercise::Item& item, bool names) const;
    void addSolution(Script& script, const Question& question) const;
    Script compared(const std::array<Compared, 2>& both) const;
    /// What an item counts, as it is said whole.
    std::string countedClip(const exercise::Item& item) const;
    /// "Take away ... and put in ...": `take` and `put` are what is shown meanwhile.
    void addChange(Script& script, const exercise::Item& item, const Show& take,
                   const Show& put) const;
    void addExample(Script& script, const exercise::Item& item) const;
    void add(Script& script, const std::string& clip, Millis gap, Show show = {}) const;
    void addPhrase(Script& script, std::string_view id, Millis gap, Show show = {}) const;

    const pack::Pack& pack_;
};

}  // namespace wrenlet::game
