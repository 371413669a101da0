#include "content/link/bytes.hpp"

#include <sodium.h>

namespace wrenlet::link {

void SystemEntropy::fill(std::span<std::uint8_t> bytes) {
    if (sodium_init() < 0) return;
    randombytes_buf(bytes.data(), bytes.size());
}

std::string hexOf(const Key& key) {
    constexpr std::string_view kSigns = "0123456789abcdef";
    std::string hex;
    for (const std::uint8_t byte : key) {
        hex += kSigns[byte >> 4];
        hex += kSigns[byte & 15];
    }
    return hex;
}

std::optional<Key> keyFromHex(std::string_view hex) {
    Key key{};
    if (hex.size() != 2 * key.size()) return std::nullopt;
    for (std::size_t i = 0; i < hex.size(); ++i) {
        const char sign = hex[i];
        int value = -1;
        if (sign >= '0' && sign <= '9') value = sign - '0';
        if (sign >= 'a' && sign <= 'f') value = sign - 'a' + 10;
        if (value < 0) return std::nullopt;
        key[i / 2] = static_cast<std::uint8_t>(key[i / 2] << 4 | value);
    }
    return key;
}

std::string hashOf(std::string_view bytes) {
    Key hash{};
    crypto_generichash(hash.data(), hash.size(),
                       reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(), nullptr,
                       0);
    return hexOf(hash);
}

}  // namespace wrenlet::link
