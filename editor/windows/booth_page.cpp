// The Booth page: what is to be said, large; whether it listens and how loud it hears; what else is
// to be said.
#include <algorithm>

#include "editor/booth/booth_words.hpp"
#include "editor/look/wording.hpp"
#include "editor/voice/level.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;
using Phase = Booth::Phase;

constexpr float kQueue = 236, kSay = 286, kRow = 37, kPad = 16;
constexpr float kLowestDb = -70;  // the meter's left end

bool isListening(const Booth& booth) {
    return booth.phase() == Phase::listening || booth.phase() == Phase::checking;
}

void drawVoiceMark(Ui& ui, BoothEntry::Voice voice, float x, float y) {
    switch (voice) {
        case BoothEntry::Voice::hers:
            ui.disc(x, y, 8, kDeep);
            ui.mark(Mark::tick, x, y, kCard);
            break;
        case BoothEntry::Voice::changed:
            ui.mark(Mark::warning, x, y, kStrawInk, MarkSize::large);
            break;
        case BoothEntry::Voice::demo:
            ui.edge({x - 8, y - 8, 16, 16}, kEdge, 8, 2);
            break;
    }
}

void drawQueue(View& view, const Area& area) {
    Ui& ui = view.ui;
    Booth& booth = *view.booth;
    card(ui, area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    const auto all = booth.queue().size();
    ui.text(Type::strong, x, area.y + 21, kInk,
            std::to_string(booth.hers()) + " of " + std::to_string(all));
    const auto changed = std::count_if(
        booth.queue().begin(), booth.queue().end(),
        [](const BoothEntry& entry) { return entry.voice == BoothEntry::Voice::changed; });
    if (changed > 0)
        ui.text(Type::note, x + width, area.y + 21, kSoft,
                std::to_string(changed) + " to say again", Align::right);
    const Area track{x, area.y + 37, width, 8};
    ui.fill(track, kLine, 4);
    if (all > 0 && booth.hers() > 0)
        ui.fill({track.x, track.y, std::max(8.f, width * float(booth.hers()) / float(all)), 8},
                kDeep, 4);

    const Area list{area.x + 6, area.y + 60, area.width - 12, area.height - 70};
    ImGui::SetCursorScreenPos({list.x * ui.scale(), list.y * ui.scale()});
    ImGui::BeginChild("queue", {list.width * ui.scale(), list.height * ui.scale()}, false,
                      ImGuiWindowFlags_AlwaysVerticalScrollbar | ImGuiWindowFlags_NoNav);
    if (view.queue_scroll.seen != booth.at()) {
        view.queue_scroll.seen = booth.at();
        const float wanted = (float(booth.at()) + 0.5f) * kRow - list.height / 2;
        ImGui::SetScrollY(std::max(0.f, wanted) * ui.scale());
    }
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    const float bar = ui.finger() ? 28.f : 14.f;
    const float top = list.y - ImGui::GetScrollY() / ui.scale();
    for (std::size_t i = 0; i < all; ++i) {
        const Area row{list.x, top + float(i) * kRow, list.width - bar - 4, kRow};
        if (row.bottom() < list.y || row.y > list.bottom()) continue;
        const BoothEntry& entry = booth.queue()[i];
        const BoothWords words = boothWords(entry.need, view.unit->look().vocabulary);
        const auto press = ui.press("entry:" + entry.need.id, row, false);
        if (i == booth.at()) {
            ui.fill(row, kPaleDeep, 8);
            ui.fill({row.x, row.y + 5, 4, row.height - 10}, kDeep, 2);
        } else if (press.hovered) {
            ui.fill(row, kWash, 8);
        }
        drawVoiceMark(ui, entry.voice, row.x + 21, row.middleY());
        const std::string note =
            ui.fitted(Type::note, entry.whose.empty() ? std::string(words.kind) : entry.whose,
                      row.width * 0.45f);
        const float kind = ui.width(Type::note, note);
        ui.text(Type::note, row.right() - 8, row.middleY(), kSoft, note, Align::right);
        ui.text(i == booth.at() ? Type::strong : Type::body, row.x + 38, row.middleY(), kInk,
                ui.fitted(i == booth.at() ? Type::strong : Type::body, words.shown,
                          row.width - 38 - kind - 18));
        if (press.pressed) view.later([booth = view.booth, i] { booth->choose(i); });
    }
    ImGui::SetCursorScreenPos({list.x * ui.scale(), (top + float(all) * kRow) * ui.scale()});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
}

float onMeter(double db, const Area& area) {
    const double share = (db - kLowestDb) / -kLowestDb;
    return area.x + area.width * static_cast<float>(std::clamp(share, 0.0, 1.0));
}

void drawMeter(View& view, const Area& area) {
    Ui& ui = view.ui;
    const Booth& booth = *view.booth;
    const float soft = onMeter(kMeterSoftDb, area), loud = onMeter(kMeterLoudDb, area);
    ui.fill(area, kCard, 6);
    ui.fill({soft, area.y, loud - soft, area.height}, kPaleDeep);
    for (float x = loud + 4; x < area.right() - 2; x += 6)
        ui.upright(x, area.y + 2, area.height - 4, kMidBrick, 2);
    ui.edge(area, kEdge, 6);
    ui.upright(soft, area.y - 4, area.height + 8, kEdge, 2);
    ui.upright(loud, area.y - 4, area.height + 8, kEdge, 2);
    ui.text(Type::note, area.x, area.y - 16, kSoft, "too soft");
    ui.text(Type::note, (soft + loud) / 2, area.y - 16, kDeeper, "good", Align::middle);
    ui.text(Type::note, area.right(), area.y - 16, kBrick, "too loud", Align::right);
    const float now = onMeter(booth.levelDb(), area);
    if (now > area.x + 6)
        ui.fill({area.x + 2, area.y + 4, now - area.x - 2, area.height - 8}, kDeep, 5);
    if (booth.loudestDb() > kLowestDb) {
        const float loudest = onMeter(booth.loudestDb(), area);
        ui.upright(loudest - 1, area.y - 4, area.height + 8, kInk, 3);
        ui.text(Type::note, std::min(loudest + 4, area.right() - 100), area.bottom() + 16, kInk,
                "loudest so far");
    }
}

std::string statusText(const Booth& booth) {
    switch (booth.phase()) {
        case Phase::checking:
            return "Listening to it\u2026";
        case Phase::finished:
            return "All of it is in your voice.";
        case Phase::paused:
            return "Not listening. Space begins.";
        case Phase::listening:
            break;
    }
    if (booth.isSpeaking()) return "I hear you.";
    if (booth.isReady())
        return booth.tries() == 0 ? "Listening. Speak when ready."
                                  : "Listening for take " + std::to_string(booth.tries() + 1) +
                                        ". Speak when ready.";
    return booth.roomDb() < -99 ? "Hearing how quiet the room is\u2026" : "One moment\u2026";
}

/// The ring breathes while it listens, a breath in two seconds; with motion off it stands.
void drawListening(View& view, float x, float y, bool on) {
    constexpr std::int64_t kBreathMs = 2000;
    Ui& ui = view.ui;
    ui.disc(x, y, 11, on ? kDeep : kDot);
    if (!on) return;
    const std::int64_t at = view.now_ms % kBreathMs;
    const bool wide = view.settings.now().motion && at >= kBreathMs / 2;
    const float radius = wide ? 15 : 13;
    ui.edge({x - radius, y - radius, 2 * radius, 2 * radius}, kDeep, radius);
}

void drawSay(View& view, const Area& area) {
    Ui& ui = view.ui;
    Booth& booth = *view.booth;
    card(ui, area);
    const BoothEntry* entry = booth.current();
    if (entry == nullptr) return;
    const BoothWords words = boothWords(entry->need, view.unit->look().vocabulary);
    const bool is_short = ui.width(Type::prompt, words.shown) <= area.width * 0.42f;
    const float left = area.x + 24;
    float text_x = left;
    float y = area.y + 24;
    const float meter_y = area.bottom() - 60;
    if (is_short) {
        const float wide = std::max(140.f, ui.width(Type::prompt, words.shown) + 48);
        const Area plate{left, y, wide, 150};
        ui.fill(plate, kPaper, 10);
        ui.edge(plate, kLine, 10);
        ui.text(Type::prompt, plate.middleX(), plate.y + (words.about.empty() ? 74.f : 62.f), kInk,
                words.shown, Align::middle);
        ui.text(Type::note, plate.middleX(), plate.bottom() - 18, kSoft, words.about,
                Align::middle);
        text_x = plate.right() + 24;
    } else {
        y += ui.paragraph(Type::place, left, y, area.width - 48, kInk, words.shown) + 8;
    }
    const float room = area.right() - text_x - 24;
    ui.text(Type::title, text_x, y + 14, kInk, ui.fitted(Type::title, words.head, room));
    ui.text(Type::body, text_x, y + 40, kInk, ui.fitted(Type::body, words.how, room));
    const Button hear{"hear demo", "Hear how it should be", ButtonKind::outlined,
                      capOf(view, Does::hear_demo)};
    const Button skip{"skip", "Skip for now", ButtonKind::outlined, capOf(view, Does::skip)};
    const float hear_width = buttonWidth(ui, hear), skip_width = buttonWidth(ui, skip);
    if (view.hear && button(ui, hear, {text_x, y + 58, hear_width, 34})) view.hear(entry->need);
    if (button(ui, skip, {text_x + hear_width + 10, y + 58, skip_width, 34}))
        view.later([&booth] { booth.skip(); });
    const bool on = isListening(booth);
    drawListening(view, text_x + 11, y + 120, on);
    ui.mark(on ? Mark::disc : Mark::dot, text_x + 11, y + 120, kCard);
    ui.text(Type::title, text_x + 32, y + 120, on ? kDeeper : kInk,
            ui.fitted(Type::title, statusText(booth), room - 32));
    drawMeter(view, {left, meter_y, area.width - 48, 22});
}

void keys(View& view) {
    Booth* booth = view.booth;
    const auto later = [&](void (Booth::*what)()) { view.later([=] { (booth->*what)(); }); };
    if (hit(view, Does::listen)) later(isListening(*booth) ? &Booth::pause : &Booth::goOn);
    if (hit(view, Does::back)) later(&Booth::pause);
    if (hit(view, Does::skip)) later(&Booth::skip);
    if (hit(view, Does::hear)) later(&Booth::hearLast);
    if (hit(view, Does::keep)) later(&Booth::keepAsItIs);
    if (hit(view, Does::cut)) later(&Booth::cutOff);
    if (hit(view, Does::hear_demo) && view.hear && booth->current())
        view.hear(booth->current()->need);
    const std::size_t at = booth->at();
    if (hit(view, Does::down)) view.later([=] { booth->choose(at + 1); });
    if (hit(view, Does::up) && at > 0) view.later([=] { booth->choose(at - 1); });
}

}  // namespace

