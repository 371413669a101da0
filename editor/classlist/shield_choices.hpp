// The accent shields that a teacher can give a child, each with what it does in plain words.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::desk {

struct ShieldChoice {
    std::string_view id;       // as class.json has it: "b/v"
    std::string_view example;  // "berry, very"
    std::string_view says;     // what sounds alike, the end of "For this child"
};

/// Sources of the pairs: the speech of bilingual children with Spanish and the age norms of Crowe
/// & McLeod 2020, as trade practice has them; mergers of English accents. w for r is from common
/// practice.
std::span<const ShieldChoice> shieldChoices();
/// Null when no such shield is offered; a file may hold others.
const ShieldChoice* shieldChoice(std::string_view id);

/// Several that often go together.
struct ShieldSet {
    std::string_view name;  // of the button: "Spanish at home"
    std::vector<std::string> shields;
};
const std::vector<ShieldSet>& shieldSets();

/// What all of them have in common.
inline constexpr std::string_view kWhatShieldsDo =
    "Nothing a shield covers is ever called missed. The sounds are practised all the same.";

}  // namespace wrenlet::desk
