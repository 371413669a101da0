#include "editor/windows/bench.hpp"

#include <SDL.h>

#include <ctime>
#include <system_error>

#include "editor/windows/svg.hpp"

namespace wrenlet::desk {

namespace {

/// Changes with the program, so that nothing it would make otherwise today is taken.
std::string programStamp() {
    std::string stamp;
    for (const char* name : {"wrenlet-desk", "wrenlet-desk.exe"}) {
        std::error_code error;
        const auto program = programFolder() / name;
        const auto bytes = std::filesystem::file_size(program, error);
        if (error) continue;
        const auto at = std::filesystem::last_write_time(program, error);
        stamp += std::to_string(bytes) + " " + std::to_string(at.time_since_epoch().count());
    }
    return stamp;
}

std::string sinceWhen(std::int64_t now_ms) {
    const std::time_t seconds = now_ms / 1000;
    const std::tm* local = std::localtime(&seconds);
    char text[32] = "";
    if (local != nullptr) std::strftime(text, sizeof text, "since %H:%M", local);
    return text;
}

}  // namespace

std::filesystem::path programFolder() {
    const std::unique_ptr<char, decltype(&SDL_free)> path(SDL_GetBasePath(), SDL_free);
    return path ? std::filesystem::u8path(path.get()) : ".";
}

/// SDL knows where each system keeps a program's own data.
std::filesystem::path ownFolder() {
    const std::unique_ptr<char, decltype(&SDL_free)> path(SDL_GetPrefPath("", "wrenlet-desk"),
                                                          SDL_free);
    return path ? std::filesystem::u8path(path.get()) : std::filesystem::path();
}

std::unique_ptr<Bench> openBench(const std::filesystem::path& assets,
                                 const std::filesystem::path& own, std::int64_t now_ms,
                                 std::function<void()> wake) {
    Result<KnownWords> known = KnownWords::open(assets);
    Result<speech::BlockList> blocked = speech::BlockList::open(assets / "blocked.bin");
    if (!known.ok() || !blocked.ok()) return nullptr;
    auto bench = std::make_unique<Bench>(std::move(known.value()), std::move(blocked.value()));
    bench->workbench.pictures = assets / "pictures";
    const std::filesystem::path folder = own.empty() ? ownFolder() : own;
    if (!folder.empty()) bench->workbench.aside = folder / "units";
    bench->clips = std::make_unique<ClipShelf>(
        folder.empty() ? ClipShelf::ofTheBuild(assets / "clips")
                       : ClipShelf(folder / "clips", programStamp(), assets / "clips"));
    bench->workbench.who = sinceWhen(now_ms);
    bench->workbench.wake = std::move(wake);
    bench->workbench.draw_svg = drawnSvg;
    return bench;
}

}  // namespace wrenlet::desk
