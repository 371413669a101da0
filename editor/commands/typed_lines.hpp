// What is typed at a command that goes on until it is stopped, and that it is to stop, as one thing
// to wait for.
#pragma once

#include <memory>
#include <optional>
#include <string>

namespace wrenlet::desk {

class TypedLines {
  public:
    /// REQUIRES: no thread was made yet; from here on a request to stop ends wait() and not the
    /// program.
    TypedLines();
    ~TypedLines();

    /// False when the program is to stop: Ctrl C, its terminal closed, the system shutting down.
    /// A line that was typed within `ms` is in `line`. An end of input stops nothing.
    bool wait(int ms, std::optional<std::string>& line);

  private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace wrenlet::desk
