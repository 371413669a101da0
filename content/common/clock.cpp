#include "content/common/clock.hpp"

#include <chrono>

namespace wrenlet {

std::int64_t SystemClock::unixMillis() const {
    const auto now = std::chrono::system_clock::now().time_since_epoch();
    return std::chrono::duration_cast<std::chrono::milliseconds>(now).count();
}

}  // namespace wrenlet
