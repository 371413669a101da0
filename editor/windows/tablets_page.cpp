// The tablets' page at Hand out: the address as a picture for a camera and as letters to type, the
// code for one tablet, and who plays on what.
#include <algorithm>
#include <cmath>

#include "content/link/join_code.hpp"
#include "editor/look/wording.hpp"
#include "editor/serve/serve_place.hpp"
#include "editor/serve/tablet_names.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/notices.hpp"
#include "editor/windows/scrolled.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 20, kRow = 44, kButton = 36, kMostQr = 320;

/// Black on white, each module so many whole pixels, its quiet ground around it. Its side in u.
float drawQr(Ui& ui, const QrCode& code, float x, float y, float room) {
    const float modules = float(code.size + 2 * QrCode::kQuiet);
    const float pixels = std::max(1.f, std::floor(room * ui.scale() / modules));
    const float u = pixels / ui.scale(), side = u * modules;
    // From a whole pixel on, so that none of its lines is wider than another.
    const float left = std::round(x * ui.scale()) / ui.scale();
    const float top = std::round(y * ui.scale()) / ui.scale();
    ui.fill({left, top, side, side}, kWhite);
    for (int row = 0; row < code.size; ++row) {
        for (int column = 0; column < code.size;) {
            int end = column;
            while (end < code.size && code.isDark(end, row)) ++end;
            if (end > column)
                ui.fill({left + u * float(column + QrCode::kQuiet),
                         top + u * float(row + QrCode::kQuiet), u * float(end - column), u},
                        {0, 0, 0, 255});
            column = std::max(end, column + 1);
        }
    }
    ui.note("qr code", {left, top, side, side});
    return side;
}

