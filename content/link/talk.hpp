// One thing asked by a tablet and the answer to it, sealed under the tablet's key. Each carries a
// number that only ever rises and that the seal covers together with the version, the direction and
// the tablet's name: nothing that was said once can be said again, by anyone, to either side.
//
//   version, length of the name, name, number (8 bytes, highest first), sealed
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "content/link/bytes.hpp"

namespace wrenlet::link {

inline constexpr std::size_t kMostTalkBytes = 512 * 1024;  // of a whole message, either way

/// What is outside the seal, readable by all. Views into the bytes it was read from.
struct Envelope {
    std::string_view tablet;
    std::uint64_t number = 0;
    std::string_view sealed;
};

/// Nothing when the bytes are too many, cut short, of another version or name no tablet.
std::optional<Envelope> readEnvelope(std::string_view bytes);

std::string sealAsk(const TabletIdentity& tablet, std::uint64_t number, std::string_view plain,
                    Entropy& entropy);
/// Nothing when it is not this tablet's, or was changed on its way.
std::optional<std::string> openAsk(const TabletIdentity& tablet, const Envelope& envelope);

/// To the ask of that number, and to no other.
std::string sealAnswer(const TabletIdentity& tablet, std::uint64_t number, std::string_view plain,
                       Entropy& entropy);
std::optional<std::string> openAnswer(const TabletIdentity& tablet, std::uint64_t number,
                                      std::string_view bytes);

}  // namespace wrenlet::link
