// The class and its pack as they are handed to tablets: read anew when their files change, so that
// what the teacher changes at the desk is at the tablets with their next hello.
#pragma once

#include <cstdint>
#include <memory>
#include <mutex>
#include <string>

#include "content/common/result.hpp"
#include "content/link/message.hpp"
#include "content/pack/classroom.hpp"

namespace wrenlet::desk {

/// One state of it; never changed.
struct ServedClass {
    link::Welcome welcome;  // all but the clock
    std::shared_ptr<const std::string> pack_bytes = std::make_shared<const std::string>();
    std::vector<Problem> problems;  // what cannot be handed out, and why
    bool isDeleted(std::string_view child) const;
};

/// May be called from any thread.
class ClassNow {
  public:
    explicit ClassNow(pack::Classroom classroom) : classroom_(std::move(classroom)) {}

    /// Looks at the files at most once a second. A class list that cannot be read leaves the one
    /// before standing.
    std::shared_ptr<const ServedClass> at(std::int64_t now_ms);
    /// Looks at them in any case.
    std::shared_ptr<const ServedClass> now(std::int64_t now_ms);

  private:
    void readAnew(Result<std::string> text);

    pack::Classroom classroom_;
    std::mutex mutex_;
    std::shared_ptr<const ServedClass> state_ = std::make_shared<const ServedClass>();
    std::int64_t looked_ms_ = 0;
    bool looked_ = false;
    std::string read_;  // the class list as it was read
};

}  // namespace wrenlet::desk
