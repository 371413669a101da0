// What must not come next, whatever it would teach: the hard rules of scheduler.hpp, and the order
// in which they give way in a pack too small to keep them all.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "content/practice/scheduler.hpp"

namespace wrenlet::practice {

/// This session's first tries, oldest first.
std::vector<const Response*> triesToday(const Situation& situation);

class HardRules {
  public:
    /// Looks at `situation` only while it is made; the responses must outlive it.
    explicit HardRules(const Situation& situation);

    /// 0 when the item keeps every rule; n when n steps of giving way are needed before it may be
    /// asked. `place` is where its answer must stand, if that is not free.
    /// `key` is the item's, as QuestionBank::keyOf has it.
    int stepsToAllow(const exercise::Item& item, std::uint64_t key,
                     std::optional<std::size_t> place) const;

    /// The place that the answer must not stand in, if there is one.
    std::optional<std::size_t> barredPlace() const { return barred_place_; }

  private:
    std::optional<std::size_t> barred_place_;
    std::optional<std::string_view> barred_sound_;
    std::optional<exercise::Skill> barred_skill_;
    std::unordered_map<std::uint64_t, int> asked_ago_;  // by key; 1 for the item asked last
};

}  // namespace wrenlet::practice
