// Somebody at a table off screen who touches what she is told to, and takes pictures when she is
// told to: for screens that no scripted child comes to.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "game/sdl/script_run.hpp"

namespace wrenlet::game {

/// The starter classroom, a tablet beside it, and a folder for pictures that are not all kept.
struct Room {
    std::filesystem::path folder = std::filesystem::temp_directory_path() / "wrenlet-pictures";
    pack::Classroom classroom{folder / "classroom"};
    TabletFolder tablet{folder / "tablet"};
    std::filesystem::path pictures = folder / "pictures";

    Room();
    ~Room();
    Room(const Room&) = delete;
    Room& operator=(const Room&) = delete;
};

class Visit {
  public:
    /// A visit to `room`; with a skill, its items alone are asked. Pictures go into `folder`, their
    /// names begin with `prefix`. Nothing when the room can't be opened.
    static std::unique_ptr<Visit> begin(const Room& room, ScreenSize size,
                                        const TabletSettings& tablet,
                                        std::optional<exercise::Skill> skill = {});

    void wait(Millis millis);
    /// Touches a thing; held down for `held`. Nothing happens when it is not there.
    void touch(const std::string& thing, Millis held = 80);
    /// Through the way out and its question.
    void toAdult();
    /// Touches what a child who knows would, until the place begins with `place`.
    void playUntil(const std::string& place);
    /// Waits until the place ends with `end`; false when it does not come to that.
    bool waitFor(const std::string& end, Millis most = 60'000);
    /// A picture of what is on the screen; its path is printed. False when it can't be saved.
    bool shoot(const std::filesystem::path& file);

    App& app() { return table_->app(); }

  private:
    Visit() = default;

    std::optional<Opened> opened_;
    ScriptClock clock_;
    std::unique_ptr<Table> table_;
};

}  // namespace wrenlet::game
