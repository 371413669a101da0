#include "editor/windows/bench.hpp"

#include <SDL.h>

#include <ctime>

namespace wrenlet::desk {

namespace {

/// SDL knows where each system keeps a program's own data.
std::filesystem::path ownFolder() {
    const std::unique_ptr<char, decltype(&SDL_free)> path(SDL_GetPrefPath("", "wrenlet-desk"),
                                                          SDL_free);
    return path ? std::filesystem::u8path(path.get()) / "units" : std::filesystem::path();
}

std::string sinceWhen(std::int64_t now_ms) {
    const std::time_t seconds = now_ms / 1000;
    const std::tm* local = std::localtime(&seconds);
    char text[32] = "";
    if (local != nullptr) std::strftime(text, sizeof text, "since %H:%M", local);
    return text;
}

}  // namespace

std::unique_ptr<Bench> openBench(const std::filesystem::path& assets,
                                 const std::filesystem::path& aside, std::int64_t now_ms,
                                 std::function<void()> wake) {
    Result<KnownWords> known = KnownWords::open(assets);
    Result<speech::BlockList> blocked = speech::BlockList::open(assets / "blocked.bin");
    if (!known.ok() || !blocked.ok()) return nullptr;
    auto bench = std::make_unique<Bench>(std::move(known.value()), std::move(blocked.value()));
    bench->workbench.pictures = assets / "pictures";
    bench->workbench.aside = aside.empty() ? ownFolder() : aside;
    bench->workbench.who = sinceWhen(now_ms);
    bench->workbench.wake = std::move(wake);
    return bench;
}

}  // namespace wrenlet::desk
