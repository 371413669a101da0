#include "game/sdl/photographer.hpp"

#include <cstdio>

#include "game/sdl/screenshot.hpp"

namespace wrenlet::game {
namespace {

constexpr Millis kSettles = 450;  // after a place has come up, before its picture is taken
constexpr int kLiftedAfter = 7;   // frames of a drag, the lift's own motion being over

bool isTold(const std::string& place) {
    const auto endsOn = [&place](std::string_view end) {
        return place.size() >= end.size() &&
               place.compare(place.size() - end.size(), end.size(), end) == 0;
    };
    return endsOn("explain") || endsOn("example");
}

}  // namespace

void Photographer::look(Millis now, const Frame& frame, bool drags) {
    const std::string place = table_.app().place();
    if (place != place_) {
        if (!taken_ && !place_.empty()) take(last_, place_);
        place_ = place;
        since_ = now;
        taken_ = false;
        dragged_ = 0;
        places_.push_back(place);
    }
    // An explanation or an example comes up piece by piece: its picture is its last one.
    if (!taken_ && !isTold(place_) && now >= since_ + kSettles && !table_.app().isMoving(now)) {
        taken_ = true;
        take(frame, place_);
    }
    if (drags && ++dragged_ == kLiftedAfter && lifted_.insert(place_).second)
        take(frame, place_ + " lifted");
    last_ = frame;
}

void Photographer::take(const Frame& frame, const std::string& what) {
    if (!seen_.insert(what).second && wishes_.each_once) return;
    table_.canvas().draw(frame);
    const SurfacePtr picture = readBack(table_.renderer());
    if (!picture) {
        problems_.push_back({what, "The picture could not be read back.", ""});
        return;
    }
    for (int y = 0; y < picture->h; ++y)
        hash_.add(static_cast<const char*>(picture->pixels) + y * picture->pitch,
                  static_cast<std::size_t>(picture->w) * picture->format->BytesPerPixel);
    if (wishes_.folder.empty()) return;
    const auto path = pathOf(what);
    const Result<Done> saved = savePng(picture.get(), path);
    if (saved.ok()) files_.push_back(path.string());
    for (const Problem& problem : saved.problems()) problems_.push_back(problem);
}

std::filesystem::path Photographer::pathOf(const std::string& what) {
    std::string name;
    for (const char letter : what)
        if (letter == ' ')
            name += '-';
        else if (letter != ':')
            name += letter;
    char number[16] = "";
    if (!wishes_.each_once) std::snprintf(number, sizeof number, "%03d-", ++count_);
    return wishes_.folder / (wishes_.prefix + number + name + ".png");
}

}  // namespace wrenlet::game
