// How far the pond-side has grown: by the rounds and sessions a child has done, never by how well.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "content/practice/response.hpp"

namespace wrenlet::game {

/// Most cards in one sort, and most changes in one chain, before another round begins.
inline constexpr int kCardsInASort = 4;
inline constexpr std::size_t kChangesInAChain = 6;

/// Rounds finished in these responses, oldest first. Cards sorted into the same homes running are
/// one round, and so are the changes of one chain.
int roundsDone(std::span<const practice::Response> responses);

/// Cards that lie sorted in the round at the end of these responses: how many of the last ones
/// belong to one sort that can still go on. 0 when the next item begins a round of its own.
std::size_t runningSort(std::span<const practice::Response> responses);

/// The words of the chain of changes at the end of these responses, oldest first. Empty when the
/// chain is back at its first word or long enough, or when there is none.
std::vector<std::string> runningChain(std::span<const practice::Response> responses);

struct Growth {
    int nest = 0;     // 0 to 4: how far the nest is built
    int reeds = 0;    // 0 to 3: how high the reeds stand
    int flowers = 0;  // 0 to 12: lilies open on the water
    bool operator==(const Growth&) const = default;
};

/// `rounds` of all days, `sessions` ended.
Growth growthAfter(int rounds, int sessions);

}  // namespace wrenlet::game
