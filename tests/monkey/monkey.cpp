#include "tests/monkey/monkey.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "game/script/scripted_child.hpp"

namespace wrenlet::monkey {

using game::Contact;
using game::Key;
using game::Millis;
using game::Point;

namespace {

constexpr Millis kFrame = 16;
constexpr Millis kMostOfASession = 30 * 60'000;
constexpr std::size_t kMostComplaints = 20;
constexpr game::ScreenSize kSizes[] = {{1280, 800, 0},      {800, 1280, 0},   {1024, 600, 0},
                                       {2732, 2048, 0.07f}, {640, 400, 0.3f}, {1920, 1200, 0.12f}};

}  // namespace

Monkey::Monkey(std::filesystem::path folder, pack::Pack pack, std::uint64_t seed)
    : store_(std::move(folder)), pack_(std::move(pack)), random_(seed) {
    start();
}

Monkey::~Monkey() = default;

void Monkey::start() {
    player_.reset();
    fingers_.clear();
    keys_.clear();
    ++starts_;
    screen_ = kSizes[below(std::size(kSizes))];
    lazy_ = chance(0.5);
    game::AppOptions options;
    game::TabletSettings& tablet = options.tablet;
    tablet.scan_pace = chance(0.2) ? 1'000 : 0;
    tablet.motion = chance(0.8);
    tablet.drags = chance(0.8);
    tablet.left_hand = chance(0.3);
    tablet.captions = chance(0.2);
    player_ =
        std::make_unique<fixtures::Player>(store_, 3, random_.next(), screen_, 3, pack_, options);
    witness_ = std::make_unique<Witness>(screen_, tablet);
    compareWithStore();
}

void Monkey::complain(const std::string& what) {
    if (complaints_.size() < kMostComplaints)
        complaints_.push_back("after " + std::to_string(touches_) + " touches and " +
                              std::to_string(starts_) + " starts, at \"" + app().place() +
                              "\": " + what);
}

void Monkey::compareWithStore() {
    if (player_->store().all() != rows_) complain("the store holds other answers than were given");
}

void Monkey::look(bool is_time) {
    const auto newest = static_cast<std::size_t>(player_->store().newest());
    const bool has_answered = witness_->hasAnswered() && !is_time;
    if (newest == rows_.size()) {
        if (has_answered) complain("an answer was given and is not kept: " + witness_->told());
        return;
    }
    const auto rows = player_->store().all();
    if (newest != rows_.size() + 1 || rows.size() != newest)
        complain("not one answer was kept, but another number of them");
    for (std::size_t i = rows_.size(); i < rows.size(); ++i) {
        const practice::Response& row = rows[i];
        const std::string doubts = witness_->doubts(row);
        if (!doubts.empty())
            complain("nobody answered " + row.chosen.string() + " to " + row.item.string() + ": " + doubts + " (" +
                     witness_->told() + ")");
        if (std::count(row.choices.begin(), row.choices.end(), row.chosen) != 1 ||
            row.hearings < 1 || row.took_ms < 0)
            complain("the answer to " + row.item.string() + " can't be");
    }
    rows_ = rows;
}

void Monkey::contact(const Contact& contact) {
    witness_->contact(contact, app(), player_->now());
    player_->contact(contact);
    look(false);
}

void Monkey::key(Key key, bool down) {
    witness_->key(key, down, app(), player_->now());
    app().key(key, down, player_->now());
    look(false);
}

void Monkey::pass(Millis millis) {
    for (const Millis until = player_->now() + millis; player_->now() < until;) {
        witness_->otherwise();
        const Millis step = std::min(kFrame, until - player_->now());
        const auto due = app().nextDue(player_->now());
        const bool rests =
            lazy_ && !app().isMoving(player_->now()) && (!due || *due > player_->now() + step);
        if (rests)
            player_->rest(step);
        else
            player_->wait(step);
        look(true);
    }
}

Point Monkey::anywhere() {
    const auto w = static_cast<float>(screen_.w), h = static_cast<float>(screen_.h);
    Point at{static_cast<float>(random_.unit()) * w, static_cast<float>(random_.unit()) * h};
    if (chance(0.15)) at.x = chance(0.5) ? 0 : w - 1;
    if (chance(0.15)) at.y = chance(0.5) ? 0 : h - 1;
    return at;
}

Point Monkey::onSomething() {
    const auto things = app().touchables();
    const auto right = app().rightTouch();
    if (things.empty() || chance(0.2)) return anywhere();
    const std::string& thing =
        right && chance(0.3) ? *right : things[below(static_cast<std::uint32_t>(things.size()))];
    const auto box = app().boxOf(thing);
    if (!box) return anywhere();
    return {box->x + static_cast<float>(random_.unit()) * box->w,
            box->y + static_cast<float>(random_.unit()) * box->h};
}

void Monkey::touchSomewhere() {
    ++touches_;
    Contact contact{Contact::Kind::down, below(6), onSomething(), 0};
    if (chance(0.1)) contact.size_mm = static_cast<float>(5 + below(60));
    // The up of a finger before may have been lost.
    std::erase_if(fingers_, [&](const Contact& other) { return other.id == contact.id; });
    fingers_.push_back(contact);
    this->contact(contact);
}

void Monkey::moveSome() {
    if (fingers_.empty()) return touchSomewhere();
    Contact& finger = fingers_[below(static_cast<std::uint32_t>(fingers_.size()))];
    const Point from = finger.at;
    const Point to = chance(0.3) ? Point{from.x + static_cast<float>(below(20)) - 10,
                                         from.y + static_cast<float>(below(20)) - 10}
                                 : onSomething();
    const int steps = 1 + static_cast<int>(below(8));
    for (int i = 1; i <= steps; ++i) {
        const float part = static_cast<float>(i) / static_cast<float>(steps);
        finger.kind = Contact::Kind::move;
        finger.at = {from.x + (to.x - from.x) * part, from.y + (to.y - from.y) * part};
        if (chance(0.01)) finger.size_mm = 40;
        contact(finger);
        if (chance(0.5)) pass(kFrame);
    }
}

void Monkey::liftSome() {
    if (fingers_.empty()) return touchSomewhere();
    const auto which = fingers_.begin() + below(static_cast<std::uint32_t>(fingers_.size()));
    Contact finger = *which;
    fingers_.erase(which);
    finger.kind = chance(0.07) ? Contact::Kind::cancel : Contact::Kind::up;
    if (chance(0.1)) finger.at = onSomething();
    contact(finger);
}

void Monkey::pressSome() {
    if (!keys_.empty() && chance(0.6)) {
        const Key up = keys_.back();
        keys_.pop_back();
        return key(up, false);
    }
    ++touches_;
    static constexpr Key kKeys[] = {Key::next,  Key::next,  Key::previous, Key::touch,
                                    Key::touch, Key::touch, Key::replay,   Key::leave};
    const Key down = kKeys[below(std::size(kKeys))];
    if (std::find(keys_.begin(), keys_.end(), down) != keys_.end()) return;
    keys_.push_back(down);
    key(down, true);
}

void Monkey::turn() {
    const game::ScreenSize before = screen_;
    if (chance(0.6))
        std::swap(screen_.w, screen_.h);
    else if (chance(0.5))
        screen_ = kSizes[below(std::size(kSizes))];
    else
        screen_ = {320 + static_cast<int>(below(2000)), 320 + static_cast<int>(below(2000)), 0};
    if (screen_ == before) return;
    witness_->resized(screen_);
    app().resize(screen_, player_->now());
    look(true);
}

void Monkey::act() {
    const double what = random_.unit();
    if (what < 0.36)
        touchSomewhere();
    else if (what < 0.60)
        moveSome();
    else if (what < 0.92)
        liftSome();
    else if (what < 0.99)
        pressSome();
    else if (what < 0.997)
        turn();
    else if (what < 0.998)
        start();
    else
        deftChild(3'000 + below(12'000));
    if (app().wantsToClose()) start();

