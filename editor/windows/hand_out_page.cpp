// The Hand out page: what is in the next pack and whether it is good, where it goes, the packs
// before it, and what the tablets have.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/notices.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 20, kCards = 308, kLine_ = 28, kRow = 36;

std::string megabytes(std::size_t bytes) {
    const std::size_t tenths = (bytes + 50'000) / 100'000;
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " MB";
}

void drawCheck(Ui& ui, float x, float y, float width, bool well, const std::string& text) {
    if (well) {
        ui.disc(x + 8, y, 8, kDeep);
        ui.mark(Mark::tick, x + 8, y, kCard);
    } else {
        ui.mark(Mark::warning, x + 8, y, kStrawInk, MarkSize::large);
    }
    ui.text(Type::body, x + 26, y, kInk, ui.fitted(Type::body, text, width - 26));
}

std::string changesText(const PackChanges& changes) {
    std::vector<std::string> parts;
    if (!changes.words_new.empty())
        parts.push_back(wording::counted(std::int64_t(changes.words_new.size()), "new word"));
    if (!changes.words_gone.empty())
        parts.push_back(wording::counted(std::int64_t(changes.words_gone.size()), "word") +
                        " gone");
    if (changes.clips_hers_new > 0)
        parts.push_back(wording::counted(std::int64_t(changes.clips_hers_new), "clip") +
                        " more in your voice");
    if (parts.empty()) return "Nothing new to hear since the last pack";
    std::string text = parts.front();
    for (std::size_t i = 1; i < parts.size(); ++i) text += ", " + parts[i];
    return "Since the last pack: " + text;
}

void drawBuilding(View& view, const Area& area) {
    Ui& ui = view.ui;
    HandOutPlace& place = *view.hand_out;
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    ui.text(Type::body, x, area.y + 62, kInk,
            place.all() == 0 ? std::string("Looking at the words\u2026")
                             : "Making clip " + std::to_string(place.done()) + " of " +
                                   std::to_string(place.all()));
    const Area track{x, area.y + 82, width, 10};
    const bool moves = view.settings.now().motion;  // else the words above tell how far it is
    if (moves) ui.fill(track, kLine, 5);
    if (moves && place.all() > 0 && place.done() > 0)
        ui.fill({track.x, track.y, std::max(10.f, width * float(place.done()) / float(place.all())),
                 10},
                kDeep, 5);
    const Button stop{"stop build", "Stop", ButtonKind::outlined};
    if (button(ui, stop, {x, area.y + 108, std::max(80.f, buttonWidth(ui, stop)), 34}))
        view.later([&place] { place.stop(); });
}

void drawContents(View& view, const Area& area) {
    Ui& ui = view.ui;
    HandOutPlace& place = *view.hand_out;
    card(ui, area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    ui.text(Type::title, x, area.y + 24, kInk, "What is in it");
    if (place.isBuilding()) {
        drawBuilding(view, area);
        return;
    }
    const BuiltPack* built = place.built();
    if (built == nullptr) {
        ui.paragraph(
            Type::body, x, area.y + 48, width, kSoft,
            place.handedOut().empty()
                ? "The pack is made from the unit as it is now, and looked through."
                : "It is out. Change something in the unit, and the next one can be made.");
        const Button make{"make pack", "Make the pack", ButtonKind::outlined};
        if (button(ui, make, {x, area.y + 110, buttonWidth(ui, make), 36}))
            view.later([&place] { place.build(); });
        return;
    }
    const struct {
        std::size_t number;
        const char* name;
    } figures[] = {{built->words, "words"},
                   {built->sentences, "sentences"},
                   {built->clips - built->clips_demo, "your clips"},
                   {built->skills, "skills"}};
    for (std::size_t i = 0; i < 4 && built->isGood(); ++i) {
        const float middle = x + width * (float(i) + 0.5f) / 4;
        ui.text(Type::place, middle, area.y + 60, kInk, std::to_string(figures[i].number),
                Align::middle);
        ui.text(Type::note, middle, area.y + 84, kSoft, figures[i].name, Align::middle);
    }
    float y = area.y + 120;
    if (built->isGood()) ui.level(x, area.y + 100, width, kLine);
    if (!built->isGood()) {
        y = area.y + 48;
        for (const Problem& problem : built->problems) {
            if (problem.weight != Problem::Weight::error || y > area.bottom() - 60) continue;
            ui.mark(Mark::warning, x + 8, y + 8, kBrick, MarkSize::large);
            y += ui.paragraph(Type::body, x + 26, y, width - 26, kInk,
                              problem.what + " " + problem.way_out) +
                 6;
        }
        return;
    }
    drawCheck(ui, x, y, width, true, "Every item has one right answer");
    drawCheck(ui, x, y += kLine_, width, true, "Every item has all its clips");
    drawCheck(ui, x, y += kLine_, width, true,
              megabytes(built->bytes.size()) + ", " +
                  wording::counted(std::int64_t(built->items), "question"));
    if (built->changes) drawCheck(ui, x, y += kLine_, width, true, changesText(*built->changes));
    const auto warnings = std::int64_t(built->problems.size());
    if (built->clips_demo > 0)
        drawCheck(ui, x, y += kLine_, width, false,
                  wording::counted(std::int64_t(built->clips_demo), "clip") + " in the demo voice");
    if (warnings > 0)
        drawCheck(ui, x, y += kLine_, width, false,
                  warnings == 1 ? built->problems.front().what
                                : wording::counted(warnings, "thing") +
                                      " to know, for one: " + built->problems.front().what);
}

/// A copy of the pack that is out into a folder of her choice.
void drawStick(View& view, const Area& area, const std::string& file) {
    Ui& ui = view.ui;
    StickPlace& stick = view.hand_out->stick();
    const Button copy{"copy to stick", "Copy"};
    const float wide = std::max(76.f, buttonWidth(ui, copy));
    ui.text(Type::body, area.x, area.y + 10, kSoft, "A copy for a stick or a colleague:");
    const Area box{area.x, area.y + 26, area.width - wide - 8, 38};
    const auto typing = ui.field("stick folder", box, stick.typed, "Its folder");
    const bool pressed = button(ui, copy, {box.right() + 8, box.y, wide, 38});
    if ((typing.entered || pressed) && !stick.typed.empty())
        view.later([&stick, file, classroom = view.desk.opened().classroom] {
            stick.copy(classroom, file);
        });
    if (!stick.said.empty())
        ui.paragraph(Type::note, area.x, box.bottom() + 8, area.width, kInk, stick.said);
}

std::string roomText(std::uint64_t bytes) {
    constexpr std::uint64_t kGigabyte = 1'000'000'000;
    if (bytes < kGigabyte) return megabytes(static_cast<std::size_t>(bytes)) + " free";
    const std::uint64_t tenths = bytes / (kGigabyte / 10);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " GB free";
}

/// The classroom folder's name, whether it is there, and how much room it has.
void drawWhere(View& view, const Area& box) {
    Ui& ui = view.ui;
    const HandOutPlace::FolderSeen& seen = view.hand_out->folder();
    ui.fill(box, seen.is_here ? kPaper : kButter, 8);
    ui.edge(box, seen.is_here ? kLine : kStrawInk, 8);
    float right = box.right() - 12;
    const std::string note = !seen.is_here     ? "not here now"
                             : seen.free_bytes ? roomText(*seen.free_bytes)
                                               : std::string();
    right -=
        ui.text(Type::note, right, box.middleY(), seen.is_here ? kSoft : kInk, note, Align::right) +
        12;
    float x = box.x + 12;
    if (!seen.is_here) {
        ui.mark(Mark::warning, x + 6, box.middleY(), kStrawInk, MarkSize::large);
        x += 22;
    }
    const std::filesystem::path folder = view.desk.opened().classroom.folder;
    const std::string name =
        folder.filename().empty() ? folder.string() : folder.filename().string();
    ui.text(Type::strong, x, box.middleY(), kInk, ui.fitted(Type::strong, name, right - x));
    ui.note("where", box);
}

void drawFolder(View& view, const Area& area) {
    Ui& ui = view.ui;
    card(ui, area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    ui.text(Type::title, x, area.y + 24, kInk, "By classroom folder");
    float y = area.y + 44;
    y += ui.paragraph(Type::body, x, y, width, kSoft,
                      "A stick, a school share, or a synced folder. Works with no network. Each "
                      "tablet takes the pack when it next starts near it.") +
         12;
    const Area box{x, y, width, 40};
    drawWhere(view, box);
    y = box.bottom() + 20;
    const std::string& pack = view.desk.opened().list.pack;
    const std::string now = view.hand_out->handedOut().empty() ? pack : view.hand_out->handedOut();
    ui.text(Type::body, x, y, kInk,
            ui.fitted(Type::body, now.empty() ? "No pack is out yet." : now + " is out.", width));
    if (now.empty()) {
        ui.paragraph(Type::note, x, area.bottom() - 44, width, kSoft,
                     "A pack that is out is never changed; the next gets a new number.");
        return;
    }
    drawStick(view, {x, y + 22, width, area.bottom() - y - 34}, now);
}

void drawEarlier(View& view, const Area& area) {
    Ui& ui = view.ui;
    card(ui, area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    ui.text(Type::title, x, area.y + 24, kInk, "Packs of this unit");
    const auto& packs = view.hand_out->packs();
    if (packs.empty()) {
        ui.paragraph(Type::body, x, area.y + 48, width, kSoft,
                     "None yet. Every pack stays here, and you can go back to any of them.");
        return;
    }
    const std::string& out = view.hand_out->handedOut().empty() ? view.desk.opened().list.pack
                                                                : view.hand_out->handedOut();
    float y = area.y + 46;
    for (const PackFile& pack : packs) {
        if (y + 40 > area.bottom()) break;
        const std::string number = std::to_string(pack.version);
        ui.text(Type::body, x, y + 18, kInk, "Pack " + number);
        if (pack.name == out) {
            ui.mark(Mark::tick, x + width - 90, y + 18, kDeep);
            ui.text(Type::body, x + width - 78, y + 18, kInk, "is out");
        } else {
            const Button back{"back:" + number, "Go back to pack " + number};
            const float wide = buttonWidth(ui, back);
            if (button(ui, back, {x + width - wide, y + 1, wide, 34}))
                view.later([&view, name = pack.name] {
                    view.hand_out->goBackTo(name);
                    view.gather();
                });
        }
        ui.level(x, y + 38, width, kLine);
        y += 42;
    }
}

void drawTablets(View& view, const Area& area) {
    Ui& ui = view.ui;
    const std::vector<TabletLine> tablets = tabletsOf(view.desk.opened());
    const float title = ui.text(Type::title, area.x, area.y + 14, kInk, "Tablets");
    const float first = area.y + 56;
    const auto fit = std::size_t(std::max(0.f, (area.bottom() - first) / kRow));
    const std::string note = tablets.empty() ? "none has brought answers here yet"
                             : fit < tablets.size()
                                 ? wording::counted(std::int64_t(fit), "tablet") + " of " +
                                       std::to_string(tablets.size()) +
                                       ", the newest answers first; a taller window shows more"
                                 : "as the answers they brought tell";
    ui.text(Type::body, area.x + title + 16, area.y + 15, kSoft,
            ui.fitted(Type::body, note, area.width - title - 16));
    if (tablets.empty()) return;
    const float columns[] = {area.x + 8, area.x + area.width * 0.2f, area.x + area.width * 0.52f};
    const float answers = area.right() - 8;
    const char* const heads[] = {"Tablet", "Pack last played", "Newest answer"};
    for (int i = 0; i < 3; ++i) ui.text(Type::note, columns[i], area.y + 42, kSoft, heads[i]);
    ui.text(Type::note, answers, area.y + 42, kSoft, "Answers", Align::right);
    float y = first;
    ui.level(area.x, y, area.width, kEdge);
    for (std::size_t i = 0; i < std::min(fit, tablets.size()); ++i) {
        const TabletLine& line = tablets[i];
        const float middle = y + kRow / 2;
        ui.text(Type::strong, columns[0], middle, kInk, line.tablet);
        ui.text(Type::body, columns[1], middle, kInk, line.pack);
        ui.text(Type::body, columns[2], middle, kInk, wording::ago(view.now_ms - line.last_ms));
        ui.text(Type::body, answers, middle, kInk, wording::figure(line.answers), Align::right);
        y += kRow;
        ui.level(area.x, y, area.width, kLine);
    }
}

}  // namespace

void drawHandOutPage(View& view) {
    Ui& ui = view.ui;
    Area body = view.frame.body;
    const float title = ui.text(Type::place, body.x, kTitleMiddle, kInk, "Hand out");
    if (view.unit == nullptr || view.hand_out == nullptr) {
        emptyPlace(ui, body, "No unit is open",
                   "Open a unit of words under Words; here it becomes a pack for the tablets.");
        return;
    }
    const float ways = drawHandOutWays(view, body.right());
    ui.text(Type::body, body.x + title + 17, kTitleMiddle + 1, kSoft,
            ui.fitted(Type::body, view.unit->unit().title, body.width - title - 34 - ways));
    if (view.unit->unit().words.empty()) {
        emptyPlace(ui, body, "No words yet",
                   "Write the unit's words first; then a pack can be made of them.");
        return;
    }
    std::vector<Problem> problems = view.hand_out->problems();
    for (const Problem& problem : view.hand_out->stick().problems) problems.push_back(problem);
    body.y += drawProblems(ui, body, problems);
    const bool narrow = body.width < 900;
    const float wide = narrow ? (body.width - kGap) / 2 : (body.width - 2 * kGap) / 3;
    drawContents(view, {body.x, body.y, wide, kCards});
    drawFolder(view, {body.x + wide + kGap, body.y, wide, kCards});
    const float below = body.y + kCards + kGap;
    const float room = view.frame.body.bottom() - below;
    if (narrow) {
        drawEarlier(view, {body.x, below, wide, room});
        drawTablets(view, {body.x + wide + kGap, below, wide, room});
    } else {
        drawEarlier(view, {body.x + 2 * (wide + kGap), body.y, wide, kCards});
        drawTablets(view, {body.x, below, body.width, room});
    }
}

}  // namespace wrenlet::desk
