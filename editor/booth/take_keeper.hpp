// Puts takes on disk as they were made, aside, and keeps them in memory until they are there: a
// stick that is pulled out costs no take.
#pragma once

#include <cstdint>
#include <deque>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "editor/unit/aside.hpp"
#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

class TakeKeeper {
  public:
    static constexpr std::int64_t kAgainMs = 2000;  // after a try that did not work

    /// `folder` is the unit's takes/. `aside` must outlive it.
    TakeKeeper(std::filesystem::path folder, Aside& aside, std::function<void()> wake);

    /// Gives the take a file's name that nothing has, and writes it soon.
    std::string keep(std::shared_ptr<const Pcm> take);
    /// A take by its name: from memory while it is not written, else from its file.
    Result<Pcm> take(const std::string& name) const;

    /// Tries again what could not be written.
    void step(std::int64_t now_ms);
    /// How many are not on disk yet.
    std::size_t waiting() const { return waiting_.size(); }
    const std::vector<Problem>& problems() const { return problems_; }
    /// Writes what is left, and waits for it: at the end.
    void finish();

  private:
    struct Waiting {
        std::string name;
        std::shared_ptr<const Pcm> take;
    };
    struct Written {
        std::string name;
        std::vector<Problem> problems;
    };
    void writeFirst();
    void takeIn(std::int64_t now_ms);

    std::filesystem::path folder_;
    Newest<Written> newest_;
    std::deque<Waiting> waiting_;
    std::size_t next_number_ = 1;
    bool writing_ = false;
    std::int64_t again_at_ms_ = 0;
    std::vector<Problem> problems_;
};

}  // namespace wrenlet::desk
