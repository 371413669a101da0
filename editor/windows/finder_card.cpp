// "Find me more" at the Try out place: what a skill lacks, and words of the classroom list that
// would help, by topic and by sound, each added with one key.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/tryout/question_words.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 18, kRow = 42, kChip = 28, kPicture = 34;

/// A row of things to choose one of; the rest of them stands in further rows. Returns its height.
float drawChips(Ui& ui, const std::string& name, const std::vector<std::string>& all,
                const std::string& chosen, float x, float y, float width, std::size_t rows,
                const std::function<void(const std::string&)>& press) {
    const float from = y;
    float at = x;
    std::size_t row = 1;
    for (const std::string& one : all) {
        const float wide = ui.width(Type::note, one) + 18;
        if (at + wide > x + width) {
            if (++row > rows) break;
            at = x;
            y += kChip + 4;
        }
        const Area area{at, y, wide, kChip};
        const bool on = one == chosen;
        const auto pressed = ui.press(name + ":" + one, area);
        ui.fill(area, on ? kPaleDeep : pressed.hovered ? kWash : kCard, 6);
        ui.edge(area, on ? kDeep : kEdge, 6, on ? 2.f : 1.f);
        ui.text(Type::note, area.middleX(), area.middleY(), on ? kDeeper : kInk, one,
                Align::middle);
        if (pressed.held) ui.focusRing(area, 6);
        if (pressed.pressed) press(one);
        at += wide + 6;
    }
    return y + kChip - from;
}

void drawOffer(View& view, const Offer& offer, std::size_t index, const Area& row) {
    Ui& ui = view.ui;
    Finder& finder = *view.finder;
    const bool here = index == finder.chosen();
    const auto press = ui.press("offer:" + offer.id, row, false);
    if (here) {
        ui.fill(row, kPaleDeep, 8);
        ui.fill({row.x, row.y + 5, 4, row.height - 10}, kDeep, 2);
    } else if (press.hovered) {
        ui.fill(row, kWash, 8);
    }
    float x = row.x + 12;
    if (!offer.picture.empty() && view.pictures != nullptr) {
        const int pixels = static_cast<int>(kPicture * ui.scale());
        if (const ImTextureID texture = view.pictures->picture("word:" + offer.picture, pixels))
            ui.picture(texture, {x, row.middleY() - kPicture / 2, kPicture, kPicture});
    }
    x += offer.ipa.empty() ? 0 : kPicture + 10;
    const Button add{"add:" + offer.id, "Add", ButtonKind::outlined, here ? "Enter" : ""};
    const float wide = buttonWidth(ui, add);
    const float right = row.right() - 6 - wide;
    const float word = ui.text(Type::strong, x, row.middleY(), kInk,
                               ui.fitted(Type::strong, offer.text, right - x - 8));
    const float sounds = x + std::max(96.f, word + 12);
    if (!offer.ipa.empty() && sounds + 40 < right) {
        ui.text(Type::body, sounds, row.middleY(), kInk,
                ui.fitted(Type::body, "/" + offer.ipa + "/", right - sounds - 8));
        const float topics = std::max(sounds + 120, sounds + ui.width(Type::body, offer.ipa) + 24);
        if (topics + 40 < right)
            ui.text(Type::note, topics, row.middleY(), kSoft,
                    ui.fitted(Type::note, offer.topics, right - topics - 10));
    }
    if (button(ui, add, {right, row.y + 4, wide, row.height - 8}))
        view.later([&finder, index] {
            finder.choose(index);
            finder.add();
        });
    else if (press.pressed)
        view.later([&finder, index] { finder.choose(index); });
}