void drawBoothPage(View& view) {
    Ui& ui = view.ui;
    Area body = view.frame.body;
    const float title = ui.text(Type::place, body.x, kTitleMiddle, kInk, "Booth");
    ui.text(Type::body, body.x + title + 17, kTitleMiddle + 1, kSoft,
            ui.fitted(Type::body, "You speak, it listens, checks, and goes on by itself",
                      body.width - title - 30));
    if (view.unit == nullptr || view.booth == nullptr) {
        emptyPlace(ui, body, "No unit is open",
                   "Open a unit of words under Words. Then its words, sounds and sentences are "
                   "spoken here, one after another.");
        return;
    }
    for (const Problem& problem : view.booth->problems())
        body.y +=
            warningCard(ui, body.x, body.y, body.width, problem.what, problem.way_out, true) + 8;
    body.height = view.frame.body.bottom() - body.y;
    if (view.booth->queue().empty()) {
        emptyPlace(ui, body, "Nothing to say yet",
                   "Write the unit's words first. What needs a voice is listed here by itself.");
        return;
    }
    keys(view);
    const float queue = body.width < 800 ? 190.f : kQueue;
    drawQueue(view, {body.x, body.y, queue, body.height});
    const Area right{body.x + queue + kGap, body.y, body.width - queue - kGap, body.height};
    const float say = std::min(kSay, right.height * 0.5f);
    drawSay(view, {right.x, right.y, right.width, say});
    drawTakeCard(view, {right.x, right.y + say + kGap, right.width, right.height - say - kGap});
}

}  // namespace wrenlet::desk
