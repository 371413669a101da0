#include <arpa/inet.h>
#include <ifaddrs.h>
#include <net/if.h>
#include <netinet/in.h>

#include "editor/serve/own_addresses.hpp"

namespace wrenlet::desk {

std::vector<std::string> ownAddresses() {
    std::vector<std::string> found;
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
    return inOrder(std::move(found));
}

}  // namespace wrenlet::desk
