#include "tests/monkey/witness.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "game/scenes/layout.hpp"

namespace wrenlet::monkey {

using game::Box;
using game::Contact;
using game::Millis;
using game::Point;

namespace {

// The rules of a hand, as finger.hpp and scene.cpp state them, in the look's px or in mm.
constexpr float kTapStrays = 14, kHomeReaches = 70;

bool isKind(std::string_view name, std::string_view kind) {
    return name.substr(0, kind.size()) == kind;
}

/// One of the sounds to pick: one sound, or two that a letter stands for.
bool isSound(std::string_view name) {
    return isKind(name, "choice:sound:") || isKind(name, "choice:part:");
}

bool isDragged(std::string_view name) {
    return name == "card" || isSound(name);
}

float apart(Point a, Point b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

bool canAnswerAt(std::string_view place) {
    return place.find(": asked") != std::string_view::npos ||
           place.find(": together") != std::string_view::npos;
}

}  // namespace

const Witness::Lying* Witness::Seen::at(Point point) const {
    for (auto thing = things.rbegin(); thing != things.rend(); ++thing)
        if (thing->box.contains(point)) return &*thing;
    return nullptr;
}

const Witness::Lying* Witness::Seen::named(std::string_view name) const {
    for (const Lying& thing : things)
        if (thing.name == name) return &thing;
    return nullptr;
}

Witness::Seen Witness::look(const game::App& app) {
    Seen seen;
    seen.place = app.place();
    seen.marked = app.marked();
    for (const std::string& name : app.touchables())
        seen.things.push_back({name, app.boxOf(name).value_or(Box{})});
    return seen;
}

float Witness::reach(float length) const {
    return game::Layout(screen_).px(length);
}

bool Witness::beginsAtEdge(Point at) const {
    const float edge = screen_.mm_per_px > 0 ? game::kEdgeMm / screen_.mm_per_px : game::kEdgePx;
    const auto w = static_cast<float>(screen_.w), h = static_cast<float>(screen_.h);
    return at.x < edge || at.y < edge || at.x >= w - edge || at.y >= h - edge;
}

void Witness::disturb() {
    for (auto& [id, finger] : fingers_) finger.alone = false;
    if (key_) key_->alone = false;
}

void Witness::down(const Contact& contact, Seen seen, Millis now) {
    Held held;
    held.from = held.last = contact.at;
    held.since = held.heard = now;
    held.alone = fingers_.empty() && !key_;
    if (const Lying* thing = seen.at(contact.at)) held.thing = thing->name;
    held.seen = std::move(seen);
    const auto playing = std::find_if(fingers_.begin(), fingers_.end(),
                                      [](const auto& other) { return other.second.plays; });
    held.plays = contact.size_mm <= game::kPalmMm && !beginsAtEdge(contact.at);
    if (held.plays && playing != fingers_.end()) {
        const Held& before = playing->second;
        const bool only_rests = before.rests && now - before.since >= game::kRestMillis;
        const bool is_lost = now - before.heard >= game::kLostMillis;
        (only_rests || is_lost ? playing->second.plays : held.plays) = false;
    }
    fingers_[contact.id] = std::move(held);
}

void Witness::contact(const Contact& contact, const game::App& app, Millis now) {
    done_.clear();
    const bool is_down = contact.kind == Contact::Kind::down;
    if (is_down) {
        fingers_.erase(contact.id);
        disturb();
        Seen seen = look(app);
        if (seen.place == "adult") scans_ = taps_only_ = true;
        const Lying* leave = seen.named("leave");
        const bool is_switch = scans_ && !(leave != nullptr && leave->box.contains(contact.at));
        if (is_switch && seen.marked) {
            Held pressed;
            pressed.seen = seen;
            pressed.thing = *seen.marked;
            pressed.alone = false;
            switched_[contact.id] = std::move(pressed);
        }
        down(contact, std::move(seen), now);
        return;
    }
    const bool is_up = contact.kind == Contact::Kind::up;
    if (contact.kind != Contact::Kind::move)
        if (auto pressed = switched_.extract(contact.id); is_up && !pressed.empty())
            lift(std::move(pressed.mapped()), {}, true, app, now);
    const auto found = fingers_.find(contact.id);
    if (found == fingers_.end()) return;
    Held& finger = found->second;
    finger.last = contact.at;
    finger.heard = now;
    const float still = screen_.mm_per_px > 0 ? game::kStillMm / screen_.mm_per_px : game::kStillPx;
    if (apart(finger.from, contact.at) > still) finger.rests = false;
    if (apart(finger.from, contact.at) > reach(kTapStrays)) finger.strayed = true;
    if (contact.size_mm > game::kPalmMm) finger.plays = false;
    if (contact.kind == Contact::Kind::move) return;
    Held held = std::move(finger);
    fingers_.erase(found);
    if (is_up && held.plays) lift(std::move(held), contact.at, false, app, now);
}

void Witness::key(game::Key key, bool down, const game::App& app, Millis now) {
    done_.clear();
    disturb();
    if (!down) {
        if (!key_ || key_->key != key) return;
        Held held = std::move(*key_);
        key_.reset();
        return lift(std::move(held), {}, true, app, now);
    }
    if (key == game::Key::next || key == game::Key::previous) return;
    Held held;
    if (app.place() == "adult") scans_ = taps_only_ = true;
    held.key = key;
    held.alone = fingers_.empty() && !key_;
    held.seen = look(app);
    if (key == game::Key::touch) {
        if (!held.seen.marked) return;  // there is nothing to press
        held.thing = *held.seen.marked;
    }
    if (key == game::Key::leave) held.thing = "leave";
    key_ = std::move(held);
}

void Witness::resized(game::ScreenSize screen) {
    done_.clear();
    screen_ = screen;
    for (auto& [id, finger] : fingers_) finger.plays = false;
    key_.reset();
    switched_.clear();
}

int Witness::counted(const Seen& seen, const game::App& app, Millis now) const {
    int boxes = 0, acorns = 0;
    for (const Lying& thing : seen.things) boxes += isKind(thing.name, "box:");
    if (boxes > 0) return boxes;
    // Where the acorns will lie when none is on its way.
    constexpr Millis kSettled = 10'000;
    for (const game::Blit& blit : app.frame(now + kSettled)) {
        if (blit.sprite.name != "acorn") continue;
        acorns += std::any_of(seen.things.begin(), seen.things.end(), [&](const Lying& thing) {
            return isKind(thing.name, "pad:") && thing.box.contains(blit.centre);
        });
    }
    return acorns;
}

void Witness::lift(Held held, Point at, bool is_key, const game::App& app, Millis now) {
    Done done{std::move(held), at, look(app), 0, is_key};
    if (done.held.thing == "done") done.counted = counted(done.seen, app, now);
    if (done.held.seen.place == "badges" && isKind(done.held.thing, "badge:")) {
        if (!scans_) children_.clear();
        children_.insert(done.held.thing.substr(6));
    }
    done_.push_back(std::move(done));
}

std::optional<std::string> Witness::dropped(const Done& done,
                                            const std::vector<std::string>& order) const {
    const Lying* piece = done.held.seen.named(done.held.thing);
    if (piece == nullptr) return std::nullopt;
    const Point from = piece->box.centre();
    const Point middle{from.x + done.at.x - done.held.from.x,
                       from.y + done.at.y - done.held.from.y};
    const auto isOver = [&](const Box& box) {
        return box.contains(middle) || box.contains(done.at);
    };
    if (done.held.thing != "card") {
        const Lying* stage = done.seen.named("stage");
        if (stage == nullptr || !isOver(stage->box)) return std::nullopt;
        return done.held.thing.substr(7);
    }
    const Lying* nearest = nullptr;
    for (const Lying& thing : done.seen.things) {
        if (!isKind(thing.name, "home:")) continue;
        if (!isOver(thing.box.grown(reach(kHomeReaches)))) continue;
        if (nearest == nullptr ||
            apart(thing.box.centre(), middle) < apart(nearest->box.centre(), middle))
            nearest = &thing;
    }
    if (nearest == nullptr) return std::nullopt;
    const auto home = static_cast<std::size_t>(std::stoi(nearest->name.substr(5)));
    return home < order.size() ? std::optional(order[home]) : std::nullopt;
}

std::optional<std::string> Witness::answerOf(const Done& done,
                                             const std::vector<std::string>& order) const {
    const std::string& thing = done.held.thing;
    const Lying* piece = done.held.seen.named(thing);
    if (piece == nullptr || done.seen.named(thing) == nullptr) return std::nullopt;
    if (!canAnswerAt(done.held.seen.place) || !canAnswerAt(done.seen.place)) return std::nullopt;
    if (!done.is_key) {
        if (isDragged(thing) && done.held.strayed) {
            const auto dropped_on = dropped(done, order);
            if (dropped_on || !taps_only_) return dropped_on;
        }
        if (!piece->box.grown(reach(kTapStrays)).contains(done.at)) return std::nullopt;
    }
    // A sound is heard at a first touch, and answers at the second.
    if (isSound(thing) && done.seen.place.find("chosen") == std::string::npos) return std::nullopt;
    if (isKind(thing, "choice:")) return thing.substr(7);
    if (isKind(thing, "home:")) {
        const auto home = static_cast<std::size_t>(std::stoi(thing.substr(5)));
        return home < order.size() ? std::optional(order[home]) : std::nullopt;
    }
    if (thing == "done") return std::to_string(done.counted);
    return std::nullopt;
}

std::string Witness::doubts(const practice::Response& response) const {
    if (done_.empty()) return "no finger and no key was let go";
    if (children_.count(response.child) == 0)
        return "nobody touched the badge of " + response.child.string();
    for (const Done& done : done_)
        if (answerOf(done, response.choices) == response.chosen) return "";
    return "what was done says something else";
}

bool Witness::hasAnswered() const {
    if (scans_ || taps_only_ || done_.size() != 1) return false;
    const Done& done = done_.front();
    const std::string& thing = done.held.thing;
    if (!done.held.alone || done.held.seen.place != done.seen.place) return false;
    if (thing == "card" && done.held.strayed)
        return dropped(done, {"", "", "", "", "", "", "", ""}).has_value() &&
               canAnswerAt(done.seen.place);
    if (isSound(thing)) return false;  // which was chosen is not seen from outside
    return answerOf(done, {"", "", "", "", "", "", "", ""}).has_value();
}

std::string Witness::told() const {
    std::string words;
    for (const Done& done : done_)
        words += std::string(done.is_key ? "by key: " : "by finger: ") + done.held.thing + " at " +
                 done.held.seen.place + ", lifted at " + done.seen.place +
                 (done.held.strayed ? ", dragged; " : "; ");
    return words.empty() ? "nothing was let go" : words;
}

}  // namespace wrenlet::monkey
