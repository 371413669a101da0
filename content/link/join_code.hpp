// The code with which a tablet joins a class: eight signs that a teacher reads off the desk, none
// of which looks like another. About 39 bits, for one tablet and a few minutes.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "content/link/bytes.hpp"

namespace wrenlet::link {

inline constexpr std::string_view kCodeSigns = "23456789ABCDEFGHJKMNPQRSTVWXYZ";
inline constexpr std::size_t kCodeLength = 8;

std::string makeCode(Entropy& entropy);

/// "K7MD4RXP" for whatever was typed for it: small letters, spaces and hyphens are let pass.
/// Nothing when it is not eight of the signs.
std::optional<std::string> codeFromTyped(std::string_view typed);

/// "K7MD 4RXP": as it is read out.
std::string codeToShow(std::string_view code);

}  // namespace wrenlet::link
