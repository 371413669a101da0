#include "content/link/talk.hpp"

#include <doctest/doctest.h>

#include <string>

#include "content/common/random.hpp"
#include "content/link/sealed.hpp"
#include "tests/link/seeded_entropy.hpp"

using namespace wrenlet;
using namespace wrenlet::link;
using samples::SeededEntropy;

namespace {

TabletIdentity tablet(const std::string& name, std::uint8_t byte) {
    TabletIdentity identity;
    identity.tablet = name;
    identity.key.fill(byte);
    return identity;
}

const TabletIdentity kBee = tablet("t-bee", 1), kCactus = tablet("t-cactus", 2);

std::optional<std::string> heard(const TabletIdentity& by, const std::string& bytes) {
    const auto envelope = readEnvelope(bytes);
    return envelope ? openAsk(by, *envelope) : std::nullopt;
}

}  // namespace

TEST_CASE("What a tablet asks is read by the desk, and the answer by the tablet") {
    SeededEntropy entropy(1);
    for (const std::string& plain : {std::string(), std::string("a"), std::string(70'000, 'x')}) {
        const std::string ask = sealAsk(kBee, 41, plain, entropy);
        const auto envelope = readEnvelope(ask);
        REQUIRE(envelope);
        CHECK(envelope->tablet == "t-bee");
        CHECK(envelope->number == 41);
        CHECK(openAsk(kBee, *envelope) == plain);
        CHECK(openAnswer(kBee, 41, sealAnswer(kBee, 41, plain, entropy)) == plain);
    }
    const auto far = readEnvelope(sealAsk(kBee, 0xfedcba9876543210, "a", entropy));
    REQUIRE(far);
    CHECK(far->number == 0xfedcba9876543210);
}

TEST_CASE("The same thing asked twice looks different each time") {
    SeededEntropy entropy(1);
    CHECK(sealAsk(kBee, 1, "a", entropy) != sealAsk(kBee, 1, "a", entropy));
}

TEST_CASE("Whatever bit of a message is changed, it is not read") {
    SeededEntropy entropy(2);
    const std::string ask = sealAsk(kBee, 41, "how many?", entropy);
    REQUIRE(heard(kBee, ask) == "how many?");
    for (std::size_t at = 0; at < ask.size(); ++at) {
        for (int bit = 0; bit < 8; ++bit) {
            std::string changed = ask;
            changed[at] = static_cast<char>(changed[at] ^ (1 << bit));
            CHECK_FALSE(heard(kBee, changed));
        }
    }
    for (std::size_t size = 0; size < ask.size(); ++size)
        CHECK_FALSE(heard(kBee, ask.substr(0, size)));
    CHECK_FALSE(heard(kBee, ask + "x"));
}

TEST_CASE("Bytes of any kind are read as no message and nothing breaks") {
    Random random(3);
    for (int i = 0; i < 20'000; ++i) {
        std::string bytes(random.below(120), '\0');
        for (char& byte : bytes) byte = static_cast<char>(random.below(256));
        if (!bytes.empty() && random.below(2) == 0) bytes[0] = 1;
        if (bytes.size() > 1 && random.below(2) == 0)
            bytes[1] = static_cast<char>(random.below(60));
        CHECK_FALSE(heard(kBee, bytes));
        CHECK_FALSE(openAnswer(kBee, 1, bytes));
    }
}

TEST_CASE("One tablet cannot speak for another, nor read what is for it") {
    SeededEntropy entropy(4);
    TabletIdentity as_cactus = kBee;
    as_cactus.tablet = kCactus.tablet;  // the other's name with its own key
    CHECK_FALSE(heard(kCactus, sealAsk(as_cactus, 1, "a", entropy)));
    CHECK_FALSE(heard(kCactus, sealAsk(kBee, 1, "a", entropy)));
    CHECK_FALSE(openAnswer(kBee, 1, sealAnswer(kCactus, 1, "a", entropy)));
}

TEST_CASE("An ask is no answer, and an answer is to one ask only") {
    SeededEntropy entropy(5);
    CHECK_FALSE(openAnswer(kBee, 1, sealAsk(kBee, 1, "a", entropy)));
    CHECK_FALSE(heard(kBee, sealAnswer(kBee, 1, "a", entropy)));
    CHECK_FALSE(openAnswer(kBee, 2, sealAnswer(kBee, 1, "a", entropy)));
}

TEST_CASE("A message that is too long is not looked at") {
    SeededEntropy entropy(6);
    CHECK_FALSE(readEnvelope(sealAsk(kBee, 1, std::string(kMostTalkBytes, 'x'), entropy)));
}

TEST_CASE("A key is read back from its hexadecimal, and from nothing else") {
    SeededEntropy entropy(7);
    Key key{};
    entropy.fill(key);
    const std::string hex = hexOf(key);
    CHECK(keyFromHex(hex) == key);
    CHECK_FALSE(keyFromHex(hex.substr(1)));
    CHECK_FALSE(keyFromHex(hex + "0"));
    CHECK_FALSE(keyFromHex("g" + hex.substr(1)));
    CHECK_FALSE(keyFromHex("A" + hex.substr(1)));
}
