// The word in hand: its picture, a tile for each sound under the letters that say it, what to
// decide about it, what it is good for and what it is not asked for.
#include <algorithm>

#include "content/speech/respelling.hpp"
#include "content/speech/spelling.hpp"
#include "editor/look/wording.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 18, kPicture = 72;

/// Lays buttons side by side and on the next line when there is no room. `pressed` gets the index.
float flowButtons(Ui& ui, float x, float y, float width, const std::vector<Button>& buttons,
                  const std::function<void(std::size_t)>& pressed, bool draw) {
    constexpr float kHeight = 34, kBetween = 8;
    float at = x;
    float top = y;
    for (std::size_t i = 0; i < buttons.size(); ++i) {
        const float wide = std::min(buttonWidth(ui, buttons[i]), width);
        if (at > x && at + wide > x + width) {
            at = x;
            top += kHeight + kBetween;
        }
        if (draw && button(ui, buttons[i], {at, top, wide, kHeight})) pressed(i);
        at += wide + kBetween;
    }
    return top + kHeight - y;
}

float drawTop(View& view, const WordLook& word, const Area& area) {
    Ui& ui = view.ui;
    const float x = area.x + kPad;
    const int pixels = static_cast<int>(kPicture * ui.scale());
    const Area frame{x, area.y + 16, kPicture, kPicture};
    const auto press = ui.press("picture", frame);
    if (press.pressed)
        view.later([&words = view.words, unit = view.unit] { words.choosePicture(*unit); });
    const ImTextureID texture = word.picture.empty() || view.pictures == nullptr
                                    ? nullptr
                                    : view.pictures->picture("word:" + word.picture, pixels);
    if (texture != nullptr) {
        ui.picture(texture, frame);
    } else {
        ui.fill(frame.inset(2), kCard, 10);
        ui.edge(frame.inset(2), kEdge, 10);
        ui.text(Type::note, frame.middleX(), frame.middleY(), kSoft, "no picture", Align::middle);
    }
    if (press.hovered && view.unit->canChange()) ui.edge(frame, kDeep, 10, 2);
    if (press.held) ui.focusRing(frame, 10);
    const float right = frame.right() + 14;
    const float room = area.right() - right - kPad;
    const Type type = ui.width(Type::in_hand, word.text) <= room ? Type::in_hand : Type::place;
    ui.text(type, right, area.y + 36, kInk, ui.fitted(type, word.text, room));
    const Button hear{"hear", "Hear it", ButtonKind::outlined, "Space"};
    if (view.hear && !word.sounds.empty() &&
        button(ui, hear, {right, area.y + 62, std::min(room, buttonWidth(ui, hear)), 32}))
        view.hear({exercise::wordClip(word.id), word.text, word.sounds});
    return kPicture + 16 + 16;
}

/// The tiles of a syllable's sounds, as many in a row as there is room for.
float drawTiles(View& view, const WordLook& word, float x, float y, float width) {
    Ui& ui = view.ui;
    constexpr float kBetween = 8, kHeight = 50, kLetters = 24;
    const auto spelled = speech::alignSpelling(word.text, word.sounds);
    const std::size_t count = word.sounds.size();
    const std::size_t most = 5;
    const std::size_t across = std::min(count, most);
    const float tile = std::min(56.f, (width - kBetween * float(across - 1)) / float(across));
    const bool brackets = spelled.has_value() && count <= most;
    for (std::size_t i = 0; i < count; ++i) {
        const Area area{x + float(i % most) * (tile + kBetween),
                        y + float(i / most) * (kHeight + kBetween), tile, kHeight};
        const speech::Sound& sound = word.sounds[i];
        const auto press = ui.press("tile:" + std::to_string(i), area);
        ui.fill(area, press.hovered ? kWash : kCard, 8);
        ui.edge(area, kEdge, 8);
        ui.text(Type::strong, area.middleX(), area.y + 17, kInk,
                std::string(speech::ipa(sound.phoneme)), Align::middle);
        ui.text(Type::note, area.middleX(), area.y + 37, kSoft,
                std::string(speech::plainLetters(sound.phoneme)), Align::middle);
        if (press.held) ui.focusRing(area, 8);
        if (press.pressed && view.hear)
            view.hear({exercise::soundClip(sound.phoneme),
                       "/" + std::string(speech::ipa(sound.phoneme)) + "/",
                       {sound},
                       pack::VoiceNeed::Kind::sound});
    }
    const float rows = float((count + most - 1) / most);
    float height = rows * (kHeight + kBetween);
    if (!brackets) return height;
    std::size_t at = 0;
    for (const speech::Spelled& part : *spelled) {
        if (part.sounds.empty()) continue;
        const float left = x + float(at) * (tile + kBetween) + 5;
        at += part.sounds.size();
        const float right = x + float(at) * (tile + kBetween) - kBetween - 5;
        const float top = y + kHeight + 5;
        ui.upright(left, top, 6, kEdge, 2);
        ui.upright(right - 2, top, 6, kEdge, 2);
        ui.level(left, top + 6, right - left, kEdge, 2);
        ui.text(Type::strong, (left + right) / 2, top + 18, kInk, part.letters, Align::middle);
    }
    return height + kLetters;
}

