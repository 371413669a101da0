// The foot line: what was done last or gathered, what could not be read, and the next step.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/last_edit.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

std::string gatheredText(const View& view) {
    const int tablets = view.desk.gathering().tablets;
    const std::string when = wording::ago(view.now_ms - view.desk.opened().gathered_ms);
    if (tablets == 0) return "No answers here, looked " + when;
    return wording::counted(tablets, "tablet") + " gathered " + when;
}

std::string problemText(const std::vector<Problem>& problems) {
    if (problems.size() == 1) return problems.front().what;
    return wording::counted(std::int64_t(problems.size()), "thing") +
           " to look at, told on the map page";
}

void runNext(View& view, const NextStep& next) {
    switch (next.kind) {
        case NextStep::Kind::see_child:
            view.wish([child = next.child](Desk& desk) { desk.openChild(child); });
            break;
        case NextStep::Kind::see_map:
            view.wish([](Desk& desk) { desk.showMap(); });
            break;
        case NextStep::Kind::gather:
            view.gather();
            break;
        case NextStep::Kind::tomorrow:
            view.wish([place = view.tomorrow](Desk& desk) {
                desk.showTomorrow();
                if (place->next(desk.opened(), desk.gathering().answers).kind ==
                    TomorrowStep::Kind::plan)
                    place->planAnew(desk.opened());
            });
            break;
    }
}

/// On the map, once something is missed, tomorrow comes next; the neediest child is one press away
/// there.
NextStep nextOf(const View& view) {
    NextStep next = view.desk.next();
    if (view.tomorrow == nullptr || view.desk.page() != Page::map ||
        next.kind != NextStep::Kind::see_child)
        return next;
    const auto& rows = view.desk.map().rows;
    const auto missing =
        std::count_if(rows.begin(), rows.end(), [](const MapRow& row) { return row.missed > 0; });
    const bool is_planned =
        view.tomorrow->plan().isMade() &&
        !view.tomorrow->isBehind(view.desk.opened(), view.desk.gathering().answers);
    return {NextStep::Kind::tomorrow,
            wording::counted(missing, "child misses", "children miss") + " something",
            is_planned ? "See tomorrow" : "Plan tomorrow", 0};
}

void drawWordsFoot(View& view, const Area& foot) {
    Ui& ui = view.ui;
    if (view.unit == nullptr) {
        ui.text(Type::body, foot.x + 22, foot.middleY(), kSoft,
                "A unit is the words and sentences of a week or two.");
        return;
    }
    const auto next = view.words.nextToLookAt(*view.unit);
    const std::size_t left = view.unit->look().to_look_at;
    std::string sentence, text;
    if (next) {
        sentence = wording::counted(std::int64_t(left), "word") + " to look at";
        text = "Go to " + wording::word(*next);
    } else {
        sentence = view.unit->unit().words.empty() ? "type or paste this unit's words"
                   : left > 0                      ? "answer what is asked of this word"
                                                   : "every word is ready; now your voice";
        text = view.unit->unit().words.empty() ? "Type words" : "To the booth";
    }
    const Button way{"next", text, ButtonKind::filled};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area place{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, place) || hit(view, Does::next_step)) {
        if (next)
            view.later([&words = view.words, id = *next] { words.in_hand = {id, false}; });
        else if (view.unit->unit().words.empty())
            ui.focus("words box");
        else
            view.later([go = view.go] { go(Place::booth); });
    }
    const float lead = ui.width(Type::strong, "Next: "), said = ui.width(Type::body, sentence);
    float right = place.x - 16;
    if (right - lead - said > foot.x + 430) {
        ui.text(Type::body, right, foot.middleY(), kInk, sentence, Align::right);
        right -= said;
        ui.text(Type::strong, right, foot.middleY(), kInk, "Next: ", Align::right);
        right -= lead + 16;
    }
    drawLastEdit(view, foot, right, lastEditOf(*view.unit));
}

std::string aboutMinutes(std::size_t clips) {
    constexpr std::size_t kClipsAMinute = 12;  // sixty words in five minutes
    const std::size_t minutes = (clips + kClipsAMinute - 1) / kClipsAMinute;
    return wording::counted(std::int64_t(clips), "clip") + ", about " +
           wording::counted(std::int64_t(minutes), "minute");
}