    const double how_long = random_.unit();
    pass(how_long < 0.5 ? 0 : how_long < 0.9 ? below(60) : how_long < 0.985 ? below(900) : 4'000);
    if (chance(0.05))
        for (const game::Blit& blit : app().frame(player_->now()))
            if (!std::isfinite(blit.centre.x) || !std::isfinite(blit.centre.y))
                complain("something is drawn nowhere: " + blit.sprite.name);
}

/// A child plays among the monkey's fingers, so that rounds are seen from within.
void Monkey::deftChild(Millis millis) {
    game::Tape tape;
    tape.seed = random_.next();
    tape.right_share = 0.6;
    tape.width = screen_.w;
    tape.height = screen_.h;
    game::ScriptedChild child(tape);
    for (const Millis until = player_->now() + millis; player_->now() < until; pass(kFrame)) {
        for (const Contact& contact : child.tick(app(), player_->now())) this->contact(contact);
        if (app().wantsToClose()) return start();
    }
    for (const std::int64_t id : {1, 7, 8}) contact({Contact::Kind::cancel, id, {}, 0});
}

void Monkey::calm() {
    while (!keys_.empty()) {
        key(keys_.back(), false);
        keys_.pop_back();
    }
    while (!fingers_.empty()) liftSome();
    pass(kFrame);
    if (app().wantsToClose()) start();
    if (app().place() == "paused") adultComes();
    const std::size_t before = complaints_.size();
    // Where scanning may be on, a finger is a switch and can't aim.
    if (witness_->mayScan())
        finishByKeys();
    else
        finishByFinger();
    if (complaints_.size() == before) ++sessions_;
    compareWithStore();
}

/// Who lets a paused game go on.
void Monkey::adultComes() {
    const Point door = app().boxOf("leave").value_or(game::Box{}).centre();
    contact({Contact::Kind::down, 1, door, 0});
    pass(2'000);
    contact({Contact::Kind::up, 1, door, 0});
}

void Monkey::finishByFinger() {
    game::Tape tape;
    tape.seed = random_.next();
    tape.right_share = 1;
    tape.sessions = app().place() == "ending" ? 2 : 1;
    tape.width = screen_.w;
    tape.height = screen_.h;
    game::ScriptedChild child(tape);
    for (const Millis until = player_->now() + kMostOfASession; player_->now() < until;) {
        for (const Contact& contact : child.tick(app(), player_->now())) this->contact(contact);
        if (child.isDone(app())) return;
        pass(kFrame);
    }
    complain("a child who knows could not come to the end of a session");
}

void Monkey::finishByKeys() {
    bool ended = false;
    for (const Millis until = player_->now() + kMostOfASession; player_->now() < until;) {
        if (app().place() == "ending") ended = true;
        if (ended && app().place() == "badges") return;
        const auto right = app().rightTouch();
        if (!right) {
            pass(96);
            continue;
        }
        for (int i = 0; i < 60 && app().marked() != right; ++i) key(Key::next, true);
        key(Key::touch, true);
        pass(3 * kFrame);
        key(Key::touch, false);
        pass(kFrame);
    }
    complain("a child who knows could not come to the end of a session by keys");
}

void Monkey::play(int touches) {
    const int until = touches_ + touches;
    int calm_at = touches_ + kCalmEvery;
    while (touches_ < until) {
        act();
        if (touches_ < std::min(calm_at, until)) continue;
        calm_at = touches_ + kCalmEvery;
        calm();
        if (complaints_.size() >= kMostComplaints) return;
    }
}

}  // namespace wrenlet::monkey
