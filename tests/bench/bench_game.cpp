// The game's figures: drawing against bare copies of as many textures, touch to sound through the
// real loop, the first frame against a bare program's.
#include <SDL.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <cstdlib>
#include <thread>

#include "content/common/files.hpp"
#include "game/scenes/painter.hpp"
#include "game/sdl/fingers.hpp"
#include "game/sdl/playing.hpp"
#include "game/sdl/table.hpp"
#include "tests/bench/figure.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using bench::figure;
using bench::median;
using bench::seconds;

namespace {

const std::filesystem::path kFolder = std::filesystem::temp_directory_path() / "wrenlet-bench-game";

Opened opened() {
    auto result = openClassroom({kFolder / "classroom"}, {kFolder / "tablet"}, 1);
    if (!result.ok()) std::exit(1);
    return std::move(result.value());
}

TableOptions options() {
    TableOptions options;
    options.window.off_screen = true;
    options.assets = WRENLET_TEST_SHARE;
    return options;
}

/// 40 cards with a picture and a word on each.
Frame fortyCards(const Layout& layout, const pack::Pack& pack) {
    Painter painter(layout);
    for (int i = 0; i < 40; ++i) {
        const auto& picture = pack.pictures[static_cast<std::size_t>(i) % pack.pictures.size()];
        const Box box{20 + static_cast<float>(i % 8) * 156, 10 + static_cast<float>(i / 8) * 156,
                      140, 140};
        painter.pictureCard(picture.id, box, Stand::resting);
        painter.text(picture.id, {box.centre().x, box.y + 132}, 24);
    }
    return painter.take();
}

struct Copy {
    TexturePtr texture;
    SDL_Rect to;
};

void drawFigures(Opened& at) {
    const SystemClock clock;
    auto table = Table::open(at, clock, options());
    if (!table.ok()) std::exit(1);
    SDL_Renderer* renderer = table.value()->renderer();
    const Frame frame = fortyCards(Layout(table.value()->screen()), at.pack);

    // The same pictures in plain textures, copied by nothing but SDL_RenderCopy.
    Baker baker(renderer, options().assets, [&](std::string_view name) -> std::string_view {
        const auto* picture = at.pack.picture(name);
        return picture ? std::string_view(picture->bytes) : std::string_view();
    });
    std::vector<Copy> copies;
    for (const Blit& blit : frame) {
        const auto image = baker.draw(blit.sprite);
        if (!image) continue;
        SDL_Texture* texture = SDL_CreateTexture(renderer, SDL_PIXELFORMAT_RGBA32,
                                                 SDL_TEXTUREACCESS_STATIC, image->w, image->h);
        SDL_UpdateTexture(texture, nullptr, image->rgba.data(), image->w * 4);
        SDL_SetTextureBlendMode(texture, SDL_BLENDMODE_BLEND);
        copies.push_back({TexturePtr(texture),
                          {static_cast<int>(blit.centre.x) - image->size_w / 2 + image->left,
                           static_cast<int>(blit.centre.y) - image->size_h / 2 + image->top,
                           image->w, image->h}});
    }
    std::vector<double> ours, bare;
    for (int run = 0; run < 120; ++run) {
        double begin = seconds();
        table.value()->canvas().draw(frame);
        SDL_RenderFlush(renderer);
        ours.push_back((seconds() - begin) * 1e3);
        begin = seconds();
        SDL_RenderClear(renderer);
        for (const Copy& copy : copies)
            SDL_RenderCopy(renderer, copy.texture.get(), nullptr, &copy.to);
        SDL_RenderFlush(renderer);
        bare.push_back((seconds() - begin) * 1e3);
    }
    figure("40 cards drawn at 1280x800 in software, against bare copies of as many textures",
           median(ours), "ms", median(bare));
}

/// Presses a badge again and again, each time in silence, and lets go beside it.
void touchFigures(Opened& at) {
    SDL_SetHint(SDL_HINT_AUDIODRIVER, "dummy");
    const SystemClock clock;
    auto table = Table::open(at, clock, options());
    std::atomic<double> pressed{0}, heard{0};
    table.value()->sound().setHeard([&](const std::int16_t* stereo, std::size_t frames) {
        if (pressed == 0 || heard != 0) return;
        for (std::size_t i = 0; i < 2 * frames; ++i)
            if (stereo[i] != 0) {
                heard = seconds();
                return;
            }
    });
    std::vector<double> times;
    const ScreenSize screen = table.value()->screen();
    const Box badge = table.value()->app().boxOf("badge:c-01").value();
    std::thread hand([&] {
        SDL_Delay(5000);  // the welcome has been said, the clips are decoded
        for (int i = 0; i < 30; ++i) {
            heard = 0;
            pressed = seconds();
            pushFinger({Contact::Kind::down, 1, badge.centre(), 0}, screen);
            SDL_Delay(150);
            if (heard != 0) times.push_back((heard - pressed) * 1e3);
            pressed = 0;
            pushFinger({Contact::Kind::move, 1, {640, 60}, 0}, screen);
            pushFinger({Contact::Kind::up, 1, {640, 60}, 0}, screen);
            SDL_Delay(400 + i % 7);
        }
        SDL_Event quit{};
        quit.type = SDL_QUIT;
        SDL_PushEvent(&quit);
    });
    playOnScreen(*table.value());
    hand.join();
    const double bound = 512.0 / 48.0 + 1000.0 / 60.0;
    std::sort(times.begin(), times.end());
    figure("touch to first sample, against one buffer of 512 and one frame", median(times), "ms",
           bound);
    if (!times.empty())
        figure("touch to first sample, 95th of 100, against the same",
               times[times.size() * 95 / 100], "ms", bound);
}

/// Milliseconds from starting a program to each line that it writes.
std::vector<double> linesOf(const std::vector<std::string>& words) {
    int ends[2];
    if (pipe(ends) != 0) std::exit(1);
    const double begin = seconds();
    const pid_t child = fork();
    if (child == 0) {
        dup2(ends[1], 1);
        setenv("SDL_VIDEODRIVER", "dummy", 1);
        setenv("SDL_AUDIODRIVER", "dummy", 1);
        setenv("SDL_RENDER_DRIVER", "software", 1);
        setenv("SDL_FRAMEBUFFER_ACCELERATION", "0", 1);
        std::vector<char*> args;
        for (const std::string& word : words) args.push_back(const_cast<char*>(word.c_str()));
        args.push_back(nullptr);
        execv(args[0], args.data());
        _exit(127);
    }
    close(ends[1]);
    std::vector<double> at;
    char byte = 0;
    while (read(ends[0], &byte, 1) == 1)
        if (byte == '\n') at.push_back((seconds() - begin) * 1e3);
    close(ends[0]);
    waitpid(child, nullptr, 0);
    return at;
}

/// A start shows its first frame, then opens what a session needs. On a new tablet the pack is
/// checked whole and everything is drawn from its SVG; from then on both are known.
void startFigures() {
    const std::filesystem::path tablet = kFolder / "tablet";
    const std::vector<std::string> game = {WRENLET_PROGRAM, (kFolder / "classroom").string(),
                                           "--data", tablet.string(), "--first-frame"};
    std::vector<double> first, ready, first_anew, ready_anew, bare;
    for (int i = 0; i < 21; ++i) {
        std::filesystem::remove_all(tablet);
        const std::vector<double> anew = linesOf(game), again = linesOf(game);
        const std::vector<double> least = linesOf({WRENLET_BARE_START});
        if (anew.size() != 2 || again.size() != 2 || least.size() != 1) std::exit(1);
        first_anew.push_back(anew[0]);
        ready_anew.push_back(anew[1]);
        first.push_back(again[0]);
        ready.push_back(again[1]);
        bare.push_back(least[0]);
    }
    const double base = median(bare);
    figure("first frame, against a bare program with SDL, SDL_ttf and SDL_mixer", median(first),
           "ms", base);
    figure("first frame on a new tablet, against the same", median(first_anew), "ms", base);
    figure("ready to play, against the same", median(ready), "ms", base);
    figure("ready to play on a new tablet, against the same", median(ready_anew), "ms", base);
}

}  // namespace

int main(int, char**) {
    std::filesystem::remove_all(kFolder);
    std::filesystem::create_directories(kFolder);
    std::filesystem::copy(WRENLET_TEST_STARTER, kFolder / "classroom",
                          std::filesystem::copy_options::recursive);
    {
        Opened at = opened();
        drawFigures(at);
        touchFigures(at);
    }
    startFigures();
    std::filesystem::remove_all(kFolder);
    return 0;
}
