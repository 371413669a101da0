// The game as a program of its own with a real window, started on some display; what it announces
// of itself is all that is known of it.
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "game/stage/frame.hpp"

namespace wrenlet::touch {

/// What it announced last (see game/script/told.hpp).
struct Standing {
    std::string place;
    std::int64_t answers = 0;
    std::optional<std::string> right;
    std::map<std::string, game::Box> things;
};

class GameProgram {
  public:
    /// Started on that X display with these arguments.
    GameProgram(const std::string& display, const std::vector<std::string>& arguments);
    ~GameProgram();  // killed if it still runs
    GameProgram(const GameProgram&) = delete;
    GameProgram& operator=(const GameProgram&) = delete;

    pid_t process() const { return process_; }
    const Standing& standing() const { return standing_; }
    /// Reads on until it stands so; false when it has not within so many seconds, or has ended.
    bool waitFor(const std::function<bool(const Standing&)>& so, double seconds);
    /// Reads on for that time.
    void listen(double seconds);
    /// Asks it to end, as a system does; true when it ended well.
    bool end();

  private:
    /// False when there is no more to read.
    bool readOn(double seconds);

    pid_t process_ = 0;
    int from_ = -1;
    std::string unread_;
    Standing standing_;
};

}  // namespace wrenlet::touch
