#include "content/link/squeezed.hpp"

#include <doctest/doctest.h>

#include "content/common/random.hpp"

using namespace wrenlet;
using link::squeezed;
using link::unsqueezed;

namespace {

std::string randomBytes(std::size_t size) {
    Random random(4);
    std::string bytes;
    while (bytes.size() < size) bytes += static_cast<char>(random.below(256));
    return bytes;
}

}  // namespace

TEST_CASE("Bytes come back from the way as they were, and what repeats takes less") {
    const std::string once = randomBytes(4'000);
    for (const std::string& bytes : {std::string(), std::string("d"), once, once + once + once}) {
        const std::string small = squeezed(bytes);
        CHECK(unsqueezed(small, bytes.size() + 1) == bytes);
        CHECK(small.size() <= bytes.size() + 20);
    }
    CHECK(squeezed(once + once + once).size() < once.size() * 11 / 10);
}

TEST_CASE("A stream by another program is read") {
    // Python 3.11: zlib.compress(b"duck, duck, duck, duck", 9)
    const std::string by_python = "\x78\xda\x4b\x29\x4d\xce\xd6\x51\x48\x41\x23\x01\x56\x62\x07\x81";
    CHECK(unsqueezed(by_python, 100) == "duck, duck, duck, duck");
}

TEST_CASE("What is damaged, cut short, followed by more or too large gives nothing") {
    const std::string bytes = randomBytes(300) + std::string(5'000, 'a');
    const std::string small = squeezed(bytes);
    CHECK(unsqueezed(small, bytes.size()) == bytes);
    CHECK_FALSE(unsqueezed(small, bytes.size() - 1));
    CHECK_FALSE(unsqueezed(small + "x", bytes.size()));
    for (std::size_t size = 1; size < small.size(); ++size) {
        CAPTURE(size);
        CHECK_FALSE(unsqueezed(small.substr(0, size), bytes.size()));
    }
    for (std::size_t at = 2; at < small.size(); ++at) {  // the first two say only how it was made
        std::string damaged = small;
        damaged[at] = static_cast<char>(damaged[at] ^ 0x41);
        const auto read = unsqueezed(damaged, bytes.size());
        CHECK((!read || *read != bytes));
    }
    CHECK_FALSE(unsqueezed(squeezed(std::string(50'000'000, '\0')), 1'000));
}
