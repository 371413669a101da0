// A classroom with a class, a pack and a page, served on a free port of this computer.
#pragma once

#include <atomic>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "editor/serve/serving.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk::samples {

/// A clock that a test sets; it may be read from any thread.
class HandClock final : public Clock {
  public:
    std::int64_t unixMillis() const override { return now_ms; }
    std::atomic<std::int64_t> now_ms{1'790'000'000'000};
};

struct ServedRoom {
    ServedRoom();

    HandClock clock;
    link::SystemEntropy entropy;
    practice::samples::Folder folder;
    pack::Classroom classroom{folder / "room"};
    ServingOptions options;
    std::unique_ptr<Serving> serving;

    /// False when it does not start.
    bool start();
    void stop() { serving.reset(); }
    std::uint16_t port() const { return serving->port(); }
    std::string newCode();
    /// Puts so many tablets on the list, as if they had joined. Before start().
    std::vector<link::TabletIdentity> withTablets(int count);
    /// Waits, in real time, for what a thread does aside.
    bool soon(const std::function<bool()>& holds) const;
    pack::ClassList list() const;
    void write(const pack::ClassList& list) const;
    /// Every file of the classroom by its name, but the log of what was refused.
    std::map<std::string, std::string> files() const;
    std::string refusedLog() const;
};

/// The response of samples::response() by that child.
practice::Response responseBy(const std::string& child);

}  // namespace wrenlet::desk::samples
