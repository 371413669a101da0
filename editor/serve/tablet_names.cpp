#include "editor/serve/tablet_names.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

namespace wrenlet::desk {

namespace {

// None is also what a child's badge shows.
constexpr std::array<std::string_view, 40> kWords{
    "bramble", "brook",  "cactus", "canyon", "cedar",  "cloud",   "clover", "comet",
    "coral",   "creek",  "daisy",  "dune",   "ember",  "fern",    "frost",  "garden",
    "harbor",  "hazel",  "island", "ivy",    "lagoon", "maple",   "meadow", "mint",
    "moss",    "nettle", "ocean",  "olive",  "orchid", "pebble",  "pepper", "pine",
    "prairie", "rain",   "river",  "spruce", "summit", "thistle", "violet", "willow"};
constexpr std::string_view kSigns = "abcdefghjkmnpqrstvwxyz23456789";
constexpr std::size_t kMore = 4;

std::size_t below(std::size_t bound, link::Entropy& entropy) {
    std::array<std::uint8_t, 4> bytes{};
    entropy.fill(bytes);
    std::uint32_t number = 0;
    for (const std::uint8_t byte : bytes) number = number << 8 | byte;
    return number % bound;  // names keep no secret: a word may be a little likelier than another
}

}  // namespace

std::string nameForTablet(const std::function<bool(std::string_view)>& is_taken,
                          const std::function<bool(std::string_view)>& word_is_taken,
                          link::Entropy& entropy) {
    const std::size_t first = below(kWords.size(), entropy);
    std::string_view word = kWords[first];
    for (std::size_t i = 0; i < kWords.size(); ++i)
        if (const std::string_view other = kWords[(first + i) % kWords.size()];
            !word_is_taken(other)) {
            word = other;
            break;
        }
    std::string name;
    do {
        name = std::string(word) + "-";
        for (std::size_t i = 0; i < kMore; ++i) name += kSigns[below(kSigns.size(), entropy)];
    } while (is_taken(name));
    return name;
}

std::string_view wordOfTablet(std::string_view tablet) {
    if (tablet.size() <= kMore + 1 || tablet[tablet.size() - kMore - 1] != '-') return {};
    const std::string_view word = tablet.substr(0, tablet.size() - kMore - 1);
    return std::find(kWords.begin(), kWords.end(), word) != kWords.end() ? word
                                                                         : std::string_view();
}

std::string shownTablet(std::string_view tablet) {
    const std::string_view word = wordOfTablet(tablet);
    if (word.empty()) return std::string(tablet);
    std::string shown(word);
    shown[0] = static_cast<char>(shown[0] - 'a' + 'A');
    return shown;
}

}  // namespace wrenlet::desk
