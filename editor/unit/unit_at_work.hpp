// The unit that a teacher works on: what it holds, what she did to it, and each thing she can do,
// in her words. Nothing here waits for the disk or for a look at the words.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "content/speech/phoneme.hpp"
#include "editor/document/known_words.hpp"
#include "editor/unit/history.hpp"
#include "editor/unit/typed.hpp"

namespace wrenlet::desk {

/// Codes of warnings that are about how a word was understood, beside those of exercise::Lint.
inline constexpr std::string_view kSaidSeveralWays = "said-in-several-ways";
inline constexpr std::string_view kSeveralSenses = "several-senses";
inline constexpr std::string_view kConfirmByEar = "confirm-by-ear";

class UnitAtWork {
  public:
    explicit UnitAtWork(pack::Unit unit) : unit_(inOrder(std::move(unit))) {}

    const pack::Unit& unit() const { return unit_; }
    const History& history() const { return history_; }
    /// Grows with each change; what was looked at or saved says of which.
    std::uint64_t changes() const { return history_.changes(); }
    const pack::UnitWord* word(std::string_view id) const;

    bool undo() { return history_.undo(unit_); }
    bool redo() { return history_.redo(unit_); }

    /// Words and sentences that are new to the unit, each word completed from the classroom list.
    /// `first` gets the id of the first word added. Returns what was not taken, and why.
    std::vector<Problem> add(std::string_view text, std::string_view where, const KnownWords& known,
                             std::string* first = nullptr);
    /// Words and sentences of the classroom lists by their ids, those that are new to the unit.
    void addListed(const std::vector<std::string>& ids, const KnownWords& known);
    void removeWord(const std::string& id);
    void removeSentence(const std::string& id);
    /// False, and nothing is done, when the unit has such a word already or it cannot be one.
    bool respell(const std::string& id, std::string_view text, const KnownWords& known);
    void chooseSounds(const std::string& id, const speech::Pronunciation& sounds);
    /// A word of the classroom list with this id ("wind~air"): its sounds, picture and sense.
    bool chooseSense(const std::string& id, const std::string& listed, const KnownWords& known);
    void choosePicture(const std::string& id, const std::string& picture);
    /// The words of which a compound is made; none: it is no compound.
    void chooseParts(const std::string& id, const std::vector<std::string>& parts);
    void keepWarning(const std::string& id, const std::string& code);
    /// `code` is a warning that this answers, if any.
    void leaveOutOf(const std::string& id, const std::vector<std::string>& skills,
                    std::string_view group, std::string_view code = {});
    void askAgain(const std::string& id, const std::vector<std::string>& skills,
                  std::string_view group);
    void turnSkill(const std::string& skill, bool off);
    void turnItem(const std::string& item, bool off);
    /// A sound (IPA) that first, last and middle sounds are asked about; with none, all are.
    void turnFocus(const std::string& sound, bool on);
    void rename(const std::string& title);
    /// `text` is what it says, for showing.
    void keepRecording(const pack::UnitRecording& recording, std::string_view text);
    void dropRecording(const std::string& clip, std::string_view said);
    /// What was chosen of somebody else's pack; see bring/bring_in.
    void bringIn(const Action& action) { history_.act(unit_, action); }

  private:
    template <class Change>
    void changeWord(const std::string& id, std::string said, Change change);
    void act(std::string said, std::vector<Edit> edits);

    pack::Unit unit_;
    History history_;
};

/// What the classroom list says of a word that was only written: sense, sounds, parts, picture.
void complete(pack::UnitWord& word, const KnownWords& known);

}  // namespace wrenlet::desk
