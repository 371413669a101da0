#include "game/scenes/adult_scene.hpp"

#include <algorithm>
#include <array>

#include "content/common/random.hpp"

namespace wrenlet::game {
namespace {

constexpr std::array<std::string_view, 10> kNumbers = {"zero", "one", "two",   "three", "four",
                                                       "five", "six", "seven", "eight", "nine"};

constexpr float kLine = 24;          // a line of small text, in the look's px
constexpr float kTextWidth = 0.46f;  // of the line's height: Andika's letters, on average

/// How fast the mark goes from thing to thing for a child who plays with one switch.
struct ScanPace {
    Millis pace;
    std::string_view says;
};
constexpr std::array<ScanPace, 5> kScanPaces = {{{0, "Switch: off"},
                                                 {1'500, "Switch: 1.5 s"},
                                                 {2'500, "Switch: 2.5 s"},
                                                 {3'500, "Switch: 3.5 s"},
                                                 {5'000, "Switch: 5 s"}}};

/// Buttons of the page: what they are called, and what they say.
struct Button {
    std::string_view thing, says;
};

void drawButton(Painter& painter, const Layout& layout, const Box& box, std::string_view says,
                bool held) {
    painter.panel(box, held ? palette::kMist : palette::kCard, palette::kInk);
    painter.text(says, box.centre(), layout.px(30), palette::kInk, true);
}

std::string_view scanWords(Millis pace) {
    for (const ScanPace& one : kScanPaces)
        if (one.pace == pace) return one.says;
    return kScanPaces[0].says;
}

std::vector<Button> buttons(const Setting& setting) {
    return {{"back", "Go on playing"},
            {"badges", "To the badges"},
            {"motion", setting.motion ? "Motion is on" : "Motion is off"},
            {"scan", scanWords(setting.scan_pace)},
            {"close", "Close Wrenlet"}};
}

}  // namespace

Millis nextScanPace(Millis pace) {
    for (std::size_t i = 0; i + 1 < kScanPaces.size(); ++i)
        if (kScanPaces[i].pace == pace) return kScanPaces[i + 1].pace;
    return 0;
}

std::vector<std::string> wrapped(std::string_view text, std::size_t most) {
    std::vector<std::string> lines(1);
    while (!text.empty()) {
        const std::size_t blank = text.find(' ');
        const std::string_view word = text.substr(0, blank);
        text = blank == std::string_view::npos ? std::string_view() : text.substr(blank + 1);
        if (!lines.back().empty() && lines.back().size() + 1 + word.size() > most)
            lines.emplace_back();
        if (!lines.back().empty()) lines.back() += ' ';
        lines.back() += word;
    }
    return lines;
}

AdultQuestion::AdultQuestion(Setting setting, const Layout& layout, std::uint64_t seed)
    : Scene(setting, layout) {
    Random random(seed);
    const auto a = 3 + random.below(6), b = 4 + random.below(6);
    right_ = static_cast<int>(a + b);
    sum_ = std::string(kNumbers[a]) + " and " + std::string(kNumbers[b]);
    numbers_ = {right_, right_ - 2, right_ + 1, right_ + 3};
    random.shuffle(numbers_);
}

std::vector<Thing> AdultQuestion::things() const {
    std::vector<Thing> all;
    const auto boxes = layout_.buttons(numbers_.size());
    for (std::size_t i = 0; i < numbers_.size(); ++i)
        all.push_back({"number:" + std::to_string(numbers_[i]), boxes[i]});
    return all;
}

std::optional<std::string> AdultQuestion::rightTouch() const {
    return "number:" + std::to_string(right_);
}

void AdultQuestion::tapped(const std::string& thing, Millis) {
    const bool right = thing == "number:" + std::to_string(right_);
    wish({right ? Wish::Kind::adult : Wish::Kind::back});
}

void AdultQuestion::drawGround(Painter& painter, Millis) const {
    painter.fill({0, 0, layout_.width(), layout_.height()}, palette::kPaper);
}

void AdultQuestion::drawPieces(Painter& painter, Millis) const {
    const float middle = layout_.width() / 2;
    const float top = layout_.height() * 0.28f;
    painter.text("For adults", {middle, top}, layout_.px(46), palette::kInk, true);
    painter.text("How much is " + sum_ + "?", {middle, top + layout_.px(80)}, layout_.px(38));
    painter.text("Any other number goes back to the child.", {middle, top + layout_.px(140)},
                 layout_.px(26));
    const auto boxes = layout_.buttons(numbers_.size());
    for (std::size_t i = 0; i < numbers_.size(); ++i) {
        const std::string number = std::to_string(numbers_[i]);
        drawButton(painter, layout_, boxes[i], number, holds("number:" + number));
    }
}

AdultScene::AdultScene(Setting setting, const Layout& layout, AdultPage page)
    : Scene(setting, layout), page_(std::move(page)) {}

std::vector<Thing> AdultScene::things() const {
    std::vector<Thing> all;
    const auto shown = buttons(setting_);
    const auto boxes = layout_.buttons(shown.size());
    for (std::size_t i = 0; i < shown.size(); ++i)
        all.push_back({std::string(shown[i].thing), boxes[i]});
    return all;
}

void AdultScene::tapped(const std::string& thing, Millis) {
    if (thing == "back") wish({Wish::Kind::back});
    if (thing == "badges") wish({Wish::Kind::badges});
    if (thing == "motion") wish({Wish::Kind::motion});
    if (thing == "scan") wish({Wish::Kind::scan});
    if (thing == "close") wish({Wish::Kind::close});
}

void AdultScene::drawGround(Painter& painter, Millis) const {
    painter.fill({0, 0, layout_.width(), layout_.height()}, palette::kPaper);
}

void AdultScene::drawPieces(Painter& painter, Millis) const {
    const auto shown = buttons(setting_);
    const auto boxes = layout_.buttons(shown.size());
    for (std::size_t i = 0; i < shown.size(); ++i)
        drawButton(painter, layout_, boxes[i], shown[i].says, holds(shown[i].thing));

    const float line = layout_.px(kLine), step = line * 1.25f;
    const float middle = layout_.width() / 2;
    const float last = boxes.front().y - layout_.gap();
    const auto most = static_cast<std::size_t>(std::min(layout_.width() * 0.92f, layout_.px(1000)) /
                                               (line * kTextWidth));
    float y = layout_.px(52);
    painter.text(page_.title, {middle, y}, layout_.px(40), palette::kInk, true);
    y += layout_.px(52);
    const auto tell = [&](const std::string& text, Colour colour, bool bold) {
        for (const std::string& one : wrapped(text, most)) {
            if (y + step > last) return;
            painter.text(one, {middle, y}, line, colour, bold);
            y += step;
        }
    };
    for (const std::string& fact : page_.facts) tell(fact, palette::kInk, false);
    y += step / 2;
    if (page_.words.empty())
        tell("All is well.", palette::kDeep, true);
    else
        tell("What to look at:", palette::kBerry, true);
    for (const std::string& word : page_.words) tell(word, palette::kInk, false);
}

}  // namespace wrenlet::game
