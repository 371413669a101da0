#include "game/app.hpp"

#include <algorithm>
#include <set>
#include <utility>
#include <variant>

#include "content/common/random.hpp"
#include "game/adult_facts.hpp"
#include "game/scenes/adult_question.hpp"
#include "game/scenes/adult_scene.hpp"
#include "game/scenes/badge_scene.hpp"
#include "game/scenes/ending_scene.hpp"
#include "game/scenes/key_scene.hpp"
#include "game/scenes/paused_scene.hpp"
#include "game/scenes/round_scene.hpp"
#include "game/scenes/welcome_scene.hpp"
#include "game/session/turn.hpp"

namespace wrenlet::game {
namespace {

/// The child whose turn it would be when a day begins.
std::string firstChild(const pack::ClassList& list) {
    return list.children.empty() ? "" : list.children.front().id;
}

/// A key, or the contact of this id.
using Presser = std::variant<Key, std::int64_t>;

LaidOutFor laidOutFor(const TabletSettings& tablet) {
    return {tablet.left_hand, tablet.captions};
}

class NoVoice final : public Voice {
  public:
    Speech say(const Utterance&, Millis now) override { return {{}, now}; }
    void hush() override {}
    void cue(std::string_view) override {}
    void setVolume(float) override {}
    std::string trouble() const override { return ""; }
};

}  // namespace

Frame firstFrame(const pack::ClassList& list, ScreenSize screen, const TabletSettings& tablet) {
    NoVoice voice;
    const pack::Pack none;
    const Setting setting{voice, none, tablet};
    const Layout layout(screen, laidOutFor(tablet));
    if (tablet.paused) {
        PausedScene paused(setting, layout);
        paused.standAtOnce();
        return paused.frame(0);
    }
    BadgeScene badges(setting, layout, list, firstChild(list));
    badges.standAtOnce();
    return badges.frame(0);
}

struct App::State {
    State(AppParts given, AppOptions chosen, ScreenSize screen)
        : parts(std::move(given)),
          options(chosen),
          layout(screen, laidOutFor(options.tablet)),
          fingers(screen),
          setting{parts.voice, parts.pack, options.tablet},
          problems(parts.problems) {
        next = firstChild(parts.list);
        toBadges();
        main->standAtOnce();
        setVolume();
        if (options.tries_out) {
            tryOut();
        } else if (setting.tablet.paused) {
            back();
            over->standAtOnce();
        }
    }

    Scene& scene() { return over ? *over : *main; }
    const Scene& scene() const { return over ? *over : *main; }

    /// The scene is entered at the next step, when the time is known.
    void show(std::unique_ptr<Scene> with) {
        over.reset();
        main = std::move(with);
        entered = false;
    }
    void showOver(std::unique_ptr<Scene> with) {
        over = std::move(with);
        entered = false;
        parts.voice.hush();
        if (turn) turn->rest();
    }

    void toBadges() {
        keepProblems();
        turn.reset();
        show(std::make_unique<BadgeScene>(setting, layout, parts.list, next));
    }

    void play(const std::string& id) {
        const pack::Child* child = parts.list.child(id);
        if (child == nullptr) return;
        if (child->key.empty()) return unlocked(id);
        show(std::make_unique<KeyScene>(setting, layout, *child));
    }

    void unlocked(const std::string& id) {
        const pack::Child* child = parts.list.child(id);
        if (child == nullptr) return;
        beginTurn(id);
        show(std::make_unique<WelcomeScene>(setting, layout, *child, turn->growth(false)));
    }

    void beginTurn(const std::string& id) {
        const std::uint64_t seed =
            stepSeed(options.seed.value_or(static_cast<std::uint64_t>(parts.clock.unixMillis())),
                     ++sessions);
        turn = std::make_unique<Turn>(TurnParts{parts.pack, parts.store, parts.scheduler,
                                                parts.clock, plan(), parts.list.settings.focus},
                                      id, seed);
        met.clear();
    }

