#include "editor/serve/connections.hpp"

#include "editor/serve/sockets.hpp"

namespace wrenlet::desk {

void Connections::opened(int socket, std::string from, Time now) {
    const std::lock_guard lock(mutex_);
    open_[socket] = {std::move(from), now, false, false};
}

void Connections::answering(int socket, Time now) {
    const std::lock_guard lock(mutex_);
    if (const auto found = open_.find(socket); found != open_.end()) {
        found->second.since = now;
        found->second.is_answering = true;
    }
}

void Connections::answered(int socket, Time now) {
    const std::lock_guard lock(mutex_);
    if (const auto found = open_.find(socket); found != open_.end()) {
        found->second.since = now;
        found->second.is_answering = false;
    }
}

void Connections::closed(int socket) {
    const std::lock_guard lock(mutex_);
    open_.erase(socket);
}

std::vector<std::string> Connections::endSlow(std::chrono::seconds asking,
                                              std::chrono::seconds answering, Time now) {
    std::vector<std::string> slow;
    const std::lock_guard lock(mutex_);
    for (auto& [socket, open] : open_) {
        if (open.is_ended || now - open.since < (open.is_answering ? answering : asking)) continue;
        open.is_ended = true;
        endConnection(socket);
        slow.push_back(open.from);
    }
    return slow;
}

}  // namespace wrenlet::desk
