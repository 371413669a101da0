#include "game/web/page.hpp"

#include <emscripten.h>

#include <nlohmann/json.hpp>
#include <utility>

#include "content/common/files.hpp"
#include "content/practice/store.hpp"
#include "game/script/told.hpp"
#include "game/web/browser.hpp"
#include "game/web/kept_json.hpp"

namespace wrenlet::web {
namespace {

constexpr std::uint64_t kMostKeptBytes = 256ull << 20;
constexpr int kSoundFrames = 2048;           // the browser mixes between its frames, on one thread
constexpr game::Millis kNotWorthAFrame = 4;  // until something is due

const pack::Classroom kClassroom{"/classroom"};
const game::TabletFolder kTablet{"/tablet"};

/// The tablet's store as it was when the page was closed.
std::vector<Problem> fillStore(const std::string& tablet) {
    const auto json = readWhole("/kept.json", kMostKeptBytes);
    if (!json.ok()) return json.problems();
    const Result<Kept> kept = readKept(json.value());
    if (!kept.ok()) return kept.problems();
    auto store = practice::Store::open(kTablet.store(), tablet);
    if (!store.ok()) return store.problems();
    return store.value().refill(kept.value().sessions, kept.value().responses).problems();
}

}  // namespace

Result<std::unique_ptr<Page>> Page::open(const PageCall& call) {
    if (const auto problems = fillStore(call.tablet); !problems.empty()) return problems;
    auto opened = game::openClassroom(kClassroom, kTablet, 0);
    if (!opened.ok()) return opened.problems();
    opened.value().snapshot.clear();  // the desk is sent each response by itself
    return std::unique_ptr<Page>(new Page(call, std::move(opened.value())));
}

Page::Page(const PageCall& call, game::Opened opened)
    : opened_(std::move(opened)), clock_(call.behind_ms), announces_(call.announces) {
    opened_.store.setJournal(this);
}

Result<Done> Page::lay() {
    game::TableOptions options;
    options.assets = "/assets";
    options.app.tablet = opened_.settings;
    options.sound_frames = kSoundFrames;
    auto table = game::Table::open(opened_, clock_, options);
    if (!table.ok()) return table.problems();
    table_ = std::move(table.value());
    settings_ = table_->app().settings();
    playing_ = std::make_unique<game::Playing>(*table_);
    return Done{};
}

void Page::begin() {
    const auto step = [](void* page) { static_cast<Page*>(page)->step(); };
    emscripten_set_main_loop_arg(step, this, 0, false);
}

void Page::step() {
    if (!playing_->isDue(kNotWorthAFrame)) return;
    const double begin = emscripten_get_now();
    const std::uint64_t drawn = table_->canvas().drawn();
    const bool goes_on = playing_->step();
    if (announces_)
        (table_->canvas().drawn() != drawn ? frames_ : between_)
            .push_back(emscripten_get_now() - begin);
    if (!goes_on) {
        emscripten_cancel_main_loop();
        return tellOver();
    }
    if (settings_ != table_->app().settings()) {
        settings_ = table_->app().settings();
        tellSettings();
    }
    if (announces_ && !table_->isStill()) announce();
}

void Page::announce() {
    constexpr std::size_t kTold = 60;
    if (frames_.size() + between_.size() >= kTold) {
        tellPlace(nlohmann::json{{"frame_ms", frames_}, {"between_ms", between_}}.dump());
        frames_.clear();
        between_.clear();
    }
    std::string now = game::told(table_->app());
    if (now == last_) return;
    last_ = std::move(now);
    tellPlace(last_);
}

void Page::kept() {
    if (waiting_ > 0) --waiting_;
    table_->setHeld(waiting_ > 0);
}

bool Page::isAtRest() const {
    return table_->app().place() == "badges";
}

void Page::began(const practice::Session& session) {
    keepSession(session.id, sessionText(session));
}

void Page::kept(const practice::Response& response, std::int64_t played_ms) {
    ++waiting_;
    table_->setHeld(true);
    keepResponse(this, response.session, responseText(response), played_ms);
}

void Page::ended(std::int64_t session, std::int64_t played_ms) {
    keepEnd(session, played_ms);
}

}  // namespace wrenlet::web