/// A warning with its ways out. Returns its height.
float drawToLookAt(View& view, const ToLookAt& todo, float x, float y, float width) {
    Ui& ui = view.ui;
    constexpr float kInset = 12, kIcon = 24;
    const float room = width - 2 * kInset;
    const float head = ui.paragraphHeight(Type::strong, room - kIcon, todo.head);
    const float body = todo.body.empty() ? 0 : ui.paragraphHeight(Type::note, room, todo.body) + 6;
    std::vector<Button> buttons;
    for (std::size_t i = 0; i < todo.ways.size(); ++i)
        buttons.push_back({"way:" + todo.code + ":" + std::to_string(i), todo.ways[i].text});
    const bool acts = view.unit->canChange() && !buttons.empty();
    const float ways = acts ? flowButtons(ui, x, 0, room, buttons, {}, false) + 8 : 0;
    const float height = head + body + ways + 2 * 10;
    ui.fill({x, y, width, height}, kButter, 8);
    ui.mark(Mark::warning, x + kInset + 6, y + 20, kStrawInk, MarkSize::large);
    ui.paragraph(Type::strong, x + kInset + kIcon, y + 10, room - kIcon, kInk, todo.head);
    if (body > 0) ui.paragraph(Type::note, x + kInset, y + 14 + head, room, kInk, todo.body);
    if (acts)
        flowButtons(
            ui, x + kInset, y + 18 + head + body, room, buttons,
            [&](std::size_t i) {
                view.later([&words = view.words, unit = view.unit, way = todo.ways[i], todo] {
                    words.take(way, todo, *unit);
                });
            },
            true);
    return height + 10;
}

float drawLines(Ui& ui, std::string_view head, const std::vector<std::string>& lines, bool good,
                float x, float y, float width) {
    if (lines.empty()) return 0;
    const float from = y;
    ui.text(Type::strong, x, y + 10, kInk, head);
    y += 22;
    for (const std::string& line : lines) {
        if (good)
            ui.disc(x + 5, y + 9, 5, kDeep);
        else
            ui.level(x + 1, y + 8, 8, kDot, 2);
        y += ui.paragraph(Type::note, x + 18, y + 1, width - 18, kInk, line) + 4;
    }
    return y - from + 8;
}

void drawSentencePane(View& view, const Area& area) {
    Ui& ui = view.ui;
    const auto& sentences = view.unit->unit().sentences;
    const auto found = std::find_if(sentences.begin(), sentences.end(), [&](const auto& one) {
        return one.id == view.words.in_hand.id;
    });
    if (found == sentences.end()) return;
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    float y = area.y + 20;
    y += ui.paragraph(Type::title, x, y, width, kInk, found->text) + 12;
    if (!view.unit->canChange()) return;
    const Button out{"take out", "Take it out", ButtonKind::outlined, "Del"};
    if (button(ui, out, {x, y, buttonWidth(ui, out), 34}))
        view.later([&words = view.words, unit = view.unit] { words.removeInHand(*unit); });
}

}  // namespace

void drawWordPane(View& view, const Area& area) {
    Ui& ui = view.ui;
    card(ui, area);
    if (view.words.in_hand.is_sentence) {
        drawSentencePane(view, area);
        return;
    }
    const WordLook* word = view.unit->look().word(view.words.in_hand.id);
    if (word == nullptr) {
        ui.paragraph(Type::note, area.x + kPad, area.y + 20, area.width - 2 * kPad, kSoft,
                     view.words.in_hand.id.empty()
                         ? "Choose a word to see its sounds and what it is good for."
                         : "One moment…");
        return;
    }
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    float y = area.y + drawTop(view, *word, area);
    // what does not fit scrolls
    if (view.words.isChoosingPicture()) {
        drawPictureChooser(view, {x, y, width, area.bottom() - y - 12});
        return;
    }
    const Area rest{area.x, y, area.width, area.bottom() - y - 48};
    ImGui::SetCursorScreenPos({rest.x * ui.scale(), rest.y * ui.scale()});
    ImGui::BeginChild("word in hand", {rest.width * ui.scale(), rest.height * ui.scale()}, false,
                      ImGuiWindowFlags_NoNav);
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    y = rest.y - ImGui::GetScrollY() / ui.scale() + 4;
    if (!word->sounds.empty()) y += drawTiles(view, *word, x, y, width) + 8;
    for (const ToLookAt& todo : word->to_look_at)
        y += drawToLookAt(view, todo, x - 6, y, width + 12);
    y += drawLines(ui, "Good for", word->good_for, true, x, y, width);
    y += drawLines(ui, "Not asked for", word->not_asked, false, x, y, width);
    y += drawLines(ui, "Good to know", word->good_to_know, false, x, y, width);
    ImGui::SetCursorScreenPos({rest.x * ui.scale(), y * ui.scale()});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
    if (!view.unit->canChange()) return;
    const Button out{"take out", "Take " + word->text + " out", ButtonKind::quiet, "Del"};
    if (button(ui, out, {x - 8, area.bottom() - 42, std::min(width, buttonWidth(ui, out)), 32}))
        view.later([&words = view.words, unit = view.unit] { words.removeInHand(*unit); });
}

}  // namespace wrenlet::desk
