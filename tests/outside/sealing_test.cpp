// The library that seals and joins, held against the vectors that were published with what it does.
#include <doctest/doctest.h>
#include <sodium.h>

#include <algorithm>
#include <string>

#include "content/link/bytes.hpp"
#include "content/link/sealed.hpp"

using namespace wrenlet::link;

namespace {

std::string bytesOf(const std::string& hex) {
    std::string bytes;
    for (std::size_t i = 0; i < hex.size(); i += 2)
        bytes += static_cast<char>(std::stoi(hex.substr(i, 2), nullptr, 16));
    return bytes;
}

Key keyOf(const std::string& hex) {
    const auto key = keyFromHex(hex);
    REQUIRE(key);
    return *key;
}

/// Gives out these bytes and no chance at all.
class Given final : public Entropy {
  public:
    explicit Given(std::string bytes) : bytes_(std::move(bytes)) {}
    void fill(std::span<std::uint8_t> out) override {
        REQUIRE(out.size() == bytes_.size());
        std::copy(bytes_.begin(), bytes_.end(), out.begin());
    }

  private:
    std::string bytes_;
};

}  // namespace

TEST_CASE("A seal is XChaCha20-Poly1305 as its draft has it") {
    // draft-irtf-cfrg-xchacha-03, appendix A.3.1.
    const Key key = keyOf("808182838485868788898a8b8c8d8e8f909192939495969798999a9b9c9d9e9f");
    const std::string nonce = bytesOf("404142434445464748494a4b4c4d4e4f5051525354555657");
    const std::string beside = bytesOf("50515253c0c1c2c3c4c5c6c7");
    const std::string plain =
        "Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the "
        "future, sunscreen would be it.";
    const std::string ciphertext = bytesOf(
        "bd6d179d3e83d43b9576579493c0e939572a1700252bfaccbed2902c21396cbb"
        "731c7f1b0b4aa6440bf3a82f4eda7e39ae64c6708c54c216cb96b72e1213b452"
        "2f8c9ba40db5d945b11b69b982c1bb9e3f3fac2bc369488f76b2383565d3fff9"
        "21f9664c97637da9768812f615c68b13b52e");
    const std::string tag = bytesOf("c0875924c1c7987947deafd8780acf49");
    Given given(nonce);
    CHECK(seal(key, beside, plain, given) == nonce + ciphertext + tag);
    CHECK(open(key, beside, nonce + ciphertext + tag) == plain);
}

TEST_CASE("Two who join share a key as in RFC 7748") {
    // RFC 7748, section 6.1.
    const Key alice = keyOf("77076d0a7318a57d3c16c17251b26645df4c2f87ebc0992ab177fba51db92c2a");
    const Key bob = keyOf("5dab087e624a8a4b79e17f8b83800ee66f3bb1292618b6fd1c2f8b27ff88e0eb");
    Key alice_shows{}, bob_shows{}, alice_has{}, bob_has{};
    REQUIRE(crypto_scalarmult_base(alice_shows.data(), alice.data()) == 0);
    REQUIRE(crypto_scalarmult_base(bob_shows.data(), bob.data()) == 0);
    CHECK(hexOf(alice_shows) == "8520f0098930a754748b7ddcb43ef75a0dbf3a0d26381af4eba4a98eaa9b4e6a");
    CHECK(hexOf(bob_shows) == "de9edb7d7b7dc1b4d35b61c2ece435373f8343c85b78674dadfc7e146f882b4f");
    REQUIRE(crypto_scalarmult(alice_has.data(), alice.data(), bob_shows.data()) == 0);
    REQUIRE(crypto_scalarmult(bob_has.data(), bob.data(), alice_shows.data()) == 0);
    CHECK(hexOf(alice_has) == "4a5d9d5ba4ce2de1728e3bf480350f25e07e21c947d19e3376f09b3c1e161742");
    CHECK(alice_has == bob_has);
}

TEST_CASE("A pack's hash is BLAKE2b as others compute it") {
    // `printf abc | b2sum -l 256`, GNU coreutils 9.1.
    CHECK(hashOf("abc") == "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
}