void drawBoothFoot(View& view, const Area& foot) {
    Ui& ui = view.ui;
    Booth* booth = view.booth;
    if (booth == nullptr || booth->queue().empty()) return;
    const bool on =
        booth->phase() == Booth::Phase::listening || booth->phase() == Booth::Phase::checking;
    const std::size_t left = booth->queue().size() - booth->hers();
    const bool finished = left == 0;
    const Button way{"next",
                     finished             ? "Try it out"
                     : on                 ? "Pause"
                     : booth->hers() == 0 ? "Begin"
                                          : "Go on",
                     ButtonKind::filled, finished ? "" : "Space"};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area place{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, place) || hit(view, Does::next_step)) {
        if (finished)
            view.later([go = view.go] { go(Place::try_out); });
        else
            view.later([booth, on] { on ? booth->pause() : booth->goOn(); });
    }
    const std::string sentence = finished ? "all of it is in your voice" : aboutMinutes(left);
    const float lead = ui.width(Type::strong, "To go: "), said = ui.width(Type::body, sentence);
    float right = place.x - 16;
    if (right - lead - said > foot.x + 430) {
        ui.text(Type::body, right, foot.middleY(), kInk, sentence, Align::right);
        right -= said;
        ui.text(Type::strong, right, foot.middleY(), kInk, "To go: ", Align::right);
        right -= lead + 16;
    }
    drawLastEdit(view, foot, right, lastEditOf(*view.unit));
}

void drawTryFoot(View& view, const Area& foot) {
    Ui& ui = view.ui;
    TryPlace* place = view.try_out;
    if (place == nullptr || place->toTry() == 0) {
        const Button words{"next", "To the words", ButtonKind::filled};
        const float wide = std::max(150.f, buttonWidth(ui, words));
        if (button(ui, words, {foot.right() - 16 - wide, foot.y + 8, wide, 40}) ||
            hit(view, Does::next_step))
            view.later([go = view.go] { go(Place::words); });
        return;
    }
    const std::size_t left = place->toTry() - place->tried();
    const bool finding = view.try_scroll.finding || place->count() == 0;  // Enter adds a word then
    const Button way{"next", left > 0 ? "Another one" : "To the hand-out", ButtonKind::filled,
                     left > 0 && !finding ? "Enter" : ""};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area at{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, at) || hit(view, Does::next_step)) {
        if (left > 0)
            view.later([place, &scroll = view.try_scroll] {
                scroll.finding = false;
                place->another();
            });
        else
            view.later([go = view.go] { go(Place::hand_out); });
    }
    const std::string sentence =
        left > 0 ? wording::counted(std::int64_t(left), "skill") + " left to try"
                 : "every skill was tried";
    const float said = ui.width(Type::body, sentence);
    float right = at.x - 16;
    if (right - said > foot.x + 430) {
        ui.text(Type::body, right, foot.middleY(), kInk, sentence, Align::right);
        right -= said + 16;
    }
    drawLastEdit(view, foot, right, lastEditOf(*view.unit));
}

void drawHandOutFoot(View& view, const Area& foot) {
    Ui& ui = view.ui;
    HandOutPlace* place = view.hand_out;
    if (place == nullptr || view.unit->unit().words.empty()) return;
    const BuiltPack* built = place->built();
    const bool is_ready = built != nullptr && built->isGood();
    std::string text = "Make the pack", sentence = "it is looked through before it goes out";
    if (place->isBuilding()) {
        text = "One moment";
        sentence = "the pack is being made";
    } else if (is_ready) {
        text = "Hand out pack " + std::to_string(built->version);
        sentence = built->clips_demo > 0 ? "you can hand out now and add your voice later"
                                         : "all of it is in your voice";
    } else if (built != nullptr) {
        text = "To the words";
        sentence = "something has to be put right first";
    } else if (!place->handedOut().empty()) {
        text = "See the class";
        sentence = "the tablets take it when they next start";
    }
    const Button way{"next", text, ButtonKind::filled};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area at{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, at) || hit(view, Does::next_step)) {
        if (is_ready)
            view.later([&view, place] {
                place->handOut();
                view.gather();
            });
        else if (built != nullptr)
            view.later([go = view.go] { go(Place::words); });
        else if (!place->isBuilding() && !place->handedOut().empty())
            view.later([go = view.go] { go(Place::klass); });
        else
            view.later([place] { place->build(); });
    }
    const float said = ui.width(Type::body, sentence);
    float right = at.x - 16;
    if (right - said > foot.x + 430) {
        ui.text(Type::body, right, foot.middleY(), kInk, sentence, Align::right);
        right -= said + 16;
    }
    drawLastEdit(view, foot, right, lastEditOf(*view.unit));
}

