#include "content/link/squeezed.hpp"

#include <zlib.h>

namespace wrenlet::link {
namespace {

const Bytef* raw(std::string_view bytes) {
    return reinterpret_cast<const Bytef*>(bytes.data());
}

}  // namespace

std::string squeezed(std::string_view bytes) {
    if (bytes.empty()) return {};
    const auto size = static_cast<uLong>(bytes.size());
    uLongf room = compressBound(size);
    std::string out(room, '\0');
    // With room for the worst case, memory is all that can be lacking.
    if (compress(reinterpret_cast<Bytef*>(out.data()), &room, raw(bytes), size) != Z_OK) return {};
    out.resize(room);
    return out;
}

std::optional<std::string> unsqueezed(std::string_view bytes, std::size_t most) {
    if (bytes.empty()) return std::string();
    auto room = static_cast<uLongf>(most);
    auto taken = static_cast<uLong>(bytes.size());
    std::string out(most, '\0');
    if (uncompress2(reinterpret_cast<Bytef*>(out.data()), &room, raw(bytes), &taken) != Z_OK ||
        taken != bytes.size())
        return std::nullopt;
    out.resize(room);
    return out;
}

}  // namespace wrenlet::link
