// A pack opened to try one of its questions out: without a classroom, and with a store that goes
// away with it, so that nothing of it is ever taken for a child's answer.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

#include "content/common/result.hpp"
#include "game/start/opening.hpp"

namespace wrenlet::game {

/// How much of a pack is looked through: its clips too, or only what can be seen.
enum class TriedFor : std::uint8_t { playing, looking };

/// A folder of its own, gone when this is.
class PassingFolder {
  public:
    explicit PassingFolder(std::uint64_t random);
    ~PassingFolder();
    PassingFolder(const PassingFolder&) = delete;
    PassingFolder& operator=(const PassingFolder&) = delete;
    const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

/// `item` names the question; empty: the pack's first one. The pack keeps no other. Errors: no
/// good pack, or no such question in it. For looking, a pack may lack its clips.
Result<Opened> openTried(const std::filesystem::path& pack, const std::string& item, TriedFor what,
                         const PassingFolder& folder);

}  // namespace wrenlet::game
