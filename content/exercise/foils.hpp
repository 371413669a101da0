// Foils: the wrong choices beside the right one. They are graded by how far they sound from it,
// never by spelling, and two that a child may take for each other never stand in one item.
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

/// How hard a foil is to tell from the right choice: apart by one feature of one sound (t/d), by a
/// few, or by many. Foils that differ in voicing alone confuse most (Treiman et al. 1998).
enum class Nearness : std::uint8_t { one_feature, near, far };
/// Of a distance as speech::distance() and speech::wordDistance() give it.
Nearness nearnessOf(int distance);

struct Foil {
    std::string_view id;         // what is chosen; must outlive the foil
    const Word* word = nullptr;  // null for a letter or a sound
    int distance = 0;            // from the right choice
    int kind = 0;                // the maker's own: what else it tells, or 0; telling ones go first
    int group = 0;               // two of one group don't stand together; 0: of none
};

/// A question that still lacks its foils.
struct Question {
    Skill skill{};
    std::string subject;
    std::vector<Part> parts;
    TurnsOn turns_on;
    Foil right;
    std::vector<const Word*> beside;                    // what else is shown or heard in the item
    std::function<std::string(const Foil&)> means;      // what choosing a foil tells
    std::function<TurnsOn(const Foil&)> turns_by = {};  // by the nearest foil, instead of turns_on
};

/// Gathers the items of one skill, level by level, so that each question is kept once before any
/// is kept with harder foils.
class ItemList {
  public:
    /// An item with two foils for each level that these give: far ones, then a near one with a far
    /// one, then the nearest. None if no two foils can stand beside the right choice.
    void add(const Question& question, const std::vector<Foil>& foils);
    void add(std::size_t level, Item item);

    /// The items, no more than `most`, none twice.
    std::vector<Item> take(std::size_t most);

    static constexpr std::size_t kLevels = 3;

  private:
    std::array<std::vector<Item>, kLevels> levels_;
};

/// Sets `choices` in the order of their ids, the answer, and the id of an item that has the rest.
void setChoices(Item& item, std::vector<Choice> choices, std::string_view right);

/// The words that can be shown.
std::vector<const Word*> picturedWords(const Vocabulary& vocabulary);

/// One sound is a clip of its own; several are one clip.
Part partOf(const speech::Pronunciation& sounds);
/// A word of the vocabulary as a part.
Part partOf(const Word& word);

}  // namespace wrenlet::exercise
