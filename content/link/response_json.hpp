// A response as JSON, for the link: every field but the tablet, which is whoever sends it.
#pragma once

#include <optional>

#include "content/pack/json_reader.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::link {

pack::Json responseToJson(const practice::Response& response);

/// Nothing when a field is missing, of the wrong kind, or outside what a store may hold; its
/// sequence is 1 to kHighestSequence then.
std::optional<practice::Response> responseFromJson(const pack::Json& json);

}  // namespace wrenlet::link
