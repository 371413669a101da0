// The child's program as the desk calls it: a pack and one of its questions go in as a file and a
// name, a picture and what is said come out. Desk and game meet here and in the classroom folder,
// and nowhere in their code.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "content/common/result.hpp"

namespace wrenlet::desk {

struct StillCall {
    std::filesystem::path pack;
    std::string item;           // id of the question
    std::filesystem::path png;  // where the picture goes
    int width = 0, height = 0;  // px
};

/// A clip of what puts the question, and the silence before it.
struct SaidClip {
    std::string clip;
    int gap_ms = 0;
    bool operator==(const SaidClip&) const = default;
};

class ChildGame {
  public:
    virtual ~ChildGame() = default;
    /// Draws the question as the child first sees it. Takes a tenth of a second: call it aside.
    virtual Result<std::vector<SaidClip>> still(const StillCall& call) = 0;
    /// Plays the question in a window of its own, until that closes: call it aside.
    virtual Result<Done> play(const std::filesystem::path& pack, const std::string& item) = 0;
    /// Closes what is played, from any thread.
    virtual void stop() = 0;
};

/// What `wrenlet --draw` prints. Errors: it is something else.
Result<std::vector<SaidClip>> readSaid(const std::string& printed);

/// The program at that path.
std::unique_ptr<ChildGame> gameProgram(const std::filesystem::path& program);

}  // namespace wrenlet::desk
