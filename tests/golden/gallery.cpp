#include "tests/golden/gallery.hpp"

#include <SDL_ttf.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <sstream>
#include <utility>

#include "content/common/files.hpp"
#include "game/script/hash.hpp"
#include "game/sdl/screenshot.hpp"

namespace wrenlet::golden {

using namespace game;

namespace {

constexpr std::uint64_t kMostBytes = 8u << 20;
constexpr const char* kPin = "pin ";
constexpr const char* kHead =
    "# Golden pictures: size, mechanic, state, and a hash of the pixels (game/script/hash.hpp), "
    "exact\n"
    "# on what the pins name. A new look is taken over with:\n"
    "#   WRENLET_GOLDEN=update build/dev/bin/wrenlet-tests -tc=\"Golden*\"\n"
    "# Look at what changed before: a picture that is another is left in build/dev/golden.\n";

std::string hex(std::uint64_t value) {
    char text[20];
    std::snprintf(text, sizeof text, "%016llx", static_cast<unsigned long long>(value));
    return text;
}

std::string version(int major, int minor, int patch) {
    return std::to_string(major) + "." + std::to_string(minor) + "." + std::to_string(patch);
}

std::string hashOfFile(const std::filesystem::path& file) {
    const auto bytes = readWhole(file, kMostBytes);
    if (!bytes.ok()) return "missing";
    Hash hash;
    hash.add(bytes.value().data(), bytes.value().size());
    return hex(hash.value());
}

std::string hashOf(const SDL_Surface& picture) {
    Hash hash;
    hash.add(picture.w);
    hash.add(picture.h);
    for (int y = 0; y < picture.h; ++y)
        hash.add(static_cast<const char*>(picture.pixels) + y * picture.pitch,
                 static_cast<std::size_t>(picture.w) * picture.format->BytesPerPixel);
    return hex(hash.value());
}

constexpr const char* machine() {
#if defined(__x86_64__) || defined(_M_X64)
    return "x86-64";
#else
    return "another";  // sums of floating-point numbers may be rounded otherwise
#endif
}

}  // namespace

Gallery::Gallery(std::filesystem::path table, std::filesystem::path changed)
    : table_(std::move(table)), changed_(std::move(changed)) {
    const char* wish = std::getenv("WRENLET_GOLDEN");
    updates_ = wish != nullptr && std::string(wish) == "update";
    const auto text = readWhole(table_, kMostBytes);
    if (!text.ok()) return;
    std::istringstream lines(text.value());
    for (std::string line; std::getline(lines, line);) {
        const std::size_t last = line.rfind(' ');
        if (line.empty() || line[0] == '#' || last == std::string::npos) continue;
        const bool is_pin = line.compare(0, 4, kPin) == 0;
        (is_pin ? pins_ : hashes_)[line.substr(is_pin ? 4 : 0, last - (is_pin ? 4 : 0))] =
            line.substr(last + 1);
    }
}

std::map<std::string, std::string> Gallery::pins(const std::filesystem::path& fonts) {
    if (TTF_WasInit() == 0) TTF_Init();  // or it tells no version
    SDL_version sdl{};
    SDL_GetVersion(&sdl);
    const SDL_version* ttf = TTF_Linked_Version();
    int major = 0, minor = 0, patch = 0;
    TTF_GetFreeTypeVersion(&major, &minor, &patch);
    std::map<std::string, std::string> pins = {
        {"machine", machine()},
        {"SDL", version(sdl.major, sdl.minor, sdl.patch)},
        {"SDL_ttf", version(ttf->major, ttf->minor, ttf->patch)},
        {"FreeType", version(major, minor, patch)},
    };
    TTF_GetHarfBuzzVersion(&major, &minor, &patch);
    pins["HarfBuzz"] = version(major, minor, patch);
    for (const char* font : {"Andika-Regular.ttf", "Andika-Bold.ttf"})
        pins[font] = hashOfFile(fonts / font);
    return pins;
}

std::string Gallery::otherPins(const std::map<std::string, std::string>& pins) const {
    std::string other;
    for (const auto& [name, value] : pins) {
        const auto made = pins_.find(name);
        const std::string was = made == pins_.end() ? "nothing" : made->second;
        if (was != value) other += name + " is " + value + " here and was " + was + "; ";
    }
    return other;
}

std::string Gallery::compare(Table& table, const Frame& frame, const std::string& name) {
    table.canvas().draw(frame);
    const SurfacePtr kept = readBack(table.renderer());
    table.canvas().forget();
    table.canvas().draw(frame);
    const SurfacePtr anew = readBack(table.renderer());
    if (!kept || !anew) return name + ": the picture could not be read back";
    const std::string hash = hashOf(*anew);
    if (hash != hashOf(*kept))
        return name + ": drawn from what was kept it is another picture than drawn anew";
    if (std::exchange(hashes_[name], hash) == hash || updates_) return "";
    std::string file = name + ".png";
    std::replace(file.begin(), file.end(), ' ', '-');
    std::error_code error;
    std::filesystem::create_directories(changed_, error);
    const auto path = changed_ / file;
    const bool saved = savePng(anew.get(), path).ok();
    return name + ": another picture than the golden one; " +
           (saved ? "the new one lies in " + path.string() : "the new one could not be saved");
}

bool Gallery::write(const std::map<std::string, std::string>& pins) {
    std::string text = kHead;
    for (const auto& [name, value] : pins) text += kPin + name + " " + value + "\n";
    for (const auto& [name, hash] : hashes_) text += name + " " + hash + "\n";
    return writeWhole(table_, text).ok();
}

}  // namespace wrenlet::golden
