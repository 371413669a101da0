#include "game/sdl/fingers.hpp"

#include <doctest/doctest.h>

#include <string>

#include "game/sdl/window.hpp"

using namespace wrenlet::game;

namespace {

constexpr ScreenSize kScreen{2560, 1600, 0};

SDL_Event finger(Uint32 type, SDL_TouchID device, float x, float y) {
    SDL_Event event{};
    event.type = type;
    event.tfinger.touchId = device;
    event.tfinger.fingerId = 4;
    event.tfinger.x = x;
    event.tfinger.y = y;
    return event;
}

SDL_Event button(Uint32 type, Uint32 which, Uint8 which_button) {
    SDL_Event event{};
    event.type = type;
    event.button.which = which;
    event.button.button = which_button;
    event.button.x = 640;
    event.button.y = 400;
    return event;
}

}  // namespace

TEST_CASE("fingers: a finger is told in pixels of the screen") {
    const auto contact = contactOf(finger(SDL_FINGERDOWN, 9, 0.25f, 0.5f), kScreen, 1280, 800);
    REQUIRE(contact.has_value());
    CHECK(contact->kind == Contact::Kind::down);
    CHECK(contact->at == Point{640, 800});
    CHECK(contact->id != 0);
    CHECK(contactOf(finger(SDL_FINGERUP, 9, 0, 0), kScreen, 1280, 800)->kind == Contact::Kind::up);
}

TEST_CASE("fingers: a mouse is one contact, scaled from the window's units") {
    const auto contact =
        contactOf(button(SDL_MOUSEBUTTONDOWN, 0, SDL_BUTTON_LEFT), kScreen, 1280, 800);
    REQUIRE(contact.has_value());
    CHECK(contact->id == 0);
    CHECK(contact->at == Point{1280, 800});
    CHECK_FALSE(contactOf(button(SDL_MOUSEBUTTONDOWN, 0, SDL_BUTTON_RIGHT), kScreen, 1280, 800));
    SDL_Event motion{};
    motion.type = SDL_MOUSEMOTION;
    CHECK_FALSE(contactOf(motion, kScreen, 1280, 800));  // nothing is pressed
    motion.motion.state = SDL_BUTTON_LMASK;
    CHECK(contactOf(motion, kScreen, 1280, 800)->kind == Contact::Kind::move);
}

TEST_CASE("fingers: a mouse made of a finger, and a finger made of a mouse, are left out") {
    CHECK_FALSE(contactOf(button(SDL_MOUSEBUTTONDOWN, SDL_TOUCH_MOUSEID, SDL_BUTTON_LEFT), kScreen,
                          1280, 800));
    CHECK_FALSE(
        contactOf(finger(SDL_FINGERDOWN, SDL_MOUSE_TOUCHID, 0.5f, 0.5f), kScreen, 1280, 800));
}

TEST_CASE("fingers: a device that SDL does not list is taken as the screen, with no video too") {
    while (SDL_WasInit(SDL_INIT_VIDEO) != 0) SDL_QuitSubSystem(SDL_INIT_VIDEO);
    CHECK(contactOf(finger(SDL_FINGERDOWN, 9, 0.5f, 0.5f), kScreen, 1280, 800).has_value());
    auto window = Window::open({1280, 800, false, true});
    REQUIRE(window.ok());
    SDL_ClearError();
    CHECK(contactOf(finger(SDL_FINGERDOWN, 9, 0.5f, 0.5f), kScreen, 1280, 800).has_value());
    CHECK(std::string(SDL_GetError()).empty());  // SDL was not asked to reset a touch device
}

TEST_CASE("fingers: a pushed contact comes back through SDL's queue as it was") {
    auto window = Window::open({1280, 800, false, true});
    REQUIRE(window.ok());
    const ScreenSize screen = window.value().screen();
    CHECK(screen.w == 1280);
    const Contact sent[] = {{Contact::Kind::down, 1, {200, 300}, 0},
                            {Contact::Kind::move, 1, {640.5f, 401}, 0},
                            {Contact::Kind::up, 1, {1279, 799}, 0}};
    SDL_FlushEvents(SDL_FIRSTEVENT, SDL_LASTEVENT);
    for (const Contact& contact : sent) REQUIRE(pushFinger(contact, screen));
    std::size_t met = 0;
    SDL_Event event;
    while (SDL_PollEvent(&event) != 0) {
        const auto contact = contactOf(event, screen, 1280, 800);
        if (!contact) continue;
        REQUIRE(met < 3);
        CHECK(contact->kind == sent[met].kind);
        CHECK(contact->id == sent[met].id);
        CHECK(contact->at.x == doctest::Approx(sent[met].at.x));
        CHECK(contact->at.y == doctest::Approx(sent[met].at.y));
        ++met;
    }
    CHECK(met == 3);
}

TEST_CASE("window: only a credible figure is taken for the display's size") {
    CHECK(millimetresPerPixel(0) == 0);
    CHECK(millimetresPerPixel(72) == 0);
    CHECK(millimetresPerPixel(96) == 0);
    CHECK(millimetresPerPixel(100000) == 0);
    CHECK(millimetresPerPixel(149.4f) == doctest::Approx(0.17).epsilon(0.001));
}
