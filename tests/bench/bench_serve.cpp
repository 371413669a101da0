// Thirty simulated tablets at twenty times a child's pace against one desk that serves and draws,
// all on this machine: `bench-serve` for 20 seconds, `bench-serve --whole` for five minutes. The
// tablets are a process of their own. Nothing here passes or fails; what was lost is a figure.
#include <SDL.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <chrono>
#include <csignal>
#include <cstring>
#include <filesystem>
#include <memory>
#include <set>
#include <string>
#include <thread>

#include "content/common/files.hpp"
#include "editor/serve/link_folder.hpp"
#include "editor/serve/serve_place.hpp"
#include "editor/windows/canvas.hpp"
#include "tests/bench/figure.hpp"
#include "tests/serve/page_tablet.hpp"

namespace {

using namespace wrenlet;
using namespace wrenlet::desk;
using bench::figure;

constexpr int kTablets = 30;
// A child gives an answer every 8 seconds or so (common practice: some 45 in a session of 6
// minutes).
constexpr double kChildSeconds = 8, kTimes = 20;
constexpr double kQuietSeconds = 5;  // one tablet alone, and frames without any
const std::filesystem::path kFolder =
    std::filesystem::temp_directory_path() / "wrenlet-bench-serve";

/// What the tablets' process tells, through a pipe.
struct Told {
    std::int64_t sent = 0, unsent = 0;
    double p50_ms = 0, p99_ms = 0, worst_ms = 0;
};

double share(std::vector<double>& times, double part) {
    if (times.empty()) return 0;
    std::sort(times.begin(), times.end());
    return times[std::min(times.size() - 1, static_cast<std::size_t>(part * double(times.size())))];
}

practice::Response answer(int tablet, std::int64_t count) {
    practice::Response response;
    response.child = "c-" + std::to_string(tablet % 25);
    response.session = 1;
    response.pack = "by-the-pond 1";
    response.item = "item-" + std::to_string(count % 300);
    response.skill = "phoneme.first";
    response.asked = "cat";
    response.turns_on = {count % 2 == 0 ? "k" : "m", exercise::Position::first};
    response.right = "cap";
    response.chosen = count % 4 == 0 ? "map" : "cap";
    response.choices = {"cap", "map"};
    if (!response.isRight()) response.means = "heard /m/ for /k/ first";
    response.took_ms = 2400;
    response.at_ms = 1'790'000'000'000 + count * 8000;
    response.day = 20'717;
    return response;
}

/// So many tablets play for so long; each upload is one answer, as a page sends it.
Told play(std::uint16_t port, const std::vector<link::TabletIdentity>& identities, int count,
          double seconds) {
    std::vector<std::vector<double>> times(static_cast<std::size_t>(count));
    std::atomic<std::int64_t> sent = 0, unsent = 0;
    std::vector<std::thread> hands;
    for (int i = 0; i < count; ++i)
        hands.emplace_back([&, i] {
            desk::samples::PageTablet tablet(port, "127.0.2." + std::to_string(i + 1),
                                             std::uint64_t(i) * 1000 + std::uint64_t(seconds));
            tablet.is(identities[static_cast<std::size_t>(i)]);
            (void)tablet.hello(true);
            const double begin = bench::seconds(), every = kChildSeconds / kTimes;
            double next = begin + every * double(i) / double(count);  // not all at one moment
            for (double said = begin; next < begin + seconds; next += every) {
                std::this_thread::sleep_for(
                    std::chrono::duration<double>(std::max(0.0, next - bench::seconds())));
                tablet.answers(answer(i, tablet.sequence()));
                const double asked = bench::seconds();
                (void)tablet.sendAll();
                times[static_cast<std::size_t>(i)].push_back(1000 * (bench::seconds() - asked));
                if (bench::seconds() - said > double(link::kHelloEveryMs) / 1000) {
                    said = bench::seconds();
                    (void)tablet.hello(true);
                }
            }
            (void)tablet.sendAll();
            sent += tablet.sequence();
            unsent += std::int64_t(tablet.outbox().size());
        });
    for (std::thread& hand : hands) hand.join();
    std::vector<double> all;
    for (const auto& one : times) all.insert(all.end(), one.begin(), one.end());
    Told told;
    told.sent = sent;
    told.unsent = unsent;
    told.p50_ms = share(all, 0.5);
    told.p99_ms = share(all, 0.99);
    told.worst_ms = share(all, 1);
    return told;
}

/// The tablets' process: waits for the desk's port, plays, tells.
[[noreturn]] void tabletsMain(int from_desk, int to_desk,
                              const std::vector<link::TabletIdentity>& identities, double seconds) {
    for (const auto& [count, length] : {std::pair{1, kQuietSeconds}, {kTablets, seconds}}) {
        std::uint16_t port = 0;
        if (read(from_desk, &port, sizeof port) != sizeof port) _exit(1);
        // The one that plays alone is the last of the list, so that its numbers do not begin twice.
        const std::vector<link::TabletIdentity> who =
            count == 1 ? std::vector{identities.back()} : identities;
        const Told told = play(port, who, count, length);
        if (write(to_desk, &told, sizeof told) != sizeof told) _exit(1);
    }
    _exit(0);
}

struct SurfaceClose {
    void operator()(SDL_Surface* surface) const { SDL_FreeSurface(surface); }
};
struct RendererClose {
    void operator()(SDL_Renderer* renderer) const { SDL_DestroyRenderer(renderer); }
};

struct Frames {
    double p50_ms = 0, p99_ms = 0, a_second = 0;
};

/// Draws at the screen's rate until something is in the pipe.
Frames draw(Canvas& canvas, DeskWindow& window, int pipe_end, Told& told) {
    std::vector<double> times;
    const double begin = bench::seconds();
    std::thread reader([&] {
        if (read(pipe_end, &told, sizeof told) != sizeof told) told = {};
    });
    std::atomic<bool> done = false;
    std::thread waiter([&] {
        reader.join();
        done = true;
    });
    while (!done) {
        const double at = bench::seconds();
        (void)canvas.draw(window, 1280, 720, 1, 1.f / 60);
        const double took = bench::seconds() - at;
        times.push_back(1000 * took);
        std::this_thread::sleep_for(std::chrono::duration<double>(std::max(0.0, 1.0 / 60 - took)));
    }
    waiter.join();
    Frames frames;
    frames.a_second = double(times.size()) / (bench::seconds() - begin);
    frames.p50_ms = share(times, 0.5);
    frames.p99_ms = share(times, 0.99);
    return frames;
}

bool makeRoom(const std::vector<link::TabletIdentity>& identities) {
    std::error_code error;
    std::filesystem::remove_all(kFolder, error);
    std::filesystem::create_directories(kFolder / "room" / "packs", error);
    std::filesystem::create_directories(kFolder / "page", error);
    pack::ClassList list;
    list.title = "Room 4";
    for (int i = 0; i < 25; ++i)
        list.children.push_back({"c-" + std::to_string(i),
                                 "Child " + std::to_string(i),
                                 "badge-" + std::to_string(10 + i),
                                 {},
                                 {},
                                 {}});
    std::vector<ListedTablet> listed;
    for (const link::TabletIdentity& identity : identities)
        listed.push_back({identity, 0, 0, 0, false});
    const pack::Classroom classroom{kFolder / "room"};
    return writeWhole(classroom.classFile(), pack::writeClassList(list)).ok() &&
           writeWhole(kFolder / "page/index.html", "<title>Wrenlet</title>").ok() &&
           keepTabletList({classroom}, listed).ok();
}

}  // namespace

