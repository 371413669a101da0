#include "game/scenes/adult_facts_scene.hpp"

#include <algorithm>

#include "game/scenes/adult_look.hpp"
#include "game/scenes/wrapped.hpp"

namespace wrenlet::game {
namespace {

constexpr std::size_t kMostButtons = 3;

}  // namespace

AdultFactsScene::AdultFactsScene(Setting setting, const Layout& layout, AdultFacts facts)
    : Scene(setting, layout), facts_(std::move(facts)) {}

std::vector<AdultFactsScene::Said> AdultFactsScene::lines() const {
    const float line = layout_.linePx(34);
    const auto most = lettersIn(layout_.width() - 2 * layout_.margin(), line);
    std::vector<Said> all;
    const auto tell = [&](const std::string& text, bool bold, bool is_berry) {
        for (std::string& part : wrapped(text, most))
            all.push_back({std::move(part), bold, is_berry});
    };
    if (facts_.words.empty())
        tell("All is well.", true, false);
    else
        tell("What to look at:", true, true);
    for (const std::string& word : facts_.words) tell(word, false, false);
    all.push_back({});  // a line of air
    for (const std::string& fact : facts_.facts) tell(fact, false, false);
    return all;
}

std::size_t AdultFactsScene::linesAPage() const {
    const float top = layout_.margin() + layout_.linePx(52) + layout_.gap() / 2;
    const float room = layout_.buttons(kMostButtons).front().y - layout_.gap() - top;
    return static_cast<std::size_t>(std::max(1.0f, room / layout_.linePx(34)));
}

std::size_t AdultFactsScene::pages() const {
    return (lines().size() + linesAPage() - 1) / linesAPage();
}

std::vector<std::pair<std::string, std::string>> AdultFactsScene::buttons() const {
    std::vector<std::pair<std::string, std::string>> all = {{"settings", "Settings"}};
    if (pages() > 1)
        all.push_back({"more", "More (" + std::to_string(page_ % pages() + 1) + " of " +
                                   std::to_string(pages()) + ")"});
    all.push_back({"back", "Back to the child"});
    return all;
}

std::vector<Thing> AdultFactsScene::things() const {
    std::vector<Thing> all;
    const auto shown = buttons();
    const auto boxes = layout_.buttons(shown.size());
    for (std::size_t i = 0; i < shown.size(); ++i) all.push_back({shown[i].first, boxes[i]});
    return all;
}

void AdultFactsScene::tapped(const std::string& thing, Millis) {
    if (thing == "settings") wish({Wish::Kind::settings});
    if (thing == "back") wish({Wish::Kind::let_go});
    if (thing == "more") page_ = (page_ + 1) % pages();
}

void AdultFactsScene::drawGround(Painter& painter, Millis) const {
    painter.fill({0, 0, layout_.width(), layout_.height()}, palette::kPaper);
}

void AdultFactsScene::drawPieces(Painter& painter, Millis) const {
    const float big = layout_.linePx(52), line = layout_.linePx(34);
    const float x = layout_.margin(), w = layout_.width() - 2 * x;
    painter.textFromLeft(facts_.title, {x, layout_.margin(), w, big}, palette::kInk, true);
    float y = layout_.margin() + big + layout_.gap() / 2;
    const auto all = lines();
    const std::size_t first = page_ % pages() * linesAPage();
    const std::size_t last = std::min(all.size(), first + linesAPage());
    for (std::size_t i = first; i < last; ++i, y += line)
        painter.textFromLeft(all[i].text, {x, y, w, line},
                             all[i].is_berry ? palette::kBerry : palette::kInk, all[i].bold);
    const auto shown = buttons();
    const auto boxes = layout_.buttons(shown.size());
    for (std::size_t i = 0; i < shown.size(); ++i)
        drawButton(painter, layout_, boxes[i], shown[i].second, holds(shown[i].first));
}

}  // namespace wrenlet::game
