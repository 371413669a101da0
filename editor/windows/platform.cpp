#include "editor/windows/platform.hpp"

#include <memory>
#include <system_error>

#include "editor/paper/papers.hpp"
#include "editor/windows/input.hpp"

namespace wrenlet::desk {

namespace {

Key keyOf(SDL_Keycode code) {
    switch (code) {
        case SDLK_TAB:
            return Key::tab;
        case SDLK_LEFT:
            return Key::left;
        case SDLK_RIGHT:
            return Key::right;
        case SDLK_UP:
            return Key::up;
        case SDLK_DOWN:
            return Key::down;
        case SDLK_PAGEUP:
            return Key::page_up;
        case SDLK_PAGEDOWN:
            return Key::page_down;
        case SDLK_HOME:
            return Key::home;
        case SDLK_END:
            return Key::end;
        case SDLK_RETURN:
        case SDLK_KP_ENTER:
            return Key::enter;
        case SDLK_SPACE:
            return Key::space;
        case SDLK_ESCAPE:
            return Key::escape;
        case SDLK_F5:
            return Key::f5;
        case SDLK_PLUS:
        case SDLK_EQUALS:
        case SDLK_KP_PLUS:
            return Key::plus;
        case SDLK_DELETE:
            return Key::erase;
        case SDLK_BACKSPACE:
            return Key::backspace;
        case SDLK_F1:
            return Key::f1;
        case SDLK_1:
            return Key::one;
        case SDLK_2:
            return Key::two;
        case SDLK_3:
            return Key::three;
        case SDLK_4:
            return Key::four;
        case SDLK_5:
            return Key::five;
        case SDLK_a:
            return Key::a;
        case SDLK_c:
            return Key::c;
        case SDLK_d:
            return Key::d;
        case SDLK_f:
            return Key::f;
        case SDLK_h:
            return Key::h;
        case SDLK_k:
            return Key::k;
        case SDLK_l:
            return Key::l;
        case SDLK_p:
            return Key::p;
        case SDLK_s:
            return Key::s;
        case SDLK_v:
            return Key::v;
        case SDLK_x:
            return Key::x;
        case SDLK_y:
            return Key::y;
        case SDLK_z:
            return Key::z;
        case SDLK_MINUS:
        case SDLK_KP_MINUS:
            return Key::minus;
        default:
            return Key::none;
    }
}

}  // namespace

void Platform::take(const SDL_Event& event, int width, int height, float pixels_per_point,
                    Heard& heard) {
    switch (event.type) {
        case SDL_QUIT:
            heard.closed = true;
            break;
        case SDL_WINDOWEVENT:
            if (event.window.event == SDL_WINDOWEVENT_SIZE_CHANGED) heard.resized = true;
            if (event.window.event == SDL_WINDOWEVENT_LEAVE) input::lift();
            break;
        case SDL_MOUSEMOTION:
            if (event.motion.which == SDL_TOUCH_MOUSEID) break;
            input::pointTo(static_cast<float>(event.motion.x) * pixels_per_point,
                           static_cast<float>(event.motion.y) * pixels_per_point);
            break;
        case SDL_MOUSEBUTTONDOWN:
        case SDL_MOUSEBUTTONUP:
            if (event.button.which == SDL_TOUCH_MOUSEID || event.button.button != SDL_BUTTON_LEFT)
                break;
            is_finger_ = false;
            input::press(event.type == SDL_MOUSEBUTTONDOWN);
            break;
        case SDL_MOUSEWHEEL:
            input::wheel(event.wheel.preciseX, event.wheel.preciseY);
            break;
        case SDL_FINGERDOWN:
        case SDL_FINGERMOTION:
        case SDL_FINGERUP:
            if (event.tfinger.touchId == SDL_MOUSE_TOUCHID) break;
            if (event.type == SDL_FINGERDOWN && !first_finger_)
                first_finger_ = event.tfinger.fingerId;
            if (first_finger_ != event.tfinger.fingerId) break;
            is_finger_ = true;
            input::pointTo(event.tfinger.x * static_cast<float>(width),
                           event.tfinger.y * static_cast<float>(height));
            if (event.type == SDL_FINGERDOWN) input::press(true);
            if (event.type == SDL_FINGERUP) {
                input::press(false);
                first_finger_.reset();
                lifting_ = true;
            }
            break;
        case SDL_KEYDOWN:
        case SDL_KEYUP: {
            const auto held = event.key.keysym.mod;
            input::modifiers(held & KMOD_CTRL, held & KMOD_SHIFT, held & KMOD_ALT);
            const Key key = keyOf(event.key.keysym.sym);
            if (key != Key::none) input::key(key, event.type == SDL_KEYDOWN);
            break;
        }
        case SDL_TEXTINPUT:
            input::text(event.text.text);
            break;
        case SDL_DROPFILE: {
            const std::unique_ptr<char, decltype(&SDL_free)> file(event.drop.file, SDL_free);
            heard.dropped = std::filesystem::u8path(file.get());
            break;
        }
        default:
            break;
    }
}

void Platform::endFrame() {
    if (lifting_) input::lift();
    lifting_ = false;
}

bool Platform::openOutside(const std::filesystem::path& file) {
    std::error_code error;
    const std::filesystem::path whole = std::filesystem::absolute(file, error);
    return !error && SDL_OpenURL(fileAddress(whole).c_str()) == 0;
}

}  // namespace wrenlet::desk
