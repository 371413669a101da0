// Which connections are open, since when each has kept the desk waiting, and the end of those that
// do so too long: a question sent one byte at a time holds a connection only so long.
#pragma once

#include <chrono>
#include <map>
#include <mutex>
#include <string>
#include <vector>

namespace wrenlet::desk {

/// May be called from any thread. Sockets are the system's.
class Connections {
  public:
    using Time = std::chrono::steady_clock::time_point;

    void opened(int socket, std::string from, Time now);
    void answering(int socket, Time now);
    void answered(int socket, Time now);
    void closed(int socket);

    /// Ends those that took longer; gives the addresses they came from.
    std::vector<std::string> endSlow(std::chrono::seconds asking, std::chrono::seconds answering,
                                     Time now);

  private:
    struct Open {
        std::string from;
        Time since;
        bool is_answering = false, is_ended = false;
    };
    std::mutex mutex_;
    std::map<int, Open> open_;
};

}  // namespace wrenlet::desk
