// The last take as a wave, with its ends, what was found in it, and the ways out.
#include <algorithm>

#include "editor/voice/finding_words.hpp"
#include "editor/voice/wave_picture.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 24, kChecks = 216, kStep = 3;

void drawHatch(Ui& ui, const Area& area, Colour colour) {
    for (float x = area.x + 3; x < area.right() - 1; x += 8)
        ui.upright(x, area.y + 1, area.height - 2, colour, 1);
}

/// A grip at an end; while it is dragged the end goes with it. True while held.
bool drawGrip(View& view, const std::string& label, float x, const Area& wave) {
    Ui& ui = view.ui;
    ui.upright(x - 1, wave.y, wave.height, kInk, 2);
    const Area grip{x - 7, wave.y, 14, 22};
    ui.fill(grip, kInk, 4);
    ui.upright(grip.middleX() - 3, grip.y + 6, 10, kCard, 2);
    ui.upright(grip.middleX() + 2, grip.y + 6, 10, kCard, 2);
    ui.press(label, {x - 15, wave.y, 30, wave.height}, false);
    return ImGui::IsItemActive();
}

void drawWave(View& view, const CheckedTake& take, const std::vector<Finding>& told,
              const Area& area) {
    Ui& ui = view.ui;
    const auto columns = static_cast<std::size_t>(std::max(1.f, area.width / kStep));
    const WavePicture wave = wavePicture(take, columns);
    const float from = area.x + area.width * static_cast<float>(wave.kept_begin);
    const float to = area.x + area.width * static_cast<float>(wave.kept_end);
    ui.fill(area, kRail, 6);
    ui.fill({from, area.y, to - from, area.height}, kCard);
    const auto is_told = [&](std::size_t finding) {
        return std::find(told.begin(), told.end(), take.findings[finding]) != told.end();
    };
    for (const WavePicture::Mark& mark : wave.marks) {
        if (!is_told(mark.finding)) continue;
        const Area place{area.x + area.width * static_cast<float>(mark.begin), area.y,
                         area.width * static_cast<float>(mark.end - mark.begin), area.height};
        ui.fill(place, kPaleBrick);
        drawHatch(ui, place, kMidBrick);
    }
    const float middle = area.middleY() + 8, half = area.height / 2 - 16;
    for (std::size_t i = 0; i < wave.columns.size(); ++i) {
        const float x = area.x + float(i) * kStep;
        const double at = (double(i) + 0.5) / double(wave.columns.size());
        const bool trouble =
            std::any_of(wave.marks.begin(), wave.marks.end(), [&](const WavePicture::Mark& mark) {
                return is_told(mark.finding) && at >= mark.begin && at <= mark.end;
            });
        const float top = middle - wave.columns[i].high * half;
        const float bottom = middle - wave.columns[i].low * half;
        ui.fill({x, top, 2, std::max(1.f, bottom - top)}, trouble ? kBrick : kDeep);
    }
    for (const WavePicture::Mark& mark : wave.marks) {
        if (!is_told(mark.finding)) continue;
        const std::string tag =
            wordsOf(take.findings[mark.finding], view.booth->current()->need).tag;
        const float x = area.x + area.width * static_cast<float>((mark.begin + mark.end) / 2);
        const float width = ui.width(Type::figure, tag) + 16;
        const float left = std::clamp(x - width / 2, area.x + 2, area.right() - width - 2);
        ui.fill({left, area.y + 3, width, 19}, kBrick, 5);
        ui.text(Type::figure, left + width / 2, area.y + 12, kWhite, tag, Align::middle);
    }
    ui.edge(area, kEdge, 6);
    if (from - area.x > 60)
        ui.text(Type::note, (area.x + from) / 2, area.bottom() - 12, kSoft, "left off",
                Align::middle);
    if (area.right() - to > 60)
        ui.text(Type::note, (area.right() + to) / 2, area.bottom() - 12, kSoft, "left off",
                Align::middle);
    const float mouse = (ImGui::GetIO().MousePos.x / ui.scale() - area.x) / area.width;
    const bool begin = drawGrip(view, "grip:begin", from, area);
    const bool end = drawGrip(view, "grip:end", to, area);
    if (begin || end)
        view.later([booth = view.booth, wave, mouse, begin] {
            booth->moveEnds(begin ? mouse : wave.kept_begin, begin ? wave.kept_end : mouse);
        });
}

