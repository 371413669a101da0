#include "tests/pictures/states.hpp"

namespace wrenlet::pictures {

using fixtures::Visit;
using game::Frame;

namespace {

constexpr game::Millis kWrongAfter = 350;  // after a wrong answer: it has settled

/// An explanation, or what was right, as it is when all of it has been told.
Frame lastOf(Visit& visit, std::string_view state) {
    Frame last = visit.frame();
    while (visit.app().place().find(state) != std::string::npos) {
        last = visit.frame();
        visit.wait(16);
    }
    return last;
}

}  // namespace

bool showStates(
    const fixtures::Room& room, game::ScreenSize size, exercise::Skill skill,
    const std::function<void(std::size_t state, const game::SurfacePtr& picture)>& see) {
    const auto visit = Visit::begin(room, size, {}, skill);
    if (!visit) return false;
    const auto show = [&](std::size_t state, const Frame& frame) {
        const auto picture = visit->picture(frame);
        if (picture) see(state, picture);
        return picture != nullptr;
    };
    visit->touch("badge:c-03");
    if (!visit->waitFor("asked")) return false;
    visit->waitUntilTold();
    bool all = show(0, visit->frame());
    if (!visit->app().rightTouch()) return false;
    visit->lift(*visit->app().rightTouch());
    all = show(1, visit->frame()) && all;
    visit->letGo();
    visit->answerWrongly();
    visit->wait(kWrongAfter);
    all = show(2, visit->frame()) && all;
    all = show(3, lastOf(*visit, "explain")) && all;
    visit->playUntil(visit->app().place().substr(0, visit->app().place().find(':')) + ": right");
    all = show(4, lastOf(*visit, "right")) && all;
    return all && visit->table().baker().missing().empty();
}

}  // namespace wrenlet::pictures
