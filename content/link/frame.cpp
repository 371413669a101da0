#include "content/link/frame.hpp"

#include <utility>

#include "content/link/bytes.hpp"
#include "content/link/talk.hpp"

namespace wrenlet::link {
namespace {

constexpr std::size_t kLengthBytes = 4;

}  // namespace

std::string writeFrame(const pack::Json& json, std::string_view attached) {
    const std::string text = json.dump(-1, ' ', false, pack::Json::error_handler_t::replace);
    std::string bytes;
    for (std::size_t i = kLengthBytes; i-- > 0;)
        bytes += static_cast<char>(text.size() >> (8 * i) & 0xff);
    bytes += text;
    bytes += attached;
    return bytes;
}

std::optional<Frame> readFrame(std::string_view plain) {
    if (plain.size() < kLengthBytes || plain.size() > kMostTalkBytes) return std::nullopt;
    std::size_t length = 0;
    for (std::size_t i = 0; i < kLengthBytes; ++i)
        length = length << 8 | static_cast<std::uint8_t>(plain[i]);
    if (length > plain.size() - kLengthBytes) return std::nullopt;
    auto json = pack::parseJson(plain.substr(kLengthBytes, length), "message");
    if (!json.ok() || !json.value().is_object()) return std::nullopt;
    return Frame{std::move(json.value()), plain.substr(kLengthBytes + length)};
}

std::string hashFrom(const pack::Json& json, const char* key, pack::JsonReader& reader) {
    std::string hash = reader.text(json, key, "", 64);
    if (!hash.empty() && !keyFromHex(hash)) reader.error(key, "This is no hash.", "");
    return hash;
}

}  // namespace wrenlet::link
