// What the server asks of sockets beside its library, as each system has it.
#pragma once

#include <string>

struct sockaddr;

namespace wrenlet::desk {

/// Ends a connection both ways; whoever waits for it is told.
void endConnection(int socket);

/// "192.168.0.7"; "?" of what is no IPv4.
std::string addressText(const sockaddr* address);

}  // namespace wrenlet::desk
