#include "game/sdl/fingers.hpp"

namespace wrenlet::game {

namespace {

Contact::Kind kindOf(Uint32 type) {
    if (type == SDL_FINGERDOWN || type == SDL_MOUSEBUTTONDOWN) return Contact::Kind::down;
    if (type == SDL_FINGERUP || type == SDL_MOUSEBUTTONUP) return Contact::Kind::up;
    return Contact::Kind::move;
}

// A pad beside a screen (a laptop's touchpad) moves the mouse; its fingers are not on the glass.
// SDL must not be asked about a device it does not list: it would reset the screen's touch.
bool liesBesideTheScreen(SDL_TouchID device) {
    if (SDL_WasInit(SDL_INIT_VIDEO) == 0) return false;  // SDL 2.26 would crash, asked before
    for (int i = 0; i < SDL_GetNumTouchDevices(); ++i) {
        if (SDL_GetTouchDevice(i) != device) continue;
        const SDL_TouchDeviceType type = SDL_GetTouchDeviceType(device);
        return type == SDL_TOUCH_DEVICE_INDIRECT_ABSOLUTE ||
               type == SDL_TOUCH_DEVICE_INDIRECT_RELATIVE;
    }
    return false;
}

}  // namespace

std::optional<Contact> contactOf(const SDL_Event& event, ScreenSize screen, int window_w,
                                 int window_h) {
    const auto w = static_cast<float>(screen.w), h = static_cast<float>(screen.h);
    Contact contact;
    contact.kind = kindOf(event.type);
    switch (event.type) {
        case SDL_FINGERDOWN:
        case SDL_FINGERMOTION:
        case SDL_FINGERUP:
            if (event.tfinger.touchId == SDL_MOUSE_TOUCHID) return std::nullopt;
            if (liesBesideTheScreen(event.tfinger.touchId)) return std::nullopt;
            contact.id = event.tfinger.fingerId + 1;
            contact.at = {event.tfinger.x * w, event.tfinger.y * h};
            return contact;
        case SDL_MOUSEBUTTONDOWN:
        case SDL_MOUSEBUTTONUP:
            if (event.button.which == SDL_TOUCH_MOUSEID) return std::nullopt;
            if (event.button.button != SDL_BUTTON_LEFT) return std::nullopt;
            contact.at = {static_cast<float>(event.button.x), static_cast<float>(event.button.y)};
            break;
        case SDL_MOUSEMOTION:
            if (event.motion.which == SDL_TOUCH_MOUSEID) return std::nullopt;
            if ((event.motion.state & SDL_BUTTON_LMASK) == 0) return std::nullopt;
            contact.at = {static_cast<float>(event.motion.x), static_cast<float>(event.motion.y)};
            break;
        default:
            return std::nullopt;
    }
    if (window_w > 0 && window_h > 0) {
        contact.at.x *= w / static_cast<float>(window_w);
        contact.at.y *= h / static_cast<float>(window_h);
    }
    return contact;
}

bool pushFinger(const Contact& contact, ScreenSize screen) {
    SDL_Event event{};
    switch (contact.kind) {
        case Contact::Kind::down:
            event.type = SDL_FINGERDOWN;
            break;
        case Contact::Kind::move:
            event.type = SDL_FINGERMOTION;
            break;
        case Contact::Kind::up:
        case Contact::Kind::cancel:
            event.type = SDL_FINGERUP;
            break;
    }
    event.tfinger.touchId = kScriptedTouch;
    event.tfinger.fingerId = contact.id - 1;
    event.tfinger.x = contact.at.x / static_cast<float>(screen.w);
    event.tfinger.y = contact.at.y / static_cast<float>(screen.h);
    event.tfinger.pressure = contact.kind == Contact::Kind::up ? 0.0f : 1.0f;
    return SDL_PushEvent(&event) == 1;
}

std::optional<Key> keyOf(const SDL_Keysym& key) {
    switch (key.sym) {
        case SDLK_TAB:
            return (key.mod & KMOD_SHIFT) != 0 ? Key::previous : Key::next;
        case SDLK_RIGHT:
        case SDLK_DOWN:
            return Key::next;
        case SDLK_LEFT:
        case SDLK_UP:
            return Key::previous;
        case SDLK_SPACE:
        case SDLK_RETURN:
        case SDLK_KP_ENTER:
            return Key::touch;
        case SDLK_r:
            return Key::replay;
        case SDLK_ESCAPE:
            return Key::leave;
        default:
            return std::nullopt;
    }
}

}  // namespace wrenlet::game
