// Figures of the desk, printed by ./check --bench; nothing here passes or fails.
#include <SDL.h>

#include <ctime>
#include <filesystem>
#include <memory>

#include "content/pack/classroom.hpp"
#include "editor/handout/pack_build.hpp"
#include "editor/windows/bench.hpp"
#include "editor/windows/canvas.hpp"
#include "tests/bench/figure.hpp"

namespace {

using namespace wrenlet;
using namespace wrenlet::desk;
using bench::figure;

const std::filesystem::path kFolder = std::filesystem::temp_directory_path() / "wrenlet-bench-desk";

struct SurfaceClose {
    void operator()(SDL_Surface* surface) const { SDL_FreeSurface(surface); }
};
struct RendererClose {
    void operator()(SDL_Renderer* renderer) const { SDL_DestroyRenderer(renderer); }
};

/// ms of this process's own time.
double cpuMillis() {
    return 1000.0 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

double frameMillis(Canvas& canvas, DeskWindow& window) {
    std::vector<double> times;
    for (int i = 0; i < 60; ++i) {
        const double begin = cpuMillis();
        (void)canvas.draw(window, 1280, 720, 1, 1.f / 60);
        times.push_back(cpuMillis() - begin);
    }
    return bench::median(times);
}

std::string words(const exercise::Vocabulary& list, std::size_t most) {
    std::string typed;
    std::size_t count = 0;
    for (const exercise::Word& word : list.words)
        if (!word.picture.empty() && word.id == word.text && count++ < most)
            typed += word.text + "\n";
    return typed;
}

void windowFigures(const Workbench& workbench, const DemoVoice& voice) {
    const std::unique_ptr<SDL_Surface, SurfaceClose> surface(
        SDL_CreateRGBSurfaceWithFormat(0, 1280, 720, 32, SDL_PIXELFORMAT_ARGB8888));
    const std::unique_ptr<SDL_Renderer, RendererClose> renderer(
        SDL_CreateSoftwareRenderer(surface.get()));
    Canvas canvas(renderer.get(), WRENLET_TEST_SHARE);
    OpenedClass opened;
    opened.classroom.folder = kFolder;
    opened.listed = true;
    AtOnce at_once;
    const std::unique_ptr<ChildGame> game = gameProgram(WRENLET_PROGRAM);
    const Trying trying{game.get(), &at_once,          &at_once,           &at_once,
                        &at_once,   ClipMaking{voice}, kFolder / "passing"};
    DeskWindow window(opened, {[&](const auto&) { return opened; },
                               [] { return std::int64_t{0}; },
                               &canvas.pictures(),
                               &workbench,
                               [](const pack::VoiceNeed&) {},
                               {},
                               {},
                               trying});
    const double bare = frameMillis(canvas, window);
    window.makeUnit("Five hundred");
    window.words().typed = words(workbench.known.classroom(), 500);
    double begin = cpuMillis();
    window.words().add(*window.unit());
    const double add = cpuMillis() - begin;
    begin = cpuMillis();
    window.step();
    const double look = cpuMillis() - begin;
    figure("a look at all 500 words, aside, against adding them", look, "ms", add);
    window.words().in_hand = {"cat", false};
    figure("a frame of the desk's 500 words, against an empty page (bound 8 ms)",
           frameMillis(canvas, window), "ms", bare);

    window.go(Place::try_out);
    const auto& skills = window.unit()->look().skills;
    for (std::size_t i = 0; i < skills.size(); ++i)
        if (skills[i].items > skills[window.tryOut()->skill()].items)
            window.tryOut()->chooseSkill(i);
    (void)canvas.draw(window, 1280, 720, 1, 1.f / 60);
    const double from = bench::seconds();
    window.step();
    figure("a question drawn by the game for the desk, against an empty page (bound 1,000 ms)",
           1000 * (bench::seconds() - from), "ms", bare);
    figure("a frame of trying 500 words out, against an empty page (bound 8 ms)",
           frameMillis(canvas, window), "ms", bare);
}

/// s; nothing when it went wrong.
std::optional<double> packSeconds(const BuildCall& call, const Workbench& workbench,
                                  const ClipMaking& making, std::size_t& clips) {
    BuildProgress progress;
    const double begin = bench::seconds();
    const auto built =
        buildNext(call, workbench.known.lexicon(), workbench.blocked, making, progress);
    const double taken = bench::seconds() - begin;
    if (!built || !built->isGood()) return {};
    clips = built->clips;
    return taken;
}

// Three ways: every clip said now, which happens when no word is of the classroom list; the list's
// read as they came with the program; all of them made aside while she worked.
void packFigures(const Workbench& workbench, const DemoVoice& voice) {
    UnitAtWork work{pack::Unit{}};
    work.add(words(workbench.known.classroom(), 500), "words", workbench.known);
    pack::Unit unit = work.unit();
    unit.id = "five-hundred";
    unit.title = "Five hundred";
    const BuildCall call{unit, UnitPlaces::beside(kFolder / "unit.json", workbench.pictures),
                         pack::Classroom{kFolder}};
    const auto shipped = std::filesystem::path(WRENLET_TEST_SHARE) / "clips";
    std::size_t clips = 0;
    const auto said = packSeconds(call, workbench, {voice, 2}, clips);
    const ClipShelf shelf(kFolder / "clips", "the benchmark", shipped);
    const auto read = packSeconds(call, workbench, {voice, 2, &shelf}, clips);
    const auto again = packSeconds(call, workbench, {voice, 2, &shelf}, clips);
    if (!said || !read || !again) return;
    figure("a pack of 500 words, each clip said now, against a clip a hundredth of a second", *said,
           "s", static_cast<double>(clips) / 100);
    figure("the first pack of 500 words of the classroom list, against one said now (bound 10 s)",
           *read, "s", *said);
    figure("a pack of 500 words whose clips were made aside, against one said now (bound 10 s)",
           *again, "s", *said);
}

}  // namespace

int main() {
    const auto bench = openBench(WRENLET_TEST_SHARE, kFolder / "aside", 0, [] {});
    if (!bench) return 1;
    std::filesystem::remove_all(kFolder);
    std::filesystem::create_directories(kFolder);
    AtOnce at_once;
    const Workbench workbench{
        bench->known, bench->blocked, bench->workbench.pictures, {}, "", at_once, at_once, {}};
    windowFigures(workbench, bench->voice);
    packFigures(workbench, bench->voice);
    std::filesystem::remove_all(kFolder);
    return 0;
}
