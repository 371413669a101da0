// No session of any mechanic flashes: computed from its frames on a screen of 1024 x 768.
#include <doctest/doctest.h>

#include <functional>

#include "game/sdl/screenshot.hpp"
#include "game/sdl/script_run.hpp"
#include "tests/flash/flash_meter.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using exercise::Skill;
using exercise::Task;
using exercise::Unit;
using flash::FlashMeter;

namespace {

struct Rgb {
    std::uint8_t r, g, b;
};
constexpr Rgb kBlack{0, 0, 0}, kWhite{255, 255, 255};

/// Two seconds in which a part of a grey screen is one colour and then the other, `hertz` times a
/// second.
flash::Changes flickering(Rgb one, Rgb other, double hertz, int w, int h) {
    FlashMeter meter;
    std::vector<std::uint8_t> screen(3 * FlashMeter::kWidth * FlashMeter::kHeight, 128);
    for (std::int64_t now = 0; now < 2'000; now += 16) {
        const bool second = static_cast<int>(static_cast<double>(now) * hertz * 2 / 1000) % 2 == 1;
        const Rgb& colour = second ? other : one;
        for (int y = 0; y < h; ++y)
            for (int x = 0; x < w; ++x) {
                const auto at =
                    static_cast<std::size_t>(3 * ((y + 100) * FlashMeter::kWidth + x + 200));
                screen[at] = colour.r;
                screen[at + 1] = colour.g;
                screen[at + 2] = colour.b;
            }
        meter.see(now, screen);
    }
    return meter.worst();
}

void show(FlashMeter& meter, Millis now, const SurfacePtr& surface) {
    REQUIRE(surface);
    REQUIRE(surface->format->format == SDL_PIXELFORMAT_RGB24);
    REQUIRE(surface->pitch == 3 * FlashMeter::kWidth);
    meter.see(now, {static_cast<const std::uint8_t*>(surface->pixels),
                    static_cast<std::size_t>(surface->pitch) * FlashMeter::kHeight});
}

/// A minute of the starter classroom's items of this skill, with mistakes, palms and the adult's
/// page: every frame of it is looked at.
void playWatched(Skill skill) {
    const practice::samples::Folder folder;
    std::filesystem::copy(WRENLET_TEST_STARTER, folder / "classroom",
                          std::filesystem::copy_options::recursive);
    auto opened = openClassroom({folder / "classroom"}, {folder / "tablet"}, 1);
    REQUIRE(opened.ok());
    std::erase_if(opened.value().pack.items, [&](const auto& item) { return item.skill != skill; });
    Tape tape;
    tape.seed = 5;
    tape.right_share = 0.6;
    tape.palm_share = 0.2;
    tape.adult_share = 0.05;
    tape.most_minutes = 1;
    tape.width = FlashMeter::kWidth;
    tape.height = FlashMeter::kHeight;
    TableOptions options;
    options.window = {tape.width, tape.height, false, true};
    options.assets = WRENLET_TEST_SHARE;
    options.sound = SoundDevice::Use::decode_only;
    options.app.seed = tape.seed;
    ScriptClock clock;
    auto table = Table::open(opened.value(), clock, options);
    REQUIRE(table.ok());
    FlashMeter meter;
    int frames = 0;
    ScriptRun run;
    run.each_frame = [&](Millis now, const Frame& frame) {
        if (!table.value()->canvas().show(frame, table.value()->screen())) return;
        show(meter, now, readBack(table.value()->renderer()));
        ++frames;
    };
    runScript(*table.value(), clock, tape, run);
    CHECK(opened.value().store.all().size() > 1);
    CHECK(frames > 200);
    // More than three flashes are eight changes or more.
    CHECK(meter.worst().general <= 6);
    CHECK(meter.worst().red <= 6);
    MESSAGE(frames, " frames, at most ", meter.worst().general, " changes within a second, ",
            meter.worst().red, " of red");
}

}  // namespace

TEST_CASE("Flash: the meter fires on more than three a second over a quarter of a field") {
    CHECK(flickering(kBlack, kWhite, 3, 400, 300).general <= 7);
    CHECK(flickering(kBlack, kWhite, 3, 400, 300).general >= 5);
    CHECK(flickering(kBlack, kWhite, 4, 400, 300).general >= 8);
    CHECK(flickering(kBlack, kWhite, 10, 400, 300).general >= 14);
    // A quarter of 341 x 256 is 21 824 pixels.
    CHECK(flickering(kBlack, kWhite, 10, 160, 140).general >= 14);
    CHECK(flickering(kBlack, kWhite, 10, 140, 140).general == 0);
}

TEST_CASE("Flash: the meter leaves out what is too faint, too bright, or only once") {
    const Rgb faint{100, 100, 100}, fainter{112, 112, 112};  // 0.13 and 0.16 of relative luminance
    CHECK(flickering(faint, fainter, 10, 400, 300).general == 0);
    const Rgb bright{235, 235, 235};  // 0.83: the darker image is not below 0.80
    CHECK(flickering(bright, kWhite, 10, 400, 300).general <= 1);
    CHECK(flickering(kBlack, kWhite, 0.4, 400, 300).general <= 2);
    const Rgb red{255, 0, 0}, grey{127, 127, 127};  // 0.21 both
    CHECK(flickering(red, grey, 5, 400, 300).general <= 1);
    CHECK(flickering(red, grey, 5, 400, 300).red >= 8);
}

TEST_CASE("Flash: no session of a sort flashes") {
    playWatched({Unit::onset_rime, Task::rhyme_sort});
}
TEST_CASE("Flash: no session of a join flashes") {
    playWatched({Unit::phoneme, Task::blend});
}
TEST_CASE("Flash: no session of a split flashes") {
    playWatched({Unit::phoneme, Task::segment});
}
TEST_CASE("Flash: no session of a count flashes") {
    playWatched({Unit::sentence, Task::count});
}
TEST_CASE("Flash: no session of a pick flashes") {
    playWatched({Unit::letter, Task::sound});
}
TEST_CASE("Flash: no session of a change flashes") {
    playWatched({Unit::phoneme, Task::substitute});
}
