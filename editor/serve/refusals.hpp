// What the desk would not do for somebody on the network: kept for the teacher and whoever looks
// after the school's network, in a file that cannot grow without end. Who is refused too often is
// not listened to for a while.
#pragma once

#include <cstdint>
#include <deque>
#include <filesystem>
#include <map>
#include <mutex>
#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::desk {

struct Refusal {
    std::int64_t at_ms = 0;
    std::string from;  // an address
    std::string what;  // "a wrong code"
};

/// May be called from any thread.
class Refusals {
  public:
    static constexpr std::size_t kMostFileBytes = 256 * 1024;  // then the older half goes
    static constexpr std::size_t kMostKept = 50;               // for the window
    static constexpr int kMostInAMinute = 30;                  // from one address
    static constexpr int kMostLinesASecond = 20;               // in the file; the rest is counted

    explicit Refusals(std::filesystem::path file);

    /// What only somebody can send who guesses or forges weighs; a path that is not here, or a
    /// genuine message that comes again, may be a browser's doing.
    enum class Weight : std::uint8_t { none, guess };
    void note(std::string_view from, std::string what, std::int64_t now_ms,
              Weight weight = Weight::guess);
    /// Refused too often within the last minute.
    bool isBarred(std::string_view from, std::int64_t now_ms) const;

    std::vector<Refusal> newest() const;  // the newest first
    std::uint64_t count() const;          // since the desk began to serve

  private:
    struct Minute {
        std::int64_t began_ms = 0;
        int refused = 0;
    };
    void write(const Refusal& refusal);

    mutable std::mutex mutex_;
    std::filesystem::path file_;
    std::deque<Refusal> newest_;
    std::map<std::string, Minute, std::less<>> by_address_;
    std::uint64_t count_ = 0;
    std::int64_t second_ = 0;
    int lines_ = 0, untold_ = 0;
};

}  // namespace wrenlet::desk
