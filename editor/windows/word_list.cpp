// The list of a unit's words and sentences: how each is said, what it serves, what to look at.
#include <algorithm>
#include <map>

#include "editor/look/wording.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kRow = 46, kHead = 44, kPicture = 34;

struct Columns {
    float picture, word, sounds, groups, step, chip, right;
};

Columns columnsIn(const Area& list) {
    Columns at{};
    at.picture = list.x + 5;
    at.word = list.x + 46;
    const bool is_narrow = list.width < 640;
    at.sounds = list.x + (is_narrow ? 140.f : 158.f);
    at.step = is_narrow ? 34.f : 41.f;
    at.groups = at.sounds + (is_narrow ? 108.f : 124.f);
    at.chip = at.groups + at.step * float(kWordGroups) + 4;
    at.right = list.right();
    return at;
}

float groupMiddle(const Columns& at, std::size_t group) {
    return at.groups + at.step * (float(group) + 0.5f);
}

void drawColumnHeads(View& view, const Columns& at, float y) {
    Ui& ui = view.ui;
    const UnitLook& look = view.unit->look();
    ui.text(Type::note, at.groups - 8, y + 12, kSoft, "words that serve", Align::right);
    ui.text(Type::note, at.word, y + 30, kSoft, "Word and parts");
    ui.text(Type::note, at.sounds, y + 30, kSoft, "Sounds");
    for (std::size_t group = 0; group < kWordGroups; ++group) {
        const std::size_t count = look.words_serving[group];
        const bool is_short = count < kFairSet;
        const std::string text =
            std::to_string(count) + (is_short ? "/" + std::to_string(kFairSet) : "");
        const float middle = groupMiddle(at, group);
        ui.text(Type::figure, middle, y + 12, is_short ? kBrick : kInk, text, Align::middle);
        ui.text(Type::note, middle, y + 30, kSoft, groupName(static_cast<WordGroup>(group)),
                Align::middle);
    }
    ui.text(Type::note, at.chip + 8, y + 30, kSoft, "To look at");
}

void drawPicture(View& view, const std::string& name, float x, float middle) {
    Ui& ui = view.ui;
    const Area area{x, middle - kPicture / 2, kPicture, kPicture};
    const int pixels = static_cast<int>(kPicture * ui.scale());
    const ImTextureID texture = name.empty() || view.pictures == nullptr
                                    ? nullptr
                                    : view.pictures->picture("word:" + name, pixels);
    if (texture != nullptr) {
        ui.picture(texture, area);
        return;
    }
    const Area frame = area.inset(3);
    ui.fill(frame, kCard, 6);
    ui.edge(frame, kEdge, 6);
    ui.level(frame.middleX() - 5, middle - 1, 10, kSoft, 2);
}

void drawServes(Ui& ui, const WordLook& look, const Columns& at, float middle) {
    for (std::size_t group = 0; group < kWordGroups; ++group) {
        const float x = groupMiddle(at, group);
        if (look.serves[group])
            ui.disc(x, middle, 5, kDeep);
        else
            ui.level(x - 4, middle - 1, 8, kDot, 2);
    }
}

/// A tag on butter. Returns its width.
float drawChip(Ui& ui, float x, float middle, float room, const std::string& text) {
    const std::string shown = ui.fitted(Type::note, text, room - 34);
    const Area tag{x, middle - 12, ui.width(Type::note, shown) + 34, 25};
    ui.fill(tag, kButter, 6);
    ui.edge(tag, kStrawInk, 6);
    ui.mark(Mark::warning, tag.x + 13, middle, kStrawInk, MarkSize::large);
    ui.text(Type::note, tag.x + 25, middle, kInk, shown);
    return tag.width;
}

void drawWord(View& view, const std::string& id, const WordLook* look, const Columns& at,
              float middle) {
    Ui& ui = view.ui;
    drawPicture(view, look != nullptr ? look->picture : "", at.picture, middle);
    const bool has_parts = look != nullptr && !look->parts.empty();
    const float room = at.sounds - at.word - 8;
    ui.text(Type::title, at.word, has_parts ? middle - 9 : middle, kInk,
            ui.fitted(Type::title, look != nullptr ? look->text : wording::word(id), room));
    if (look == nullptr) {
        ui.text(Type::note, at.sounds, middle, kSoft, "one moment…");
        return;
    }
    if (has_parts)
        ui.text(Type::note, at.word, middle + 12, kSoft, ui.fitted(Type::note, look->parts, room));
    const float sounds = at.groups - at.sounds - 4;
    if (look->sounds.empty()) {
        ui.text(Type::body, at.sounds, middle, kSoft, "not known");
    } else {
        ui.text(Type::body, at.sounds, middle - 9, kInk, ui.fitted(Type::body, look->ipa, sounds));
        ui.text(Type::note, at.sounds, middle + 11, kSoft,
                ui.fitted(Type::note, look->respelled, sounds));
    }
    drawServes(ui, *look, at, middle);
    if (!look->to_look_at.empty())
        drawChip(ui, at.chip + 8, middle, at.right - at.chip - 12, look->to_look_at.front().chip);
}