void drawOffers(View& view, float x, float y, float width, float bottom) {
    Ui& ui = view.ui;
    Finder& finder = *view.finder;
    const Offers* found = finder.offers();
    if (found == nullptr) {
        ui.text(Type::body, x, y + 14, kSoft, "Looking through the classroom list\u2026");
        return;
    }
    if (found->offers.empty()) {
        ui.paragraph(Type::body, x, y + 4, width, kInk,
                     finder.topic().empty() && finder.sound().empty()
                         ? "The classroom list has nothing more for this skill. Write words of "
                           "your own under Words, or leave the skill to another unit."
                         : "Nothing like that helps here. Choose another topic or sound, or press "
                           "the chosen one again for any.");
        return;
    }
    const auto count = std::int64_t(found->offers.size());
    if (count > 1) {
        const Button all{"add all", "Add all " + std::to_string(count), ButtonKind::outlined,
                         capOf(view, Does::add_all)};
        const float wide = buttonWidth(ui, all);
        if (button(ui, all, {x + width - wide, y, wide, 34}))
            view.later([&finder] { finder.addAll(); });
    }
    y += 42;
    const std::size_t shown = std::size_t(std::max(1.f, (bottom - y) / kRow));
    const std::size_t most = found->offers.size() > shown ? found->offers.size() - shown : 0;
    const std::size_t first = std::min(most, finder.chosen() - finder.chosen() % shown);
    std::string head = !found->together ? "More of the kind"
                       : count == 1     ? "This one helps"
                                        : "Together these help";
    if (most > 0)
        head += ", " + std::to_string(first + 1) + " to " + std::to_string(first + shown) + " of " +
                std::to_string(count);
    ui.text(Type::body, x, y - 25, kInk, ui.fitted(Type::body, head + ":", width - 140));
    for (std::size_t i = first; i < std::min(found->offers.size(), first + shown); ++i)
        drawOffer(view, found->offers[i], i,
                  {x - 8, y + float(i - first) * kRow, width + 16, kRow - 2});
}

}  // namespace

void drawFinder(View& view, const Area& area) {
    Ui& ui = view.ui;
    Finder& finder = *view.finder;
    const TryPlace& place = *view.try_out;
    const SkillLook* skill = place.skillLook();
    if (skill == nullptr) return;
    finder.lookFor(skill->skill);
    card(ui, area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    float y = area.y + kPad;
    if (view.try_scroll.finding && place.count() > 0) {
        const Button back{"finder: close", "To the questions", ButtonKind::outlined, "Esc"};
        const float wide = buttonWidth(ui, back);
        if (button(ui, back, {x + width - wide, y - 6, wide, 34}))
            view.later([&scroll = view.try_scroll] { scroll.finding = false; });
    }
    ui.text(Type::title, x, y + 10, kInk,
            place.count() == 0 ? "Nothing to ask here yet" : "Words that would give more");
    y += 32;
    const Offers* found = finder.offers();
    std::string why = found != nullptr && !found->why.empty() ? found->why
                      : place.count() == 0 ? "The unit's words give no question for this skill."
                                           : "It has enough; these would bring more variety.";
    if (place.count() < exercise::kFewestQuestions)
        why += " " + std::string(needsText(skill->skill));
    y += ui.paragraph(Type::body, x, y, width, kInk, why) + 12;
    if (choosesAmongWords(skill->skill)) {
        ui.text(Type::note, x, y + 8, kSoft, "Topic");
        y += 18;
        y += drawChips(ui, "topic", finder.topics(), finder.topic(), x, y, width, 2,
                       [&](const std::string& one) {
                           view.later([&finder, one] { finder.setTopic(one); });
                       }) +
             8;
        ui.text(Type::note, x, y + 8, kSoft, "Sound " + std::string(whereSound(skill->skill)));
        y += 18;
        y += drawChips(ui, "sound", finder.sounds(), finder.sound(), x, y, width, 2,
                       [&](const std::string& one) {
                           view.later([&finder, one] { finder.setSound(one); });
                       }) +
             14;
    }
    ui.level(x, y, width, kLine);
    drawOffers(view, x, y + 10, width, area.bottom() - 10);
}

}  // namespace wrenlet::desk
