// The first before the last.
#include <winsock2.h>
#include <ws2tcpip.h>

#include <iphlpapi.h>

#include "editor/serve/own_addresses.hpp"

namespace wrenlet::desk {

std::vector<std::string> ownAddresses() {
    constexpr ULONG kNothingElse = GAA_FLAG_SKIP_ANYCAST | GAA_FLAG_SKIP_MULTICAST |
                                   GAA_FLAG_SKIP_DNS_SERVER | GAA_FLAG_SKIP_FRIENDLY_NAME;
    constexpr int kMostTries = 4;  // more may be there by the time that there is room for them
    std::vector<std::string> found;
    std::vector<IP_ADAPTER_ADDRESSES> room(16);
    ULONG told = ERROR_BUFFER_OVERFLOW;
    for (int i = 0; i < kMostTries && told == ERROR_BUFFER_OVERFLOW; ++i) {
        auto bytes = static_cast<ULONG>(room.size() * sizeof room.front());
        told = GetAdaptersAddresses(AF_INET, kNothingElse, nullptr, room.data(), &bytes);
        if (told == ERROR_BUFFER_OVERFLOW) room.resize(bytes / sizeof room.front() + 1);
    }
    if (told != ERROR_SUCCESS) return found;
    for (const IP_ADAPTER_ADDRESSES* one = room.data(); one != nullptr; one = one->Next) {
        if (one->OperStatus != IfOperStatusUp) continue;
        for (auto at = one->FirstUnicastAddress; at != nullptr; at = at->Next) {
            char text[INET_ADDRSTRLEN] = "";
            const auto* address = reinterpret_cast<const sockaddr_in*>(at->Address.lpSockaddr);
            inet_ntop(AF_INET, &address->sin_addr, text, sizeof text);
            found.emplace_back(text);
        }
    }
    return inOrder(std::move(found));
}

}  // namespace wrenlet::desk
