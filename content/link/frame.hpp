// The bytes of a message: the length of its JSON, the JSON, then bytes that belong in none. What
// asks and answers are read and written with; for the .cpp files that do so.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "content/pack/json_reader.hpp"

namespace wrenlet::link {

inline constexpr std::int64_t kLastMs = 100'000ll * 86'400'000;  // as in practice/response_row
inline constexpr std::int64_t kMostPackBytes = 1ll << 32;        // more than pack_file lets pass
inline constexpr std::size_t kMostIdLetters = 60;

struct Frame {
    pack::Json json;
    std::string_view attached;  // of the bytes it was read from
};

std::string writeFrame(const pack::Json& json, std::string_view attached = {});
/// Nothing when it is too long, cut short, or its JSON is no object.
std::optional<Frame> readFrame(std::string_view plain);

/// A pack's hash, or empty; a problem when it is neither.
std::string hashFrom(const pack::Json& json, const char* key, pack::JsonReader& reader);

}  // namespace wrenlet::link