void drawOff(View& view, const Area& area) {
    Ui& ui = view.ui;
    card(ui, area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    ui.text(Type::title, x, area.y + 24, kInk, "Tablets without Wrenlet on them");
    float y = area.y + 48;
    for (const char* text :
         {"A tablet needs nothing installed: it opens a page that this computer hands out on the "
          "classroom's own network. No internet, no account.",
          "Each tablet joins once, by a code. From then on it takes each new pack by itself, and "
          "what the children answer comes here while they play.",
          "Tablets are given badges, never names. What they send is sealed. Whether tablets may "
          "join this network is for your school to say."})
        y += ui.paragraph(Type::body, x, y, width, kInk, text) + 10;
    ServePlace* place = view.serve;
    const Button start{"serve", "Serve the tablets", ButtonKind::outlined};
    if (button(ui, start, {x, y + 6, buttonWidth(ui, start), kButton}))
        view.later([place] { place->start(); });
}

std::string codeText(const ServePlace& place, std::int64_t now_ms) {
    if (place.isMakingCode()) return "The code is being made\u2026";
    if (!place.code()) return "No code is open now. Each tablet needs one, once.";
    const std::int64_t left = place.code()->closes_ms - now_ms;
    std::string text = "For one tablet, " +
                       (left < 60'000 ? std::string("less than a minute")
                                      : wording::counted((left + 30'000) / 60'000, "minute")) +
                       " left";
    if (place.code()->wrong > 0)
        text += "; a wrong one was typed " + wording::times(place.code()->wrong);
    return text;
}

void drawJoin(View& view, const Area& area) {
    Ui& ui = view.ui;
    ServePlace* place = view.serve;
    card(ui, area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    ui.text(Type::title, x, area.y + 24, kInk, "Let a tablet join");
    float y = area.y + 44;
    y += ui.paragraph(Type::body, x, y, width, kSoft,
                      place->code() ? "Point the tablet's camera at this, or open the address in "
                                      "its browser and type the code."
                                    : "A tablet that joined once needs no code: it opens this "
                                      "address again.") +
         8;
    const float room = std::min({kMostQr, width, area.bottom() - y - 176});
    if (place->qr() && room > 100)
        y += drawQr(ui, *place->qr(), x, y, room) + 22;
    else
        y += 16;
    ui.text(Type::title, x, y, kInk, ui.fitted(Type::title, place->address(), width));
    ui.note("address", {x, y - 12, width, 24});
    y += 40;
    if (place->code()) {
        ui.text(Type::in_hand, x, y, kInk, link::codeToShow(place->code()->code));
        ui.note("code", {x, y - 22, width, 44});
        y += 38;
    }
    y += ui.paragraph(Type::body, x, y - 9, width, kSoft, codeText(*place, view.now_ms)) + 6;
    const Button code{"new code", place->code() ? "Another code" : "A code for a tablet"};
    const Button stop{"stop serving", "Stop serving"};
    const float wide = buttonWidth(ui, code);
    if (button(ui, code, {x, y, wide, kButton})) view.later([place] { place->askCode(); });
    if (button(ui, stop, {x + wide + 8, y, buttonWidth(ui, stop), kButton}))
        view.later([place] { place->stop(); });
}

struct Columns {
    float name, state, answers, pack, remove;  // state: name's, without room; answers: right end
};

void drawTablet(View& view, const SeenTablet& tablet, const Area& row, const Columns& at) {
    Ui& ui = view.ui;
    const bool is_here = tablet.state != SeenTablet::State::away;
    const std::string odd = clockInWords(tablet);
    const float middle = row.middleY();
    ui.disc(at.name + 8, middle, 8, is_here ? kDeep : kDot);
    if (tablet.state == SeenTablet::State::waiting) ui.disc(at.name + 8, middle, 4, kCard);
    if (!is_here) ui.disc(at.name + 8, middle, 6, kCard);
    const std::string name = shownTablet(tablet.tablet);
    std::string state = stateInWords(tablet, view.now_ms);
    if (tablet.unsent > 0 && is_here)
        state += ", " + wording::figure(tablet.unsent) + " on the way";
    const float upper = row.y + 14, lower = row.y + 31, room = at.answers - 60;
    if (at.state == at.name) {  // no room for a column of its own
        ui.text(Type::strong, at.name + 26, upper, kInk,
                ui.fitted(Type::strong, name, room - at.name - 26));
        ui.text(Type::note, at.name + 26, lower, odd.empty() ? kSoft : kStrawInk,
                ui.fitted(Type::note, odd.empty() ? state : odd, room - at.name - 26));
    } else {
        ui.text(Type::strong, at.name + 26, middle, kInk,
                ui.fitted(Type::strong, name, at.state - at.name - 34));
        ui.text(Type::body, at.state, odd.empty() ? middle : upper, is_here ? kInk : kSoft,
                ui.fitted(Type::body, state, room - at.state));
        if (!odd.empty())
            ui.text(Type::note, at.state, lower, kStrawInk,
                    ui.fitted(Type::note, odd, room - at.state));
    }
    ui.text(Type::body, at.answers, middle, kInk, wording::figure(tablet.kept), Align::right);
    if (tablet.has_pack)
        ui.mark(Mark::tick, at.pack + 8, middle, kDeep);
    else
        ui.text(Type::note, at.pack, middle, kSoft, "not yet");
    const Button remove{"remove:" + tablet.tablet, "Remove"};
    if (button(ui, remove, {at.remove, row.y + 6, buttonWidth(ui, remove), 32}))
        view.later([place = view.serve, name = tablet.tablet] { place->remove(name); });
    ui.note("tablet:" + tablet.tablet, row);
}

std::string summaryOf(const std::vector<SeenTablet>& tablets) {
    const auto count = [&](SeenTablet::State state) {
        return std::count_if(tablets.begin(), tablets.end(),
                             [&](const SeenTablet& tablet) { return tablet.state == state; });
    };
    const auto playing = count(SeenTablet::State::playing);
    const auto waiting = count(SeenTablet::State::waiting);
    std::string text =
        wording::figure(playing) + " playing, " + wording::figure(waiting) + " waiting";
    if (const auto away = count(SeenTablet::State::away); away > 0)
        text += ", " + wording::figure(away) + " not here";
    return text;
}

/// Below the list: who was removed, and what was refused. Returns its top.
float drawBelow(View& view, const Area& area) {
    Ui& ui = view.ui;
    const ServePlace& place = *view.serve;
    float y = area.bottom();
    if (place.refusedCount() > 0 && place.refusedLast()) {
        const std::string text =
            wording::counted(std::int64_t(place.refusedCount()), "thing was", "things were") +
            " refused on the network. The last was " + place.refusedLast()->what + ", " +
            wording::ago(view.now_ms - place.refusedLast()->at_ms) +
            ". Nothing was changed by it; link/refused.log in the classroom folder has them all.";
        const float high = ui.paragraphHeight(Type::note, area.width - 30, text);
        y -= high + 10;
        ui.mark(Mark::warning, area.x + 8, y + 10, kStrawInk, MarkSize::large);
        ui.paragraph(Type::note, area.x + 26, y + 2, area.width - 30, kInk, text);
        ui.note("refused", {area.x, y, area.width, high});
    }
    if (!place.removed().empty()) {
        y -= 42;
        const Button back{"let back", "Let it back"};
        const float wide = buttonWidth(ui, back);
        ui.text(Type::body, area.x, y + 18, kInk,
                ui.fitted(Type::body, shownTablet(place.removed()) + " is off the list.",
                          area.width - wide - 12));
        if (button(ui, back, {area.right() - wide, y, wide, kButton}))
            view.later([serve = view.serve] { serve->letBack(); });
    }
    return y;
}

void drawList(View& view, const Area& area) {
    Ui& ui = view.ui;
    card(ui, area);
    const ServePlace& place = *view.serve;
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    const float title = ui.text(Type::title, x, area.y + 24, kInk, "Tablets");
    const auto& tablets = place.tablets();
    if (!tablets.empty())
        ui.text(Type::body, x + title + 14, area.y + 25, kSoft,
                ui.fitted(Type::body, summaryOf(tablets), width - title - 14));
    const float bottom = drawBelow(view, {x, area.y, width, area.height - 16}) - 8;
    if (tablets.empty()) {
        ui.paragraph(Type::body, x, area.y + 48, width, kSoft,
                     place.isOn() ? "None has joined yet. Each is given a name of its own when it "
                                    "does, and stands here from then on."
                                  : "Here stand those that joined, once the desk serves them.");
        return;
    }
    const float remove = area.right() - kPad - buttonWidth(ui, {"", "Remove"});
    const bool narrow = width < 440;
    const Columns at{x, narrow ? x : x + 150, remove - (narrow ? 62.f : 92.f),
                     remove - (narrow ? 52.f : 72.f), remove};
    const float head = area.y + 56;
    ui.text(Type::note, at.name, head, kSoft, "Tablet");
    if (!narrow) ui.text(Type::note, at.state, head, kSoft, "Now");
    ui.text(Type::note, at.answers, head, kSoft, "Answers", Align::right);
    ui.text(Type::note, at.pack, head, kSoft, "Pack");
    ui.level(x, head + 14, width, kEdge);
    const Area list{x, head + 15, width, bottom - head - 15};
    drawScrolled(view, "tablets", list, [&](const Area& inside) {
        float y = inside.y;
        for (const SeenTablet& tablet : tablets) {
            drawTablet(view, tablet, {inside.x, y, inside.width, kRow}, at);
            y += kRow;
            ui.level(inside.x, y, inside.width, kLine);
        }
        return y - inside.y;
    });
}

}  // namespace

float drawHandOutWays(View& view, float right) {
    Ui& ui = view.ui;
    if (view.serve == nullptr || view.unit == nullptr) return 0;
    ServePlace* place = view.serve;
    const bool shown = place->open;
    const Button tablets{"way: tablets", "Tablets", shown ? ButtonKind::on : ButtonKind::outlined};
    const Button packs{"way: pack", "Pack", shown ? ButtonKind::outlined : ButtonKind::on};
    const float second = buttonWidth(ui, tablets), first = buttonWidth(ui, packs);
    const float y = kTitleMiddle - 17;
    if (button(ui, tablets, {right - second, y, second, 34}))
        view.later([place] { place->open = true; });
    if (button(ui, packs, {right - second - 8 - first, y, first, 34}))
        view.later([place] { place->open = false; });
    return second + 8 + first;
}

void drawTabletsPage(View& view) {
    Ui& ui = view.ui;
    Area body = view.frame.body;
    const float title = ui.text(Type::place, body.x, kTitleMiddle, kInk, "Hand out");
    ui.text(Type::body, body.x + title + 17, kTitleMiddle + 1, kSoft,
            ui.fitted(Type::body, "to tablets on the classroom's network",
                      body.width - title - 34 - drawHandOutWays(view, body.right())));
    std::vector<Problem> problems = view.serve->problems();
    if (view.serve->isOn() && !view.serve->isOnANetwork())
        problems.push_back(
            {"The tablets' network", "This computer is on no network, so no tablet can reach it.",
             "Join the classroom's network, then stop and serve again.", Problem::Weight::warning});
    const float told = drawProblems(ui, body, problems, 2);
    body.y += told;
    body.height -= told;
    const float wide = std::clamp(body.width * 0.38f, 330.f, 420.f);
    const Area left{body.x, body.y, wide, body.height};
    if (view.serve->isOn())
        drawJoin(view, left);
    else
        drawOff(view, left);
    drawList(view, {body.x + wide + kGap, body.y, body.width - wide - kGap, body.height});
}

void drawTabletsFoot(View& view, const Area& foot) {
    Ui& ui = view.ui;
    ServePlace* place = view.serve;
    const bool on = place->isOn();
    const bool has_code = place->code().has_value() || place->isMakingCode();
    const Button way{"next",
                     !on        ? "Serve the tablets"
                     : has_code ? "See the class"
                                : "A code for a tablet",
                     ButtonKind::filled};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area at{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, at) || hit(view, Does::next_step)) {
        if (!on)
            view.later([place] { place->start(); });
        else if (has_code)
            view.later([go = view.go] { go(Place::klass); });
        else
            view.later([place] { place->askCode(); });
    }
    const std::string sentence = !on        ? "tablets can then join and play"
                                 : has_code ? "the map takes in answers while children play"
                                            : "each tablet needs one, once";
    const float said = ui.width(Type::body, sentence);
    if (at.x - 16 - said > foot.x + 22)
        ui.text(Type::body, at.x - 16, foot.middleY(), kInk, sentence, Align::right);
}

}  // namespace wrenlet::desk
