// Where the teacher stands among a unit's words: which are listed, which is in hand, what she has
// typed and not yet added, and what she is offered next.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "editor/unit/open_unit.hpp"
#include "editor/unit/picture_choice.hpp"

namespace wrenlet::desk {

struct WordsRow {
    std::string id;  // of the word or the sentence
    bool is_sentence = false;
    bool operator==(const WordsRow&) const = default;
};

struct WordsPlace {
    enum class Filter : std::uint8_t { all, to_look_at };

    Filter filter = Filter::all;
    WordsRow in_hand;                       // no id: none
    bool pane_open = false;                 // where the pane has no room of its own
    std::string typed;                      // in the box, not yet added
    std::vector<Problem> not_taken;         // of what was added last
    std::optional<PictureChoice> choosing;  // a picture for the word in hand

    /// As listed, words before sentences.
    std::vector<WordsRow> rows(const OpenUnit& unit) const;
    /// Takes the row before or after the one in hand; the ends stay.
    void move(int by, const OpenUnit& unit);
    /// Opens or closes the choice of a picture for the word in hand.
    void choosePicture(const OpenUnit& unit);
    bool isChoosingPicture() const {
        return choosing && !in_hand.is_sentence && choosing->word == in_hand.id;
    }
    /// Adds what was typed; what was not taken stays in the box.
    void add(OpenUnit& unit, std::string_view where = "What you typed");
    /// Does a way out of a warning of the word in hand, and keeps it in hand.
    void take(const WayOut& way, const ToLookAt& todo, OpenUnit& unit);
    void removeInHand(OpenUnit& unit);
    /// The next word to look at after the one in hand, from the top again at the end.
    std::optional<std::string> nextToLookAt(const OpenUnit& unit) const;
};

}  // namespace wrenlet::desk
