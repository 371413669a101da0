// Sorting cards to two homes: words that share something (a rime, a first sound) are a family, two
// families meet, and the cards of both go to the word that heads their home.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

/// Words with pictures that are alike in what is sorted by.
struct Family {
    speech::Pronunciation shared;
    std::string name;  // what they share, in IPA
    std::vector<const Word*> members;
};

using TellApart = std::function<bool(const Family&, const Family&)>;
/// The item that asks whether `card` goes to `home`, of `family`, or to `other`.
using SortItem =
    std::function<Item(const Word& card, const Word& home, const Word& other, const Family&)>;

/// Items in which any two families that `tell_apart` allows meet, in turns, headed by other members
/// each time. Stops at `enough` once each family was sorted twice. Families of one are left out.
std::vector<Item> sortFamilies(std::vector<Family> families, const TellApart& tell_apart,
                               const SortItem& item, std::size_t enough);

}  // namespace wrenlet::exercise
