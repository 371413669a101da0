// Bytes sealed under a key: nobody without it can read them, and a changed bit is noticed.
// XChaCha20-Poly1305 (draft-irtf-cfrg-xchacha-03) through libsodium.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "content/link/bytes.hpp"

namespace wrenlet::link {

inline constexpr std::size_t kNonceBytes = 24, kTagBytes = 16;
inline constexpr std::size_t kSealBytes = kNonceBytes + kTagBytes;  // longer than what was sealed

/// A fresh nonce, then what is sealed, then its tag. `beside` is not in it, and must be the same
/// when it is opened.
std::string seal(const Key& key, std::string_view beside, std::string_view plain, Entropy& entropy);

/// Nothing when one bit of it, of the key or of `beside` is another.
std::optional<std::string> open(const Key& key, std::string_view beside, std::string_view sealed);

}  // namespace wrenlet::link
