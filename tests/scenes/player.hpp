// A game without a screen, for tests: time that the test moves, a voice that says nothing and takes
// as long as the clips do, and a hand that touches what it is told to.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "game/app.hpp"
#include "tests/fixtures/small_pack.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::fixtures {

class SilentVoice final : public game::Voice {
  public:
    explicit SilentVoice(const pack::Pack& pack) : pack_(pack) {}
    game::Speech say(const game::Utterance& utterance, game::Millis now) override;
    void hush() override {}
    void cue(std::string_view) override {}
    void setVolume(float to) override { volume = to; }
    std::string trouble() const override { return trouble_text; }

    float volume = 1;
    std::string trouble_text;
    std::vector<game::Utterance> said;
    std::function<void()> on_say = [] {};

  private:
    const pack::Pack& pack_;
};

class FixedClock final : public Clock {
  public:
    std::int64_t unixMillis() const override { return at; }
    std::int64_t at = 1'790'000'000'000;
};

/// An app over a store in a folder, played by calls. Its settings are kept in settings.json beside
/// the store. `key` is the first child's.
class Player {
  public:
    Player(const std::filesystem::path& store, int children, std::uint64_t seed = 7,
           game::ScreenSize screen = {}, int session_minutes = 3, pack::Pack pack = smallPack(),
           game::AppOptions options = {}, std::vector<std::string> key = {});

    /// Steps in 60ths of a second until it has moved `millis` on.
    void wait(game::Millis millis);
    /// Lets `millis` pass in which the app is not called.
    void rest(game::Millis millis);
    /// Waits until something can be answered, or `most` has passed.
    bool waitForTouch(game::Millis most = 60'000);
    void tap(const std::string& thing);
    void drag(const std::string& from, const std::string& to);
    /// Holds the way out open and answers the question.
    void toAdultPage();
    /// Touches what a child who knows would touch, until the place begins with `place`.
    void playRightUntil(const std::string& place, int most_touches = 4000);
    /// Chooses a wrong answer to a sort or a pick: any home or choice but the right one.
    void answerWrong();

    game::App& app() { return *app_; }
    practice::Store& store() { return store_; }
    SilentVoice& voice() { return voice_; }
    game::Millis now() const { return now_; }
    void contact(const game::Contact& contact) { app_->touch(contact, now_); }

  private:
    pack::Pack pack_;
    pack::ClassList list_;
    practice::Store store_;
    practice::PracticeScheduler scheduler_;
    SilentVoice voice_{pack_};
    FixedClock clock_;
    std::unique_ptr<game::App> app_;
    game::Millis now_ = 0;
};

}  // namespace wrenlet::fixtures