int main(int count, char** words) {
    const bool whole = count > 1 && std::strcmp(words[1], "--whole") == 0;
    const double seconds = whole ? 300 : 20;
    link::SystemEntropy entropy;
    std::vector<link::TabletIdentity> identities;
    for (int i = 0; i <= kTablets; ++i) {
        identities.push_back({"pebble-" + std::to_string(1000 + i), {}});
        entropy.fill(identities.back().key);
    }
    int to_tablets[2], to_desk[2];
    if (pipe(to_tablets) != 0 || pipe(to_desk) != 0 || !makeRoom(identities)) return 1;
    const pid_t tablets = fork();  // before there is a thread
    if (tablets < 0) return 1;
    if (tablets == 0) tabletsMain(to_tablets[0], to_desk[1], identities, seconds);

    const SystemClock clock;
    OnThread aside;
    const auto open = [&clock](const std::filesystem::path& folder) {
        return openClass(folder, clock.unixMillis());
    };
    ServerOptions any;
    any.port = 0;
    const std::unique_ptr<SDL_Surface, SurfaceClose> surface(
        SDL_CreateRGBSurfaceWithFormat(0, 1280, 720, 32, SDL_PIXELFORMAT_ARGB8888));
    const std::unique_ptr<SDL_Renderer, RendererClose> renderer(
        SDL_CreateSoftwareRenderer(surface.get()));
    Told alone, told;
    Frames quiet, busy;
    {
        Canvas canvas(renderer.get(), WRENLET_TEST_SHARE);
        DeskWindow window(
            open(kFolder / "room"),
            {open,
             [&clock] { return clock.unixMillis(); },
             &canvas.pictures(),
             nullptr,
             [](const pack::VoiceNeed&) {},
             {},
             {},
             {},
             {},
             {},
             ServePlace::Parts{clock, entropy, aside, {}, kFolder / "page", {}, {}, open, any}});
        window.serve()->start();
        if (!window.serve()->isOn()) return 1;
        const std::uint16_t port = window.serve()->serving()->port();
        window.go(Place::klass);
        if (write(to_tablets[1], &port, sizeof port) != sizeof port) return 1;
        quiet = draw(canvas, window, to_desk[0], alone);
        if (write(to_tablets[1], &port, sizeof port) != sizeof port) return 1;
        busy = draw(canvas, window, to_desk[0], told);
    }
    waitpid(tablets, nullptr, 0);
    std::set<std::pair<std::string, std::int64_t>> kept;
    const auto gathered = open(kFolder / "room");
    for (const practice::Response& response : gathered.responses)
        kept.insert({response.tablet.string(), response.sequence});
    const std::int64_t all = alone.sent + told.sent;
    figure("serve.seconds", seconds, "s", 300);
    figure("serve.answers_sent", double(told.sent), "answers",
           kTablets * seconds * kTimes / kChildSeconds);
    figure("serve.answers_lost", double(all - std::int64_t(kept.size())), "answers", double(all));
    figure("serve.answers_doubled", double(gathered.responses.size() - kept.size()), "answers",
           double(all));
    figure("serve.upload_p50", told.p50_ms, "ms", alone.p50_ms);
    figure("serve.upload_p99", told.p99_ms, "ms", alone.p99_ms);
    figure("serve.upload_p99_to_what_is_asked", told.p99_ms, "ms", 50);
    figure("serve.upload_worst", told.worst_ms, "ms", alone.worst_ms);
    figure("serve.desk_frame_p50", busy.p50_ms, "ms", quiet.p50_ms);
    figure("serve.desk_frame_p99", busy.p99_ms, "ms", quiet.p99_ms);
    figure("serve.desk_frames_a_second", busy.a_second, "frames", quiet.a_second);
    std::error_code error;
    std::filesystem::remove_all(kFolder, error);
    return 0;
}
