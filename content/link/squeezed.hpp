// Bytes made smaller for the way over the network, by deflate (RFC 1950): the recordings of a pack
// each begin with the same tables, which a browser's own compression never sees behind the seal.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace wrenlet::link {

/// Nothing stays nothing. Of bytes that are random already, a little more than there were.
std::string squeezed(std::string_view bytes);
/// And back. Nothing when it is damaged, cut short, followed by more, or unpacks to more than
/// `most` bytes, of which no more are ever held.
std::optional<std::string> unsqueezed(std::string_view bytes, std::size_t most);

}  // namespace wrenlet::link
