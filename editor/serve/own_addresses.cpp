#include "editor/serve/own_addresses.hpp"

#include <algorithm>
#include <cstdlib>

#ifndef _WIN32
#include <arpa/inet.h>
#include <ifaddrs.h>
#include <net/if.h>
#include <netinet/in.h>
#endif

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

std::vector<std::string> ownAddresses() {
    std::vector<std::string> found;
#ifndef _WIN32
    ifaddrs* all = nullptr;
    if (getifaddrs(&all) != 0) return found;
    for (const ifaddrs* one = all; one != nullptr; one = one->ifa_next) {
        if (one->ifa_addr == nullptr || one->ifa_addr->sa_family != AF_INET ||
            (one->ifa_flags & IFF_UP) == 0)
            continue;
        char text[INET_ADDRSTRLEN] = "";
        const auto* address = reinterpret_cast<const sockaddr_in*>(one->ifa_addr);
        inet_ntop(AF_INET, &address->sin_addr, text, sizeof text);
        found.emplace_back(text);
    }
    freeifaddrs(all);
#endif
    return inOrder(std::move(found));
}

}  // namespace wrenlet::desk
