#include "game/web/browser.hpp"

#include <emscripten.h>

// Numbers of 64 bits cross over as doubles: all of ours are whole and far below 2^53.
// clang-format off
EM_JS(void, js_open, (void* page), { Module.page.open(page); });
EM_JS(void, js_failed, (const char* words), { Module.page.failed(UTF8ToString(words)); });
EM_JS(void, js_over, (), { Module.page.over(); });
EM_JS(void, js_settings, (), { Module.page.settings(FS.readFile("/tablet/settings.json")); });
EM_JS(void, js_place, (const char* json), { console.log(UTF8ToString(json)); });
EM_JS(void, js_session, (double session, const char* json),
      { Module.page.session(session, UTF8ToString(json)); });
EM_JS(void, js_response, (void* page, double session, const char* json, double played_ms),
      { Module.page.response(page, session, UTF8ToString(json), played_ms); });
EM_JS(void, js_end, (double session, double played_ms),
      { Module.page.end(session, played_ms); });
// clang-format on

namespace wrenlet::web {

void tellOpen(Page* page) {
    js_open(page);
}

void tellFailed(const std::string& words) {
    js_failed(words.c_str());
}

void tellOver() {
    js_over();
}

void tellSettings() {
    js_settings();
}

void tellPlace(const std::string& json) {
    js_place(json.c_str());
}

void keepSession(std::int64_t session, const std::string& json) {
    js_session(static_cast<double>(session), json.c_str());
}

void keepResponse(Page* page, std::int64_t session, const std::string& json,
                  std::int64_t played_ms) {
    js_response(page, static_cast<double>(session), json.c_str(), static_cast<double>(played_ms));
}

void keepEnd(std::int64_t session, std::int64_t played_ms) {
    js_end(static_cast<double>(session), static_cast<double>(played_ms));
}

}  // namespace wrenlet::web
