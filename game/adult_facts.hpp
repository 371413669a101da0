// What an adult is told of a tablet: how it stands, and what to look at. Nothing of any child.
#pragma once

#include <string>
#include <vector>

#include "game/app.hpp"
#include "game/scenes/adult_facts_scene.hpp"

namespace wrenlet::game {

class Turn;

/// What the class is called, or the program where it has no name.
std::string titleOf(const pack::ClassList& list);

/// The sound device's trouble, and problems of the start, of keeping and of the turn (null: there
/// is none), each once, in words for an adult; none when all is well.
std::vector<std::string> toLookAt(const Voice& voice, const std::vector<Problem>& problems,
                                  const Turn* turn);

/// The class, the pack, the tablet, and where everything lies; `words` are left to be filled in.
AdultFacts factsOf(const AppParts& parts);

}  // namespace wrenlet::game
