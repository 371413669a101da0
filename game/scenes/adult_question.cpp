#include "game/scenes/adult_question.hpp"

#include <array>

#include "content/common/random.hpp"
#include "game/scenes/adult_look.hpp"

namespace wrenlet::game {
namespace {

constexpr std::array<std::string_view, 10> kNumbers = {"zero", "one", "two",   "three", "four",
                                                       "five", "six", "seven", "eight", "nine"};

}  // namespace

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
    const auto line = [this](float length) { return layout_.linePx(length); };
    painter.text("For adults", {middle, top}, line(46), palette::kInk, true);
    painter.text("How much is " + sum_ + "?", {middle, top + line(80)}, line(38));
    painter.text("Any other number goes back to the child.", {middle, top + line(140)}, line(30));
    const auto boxes = layout_.buttons(numbers_.size());
    for (std::size_t i = 0; i < numbers_.size(); ++i) {
        const std::string number = std::to_string(numbers_[i]);
        drawButton(painter, layout_, boxes[i], number, holds("number:" + number));
    }
}

}  // namespace wrenlet::game
