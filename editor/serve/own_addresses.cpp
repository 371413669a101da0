#include "editor/serve/own_addresses.hpp"

#include <algorithm>
#include <cstdlib>

namespace wrenlet::desk {

namespace {

bool startsWith(const std::string& text, const char* with) {
    return text.rfind(with, 0) == 0;
}

/// RFC 1918, section 3.
bool isPrivate(const std::string& address) {
    if (startsWith(address, "10.") || startsWith(address, "192.168.")) return true;
    if (!startsWith(address, "172.")) return false;
    const int second = std::atoi(address.c_str() + 4);
    return second >= 16 && second <= 31;
}

/// Of this computer alone, or given by nobody (RFC 3927).
bool isOfNoUse(const std::string& address) {
    return startsWith(address, "127.") || startsWith(address, "169.254.") ||
           startsWith(address, "0.");
}

}  // namespace

std::vector<std::string> inOrder(std::vector<std::string> addresses) {
    std::erase_if(addresses, isOfNoUse);
    std::stable_partition(addresses.begin(), addresses.end(), isPrivate);
    return addresses;
}

}  // namespace wrenlet::desk
