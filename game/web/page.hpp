// The game in a web page: its store lies in memory, filled from what the browser kept, and each
// response is handed to the browser before anything of it is heard or seen.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "content/common/clock.hpp"
#include "content/common/result.hpp"
#include "content/practice/journal.hpp"
#include "game/sdl/playing.hpp"

namespace wrenlet::web {

/// The tablet's clock, put right by what the desk last said.
class PageClock final : public Clock {
  public:
    explicit PageClock(std::int64_t behind_ms) : behind_ms_(behind_ms) {}
    std::int64_t unixMillis() const override { return system_.unixMillis() + behind_ms_; }

  private:
    SystemClock system_;
    std::int64_t behind_ms_;
};

struct PageCall {
    std::string tablet;          // its name
    std::int64_t behind_ms = 0;  // of its clock, behind the desk's
    bool announces = false;      // each place and what frames cost, for a test
};

class Page final : public practice::Journal {
  public:
    /// Opens what the page's script has laid out: /classroom, /tablet and /kept.json. Errors:
    /// nothing to play.
    static Result<std::unique_ptr<Page>> open(const PageCall& call);

    /// Shows the first frame; nothing is said and nothing moves until begin(). Once, before all
    /// that follows. By itself, so that the browser takes a touch in between.
    /// Errors: no screen.
    Result<Done> lay();
    /// Goes on from now, frame by frame, until an adult closes it.
    void begin();
    /// One response that was handed over is kept in the browser (or could not be, and is tried
    /// again by the script).
    void kept();
    /// True while no child's turn is open.
    bool isAtRest() const;

    void began(const practice::Session& session) override;
    void kept(const practice::Response& response, std::int64_t played_ms) override;
    void ended(std::int64_t session, std::int64_t played_ms) override;

  private:
    Page(const PageCall& call, game::Opened opened);
    void step();
    void announce();

    game::Opened opened_;
    PageClock clock_;
    bool announces_;
    std::string last_;
    std::vector<double> frames_;   // ms that each step cost that drew, not yet told
    std::vector<double> between_;  // and each that drew nothing: what is used of idle moments
    game::TabletSettings settings_;
    std::unique_ptr<game::Table> table_;
    std::unique_ptr<game::Playing> playing_;
    int waiting_ = 0;  // responses handed over and not yet kept
};

}  // namespace wrenlet::web
