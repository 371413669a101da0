// The addresses under which tablets on the same network find this computer.
#pragma once

#include <string>
#include <vector>

namespace wrenlet::desk {

/// IPv4, those of a local network (RFC 1918) first, without the one that only this computer
/// knows. Empty: it is on no network.
std::vector<std::string> ownAddresses();

/// Sorted as ownAddresses() gives them, without what no tablet can reach.
std::vector<std::string> inOrder(std::vector<std::string> addresses);

}  // namespace wrenlet::desk
