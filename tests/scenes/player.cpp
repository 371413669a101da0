#include "tests/scenes/player.hpp"

#include <doctest/doctest.h>

#include <utility>

namespace wrenlet::fixtures {

using game::Contact;
using game::Millis;

game::Speech SilentVoice::say(const game::Utterance& utterance, Millis now) {
    on_say();
    said.push_back(utterance);
    game::Speech speech;
    Millis at = now;
    for (const game::Spoken& spoken : utterance) {
        const pack::Clip* clip = pack_.clip(spoken.clip);
        at += spoken.gap_before;
        const Millis end = at + static_cast<Millis>((clip ? clip->seconds : 0.3) * 1000);
        speech.clips.push_back({at, end});
        at = end;
    }
    speech.end = at;
    return speech;
}

Player::Player(const std::filesystem::path& store, int children, std::uint64_t seed,
               game::ScreenSize screen, int session_minutes, pack::Pack pack,
               game::AppOptions options, std::vector<std::string> key)
    : pack_(std::move(pack)),
      list_(smallClass(children)),
      store_(std::move(practice::Store::open(store, "t-test").value())) {
    list_.settings.session_minutes = session_minutes;
    if (!list_.children.empty()) list_.children.front().key = std::move(key);
    game::AppParts parts{list_,  pack_, store_, scheduler_, voice_,
                         clock_, {},    {},     {},         store.parent_path() / "settings.json"};
    options.seed = seed;
    app_ = std::make_unique<game::App>(std::move(parts), options, screen);
    wait(500);
}

void Player::rest(Millis millis) {
    now_ += millis;
    clock_.at += millis;
}

void Player::wait(Millis millis) {
    const Millis until = now_ + millis;
    while (now_ < until) {
        rest(std::min<Millis>(16, until - now_));
        app_->step(now_);
    }
}

bool Player::waitForTouch(Millis most) {
    for (const Millis until = now_ + most; now_ < until; wait(16))
        if (app_->rightTouch()) return true;
    return false;
}

void Player::tap(const std::string& thing) {
    const auto box = app_->boxOf(thing);
    REQUIRE_MESSAGE(box.has_value(), thing, " at ", app_->place());
    contact({Contact::Kind::down, 1, box->centre(), 0});
    wait(60);
    contact({Contact::Kind::up, 1, box->centre(), 0});
    wait(16);
}

void Player::drag(const std::string& from, const std::string& to) {
    const auto start = app_->boxOf(from);
    REQUIRE_MESSAGE(start.has_value(), from, " at ", app_->place());
    contact({Contact::Kind::down, 1, start->centre(), 0});
    wait(32);
    const auto end = app_->boxOf(to);
    REQUIRE_MESSAGE(end.has_value(), to, " at ", app_->place());
    for (int i = 1; i <= 10; ++i) {
        const float part = static_cast<float>(i) / 10;
        const game::Point a = start->centre(), b = end->centre();
        contact({Contact::Kind::move, 1, {a.x + (b.x - a.x) * part, a.y + (b.y - a.y) * part}, 0});
        wait(16);
    }
    contact({Contact::Kind::up, 1, end->centre(), 0});
    wait(16);
}

void Player::toAdultPage() {
    const auto box = app_->boxOf("leave");
    REQUIRE(box.has_value());
    contact({Contact::Kind::down, 1, box->centre(), 0});
    wait(1700);
    contact({Contact::Kind::up, 1, box->centre(), 0});
    REQUIRE(app_->place() == "question");
    tap(*app_->rightTouch());
    REQUIRE(app_->place().rfind("adult", 0) == 0);
}

void Player::playRightUntil(const std::string& place, int most_touches) {
    for (int i = 0; i < most_touches; ++i) {
        if (app_->place().rfind(place, 0) == 0) return;
        if (!app_->rightTouch()) {
            wait(48);
            continue;
        }
        tap(*app_->rightTouch());
    }
    FAIL("never came to ", place, ", is at ", app_->place());
}

void Player::answerWrong() {
    for (int i = 0; i < 40; ++i) {
        REQUIRE(waitForTouch());
        const std::string right = *app_->rightTouch();
        const bool is_answer = right.rfind("home:", 0) == 0 || right.rfind("choice:", 0) == 0;
        if (!is_answer) {
            tap(right);
            continue;
        }
        const std::string kind = right.substr(0, right.find(':') + 1);
        for (const std::string& name : app_->touchables())
            if (name.rfind(kind, 0) == 0 && name != right) {
                tap(name);
                // A sound is heard at a first touch, and answers at the second.
                if (app_->place() == "pick: asked chosen") tap(name);
                return;
            }
    }
    FAIL("nothing to answer at ", app_->place());
}

}  // namespace wrenlet::fixtures
