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
    int sound_frames = 512;  // of a buffer; twice as many where that is refused
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
    /// Holds the game, so that nothing more is seen or heard, until it is let go again: what was
    /// answered is to be kept first.
    void setHeld(bool held);
    /// True while the game is held or can't be seen: it is silent then, and its time is to stand
    /// still.
    bool isStill() const { return hidden_ || held_still_; }
    /// Lets the app do what is due and shows its frame if that is another, and if it is not held.
    void show(Millis now);

  private:
    class TellingVoice;

    void keyEvent(const SDL_KeyboardEvent& event, Millis now);
    void windowEvent(const SDL_WindowEvent& event, Millis now);
    void letGo(Millis now);
    void setHidden(bool hidden);
    void hush();

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
    bool held_still_ = false;
};

}  // namespace wrenlet::game
