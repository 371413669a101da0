// Where the teacher stands in the class list: which child is in hand, what she has typed and not
// yet added, a school's list whose class she has still to choose, and what she is offered next.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "editor/classlist/delete_child.hpp"
#include "editor/classlist/one_roster.hpp"
#include "editor/classlist/open_class_list.hpp"

namespace wrenlet::desk {

/// Something about what was just added that she may want otherwise.
struct NamesOffer {
    std::string head, body, button;
    enum class Kind : std::uint8_t { other_column, given_names } kind = Kind::other_column;
    std::uint64_t changes = 0;  // of the list then; it stands until the next
};

struct ClassListPlace {
    std::string in_hand;              // a child's id, in the class or not; empty: none
    bool pane_open = false;           // where the pane has no room of its own
    std::string typed;                // in the box, not yet added
    std::vector<Problem> not_taken;   // of what was added last
    std::optional<NamesOffer> offer;  // see offered()
    std::optional<Roster> roster;     // read, and its class not chosen yet
    std::string roster_from;          // the name of its file
    std::string key_first;            // a picture of a key whose second is still to come
    std::string shield_told;          // the shield that is explained
    std::string name_typed;           // of the child in hand, while it is changed
    std::string name_seen;            // that she had when it was taken over into the box
    std::string delete_typed;         // the name of one who has left, typed to delete her for good
    std::string deleted_told;         // what became of the child deleted last

    /// Adds what was typed, or opens the file whose path was typed.
    void add(OpenClassList& list);
    /// A text, a table, a OneRoster users.csv or a zip of it.
    void takeFile(const std::filesystem::path& file, OpenClassList& list);
    /// The children of that class of the roster, or all.
    void takeRoster(std::optional<std::size_t> of_class, OpenClassList& list);
    /// The offer, unless something else was done since; null: none.
    const NamesOffer* offered(const OpenClassList& list) const {
        return offer && offer->changes == list.work().changes() ? &*offer : nullptr;
    }
    void takeOffer(OpenClassList& list);

    /// Ids as listed: those in the class, then those who have left.
    std::vector<std::string> rows(const OpenClassList& list) const;
    void take(const std::string& id, const OpenClassList& list);
    void move(int by, const OpenClassList& list);
    /// A picture touched for the key of the child in hand: the first, or the second.
    void touchKey(const std::string& picture, OpenClassList& list);
    /// The child in hand leaves the class, or is back in it.
    void leaveOrComeBack(OpenClassList& list);
    /// True when the child in hand has left and her whole name was typed to delete her for good.
    bool mayDelete(const OpenClassList& list) const;
    void wasDeleted(const ChildDeleted& done, const std::string& name);

  private:
    void addNames(const std::string& text, std::string where, std::size_t column,
                  OpenClassList& list);
    std::string text_, where_;        // what was added last
    std::size_t column_ = 0;          // its given names
    std::vector<std::string> fresh_;  // ids that it gave
};

}  // namespace wrenlet::desk
