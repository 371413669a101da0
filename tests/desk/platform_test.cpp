// SDL's events as they come from the system, and what of them reaches the desk.
#include <doctest/doctest.h>
#include <imgui.h>

#include "editor/windows/canvas.hpp"
#include "editor/windows/input.hpp"
#include "editor/windows/platform.hpp"

namespace wrenlet::desk {

namespace {

struct Glass {
    ImGuiHome home;
    Platform platform;
    Platform::Heard heard;

    void take(const SDL_Event& event, float density = 1) {
        platform.take(event, 1000, 500, density, heard);
    }
    void finger(Uint32 type, SDL_FingerID id, float x, float y, SDL_TouchID touch = 7) {
        SDL_Event event{};
        event.type = type;
        event.tfinger.touchId = touch;
        event.tfinger.fingerId = id;
        event.tfinger.x = x;
        event.tfinger.y = y;
        take(event);
    }
    void button(Uint32 type, Uint32 which, Uint8 button = SDL_BUTTON_LEFT) {
        SDL_Event event{};
        event.type = type;
        event.button.which = which;
        event.button.button = button;
        take(event);
    }
    static bool isDown() { return ImGui::GetIO().MouseDown[0]; }
    static ImVec2 at() { return ImGui::GetIO().MousePos; }
};

}  // namespace

#if IMGUI_VERSION_NUM < 18700

TEST_CASE("A finger points, presses and leaves the glass") {
    Glass glass;
    glass.finger(SDL_FINGERDOWN, 1, 0.5f, 0.5f);
    CHECK(Glass::isDown());
    CHECK(Glass::at().x == doctest::Approx(500));
    CHECK(Glass::at().y == doctest::Approx(250));
    CHECK(glass.platform.isFinger());
    glass.finger(SDL_FINGERUP, 1, 0.5f, 0.5f);
    CHECK(!Glass::isDown());
    CHECK(Glass::at().x == doctest::Approx(500));  // still there for the frame that hears the lift
    glass.platform.endFrame();
    CHECK(Glass::at().x < 0);
}

TEST_CASE("A second finger does nothing") {
    Glass glass;
    glass.finger(SDL_FINGERDOWN, 1, 0.1f, 0.1f);
    glass.finger(SDL_FINGERDOWN, 2, 0.9f, 0.9f);
    CHECK(Glass::at().x == doctest::Approx(100));
    glass.finger(SDL_FINGERUP, 2, 0.9f, 0.9f);
    CHECK(Glass::isDown());
    glass.finger(SDL_FINGERUP, 1, 0.1f, 0.1f);
    CHECK(!Glass::isDown());
}

TEST_CASE("A touch that SDL also tells as a mouse counts once, and the other way round") {
    Glass glass;
    glass.button(SDL_MOUSEBUTTONDOWN, SDL_TOUCH_MOUSEID);
    CHECK(!Glass::isDown());
    glass.finger(SDL_FINGERDOWN, 1, 0.5f, 0.5f, SDL_MOUSE_TOUCHID);
    CHECK(!Glass::isDown());
    glass.button(SDL_MOUSEBUTTONDOWN, 0, SDL_BUTTON_RIGHT);
    CHECK(!Glass::isDown());
    glass.button(SDL_MOUSEBUTTONDOWN, 0);
    CHECK(Glass::isDown());
}

TEST_CASE("A mouse is where its pixels are on a dense screen") {
    Glass glass;
    SDL_Event event{};
    event.type = SDL_MOUSEMOTION;
    event.motion.x = 100;
    event.motion.y = 40;
    glass.take(event, 2);
    CHECK(Glass::at().x == doctest::Approx(200));
    CHECK(Glass::at().y == doctest::Approx(80));
}

TEST_CASE("Keys and their modifiers arrive") {
    Glass glass;
    SDL_Event event{};
    event.type = SDL_KEYDOWN;
    event.key.keysym.sym = SDLK_KP_ENTER;
    event.key.keysym.mod = KMOD_LCTRL;
    glass.take(event);
    CHECK(ImGui::GetIO().KeysDown[static_cast<int>(Key::enter)]);
    CHECK(input::ctrl());
    event.type = SDL_KEYUP;
    event.key.keysym.mod = KMOD_NONE;
    glass.take(event);
    CHECK(!ImGui::GetIO().KeysDown[static_cast<int>(Key::enter)]);
    CHECK(!input::ctrl());
}

#endif

TEST_CASE("A folder dropped on the window is heard once, and closing is heard") {
    Glass glass;
    SDL_Event event{};
    event.type = SDL_DROPFILE;
    event.drop.file = SDL_strdup("/stick/room");
    glass.take(event);
    REQUIRE(glass.heard.dropped.has_value());
    CHECK(*glass.heard.dropped == "/stick/room");
    event = {};
    event.type = SDL_QUIT;
    glass.take(event);
    CHECK(glass.heard.closed);
}

}  // namespace wrenlet::desk
