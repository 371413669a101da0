// The game on a table: a window, a speaker, the events of hands, and the app between them. Whoever
// owns the time (a screen, or a script) calls it moment by moment.
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <set>

#include "content/practice/scheduler.hpp"
#include "game/app.hpp"
#include "game/sdl/clips.hpp"
#include "game/sdl/display.hpp"
#include "game/sdl/sound_device.hpp"
#include "game/stage/mixer.hpp"
#include "game/stage/speaker.hpp"
#include "game/start/opening.hpp"

namespace wrenlet::game {

struct TableOptions {
    WindowOptions window;
    AppOptions app;
    std::filesystem::path assets;  // share/wrenlet
    std::filesystem::path data;    // where the tablet keeps its own, for the adult's page
    SoundDevice::Use sound = SoundDevice::Use::play;
};

class Table {
  public:
    /// `opened` and `clock` must outlive it. Errors: no assets, no window.
    static Result<std::unique_ptr<Table>> open(Opened& opened, const Clock& clock,
                                               const TableOptions& options);
    /// On a display that is open already; the options' window is not looked at.
    Table(Opened& opened, const Clock& clock, const TableOptions& options,
          std::unique_ptr<Display> display);
    ~Table();

    App& app() { return *app_; }
    Mixer& mixer() { return mixer_; }
    SoundDevice& sound() { return sound_; }
    Canvas& canvas() { return display_->canvas(); }
    Baker& baker() { return display_->baker(); }
    const Baker& baker() const { return display_->baker(); }
    DecodedClips& clips() { return clips_; }
    SDL_Renderer* renderer() { return display_->renderer(); }
    ScreenSize screen() const { return display_->screen(); }

    /// Opens the sound device, if it is not open. The first frame is shown before that.
    void openSound();
    /// Called whenever something is going to be said, before it is.
    void setHeardFirst(std::function<void()> told);
    /// Hands one event of SDL's to the app; false when the window is to be closed.
    bool handle(const SDL_Event& event, Millis now);
    /// Hands over every event that waits.
    bool handleAll(Millis now);
    /// True while the game can't be seen: it is silent then, and its time is to stand still.
    bool isHidden() const { return hidden_; }
    /// Lets the app do what is due and shows its frame if that is another.
    void show(Millis now);

  private:
    class TellingVoice;

    void keyEvent(const SDL_KeyboardEvent& event, Millis now);
    void windowEvent(const SDL_WindowEvent& event, Millis now);
    void letGo(Millis now);
    void setHidden(bool hidden);

    Opened& opened_;
    TableOptions options_;
    std::unique_ptr<Display> display_;
    practice::PracticeScheduler scheduler_;
    Mixer mixer_;
    SoundDevice sound_;
    DecodedClips clips_;
    Speaker speaker_;
    std::unique_ptr<TellingVoice> voice_;
    std::unique_ptr<App> app_;
    std::set<std::int64_t> held_;  // contacts that are down
    bool hidden_ = false;
};

/// Plays on a screen until the window or an adult closes it. `shown`: called after each frame that
/// was looked at, drawn or not.
void playOnScreen(Table& table, const std::function<void()>& shown = {});

}  // namespace wrenlet::game
