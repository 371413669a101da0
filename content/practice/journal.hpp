// Whoever is told of what a store has committed, as it happens. A web page has no disk: what it
// keeps, it keeps in the browser by what it is told here.
#pragma once

#include <cstdint>

#include "content/practice/response.hpp"

namespace wrenlet::practice {

struct Session;

class Journal {
  public:
    virtual ~Journal() = default;
    virtual void began(const Session& session) = 0;
    /// `played_ms` is its session's time so far.
    virtual void kept(const Response& response, std::int64_t played_ms) = 0;
    virtual void ended(std::int64_t session, std::int64_t played_ms) = 0;
};

}  // namespace wrenlet::practice
