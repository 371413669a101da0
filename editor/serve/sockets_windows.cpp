#include <winsock2.h>
#include <ws2tcpip.h>

#include "editor/serve/sockets.hpp"

namespace wrenlet::desk {

void endConnection(int socket) {
    shutdown(static_cast<SOCKET>(socket), SD_BOTH);
}

std::string addressText(const sockaddr* address) {
    if (address == nullptr || address->sa_family != AF_INET) return "?";
    char text[INET_ADDRSTRLEN] = "";
    inet_ntop(AF_INET, &reinterpret_cast<const sockaddr_in*>(address)->sin_addr, text, sizeof text);
    return text;
}

}  // namespace wrenlet::desk