const char* nameOf(Place place) {
    constexpr const char* kNames[] = {"Words", "Booth", "Try out", "Hand out", "Class"};
    return kNames[static_cast<std::size_t>(place)];
}

void drawSheetFoot(View& view, const Area& foot) {
    Ui& ui = view.ui;
    const Button way{"next", std::string("Back to ") + nameOf(view.place), ButtonKind::filled,
                     "Esc"};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area at{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, at) || hit(view, Does::next_step))
        view.later([show = view.show] { show(Sheet::none); });
    const float left = foot.x + 22;
    ui.text(Type::note, left, foot.middleY(), kSoft,
            ui.fitted(Type::note,
                      view.sheet == Sheet::help ? kCaution
                                                : "Each change is kept at once, on this machine.",
                      at.x - 16 - left));
}

}  // namespace

void drawFoot(View& view) {
    Ui& ui = view.ui;
    const Area foot = view.frame.foot;
    const Desk& desk = view.desk;
    ui.fill(foot, kCard);
    ui.level(foot.x, foot.y, foot.width, kLine);
    if (view.sheet != Sheet::none) {
        drawSheetFoot(view, foot);
        return;
    }
    if (view.place == Place::words && view.unit != nullptr && view.bring.open) {
        drawBringFoot(view, foot);
        return;
    }
    if (view.place == Place::words) {
        drawWordsFoot(view, foot);
        return;
    }
    if (view.place == Place::booth) {
        drawBoothFoot(view, foot);
        return;
    }
    if (view.place == Place::try_out) {
        drawTryFoot(view, foot);
        return;
    }
    if (view.place == Place::hand_out) {
        view.showsTablets() ? drawTabletsFoot(view, foot) : drawHandOutFoot(view, foot);
        return;
    }
    if (desk.page() == Page::list && view.class_list != nullptr) {
        drawClassListFoot(view, foot);
        return;
    }
    if (desk.page() == Page::tomorrow && view.tomorrow != nullptr)
        return drawTomorrowFoot(view, foot);
    if (desk.page() == Page::papers && view.papers != nullptr) return drawPapersFoot(view, foot);
    if (desk.state() == ClassState::no_folder) return;

    const NextStep next = nextOf(view);
    const Button way{"next", next.button, ButtonKind::filled, ""};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area place{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, place) || hit(view, Does::next_step)) runNext(view, next);

    const float left = foot.x + 22;
    const float text_left = left + 22;
    const bool offers_gather = next.kind != NextStep::Kind::gather;
    const Button again{"gather", "Gather again", ButtonKind::outlined, "F5"};
    const float again_width = offers_gather ? buttonWidth(ui, again) + 24 : 0;
    const std::string lead = "Next: ";
    const float lead_width = ui.width(Type::strong, lead);
    const float sentence_width = lead_width + ui.width(Type::body, next.sentence);
    float right = place.x - 16;
    // where there is little room the caution stays and the sentence goes: its button says as much
    const float needed = ui.width(Type::note, kCaution) + again_width;
    if (right - sentence_width - needed > text_left) {
        ui.text(Type::body, right, foot.middleY(), kInk, next.sentence, Align::right);
        right -= sentence_width;
        ui.text(Type::strong, right, foot.middleY(), kInk, lead);
        right -= 24;
    }
    if (offers_gather) {
        right -= again_width - 24;
        if (button(ui, again, {right, foot.y + 12, again_width - 24, 32})) view.gather();
        right -= 16;
    }
    const auto& problems = desk.opened().problems;
    const float upper = foot.y + 19, lower = foot.y + 39;
    if (problems.empty()) {
        ui.mark(Mark::tick, left + 6, upper, kDeep);
    } else {
        ui.mark(Mark::warning, left + 6, upper, kStrawInk, MarkSize::large);
    }
    ui.text(Type::body, text_left, upper, problems.empty() ? kSoft : kInk,
            ui.fitted(Type::body, problems.empty() ? gatheredText(view) : problemText(problems),
                      right - text_left));
    ui.text(Type::note, text_left, lower, kSoft,
            ui.fitted(Type::note, kCaution, right - text_left));
}

}  // namespace wrenlet::desk