void drawChecks(Ui& ui, const std::vector<Finding>& told, const pack::VoiceNeed& need, float x,
                float y, float width, float step) {
    for (const CheckLine& line : checkLines(told, need)) {
        if (line.well) {
            ui.disc(x + 8, y, 8, kDeep);
            ui.mark(Mark::tick, x + 8, y, kCard);
        } else {
            ui.mark(Mark::warning, x + 8, y, kStrawInk, MarkSize::large);
        }
        ui.text(line.well ? Type::body : Type::strong, x + 26, y, kInk,
                ui.fitted(line.well ? Type::body : Type::strong, line.text, width - 26));
        y += step;
    }
}

}  // namespace

void drawTakeCard(View& view, const Area& area) {
    Ui& ui = view.ui;
    Booth& booth = *view.booth;
    card(ui, area);
    const CheckedTake* take = booth.lastTake();
    if (take == nullptr) {
        ui.text(Type::title, area.x + kPad, area.y + 26, kInk, "No take yet");
        ui.paragraph(Type::body, area.x + kPad, area.y + 44, area.width - 2 * kPad, kSoft,
                     "What you say is checked here. When all is well it is kept and the next "
                     "comes by itself; you can drop a recording on this window too.");
        return;
    }
    const pack::VoiceNeed& need = booth.current()->need;
    const std::vector<Finding> told = booth.findings();
    const float x = area.x + kPad, right = area.right() - kPad;
    std::string head = "Take " + std::to_string(booth.tries()) + ": all is well";
    if (!told.empty()) {
        head = "Take " + std::to_string(booth.tries()) + ": " + wordsOf(told.front(), need).what;
        ui.mark(Mark::warning, x + 4, area.y + 24, kStrawInk, MarkSize::large);
    }
    const float head_x = told.empty() ? x : x + 22;
    ui.text(Type::strong, head_x, area.y + 24, kInk, ui.fitted(Type::strong, head, right - head_x));
    const bool wide = area.width > 620;
    const float buttons_y = area.bottom() - 50;
    const Area wave{x, area.y + 46, right - x - (wide ? kChecks + 16 : 0),
                    buttons_y - area.y - 46 - 14};
    drawWave(view, *take, told, wave);
    if (wide)
        drawChecks(ui, told, need, wave.right() + 16, wave.y + 12, kChecks,
                   std::min(33.f, (wave.height - 20) / 5));
    float at = x;
    const auto offer = [&](const Button& way, void (Booth::*what)()) {
        const float width = buttonWidth(ui, way);
        if (at + width > right) return;
        if (button(ui, way, {at, buttons_y, width, 36}))
            view.later([&booth, what] { (booth.*what)(); });
        at += width + 9;
    };
    offer({"hear take", "Hear take " + std::to_string(booth.tries()), ButtonKind::outlined,
           capOf(view, Does::hear)},
          &Booth::hearLast);
    if (!told.empty() && (told.front().trouble == Trouble::added_vowel ||
                          told.front().trouble == Trouble::two_tries))
        offer({"cut off",
               told.front().trouble == Trouble::two_tries ? "Keep the second try"
                                                          : "Cut off the \u201cuh\u201d",
               ButtonKind::outlined, capOf(view, Does::cut)},
              &Booth::cutOff);
    offer({"keep", "Keep it as it is", ButtonKind::outlined, capOf(view, Does::keep)},
          &Booth::keepAsItIs);
    const std::string again = "or just say it again";
    if (right - at > ui.width(Type::note, again) + 8)
        ui.text(Type::note, right, buttons_y + 18, kSoft, again, Align::right);
}

}  // namespace wrenlet::desk
