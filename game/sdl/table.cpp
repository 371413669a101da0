#include "game/sdl/table.hpp"

#include <utility>

#include "game/sdl/fingers.hpp"

namespace wrenlet::game {

/// Tells someone before each thing that is said.
class Table::TellingVoice final : public Voice {
  public:
    explicit TellingVoice(Speaker& speaker) : speaker_(speaker) {}
    Speech say(const Utterance& utterance, Millis now) override {
        if (told) told();
        return speaker_.say(utterance, now);
    }
    void hush() override { speaker_.hush(); }
    void cue(std::string_view name) override { speaker_.cue(name); }
    void setVolume(float volume) override { speaker_.setVolume(volume); }
    std::string trouble() const override { return speaker_.trouble(); }

    std::function<void()> told;

  private:
    Speaker& speaker_;
};

Result<std::unique_ptr<Table>> Table::open(Opened& opened, const Clock& clock,
                                           const TableOptions& options) {
    auto display = Display::open(options.window, options.assets);
    if (!display.ok()) return display.problems();
    return std::make_unique<Table>(opened, clock, options, std::move(display.value()));
}

Table::Table(Opened& opened, const Clock& clock, const TableOptions& options,
             std::unique_ptr<Display> display)
    : opened_(opened),
      options_(options),
      display_(std::move(display)),
      sound_(mixer_),
      clips_(opened.pack, [this] { openSound(); }),
      speaker_(mixer_, clips_, sound_),
      voice_(std::make_unique<TellingVoice>(speaker_)) {
    display_->baker().setPictures([this](std::string_view name) -> std::string_view {
        const pack::Picture* picture = opened_.pack.picture(name);
        return picture != nullptr ? std::string_view(picture->bytes) : std::string_view();
    });
    AppParts parts{
        opened_.list, opened_.pack,     opened_.store,    scheduler_,    *voice_,
        clock,        opened_.problems, opened_.snapshot, options_.data, opened_.settings_file};
    app_ = std::make_unique<App>(std::move(parts), options_.app, display_->screen());
}

Table::~Table() = default;

void Table::openSound() {
    if (sound_.isOpen()) return;
    sound_.open(options_.sound, options_.sound_frames);
    speaker_.setTrouble(sound_.trouble());
    speaker_.prepareCues();
}

void Table::setHeardFirst(std::function<void()> told) {
    voice_->told = std::move(told);
}

bool Table::handle(const SDL_Event& event, Millis now) {
    switch (event.type) {
        case SDL_QUIT:
            return false;
        case SDL_WINDOWEVENT:
            windowEvent(event.window, now);
            return true;
        case SDL_APP_WILLENTERBACKGROUND:
            letGo(now);
            setHidden(true);
            return true;
        case SDL_APP_DIDENTERFOREGROUND:
            setHidden(false);
            return true;
        case SDL_RENDER_TARGETS_RESET:
        case SDL_RENDER_DEVICE_RESET:
            display_->canvas().forget();
            return true;
        case SDL_KEYDOWN:
            if (event.key.keysym.sym == SDLK_F11 && event.key.repeat == 0)
                display_->window().toggleFullScreen();
            [[fallthrough]];
        case SDL_KEYUP:
            keyEvent(event.key, now);
            return true;
        default:
            break;
    }
    int w = 0, h = 0;
    SDL_GetWindowSize(display_->window().window(), &w, &h);
    const auto contact = contactOf(event, display_->screen(), w, h);
    if (!contact || hidden_) return true;
    if (contact->kind == Contact::Kind::down) held_.insert(contact->id);
    if (contact->kind == Contact::Kind::up) held_.erase(contact->id);
    app_->touch(*contact, now);
    return true;
}

void Table::keyEvent(const SDL_KeyboardEvent& event, Millis now) {
    const auto key = keyOf(event.keysym);
    const bool down = event.type == SDL_KEYDOWN;
    const bool moves = key == Key::next || key == Key::previous;
    if (!key || hidden_ || (event.repeat != 0 && !moves)) return;
    app_->key(*key, down, now);
}

void Table::windowEvent(const SDL_WindowEvent& event, Millis now) {
    switch (event.event) {
        case SDL_WINDOWEVENT_SIZE_CHANGED:
            app_->resize(display_->screen(), now);
            break;
        case SDL_WINDOWEVENT_EXPOSED:
            display_->canvas().invalidate();
            break;
        case SDL_WINDOWEVENT_FOCUS_LOST:
            letGo(now);
            break;
        case SDL_WINDOWEVENT_HIDDEN:
        case SDL_WINDOWEVENT_MINIMIZED:
            letGo(now);
            setHidden(true);
            break;
        case SDL_WINDOWEVENT_SHOWN:
        case SDL_WINDOWEVENT_RESTORED:
            setHidden(false);
            break;
        default:
            break;
    }
}

// Fingers whose ups will never come.
void Table::letGo(Millis now) {
    for (const std::int64_t id : held_) app_->touch({Contact::Kind::cancel, id, {0, 0}, 0}, now);
    held_.clear();
}

void Table::setHidden(bool hidden) {
    if (hidden == hidden_) return;
    hidden_ = hidden;
    hush();
    display_->canvas().invalidate();
}

void Table::setHeld(bool held) {
    if (held == held_still_) return;
    held_still_ = held;
    hush();
}

void Table::hush() {
    sound_.lock();
    mixer_.setPaused(isStill());
    sound_.unlock();
}

bool Table::handleAll(Millis now) {
    SDL_Event event;
    while (SDL_PollEvent(&event))
        if (!handle(event, now)) return false;
    return !app_->wantsToClose();
}

void Table::show(Millis now) {
    app_->step(now);
    if (isStill()) return;
    display_->canvas().show(app_->frame(now), display_->screen());
}

}  // namespace wrenlet::game
