// A real X server that shows nothing (the driver "dummy") and has one touch screen, whose fingers a
// test moves (the driver "inputtest", inputtest(4)).
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <string>

#include "game/stage/frame.hpp"

namespace wrenlet::touch {

class XServer {
  public:
    static constexpr int kWidth = 1280, kHeight = 800;

    /// Started, with its configuration, log and socket in `folder`.
    explicit XServer(const std::filesystem::path& folder);
    ~XServer();
    XServer(const XServer&) = delete;
    XServer& operator=(const XServer&) = delete;

    /// Why it can't be used, with the end of its log; empty when it can.
    const std::string& trouble() const { return trouble_; }
    /// What clients call it: ":3".
    const std::string& display() const { return display_; }

    /// A finger comes down, moves, or is lifted, at a place in the screen's pixels. When these
    /// return the server has handed the event on to its clients; false when it has not.
    bool down(unsigned id, game::Point at);
    bool move(unsigned id, game::Point at);
    bool up(unsigned id, game::Point at);

  private:
    bool start();
    bool connect();
    bool send(unsigned id, unsigned kind, game::Point at);

    std::filesystem::path folder_;
    pid_t process_ = 0;
    int socket_ = -1;
    std::string display_, trouble_;
};

}  // namespace wrenlet::touch
