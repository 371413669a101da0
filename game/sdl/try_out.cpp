#include "game/sdl/try_out.hpp"

#include "content/practice/scheduler.hpp"
#include "game/sdl/display.hpp"
#include "game/sdl/playing.hpp"
#include "game/sdl/screenshot.hpp"
#include "game/sdl/table.hpp"
#include "game/start/tried.hpp"

namespace wrenlet::game {
namespace {

constexpr Millis kFrame = 16, kLongest = 60'000;

/// Says nothing, at once, and remembers how the question was put.
class NotingVoice final : public Voice {
  public:
    Speech say(const Utterance& utterance, Millis now) override {
        if (said.empty()) said = utterance;
        return {std::vector<Timing>(utterance.size(), {now, now}), now};
    }
    void hush() override {}
    void cue(std::string_view) override {}
    void setVolume(float) override {}
    std::string trouble() const override { return ""; }

    Utterance said;
};

}  // namespace

Result<Still> drawStill(const TryOut& tried, const std::filesystem::path& png) {
    const PassingFolder folder(tried.random);
    Result<Opened> opened = openTried(tried.pack, tried.item, TriedFor::looking, folder);
    if (!opened.ok()) return opened.problems();
    const pack::Pack& pack = opened.value().pack;
    auto display = Display::open({tried.width, tried.height, false, true}, tried.assets);
    if (!display.ok()) return display.problems();
    display.value()->baker().setPictures([&pack](std::string_view name) {
        const pack::Picture* picture = pack.picture(name);
        return picture != nullptr ? std::string_view(picture->bytes) : std::string_view();
    });

    const SystemClock clock;
    const practice::PracticeScheduler scheduler;
    NotingVoice voice;
    AppOptions options;
    options.seed = 1;  // the same picture each time
    options.tablet = tried.tablet;
    options.tablet.motion = false;  // the same states by cuts
    options.tries_out = true;
    App app({opened.value().list, pack, opened.value().store, scheduler, voice, clock, {}, {}},
            options, display.value()->screen());
    Millis now = 0;
    for (; now < kLongest; now += kFrame) {
        app.step(now);
        if (app.rightTouch() && now > 0) break;
    }
    display.value()->canvas().draw(app.frame(now));
    const SurfacePtr picture = readBack(display.value()->renderer());
    const Result<Done> saved = savePng(picture.get(), png);
    if (!saved.ok()) return saved.problems();
    return Still{app.place(), voice.said};
}

Result<Done> playTried(const TryOut& tried) {
    const PassingFolder folder(tried.random);
    Result<Opened> opened = openTried(tried.pack, tried.item, TriedFor::playing, folder);
    if (!opened.ok()) return opened.problems();
    TableOptions options;
    options.window = {tried.width, tried.height};
    options.assets = tried.assets;
    options.app.tablet = tried.tablet;
    options.app.tries_out = true;
    const SystemClock clock;
    auto table = Table::open(opened.value(), clock, options);
    if (!table.ok()) return table.problems();
    playOnScreen(*table.value());
    return Done{};
}

}  // namespace wrenlet::game
