#include "game/script/scripted_child.hpp"

#include <algorithm>

namespace wrenlet::game {
namespace {

constexpr std::int64_t kFinger = 1, kPalm = 7, kSecond = 8;
constexpr Millis kFrame = 17;
constexpr int kDragSteps = 14;

bool isOneOf(const std::string& name, std::string_view kind) {
    return name.compare(0, kind.size(), kind) == 0;
}

}  // namespace

void ScriptedChild::at(Millis when, Contact::Kind kind, std::int64_t id, Point where) {
    const Due due{when, {kind, id, where, 0}};
    const auto later =
        std::find_if(due_.begin(), due_.end(), [&](const Due& other) { return other.at > when; });
    due_.insert(later, due);
}

Point ScriptedChild::inside(const Box& box) {
    const auto part = [this] { return static_cast<float>(0.3 + 0.4 * random_.unit()); };
    return {box.x + box.w * part(), box.y + box.h * part()};
}

std::string ScriptedChild::aim(const App& app, const std::string& right) {
    if (random_.unit() < tape_.right_share) return right;
    const auto counts = [](const std::string& name) {
        return name == "acorn" || name == "done" || name == "whole" || isOneOf(name, "box:");
    };
    std::vector<std::string> others;
    for (const std::string& name : app.touchables()) {
        const bool like = (isOneOf(right, "home:") && isOneOf(name, "home:")) ||
                          (isOneOf(right, "choice:") && isOneOf(name, "choice:")) ||
                          (counts(right) && counts(name));
        if (like && name != right) others.push_back(name);
    }
    if (others.empty()) return right;
    return others[random_.below(static_cast<std::uint32_t>(others.size()))];
}

void ScriptedChild::planPalm(Millis begin, Millis end) {
    const auto x = static_cast<float>(tape_.width), y = static_cast<float>(tape_.height);
    const Point edge{x * static_cast<float>(random_.unit()), y - 2};
    const Point middle{x * static_cast<float>(random_.unit()),
                       y * static_cast<float>(random_.unit())};
    at(begin - kFrame, Contact::Kind::down, kPalm, edge);
    at(begin + 3 * kFrame, Contact::Kind::down, kSecond, middle);
    const Millis lifted = std::max(end - kFrame, begin + 4 * kFrame);
    at(lifted, Contact::Kind::up, kSecond, middle);
    at(lifted + 3 * kFrame, Contact::Kind::up, kPalm, edge);
}

void ScriptedChild::planTap(const App& app, const std::string& thing, Millis now) {
    const auto box = app.boxOf(thing);
    if (!box) return;
    const Point where = inside(*box);
    const Millis end = now + 80 + static_cast<Millis>(random_.below(80));
    if (random_.unit() < tape_.palm_share) planPalm(now + kFrame, end);
    at(now, Contact::Kind::down, kFinger, where);
    at(end, Contact::Kind::up, kFinger, where);
}

void ScriptedChild::planHold(const App& app, const std::string& thing, Millis now) {
    const auto box = app.boxOf(thing);
    if (!box) return;
    at(now, Contact::Kind::down, kFinger, box->centre());
    at(now + 1800, Contact::Kind::up, kFinger, box->centre());
}

void ScriptedChild::planDrag(const App& app, const std::string& thing, Millis now) {
    const auto box = app.boxOf(thing);
    if (!box) return;
    drag_from_ = inside(*box);
    at(now, Contact::Kind::down, kFinger, drag_from_);
    dragged_ = thing;
}

void ScriptedChild::plan(const App& app, Millis now) {
    const std::string right = *app.rightTouch();
    const auto touchables = app.touchables();
    const auto has = [&](std::string_view name) {
        return std::find(touchables.begin(), touchables.end(), name) != touchables.end();
    };
    if (has("leave") && random_.unit() < tape_.adult_share) return planHold(app, "leave", now);
    if (has("replay") && random_.unit() < tape_.replay_share) return planTap(app, "replay", now);
    const std::string own = "badge:" + tape_.child;
    if (app.place() == "badges" && ended_ == 0 && has(own)) return planTap(app, own, now);
    const bool drags = right == "card" || right == "acorn" || right == "new" || right == "loose" ||
                       isOneOf(right, "tile:") || isOneOf(right, "box:") ||
                       isOneOf(right, "choice:sound:");
    if (drags && random_.unit() < tape_.drag_share) return planDrag(app, right, now);
    planTap(app, aim(app, right), now);
}

std::vector<Contact> ScriptedChild::tick(const App& app, Millis now) {
    if (app.place() != place_) {
        place_ = app.place();
        if (place_ == "ending") ++ended_;
    }
    if (dragged_ && due_.empty()) {
        // The piece is lifted: where it belongs is what should be touched next.
        const auto right = app.rightTouch();
        const std::string target = right && *right != *dragged_ ? aim(app, *right) : *dragged_;
        const Point to = inside(app.boxOf(target).value_or(Box{drag_from_.x, drag_from_.y, 1, 1}));
        if (random_.unit() < tape_.palm_share) planPalm(now + 2 * kFrame, now + 8 * kFrame);
        for (int i = 1; i <= kDragSteps; ++i) {
            const float part = static_cast<float>(i) / kDragSteps;
            at(now + i * kFrame, Contact::Kind::move, kFinger,
               {drag_from_.x + (to.x - drag_from_.x) * part,
                drag_from_.y + (to.y - drag_from_.y) * part});
        }
        at(now + (kDragSteps + 1) * kFrame, Contact::Kind::up, kFinger, to);
        dragged_.reset();
    }
    if (due_.empty() && !dragged_) {
        if (!app.rightTouch()) {
            next_move_.reset();
        } else if (!next_move_) {
            next_move_ = now + 250 + static_cast<Millis>(random_.below(900));
        } else if (now >= *next_move_) {
            next_move_.reset();
            plan(app, now);
        }
    }
    std::vector<Contact> contacts;
    while (!due_.empty() && due_.front().at <= now) {
        contacts.push_back(due_.front().contact);
        due_.erase(due_.begin());
    }
    return contacts;
}

bool ScriptedChild::isDone(const App& app) const {
    return ended_ >= tape_.sessions && app.place() == "badges" && due_.empty();
}

}  // namespace wrenlet::game
