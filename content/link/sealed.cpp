#include "content/link/sealed.hpp"

#include <sodium.h>

namespace wrenlet::link {
namespace {

static_assert(kNonceBytes == crypto_aead_xchacha20poly1305_ietf_NPUBBYTES);
static_assert(kTagBytes == crypto_aead_xchacha20poly1305_ietf_ABYTES);
static_assert(sizeof(Key) == crypto_aead_xchacha20poly1305_ietf_KEYBYTES);

const unsigned char* raw(std::string_view bytes) {
    return reinterpret_cast<const unsigned char*>(bytes.data());
}

unsigned char* raw(std::string& bytes) {
    return reinterpret_cast<unsigned char*>(bytes.data());
}

}  // namespace

std::string seal(const Key& key, std::string_view beside, std::string_view plain,
                 Entropy& entropy) {
    std::string sealed(plain.size() + kSealBytes, '\0');
    unsigned char* const nonce = raw(sealed);
    entropy.fill({nonce, kNonceBytes});
    crypto_aead_xchacha20poly1305_ietf_encrypt(nonce + kNonceBytes, nullptr, raw(plain),
                                               plain.size(), raw(beside), beside.size(), nullptr,
                                               nonce, key.data());
    return sealed;
}

std::optional<std::string> open(const Key& key, std::string_view beside, std::string_view sealed) {
    if (sealed.size() < kSealBytes) return std::nullopt;
    std::string plain(sealed.size() - kSealBytes, '\0');
    const unsigned char* const nonce = raw(sealed);
    if (crypto_aead_xchacha20poly1305_ietf_decrypt(
            raw(plain), nullptr, nullptr, nonce + kNonceBytes, sealed.size() - kNonceBytes,
            raw(beside), beside.size(), nonce, key.data()) != 0)
        return std::nullopt;
    return plain;
}

}  // namespace wrenlet::link
