// Sessions and responses as the browser keeps them, one JSON text each, and back. A response reads
// as the link sends it to the desk, so that the page's script need not look inside.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/practice/store.hpp"

namespace wrenlet::web {

std::string sessionText(const practice::Session& session);
std::string responseText(const practice::Response& response);

struct Kept {
    std::vector<practice::Session> sessions;
    std::vector<practice::Response> responses;  // by sequence
    std::size_t unreadable = 0;                 // texts that make no sense, left out
};

/// {"sessions": [[id, text], …], "responses": [[sequence, session id, text], …]}, by number.
/// Errors: not such JSON.
Result<Kept> readKept(std::string_view json);

}  // namespace wrenlet::web
