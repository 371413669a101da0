#include "game/sdl/assets.hpp"

#include <SDL.h>
#include <SDL_image.h>
#include <SDL_ttf.h>

#include <cstdlib>
#include <system_error>

namespace wrenlet::game {

namespace {

std::filesystem::path binFolder() {
    char* base = SDL_GetBasePath();
    const std::filesystem::path bin = std::filesystem::u8path(base != nullptr ? base : ".");
    SDL_free(base);
    return bin;
}

void mix(std::uint64_t& stamp, std::uint64_t value) {
    stamp = (stamp ^ value) * 1099511628211ull;
    stamp ^= stamp >> 31;
}

/// Size and time of a file; false when it is not there.
bool mixFile(std::uint64_t& stamp, const std::filesystem::path& path) {
    std::error_code no_size, no_time;
    mix(stamp, std::filesystem::file_size(path, no_size));
    const auto time = std::filesystem::last_write_time(path, no_time).time_since_epoch();
    mix(stamp, static_cast<std::uint64_t>(time.count()));
    return !no_size && !no_time;
}

std::uint64_t number(const SDL_version& version) {
    return static_cast<std::uint64_t>(version.major) << 16 | version.minor << 8 | version.patch;
}

}  // namespace

std::filesystem::path assetsFolder() {
    if (const char* named = std::getenv("WRENLET_ASSETS"); named != nullptr && *named != '\0')
        return std::filesystem::u8path(named);
    return (binFolder() / ".." / "share" / "wrenlet").lexically_normal();
}

std::optional<std::uint64_t> programStamp(const std::filesystem::path& assets) {
#ifdef _WIN32
    constexpr const char* kProgram = "wrenlet.exe";
#else
    constexpr const char* kProgram = "wrenlet";
#endif
    std::uint64_t stamp = 14695981039346656037ull;
    if (!mixFile(stamp, binFolder() / kProgram)) return std::nullopt;
    for (const char* letters : {"Andika-Regular.ttf", "Andika-Bold.ttf"})
        mixFile(stamp, assets / "fonts" / letters);
    mix(stamp, number(*IMG_Linked_Version()));
    mix(stamp, number(*TTF_Linked_Version()));
    return stamp;
}

}  // namespace wrenlet::game