    /// Nobody's turn: no badge, no welcome, no ending.
    void tryOut() {
        beginTurn(next);
        round(0);
    }

    practice::SessionPlan plan() const {
        const int minutes = setting.tablet.minutes;
        return practice::SessionPlan::ofMinutes(minutes != 0 ? minutes
                                                             : parts.list.settings.session_minutes);
    }

    void round(Millis now) {
        if (!turn) return toBadges();
        if (turn->isOver() && options.tries_out) {
            closing = true;
            return;
        }
        if (turn->isOver()) return ending();
        if (auto* running = dynamic_cast<RoundScene*>(main.get()))
            if (running->goOn(now)) return;
        const exercise::Item& item = turn->question().item();
        const bool first_time = met.insert({item.skill, exercise::mechanicOf(item)}).second;
        show(makeRound(setting, layout, *turn, first_time));
    }

    void ending() {
        const Growth before = turn->growth(false);
        const Growth after = turn->growth(true);
        const int rounds = turn->roundsToday();
        turn->end();
        nextChildAfter(turn->child());
        show(std::make_unique<EndingScene>(setting, layout, before, after, rounds));
        snapshot();
    }

    void snapshot() {
        if (parts.snapshot.empty()) return;
        const Result<Done> done = parts.store.snapshot(parts.snapshot);
        problems.insert(problems.end(), done.problems().begin(), done.problems().end());
    }

    void nextChildAfter(const std::string& id) {
        const auto& children = parts.list.children;
        for (std::size_t i = 0; i < children.size(); ++i)
            if (children[i].id == id) next = children[(i + 1) % children.size()].id;
    }

    void keepProblems() {
        if (!turn) return;
        turn->keep();
        problems.insert(problems.end(), turn->problems().begin(), turn->problems().end());
    }

    std::vector<std::string> lookedAt() const {
        return toLookAt(parts.voice, problems, turn.get());
    }
    void showFacts() {
        AdultFacts facts = factsOf(parts);
        facts.words = lookedAt();
        showOver(std::make_unique<AdultFactsScene>(setting, layout, std::move(facts)));
    }
    void showSettings() {
        showOver(std::make_unique<AdultScene>(setting, layout, titleOf(parts.list),
                                              parts.list.settings.session_minutes,
                                              lookedAt().size()));
    }

    /// To the child; or, while the game is paused, to nothing but that.
    void back() {
        over.reset();
        entered = false;
        if (setting.tablet.paused) showOver(std::make_unique<PausedScene>(setting, layout));
    }

    void setVolume() {
        parts.voice.setVolume(static_cast<float>(setting.tablet.volume_percent) / 100);
    }

    /// From now on, and at the next start.
    void set(const TabletSettings& tablet) {
        const bool pauses = tablet.paused && !setting.tablet.paused;
        setting.tablet = tablet;
        setVolume();
        mark.hide();
        if (turn) turn->setPlan(plan());
        for (Scene* scene : {main.get(), over.get()})
            if (scene != nullptr) scene->set(tablet);
        if (laidOutFor(tablet) != layout.whom()) setLayout(layout.screen());
        if (!parts.settings.empty()) {
            const Result<Done> kept = keepTabletSettings(parts.settings, tablet);
            problems.insert(problems.end(), kept.problems().begin(), kept.problems().end());
        }
        if (pauses) back();
    }

    void setPaused(bool paused) {
        TabletSettings tablet = setting.tablet;
        tablet.paused = paused;
        if (tablet != setting.tablet) set(tablet);
    }

    void setLayout(ScreenSize screen) {
        layout = Layout(screen, laidOutFor(setting.tablet));
        main->resize(layout);
        if (over) over->resize(layout);
    }

