// wrenlet in a web page: what page/page.js calls. WebAssembly has no other way in than functions of
// C, and whatever they work on comes back to them by its address.
#include <emscripten.h>

#include <cstdlib>
#include <string>
#include <vector>

#include "game/web/browser.hpp"
#include "game/web/page.hpp"

using wrenlet::web::Page;

namespace {

void tellWhy(const std::vector<wrenlet::Problem>& problems) {
    std::string words;
    for (const wrenlet::Problem& problem : problems) words += wrenlet::sentence(problem) + "\n";
    wrenlet::web::tellFailed(words);
}

}  // namespace

extern "C" {

/// 0 when it cannot be shown, which tellFailed() has told then.
EMSCRIPTEN_KEEPALIVE int wrenlet_lay(Page* page) {
    const auto laid = page->lay();
    if (!laid.ok()) tellWhy(laid.problems());
    return laid.ok() ? 1 : 0;
}

EMSCRIPTEN_KEEPALIVE void wrenlet_begin(Page* page) {
    page->begin();
}

EMSCRIPTEN_KEEPALIVE void wrenlet_kept(Page* page) {
    page->kept();
}

EMSCRIPTEN_KEEPALIVE int wrenlet_at_rest(const Page* page) {
    return page->isAtRest() ? 1 : 0;
}
}

/// wrenlet TABLET BEHIND_MS [--announce]: opens what there is to play and comes back; the page lives
/// on.
int main(int argc, char** argv) {
    wrenlet::web::PageCall call;
    if (argc > 1) call.tablet = argv[1];
    if (argc > 2) call.behind_ms = std::atoll(argv[2]);
    call.announces = argc > 3 && std::string(argv[3]) == "--announce";
    auto page = Page::open(call);
    if (!page.ok()) {
        tellWhy(page.problems());
        return 1;
    }
    wrenlet::web::tellOpen(page.value().release());
    return 0;
}
