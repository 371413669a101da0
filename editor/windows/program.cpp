#include "editor/windows/program.hpp"

#include <SDL.h>

#include <algorithm>
#include <string_view>
#include <thread>

#include "content/common/clock.hpp"
#include "content/common/random.hpp"
#include "editor/serve/own_addresses.hpp"
#include "editor/windows/bench.hpp"
#include "editor/windows/canvas.hpp"
#include "editor/windows/input.hpp"
#include "editor/windows/platform.hpp"
#include "editor/windows/sound.hpp"

namespace wrenlet::desk {

namespace {

struct WindowClose {
    void operator()(SDL_Window* window) const { SDL_DestroyWindow(window); }
};
struct RendererClose {
    void operator()(SDL_Renderer* renderer) const { SDL_DestroyRenderer(renderer); }
};
using WindowPtr = std::unique_ptr<SDL_Window, WindowClose>;
using RendererPtr = std::unique_ptr<SDL_Renderer, RendererClose>;

constexpr float kFrameSeconds = 1.f / 60;
constexpr int kFrameMs = 16;     // while something moves by itself
constexpr int kIdleMs = 30'000;  // "2 minutes ago" grows older on its own

struct Video {
    bool started = SDL_Init(SDL_INIT_VIDEO) == 0;
    ~Video() { SDL_Quit(); }
};

// SDL falls back on drivers that show nothing; nobody could close such a window.
bool isSeen() {
    const std::string_view driver = SDL_GetCurrentVideoDriver();
    return (driver != "offscreen" && driver != "dummy") || SDL_getenv("SDL_VIDEODRIVER");
}

void tell(std::ostream& err, const std::vector<Problem>& problems) {
    for (const Problem& problem : problems) err << sentence(problem) << "\n";
}

/// Of this run alone: what is drawn and played goes there and away again.
std::filesystem::path passingFolder(std::int64_t now_ms) {
    std::error_code error;
    const std::uint64_t number = Random(static_cast<std::uint64_t>(now_ms)).next();
    return std::filesystem::temp_directory_path(error) / ("wrenlet-desk-" + std::to_string(number));
}

void wakeWindow() {
    SDL_Event event{};
    event.type = SDL_USEREVENT;
    SDL_PushEvent(&event);
}

// Keys and presses take two frames to settle in Dear ImGui: what is pressed in one shows in the
// next.
bool drawTwice(Canvas& canvas, DeskWindow& window, SDL_Renderer* renderer,
               const DeskOptions& options, std::ostream& err) {
    int width = 0, height = 0;
    SDL_GetRendererOutputSize(renderer, &width, &height);
    for (int frame = 0; frame < 2; ++frame) {
        const float chosen =
            scaleFor(static_cast<float>(width), static_cast<float>(height), window.textSize());
        const auto drawn =
            canvas.draw(window, width, height, options.scale.value_or(chosen), kFrameSeconds);
        if (!drawn.ok()) {
            tell(err, drawn.problems());
            return false;
        }
    }
    return true;
}

}  // namespace

int runDesk(const DeskOptions& options, std::ostream& err) {
    SDL_SetHint(SDL_HINT_TOUCH_MOUSE_EVENTS, "0");
    const Video video;
    if (!video.started || !isSeen()) {
        err << "There is no screen to open a window on. Use --picture FILE.png to draw a page "
               "without one.\n";
        return 1;
    }
    const WindowPtr screen(SDL_CreateWindow("Wrenlet desk", SDL_WINDOWPOS_CENTERED,
                                            SDL_WINDOWPOS_CENTERED, options.width, options.height,
                                            SDL_WINDOW_RESIZABLE | SDL_WINDOW_ALLOW_HIGHDPI));
    if (!screen) {
        err << "The window does not open: " << SDL_GetError() << "\n";
        return 1;
    }
    RendererPtr renderer(SDL_CreateRenderer(screen.get(), -1, SDL_RENDERER_PRESENTVSYNC));
    if (!renderer) renderer.reset(SDL_CreateRenderer(screen.get(), -1, SDL_RENDERER_SOFTWARE));
    if (!renderer) {
        err << "Nothing can be drawn here: " << SDL_GetError() << "\n";
        return 1;
    }
    SDL_SetWindowMinimumSize(screen.get(), 800, 500);

    const SystemClock clock;
    Canvas canvas(renderer.get(), options.assets);
    AtOnce at_once;
    const std::unique_ptr<Bench> bench =
        openBench(options.assets, {}, clock.unixMillis(), wakeWindow);
    SdlMicrophone microphone;
    SdlSpeaker speaker;
    SdlDevices devices(microphone, speaker);
    const std::filesystem::path own = ownFolder();
    Hear hear;
    Newest<Pcm> said(bench ? static_cast<Aside&>(bench->saying) : at_once, wakeWindow);
    if (bench)
        hear = [&](const pack::VoiceNeed& need) {
            said.ask([&voice = bench->voice, need] { return voice.say(need); });
        };
    const std::unique_ptr<ChildGame> game = gameProgram(options.game);
    const Trying trying = bench ? Trying{game.get(),
                                         &bench->drawing,
                                         &bench->playing,
                                         &bench->saying,
                                         &bench->finding,
                                         ClipMaking{bench->voice, 1, bench->clips.get()},
                                         passingFolder(clock.unixMillis())}
                                : Trying{};
    link::SystemEntropy entropy;
    std::optional<ServePlace::Parts> serving;
    if (bench)
        serving.emplace(ServePlace::Parts{
            clock,
            entropy,
            bench->serving,
            wakeWindow,
            pageFolder(options.assets),
            own,
            ownAddresses,
            [&clock](const auto& folder) { return openClass(folder, clock.unixMillis()); },
            {}});
    DeskWindow window(
        openClass(options.classroom, clock.unixMillis()),
        {[&](const auto& folder) { return openClass(folder, clock.unixMillis()); },
         [&] { return clock.unixMillis(); },
         &canvas.pictures(),
         bench ? &bench->workbench : nullptr,
         hear,
         bench ? BoothSound{&microphone, &speaker, &bench->checking, openWordEar(options.assets)}
               : BoothSound{},
         bench ? Packing{&bench->building,
                         ClipMaking{bench->voice, std::thread::hardware_concurrency(),
                                    bench->clips.get()}}
               : Packing{},
         trying,
         {own.empty() ? own : own / "settings.json", &devices, own},
         Platform::openOutside,
         std::move(serving)});
    if (!options.unit.empty()) window.openUnit(options.classroom / "units" / options.unit);
    Platform platform;
    for (Platform::Heard heard; !heard.closed;) {
        if (!drawTwice(canvas, window, renderer.get(), options, err)) return 1;
        SDL_RenderPresent(renderer.get());
        platform.endFrame();
        SDL_Event event;
        if (const std::optional<Pcm> sound = said.take()) speaker.play(sound->samples, sound->rate);
        const auto due = window.wantsFrames()
                             ? std::optional<std::int64_t>(clock.unixMillis() + kFrameMs)
                             : window.due();
        const auto wait = due ? std::clamp<std::int64_t>(*due - clock.unixMillis(), 1, kIdleMs)
                              : std::int64_t{kIdleMs};
        if (!SDL_WaitEventTimeout(&event, static_cast<int>(wait))) continue;
        int width = 0, height = 0, points = 0;
        SDL_GetRendererOutputSize(renderer.get(), &width, &height);
        SDL_GetWindowSize(screen.get(), &points, nullptr);
        const float density = static_cast<float>(width) / static_cast<float>(std::max(1, points));
        // a press and its release must not fall into one frame
        bool more = true;
        while (more) {
            platform.take(event, width, height, density, heard);
            const bool is_edge = event.type == SDL_MOUSEBUTTONDOWN ||
                                 event.type == SDL_FINGERDOWN || event.type == SDL_KEYDOWN ||
                                 event.type == SDL_FINGERUP || event.type == SDL_MOUSEBUTTONUP ||
                                 event.type == SDL_KEYUP;
            more = !is_edge && SDL_PollEvent(&event);
        }
        window.stage().finger = platform.isFinger();
        if (heard.dropped) window.drop(*heard.dropped);
        heard.dropped.reset();
    }
    window.finish();
    return 0;
}

}  // namespace wrenlet::desk