    void grant(const Wish& wish, Millis now) {
        const bool is_end = wish.kind == Wish::Kind::go_on || wish.kind == Wish::Kind::question;
        if (options.tries_out && is_end) {
            closing = true;
            return;
        }
        switch (wish.kind) {
            case Wish::Kind::play:
                return play(wish.child);
            case Wish::Kind::unlocked:
                return unlocked(wish.child);
            case Wish::Kind::begin:
                return round(now);
            case Wish::Kind::go_on:
                if (turn) turn->goOn();
                return round(now);
            case Wish::Kind::badges:
                snapshot();
                setPaused(false);
                return toBadges();
            case Wish::Kind::question:
                return showOver(std::make_unique<AdultQuestion>(
                    setting, layout, stepSeed(static_cast<std::uint64_t>(now), ++sessions)));
            case Wish::Kind::adult:
                return lookedAt().empty() ? showSettings() : showFacts();
            case Wish::Kind::settings:
                return showSettings();
            case Wish::Kind::facts:
                return showFacts();
            case Wish::Kind::back:
                return back();
            case Wish::Kind::let_go:
                setPaused(false);
                return back();
            case Wish::Kind::set:
                return set(wish.tablet);
            case Wish::Kind::close:
                snapshot();
                closing = true;
                return;
        }
    }

    /// Enters what has come up and grants what is wished, until nothing is left to do at `now`.
    void settle(Millis now) {
        constexpr int kMostAtOnce = 8;
        for (int i = 0; i < kMostAtOnce; ++i) {
            if (!entered) {
                entered = true;
                scene().enter(now);
            }
            const auto wish = scene().takeWish();
            if (!wish) return;
            grant(*wish, now);
        }
    }

    /// The mark goes on by itself only on the child's screens, and never to the way out.
    bool isScanning() const { return setting.tablet.scan_pace > 0 && !over; }
    std::vector<std::string> markOrder() const {
        std::vector<std::string> names;
        for (const Thing& thing : scene().things())
            if (!isScanning() || thing.name != "leave") names.push_back(thing.name);
        return Mark::orderOf(std::move(names));
    }
    std::optional<std::string> marked() const { return mark.on(markOrder()); }

    /// What one key, or one contact that is the switch, holds down, no other taps: a new press
    /// takes its place.
    void press(Presser by, const std::string& thing, Millis now) {
        if (presser) scene().letGoThing(Touch::Kind::cancel, now);
        presser = by;
        scene().pressThing(thing, now);
    }
    void lift(Presser by, Touch::Kind kind, Millis now) {
        if (presser != by) return;
        presser.reset();
        scene().letGoThing(kind, now);
        scan_from = now;
    }

    void scan(Millis now) {
        if (!isScanning() || scene().isTelling(now)) {
            scan_from = now;
        } else if (now >= scan_from + setting.tablet.scan_pace) {
            scan_from = now;
            mark.move(markOrder(), 1);
        }
    }

    /// True when the contact is the switch, and nothing else. Where it comes down decides.
    bool isSwitch(const Contact& contact, Millis now) {
        if (contact.kind == Contact::Kind::down) {
            switches.erase(contact.id);
            lift(contact.id, Touch::Kind::cancel, now);  // its up was lost
            if (!isScanning() || isOnLeave(contact.at)) return false;
            switches.insert(contact.id);
            if (const auto thing = marked()) press(contact.id, *thing, now);
            return true;
        }
        if (switches.count(contact.id) == 0) return false;
        if (contact.kind == Contact::Kind::move) return true;
        switches.erase(contact.id);
        const bool is_up = contact.kind == Contact::Kind::up;
        lift(contact.id, is_up ? Touch::Kind::up : Touch::Kind::cancel, now);
        return true;
    }

    bool isOnLeave(Point at) const {
        const auto things = scene().things();
        return std::any_of(things.begin(), things.end(), [at](const Thing& thing) {
            return thing.name == "leave" && thing.box.contains(at);
        });
    }