void drawSentence(Ui& ui, const pack::UnitSentence& sentence, const SentenceLook* look,
                  const Columns& at, float middle) {
    for (const float line : {-7.f, 0.f, 7.f})
        ui.level(at.picture + 4, middle + line - 1, line > 0 ? 18.f : 26.f, kSoft, 2);
    const float room = at.right - at.word - 10;
    ui.text(Type::strong, at.word, middle - 9, kInk, ui.fitted(Type::strong, sentence.text, room));
    if (look == nullptr) return;
    std::string about = wording::counted(std::int64_t(look->words), "word");
    about += look->asks ? ", it asks" : "";
    about += look->counted ? "; serves counting words" : "; too short or long to count";
    ui.text(Type::note, at.word, middle + 12, kSoft, ui.fitted(Type::note, about, room));
}

void bringIntoView(View& view, const std::vector<WordsRow>& rows, float height) {
    if (view.words_scroll.seen == view.words.in_hand) return;
    const auto at = std::find(rows.begin(), rows.end(), view.words.in_hand);
    if (at == rows.end()) return;
    view.words_scroll.seen = view.words.in_hand;
    const float scale = view.ui.scale();
    const float top = float(at - rows.begin()) * kRow, from = ImGui::GetScrollY() / scale;
    if (top < from) ImGui::SetScrollY(top * scale);
    if (top + kRow > from + height) ImGui::SetScrollY((top + kRow - height) * scale);
}

void drawRow(View& view, const WordsRow& row, const Area& area, const Columns& at,
             const std::map<std::string, const WordLook*>& looks) {
    Ui& ui = view.ui;
    const bool in_hand = row == view.words.in_hand;
    const auto press = ui.press((row.is_sentence ? "sentence:" : "word:") + row.id, area, false);
    if (in_hand) {
        ui.fill(area, kPaleDeep, 8);
        ui.fill({area.x - 6, area.y + 6, 4, area.height - 12}, kDeep, 2);
    } else if (press.hovered) {
        ui.fill(area, kWash, 8);
    }
    ui.level(area.x, area.bottom() - 1, area.width, kLine);
    if (row.is_sentence) {
        const auto& sentences = view.unit->unit().sentences;
        const auto found = std::find_if(sentences.begin(), sentences.end(),
                                        [&](const auto& one) { return one.id == row.id; });
        const SentenceLook* look = nullptr;
        for (const SentenceLook& one : view.unit->look().sentences)
            if (one.id == row.id) look = &one;
        if (found != sentences.end()) drawSentence(ui, *found, look, at, area.middleY());
    } else {
        const auto look = looks.find(row.id);
        drawWord(view, row.id, look == looks.end() ? nullptr : look->second, at, area.middleY());
    }
    if (press.pressed)
        view.later([&words = view.words, row] {
            words.in_hand = row;
            words.pane_open = true;
        });
}

}  // namespace

void drawWordList(View& view, const Area& area) {
    Ui& ui = view.ui;
    const std::vector<WordsRow> rows = view.words.rows(*view.unit);
    const Area list{area.x, area.y + kHead, area.width, area.height - kHead};
    const float content = float(rows.size()) * kRow;
    const bool scrolls = content > list.height;
    const float bar = scrolls ? (ui.finger() ? 28.f : 14.f) + 4 : 0;
    const Area inner{list.x, list.y, list.width - bar, list.height};
    const Columns at = columnsIn(inner);
    drawColumnHeads(view, at, area.y);
    ui.level(list.x, list.y - 1, inner.width, kEdge);
    if (rows.empty()) {
        emptyPlace(ui, inner, "Nothing to look at",
                   "Every word is ready. All of them are under the button “All”.");
        return;
    }
    std::map<std::string, const WordLook*> looks;
    for (const WordLook& look : view.unit->look().words) looks[look.id] = &look;

    ImGui::SetCursorScreenPos({(list.x - 6) * ui.scale(), list.y * ui.scale()});
    ImGui::BeginChild(
        "words", {(list.width + 6) * ui.scale(), list.height * ui.scale()}, false,
        (scrolls ? ImGuiWindowFlags_AlwaysVerticalScrollbar : ImGuiWindowFlags_NoScrollbar) |
            ImGuiWindowFlags_NoNav);
    bringIntoView(view, rows, list.height);
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    const float top = list.y - ImGui::GetScrollY() / ui.scale();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const Area row{inner.x, top + float(i) * kRow, inner.width, kRow};
        if (row.bottom() > list.y && row.y < list.bottom()) drawRow(view, rows[i], row, at, looks);
    }
    ImGui::SetCursorScreenPos({list.x * ui.scale(), (top + content) * ui.scale()});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
}

}  // namespace wrenlet::desk
