#include "content/link/talk.hpp"

#include "content/link/sealed.hpp"
#include "content/practice/response_row.hpp"

namespace wrenlet::link {
namespace {

enum class Direction : char { to_desk = 'd', to_tablet = 't' };

constexpr std::size_t kNumberBytes = 8;

std::string head(std::string_view tablet, std::uint64_t number) {
    std::string bytes;
    bytes += static_cast<char>(kVersion);
    bytes += static_cast<char>(tablet.size());
    bytes += tablet;
    for (std::size_t i = kNumberBytes; i-- > 0;)
        bytes += static_cast<char>(number >> (8 * i) & 0xff);
    return bytes;
}

std::string beside(Direction direction, const std::string& head) {
    return "wrenlet talk " + std::string(1, static_cast<char>(direction)) + head;
}

std::string sealed(Direction direction, const TabletIdentity& tablet, std::uint64_t number,
                   std::string_view plain, Entropy& entropy) {
    std::string bytes = head(tablet.tablet, number);
    return bytes + seal(tablet.key, beside(direction, bytes), plain, entropy);
}

std::optional<std::string> opened(Direction direction, const TabletIdentity& tablet,
                                  const Envelope& envelope) {
    if (envelope.tablet != tablet.tablet) return std::nullopt;
    return open(tablet.key, beside(direction, head(tablet.tablet, envelope.number)),
                envelope.sealed);
}

}  // namespace

std::optional<Envelope> readEnvelope(std::string_view bytes) {
    if (bytes.size() < 2 || bytes.size() > kMostTalkBytes) return std::nullopt;
    if (static_cast<std::uint8_t>(bytes[0]) != kVersion) return std::nullopt;
    const std::size_t name = static_cast<std::uint8_t>(bytes[1]);
    const std::size_t begin = 2 + name + kNumberBytes;
    if (bytes.size() < begin + kSealBytes) return std::nullopt;
    Envelope envelope;
    envelope.tablet = bytes.substr(2, name);
    if (!practice::isTabletName(envelope.tablet)) return std::nullopt;
    for (std::size_t i = 2 + name; i < begin; ++i)
        envelope.number = envelope.number << 8 | static_cast<std::uint8_t>(bytes[i]);
    envelope.sealed = bytes.substr(begin);
    return envelope;
}

std::string sealAsk(const TabletIdentity& tablet, std::uint64_t number, std::string_view plain,
                    Entropy& entropy) {
    return sealed(Direction::to_desk, tablet, number, plain, entropy);
}

std::optional<std::string> openAsk(const TabletIdentity& tablet, const Envelope& envelope) {
    return opened(Direction::to_desk, tablet, envelope);
}

std::string sealAnswer(const TabletIdentity& tablet, std::uint64_t number, std::string_view plain,
                       Entropy& entropy) {
    return sealed(Direction::to_tablet, tablet, number, plain, entropy);
}

std::optional<std::string> openAnswer(const TabletIdentity& tablet, std::uint64_t number,
                                      std::string_view bytes) {
    const auto envelope = readEnvelope(bytes);
    if (!envelope || envelope->number != number) return std::nullopt;
    return opened(Direction::to_tablet, tablet, *envelope);
}

}  // namespace wrenlet::link