    AppParts parts;
    AppOptions options;
    Layout layout;
    FingerFilter fingers;
    Setting setting;
    std::vector<Problem> problems;
    std::unique_ptr<Turn> turn;
    std::unique_ptr<Scene> main, over;  // over main: an adult's page, or that the game is paused
    bool entered = false;
    std::set<std::pair<exercise::Skill, exercise::Mechanic>> met;  // in this turn
    std::string next;  // the child whose turn would be next
    std::uint64_t sessions = 0;
    Mark mark;
    std::optional<Presser> presser;   // of what is held by no finger
    std::set<std::int64_t> switches;  // contacts that are the switch
    Millis scan_from = 0;             // since when the mark stands where it is
    bool closing = false;
};

App::App(AppParts parts, AppOptions options, ScreenSize screen)
    : state_(std::make_unique<State>(std::move(parts), options, screen)) {}
App::~App() = default;

void App::resize(ScreenSize screen, Millis now) {
    if (screen == state_->layout.screen()) return;
    if (const auto lifted = state_->fingers.reset(screen)) state_->scene().touch(*lifted, now);
    state_->setLayout(screen);
}

void App::touch(const Contact& contact, Millis now) {
    state_->settle(now);
    if (!state_->isSwitch(contact, now)) {
        if (contact.kind == Contact::Kind::down) state_->mark.hide();
        for (const Touch& touch : state_->fingers.feed(contact, now))
            state_->scene().touch(touch, now);
    }
    state_->settle(now);
}

void App::key(Key key, bool down, Millis now) {
    state_->settle(now);
    if (!down) {
        state_->lift(key, Touch::Kind::up, now);
    } else if (key == Key::next || key == Key::previous) {
        state_->mark.move(state_->markOrder(), key == Key::next ? 1 : -1);
    } else if (key == Key::touch) {
        if (const auto thing = state_->marked()) state_->press(key, *thing, now);
    } else {
        state_->press(key, key == Key::replay ? "replay" : "leave", now);
        if (key == Key::replay) state_->lift(key, Touch::Kind::up, now);
    }
    state_->settle(now);
}

void App::step(Millis now) {
    state_->settle(now);
    state_->scene().step(now);
    state_->settle(now);
    state_->scan(now);
}

Frame App::frame(Millis now) const {
    Frame frame = state_->scene().frame(now);
    const auto marked = state_->marked();
    const auto box = marked ? boxOf(*marked) : std::nullopt;
    if (!box) return frame;
    Painter painter(state_->layout);
    painter.markFrame(*box);
    const Frame over = painter.take();
    frame.insert(frame.end(), over.begin(), over.end());
    return frame;
}

bool App::isMoving(Millis now) const {
    return state_->scene().isMoving(now);
}

std::optional<Millis> App::nextDue(Millis now) const {
    if (!state_->entered) return now;
    auto due = state_->scene().nextDue(now);
    if (!state_->isScanning() || state_->scene().isTelling(now)) return due;
    const Millis goes_on = std::max(now + 1, state_->scan_from + state_->setting.tablet.scan_pace);
    return due ? std::min(*due, goes_on) : goes_on;
}

std::optional<std::string> App::marked() const {
    return state_->marked();
}

std::string App::place() const {
    return state_->scene().place();
}

std::optional<Box> App::boxOf(std::string_view name) const {
    for (const Thing& thing : state_->scene().things())
        if (thing.name == name) return thing.box;
    return std::nullopt;
}

std::vector<std::string> App::touchables() const {
    std::vector<std::string> names;
    for (const Thing& thing : state_->scene().things()) names.push_back(thing.name);
    return names;
}

std::optional<std::string> App::rightTouch() const {
    return state_->scene().rightTouch();
}

const TabletSettings& App::settings() const {
    return state_->setting.tablet;
}

Millis App::playedMs() const {
    return state_->turn ? state_->turn->playedMs() : 0;
}

std::int64_t App::newestAnswer() const {
    return state_->parts.store.newest();
}

bool App::wantsToClose() const {
    return state_->closing;
}

}  // namespace wrenlet::game
