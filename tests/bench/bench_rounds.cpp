// What a round costs to show: each mechanic is played by a scripted child, and the frames of its
// busiest state are timed; then nobody touches anything, and frames that are drawn all the same are
// counted.
#include <SDL.h>

#include <ctime>
#include <map>
#include <memory>
#include <optional>
#include <string>

#include "game/scenes/layout.hpp"
#include "game/sdl/fingers.hpp"
#include "tests/bench/figure.hpp"
#include "tests/fixtures/visit.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using bench::figure;
using exercise::Mechanic;

namespace {

constexpr ScreenSize kScreen{1280, 800, 0};
constexpr double kHalfAFrame = 1000.0 / 60 / 2;  // ms
constexpr std::size_t kFewest = 60;              // frames that a state has to have
constexpr int kMinutes = 6;                      // each mechanic is played
constexpr struct {
    Mechanic mechanic;
    const char* name;
} kMechanics[] = {{Mechanic::sort, "sort"},   {Mechanic::join, "join"},
                  {Mechanic::split, "split"}, {Mechanic::count, "count"},
                  {Mechanic::pick, "pick"},   {Mechanic::change, "change"}};

/// ms of this thread's own time: what others on the machine do is not in it.
double ownMillis() {
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

double of100(std::vector<double> values, std::size_t part) {
    std::sort(values.begin(), values.end());
    return values.empty() ? 0 : values[std::min(values.size() - 1, values.size() * part / 100)];
}

struct State {
    std::vector<double> millis;  // of each frame that was drawn
    Frame fullest;
};

/// A table at which one mechanic alone is played.
struct Seat {
    explicit Seat(Mechanic mechanic) {
        auto result = openClassroom(room.classroom, room.tablet, 1);
        if (!result.ok()) std::exit(1);
        opened.emplace(std::move(result.value()));
        std::erase_if(opened->pack.items, [&](const exercise::Item& item) {
            return exercise::mechanicOf(item) != mechanic;
        });
        TableOptions options;
        options.window = {kScreen.w, kScreen.h, false, true};
        options.assets = WRENLET_TEST_SHARE;
        options.sound = SoundDevice::Use::decode_only;
        options.app.seed = 3;
        auto at = Table::open(*opened, clock, options);
        if (!at.ok()) std::exit(1);
        table = std::move(at.value());
    }

    const fixtures::Room room{std::filesystem::temp_directory_path() / "wrenlet-bench-rounds"};
    std::optional<Opened> opened;
    ScriptClock clock;
    std::unique_ptr<Table> table;
};

/// What playOnScreen() does in a frame, and what it costs; 0 when nothing was drawn.
double frameMillis(Seat& seat) {
    const std::uint64_t drawn = seat.table->canvas().drawn();
    const double begin = ownMillis();
    seat.table->handleAll(seat.clock.now);
    seat.table->show(seat.clock.now);
    SDL_RenderFlush(seat.table->renderer());
    const double taken = ownMillis() - begin;
    return seat.table->canvas().drawn() == drawn ? 0 : taken;
}

void hear(Seat& seat) {
    std::int16_t samples[2 * 16 * kSamplesPerMilli];
    seat.table->mixer().mix(samples, 16 * kSamplesPerMilli);
    if (!seat.table->app().isMoving(seat.clock.now)) seat.table->clips().decodeOne();
}

std::map<std::string, State> played(Seat& seat) {
    Tape tape;
    tape.right_share = 0.6;
    tape.drag_share = 0.7;
    tape.width = kScreen.w;
    tape.height = kScreen.h;
    ScriptedChild child(tape);
    std::map<std::string, State> states;
    for (; seat.clock.now < kMinutes * 60'000; seat.clock.now += 16) {
        for (const Contact& contact : child.tick(seat.table->app(), seat.clock.now))
            pushFinger(contact, kScreen);
        const double millis = frameMillis(seat);
        hear(seat);
        if (millis == 0) continue;
        State& state = states[seat.table->app().place()];
        state.millis.push_back(millis);
        Frame frame = seat.table->app().frame(seat.clock.now);
        if (frame.size() > state.fullest.size()) state.fullest = std::move(frame);
    }
    return states;
}

struct Copy {
    TexturePtr texture;
    SDL_Rect to;
};

/// The same pictures in plain textures, copied by nothing but SDL_RenderCopy.
double bareMillis(Seat& seat, const Frame& frame) {
    SDL_Renderer* renderer = seat.table->renderer();
    std::vector<Copy> copies;
    for (const Blit& blit : frame) {
        const auto image = seat.table->baker().draw(blit.sprite);
        if (!image) continue;
        SDL_Texture* texture = SDL_CreateTexture(renderer, SDL_PIXELFORMAT_ARGB8888,
                                                 SDL_TEXTUREACCESS_STATIC, image->w, image->h);
        SDL_SetTextureBlendMode(texture, SDL_BLENDMODE_BLEND);
        copies.push_back({TexturePtr(texture),
                          {static_cast<int>(blit.centre.x) - image->size_w / 2 + image->left,
                           static_cast<int>(blit.centre.y) - image->size_h / 2 + image->top,
                           image->w, image->h}});
    }
    std::vector<double> millis;
    for (int run = 0; run < 120; ++run) {
        const double begin = ownMillis();
        SDL_RenderClear(renderer);
        for (const Copy& copy : copies)
            SDL_RenderCopy(renderer, copy.texture.get(), nullptr, &copy.to);
        SDL_RenderPresent(renderer);
        millis.push_back(ownMillis() - begin);
    }
    return of100(std::move(millis), 95);
}

/// The busiest state: the one whose 95th of 100 frames takes longest.
void frameFigures(Mechanic mechanic, const std::string& name, std::vector<double>& all) {
    Seat seat(mechanic);
    const auto states = played(seat);
    const State* busiest = nullptr;
    std::string place;
    for (const auto& [at, state] : states) {
        if (at.rfind(name + ":", 0) != 0) continue;
        all.insert(all.end(), state.millis.begin(), state.millis.end());
        if (state.millis.size() < kFewest) continue;
        if (busiest != nullptr && of100(state.millis, 95) <= of100(busiest->millis, 95)) continue;
        busiest = &state;
        place = at;
    }
    if (busiest == nullptr) {
        std::fprintf(stderr, "bench-rounds: no state of %s had enough frames\n", name.c_str());
        std::exit(1);
    }
    const double ours = of100(busiest->millis, 95);
    const std::string what = "95th of 100 frames of " + place + " at 1280x800 in software, ";
    figure((what + "against half a frame's time").c_str(), ours, "ms", kHalfAFrame);
    figure((what + "against bare copies of its fullest frame").c_str(), ours, "ms",
           bareMillis(seat, busiest->fullest));
}

/// Until a question has been told whole and hinted at; then a minute in which nobody touches
/// anything.
void stillFigure(Mechanic mechanic, const std::string& name) {
    Seat seat(mechanic);
    App& app = seat.table->app();
    const auto pass = [&] {
        seat.clock.now += 16;
        const bool drew = frameMillis(seat) > 0;
        hear(seat);
        return drew;
    };
    for (int i = 0; i < 60; ++i) pass();
    const Point badge = app.boxOf("badge:c-03").value().centre();
    app.touch({Contact::Kind::down, 1, badge, 0}, seat.clock.now);
    pass();
    app.touch({Contact::Kind::up, 1, badge, 0}, seat.clock.now);
    constexpr int kQuiet = 20'000 / 16, kMost = 180'000 / 16;  // longer than a hint waits
    const std::string asked = name + ": asked";
    for (int i = 0, quiet = 0; i < kMost && quiet < kQuiet; ++i) {
        const bool drew = pass();
        quiet = app.place() == asked && !drew && seat.table->mixer().isQuiet() ? quiet + 1 : 0;
    }
    int drawn = 0;
    constexpr int kFrames = 3'600;
    for (int i = 0; i < kFrames; ++i) drawn += pass();
    figure(("frames drawn in a minute at " + app.place() +
            " while nobody touches it, against "
            "60 a second")
               .c_str(),
           drawn, "frames", kFrames);
}

}  // namespace

int main(int, char**) {
    std::vector<double> all;
    for (const auto& one : kMechanics) frameFigures(one.mechanic, one.name, all);
    figure(
        "slowest of all frames in rounds, what is seen first being drawn from its SVG, against a "
        "frame's time",
        of100(all, 100), "ms", 2 * kHalfAFrame);
    for (const auto& one : kMechanics) stillFigure(one.mechanic, one.name);
    return 0;
}
