// Keys and other bytes of the link between a tablet's page and the desk, and where its chance comes
// from. Bytes on the wire are held in std::string, as files are elsewhere in the house.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace wrenlet::link {

inline constexpr std::uint8_t kVersion = 2;  // of all that is said over the link

using Key = std::array<std::uint8_t, 32>;        // of a tablet, a code, or one joining
using PublicKey = std::array<std::uint8_t, 32>;  // X25519, RFC 7748
using Salt = std::array<std::uint8_t, 16>;

/// Chance that nobody can foresee: keys are made of it. Tests hand in one that repeats.
class Entropy {
  public:
    virtual ~Entropy() = default;
    virtual void fill(std::span<std::uint8_t> bytes) = 0;
};

/// The system's, through libsodium; on the web the browser's.
class SystemEntropy final : public Entropy {
  public:
    void fill(std::span<std::uint8_t> bytes) override;
};

/// What a tablet was given when it joined: the name that its answers go under, which anybody may
/// know, and the key that only it and the desk have.
struct TabletIdentity {
    std::string tablet;  // practice::isTabletName()
    Key key{};
    bool operator==(const TabletIdentity&) const = default;
};

/// Lower-case hexadecimal, and back; nothing when it is not exactly 64 of its signs.
std::string hexOf(const Key& key);
std::optional<Key> keyFromHex(std::string_view hex);

/// BLAKE2b-256 of a pack's bytes in hexadecimal: how the desk and a tablet name one to another.
std::string hashOf(std::string_view bytes);

}  // namespace wrenlet::link
