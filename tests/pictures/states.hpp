// The states of a skill's round, brought about one after the other by hands that know what to
// touch: asked, lifted, wrong, explained, right.
#pragma once

#include <array>
#include <functional>
#include <string_view>

#include "tests/fixtures/visit.hpp"

namespace wrenlet::pictures {

inline constexpr std::array<std::string_view, 5> kStates = {"asked", "lifted", "wrong", "explained",
                                                            "right"};

/// Plays the skill's first question through its states and shows each, by its number in kStates.
/// False when it does not come to one of them, or the room can't be opened.
bool showStates(const fixtures::Room& room, game::ScreenSize size, exercise::Skill skill,
                const std::function<void(std::size_t state, const game::SurfacePtr& picture)>& see);

}  // namespace wrenlet::pictures
