// wrenlet: what a child plays.
#include <SDL.h>
#ifdef __GLIBC__
#include <malloc.h>
#endif

#include <chrono>
#include <cstdlib>
#include <functional>
#include <future>
#include <iostream>
#include <memory>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "game/script/told.hpp"
#include "game/sdl/assets.hpp"
#include "game/sdl/playing.hpp"
#include "game/sdl/script_run.hpp"
#include "game/sdl/table.hpp"
#include "game/sdl/try_out.hpp"
#include "game/start/call.hpp"

namespace {

using namespace wrenlet;
using namespace wrenlet::game;

std::filesystem::path dataFolder() {
    if (const char* xdg = std::getenv("XDG_DATA_HOME"); xdg != nullptr && *xdg != '\0')
        return std::filesystem::u8path(xdg) / "wrenlet";
    if (const char* home = std::getenv("HOME"); home != nullptr && *home != '\0')
        return std::filesystem::u8path(home) / ".local" / "share" / "wrenlet";
    char* folder = SDL_GetPrefPath("", "wrenlet");
    const std::filesystem::path path =
        std::filesystem::u8path(folder != nullptr ? folder : "wrenlet-data");
    SDL_free(folder);
    return path;
}

/// Says what went wrong, in a window too where there is one to be had.
int fail(const std::vector<Problem>& problems, bool off_screen) {
    std::string text;
    for (const Problem& problem : problems) text += sentence(problem) + "\n";
    std::cerr << text;
    if (!off_screen)
        SDL_ShowSimpleMessageBox(SDL_MESSAGEBOX_INFORMATION, "Wrenlet cannot start", text.c_str(),
                                 nullptr);
    return 1;
}

int playScript(Opened& opened, const Call& call, TableOptions options) {
    const Result<std::string> json = readWhole(call.script, 1 << 20);
    if (!json.ok()) return fail(json.problems(), true);
    const Result<Tape> tape = readTape(json.value(), call.script.filename().string());
    if (!tape.ok()) return fail(tape.problems(), true);
    options.window.w = tape.value().width;
    options.window.h = tape.value().height;
    options.sound = SoundDevice::Use::decode_only;
    options.app.seed = call.seed.value_or(tape.value().seed);
    options.app.tablet = call.over(opened.settings);
    std::error_code error;
    if (!call.pictures.empty()) std::filesystem::create_directories(call.pictures, error);

    ScriptClock clock;
    auto table = Table::open(opened, clock, options);
    if (!table.ok()) return fail(table.problems(), true);
    ScriptRun run;
    run.pictures = call.pictures;
    if (call.announce)
        run.announce = [](std::int64_t sequence) {
            std::cout << "begun " << sequence << std::endl;
        };
    const ScriptResult result = runScript(*table.value(), clock, tape.value(), run);
    std::size_t right = 0;
    const auto rows = opened.store.all();
    for (const auto& row : rows) right += row.isRight() && row.isEvidence();
    for (const Problem& problem : result.problems) std::cerr << sentence(problem) << "\n";
    std::cout << "{\"finished\": " << (result.finished ? "true" : "false")
              << ", \"pictures_hash\": \"" << std::hex << result.pictures_hash
              << "\", \"frames_hash\": \"" << result.frames_hash << "\", \"sound_hash\": \""
              << result.sound_hash << std::dec << "\", \"answers\": " << rows.size()
              << ", \"right_first_time\": " << right << ", \"seconds\": " << result.steps / 60
              << ", \"pictures\": " << result.files.size() << "}\n";
    return result.finished && result.problems.empty() ? 0 : 1;
}

/// Where the first frame is kept for the next start; nothing when it can't be told whether what
/// lies there is this program's.
std::unique_ptr<Shelf> shelfOf(const Call& call, const std::filesystem::path& assets) {
    const auto stamp = programStamp(assets);
    if (!stamp) return nullptr;
    return std::make_unique<Shelf>(call.data / "first_frame.bin", *stamp);
}

/// Writes where the game stands whenever that is another place.
std::function<void()> announcer(const App& app) {
    return [&app, last = std::string()]() mutable {
        std::string now = told(app);
        if (now == last) return;
        last = std::move(now);
        std::cout << last << std::endl;
    };
}

/// What reading a pack took for a while goes back to the system: as much again as the pack.
void giveBack() {
#ifdef __GLIBC__
    malloc_trim(0);
#endif
}

/// The badges are shown at once; the pack and the store are opened meanwhile.
int playHere(const Call& call, TableOptions options, std::uint64_t random) {
    const pack::Classroom classroom{call.classroom};
    const TabletFolder tablet{call.data};
    Result<OpenedList> list = openList(classroom, tablet);
    if (!list.ok()) return fail(list.problems(), false);
    options.app.tablet = call.over(list.value().settings);
    std::future<Result<Opened>> opening =
        std::async(std::launch::async, openRest, list.value(), classroom, tablet, random);

    auto display = Display::open(options.window, options.assets);
    if (display.ok()) {
        const std::unique_ptr<Shelf> shelf = shelfOf(call, options.assets);
        display.value()->showFirst(
            firstFrame(list.value().list, display.value()->screen(), options.app.tablet),
            shelf.get());
        if (call.first_frame) std::cout << "first frame" << std::endl;
        // That it can't be written costs a moment at the next start, nothing else.
        if (shelf && shelf->isStale()) (void)shelf->write();
    }
    Result<Opened> opened = opening.get();
    if (!opened.ok()) return fail(opened.problems(), false);
    if (!display.ok()) return fail(display.problems(), false);

    giveBack();
    const SystemClock clock;
    Table table(opened.value(), clock, options, std::move(display.value()));
    if (call.first_frame) {
        table.openSound();
        std::cout << "ready to play" << std::endl;
        return 0;
    }
    playOnScreen(table, call.announce ? announcer(table.app()) : nullptr);
    return 0;
}

/// One question for the teacher. Of a picture, what is said is printed for the desk.
int tryOut(const Call& call, std::uint64_t random) {
    TryOut tried;
    tried.pack = call.tried;
    tried.item = call.item;
    tried.assets = assetsFolder();
    tried.tablet = call.over({});
    tried.random = random;
    tried.width = call.width.value_or(tried.width);
    tried.height = call.height.value_or(tried.height);
    if (call.drawn.empty()) {
        const Result<Done> played = playTried(tried);
        return played.ok() ? 0 : fail(played.problems(), false);
    }
    const Result<Still> still = drawStill(tried, call.drawn);
    if (!still.ok()) return fail(still.problems(), true);
    nlohmann::json said = nlohmann::json::array();
    for (const Spoken& spoken : still.value().said)
        said.push_back({{"clip", spoken.clip}, {"gap_ms", spoken.gap_before}});
    std::cout << nlohmann::json{{"place", still.value().place}, {"said", said}}.dump() << "\n";
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    auto call = callOf({argv + 1, argv + argc});
    if (!call) {
        std::cerr << kUsage;
        return 2;
    }
    if (call->data.empty()) call->data = dataFolder();
    const auto since = std::chrono::system_clock::now().time_since_epoch();
    const std::uint64_t random = Random(static_cast<std::uint64_t>(since.count())).next() ^
                                 reinterpret_cast<std::uintptr_t>(argv);
    if (!call->tried.empty()) return tryOut(*call, random);
    TableOptions options;
    options.window.off_screen = call->off_screen;
    options.window.full_screen = call->full_screen;
    options.app.seed = call->seed;
    options.assets = assetsFolder();
    options.data = call->data;
    if (!call->off_screen) return playHere(*call, options, random);
    Result<Opened> opened = openClassroom({call->classroom}, {call->data}, random);
    if (!opened.ok()) return fail(opened.problems(), true);
    return playScript(opened.value(), *call, options);
}
