#include <algorithm>

#include "content/exercise/blend_parts.hpp"
#include "content/exercise/skill_makers.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/word_parts.hpp"

namespace wrenlet::exercise {

namespace {

/// A word that might stand beside the answer, with what choosing it would tell.
struct Foil {
    const Word* word;
    int distance;
    Telling telling;
};

/// Nearest first; of two as near, the one that tells one thing alone, then by id.
std::vector<Foil> foilsOf(const Blend& blend, const std::vector<const Word*>& shown, Unit unit) {
    std::vector<Foil> foils;
    for (const Word* word : shown) {
        if (!mayStandTogether(*blend.word, *word) || !isFoil(blend, *word, unit)) continue;
        foils.push_back({word, speech::wordDistance(blend.word->sounds, word->sounds),
                         telling(blend, *word, unit)});
    }
    std::sort(foils.begin(), foils.end(), [](const Foil& a, const Foil& b) {
        if (a.telling.sharp != b.telling.sharp) return a.telling.sharp;
        if (a.distance != b.distance) return a.distance < b.distance;
        return a.word->id < b.word->id;
    });
    return foils;
}

/// One plainly further off than the near one, another each time; else any that can stand there.
const Foil* farFoil(const std::vector<Foil>& foils, const Foil& near, std::string_view subject) {
    constexpr int kPlainly = 3;
    std::vector<const Foil*> able, far;
    for (const Foil& foil : foils) {
        if (foil.word == near.word || !mayStandTogether(*foil.word, *near.word)) continue;
        able.push_back(&foil);
        if (foil.distance >= near.distance + kPlainly) far.push_back(&foil);
    }
    const std::vector<const Foil*>& from = far.empty() ? able : far;
    if (from.empty()) return nullptr;
    return from[stableHash(std::string(subject) + near.word->id) % from.size()];
}

Item blendItem(const Blend& blend, const Foil& near, const Foil& far, Unit unit) {
    Item item;
    item.skill = {unit, Task::blend};
    item.subject = blend.word->id;
    item.parts = blend.parts;
    item.choices = {{blend.word->id, ""},
                    {near.word->id, near.telling.means},
                    {far.word->id, far.telling.means}};
    std::sort(item.choices.begin(), item.choices.end(),
              [](const Choice& a, const Choice& b) { return a.id < b.id; });
    const auto right =
        std::find_if(item.choices.begin(), item.choices.end(),
                     [&](const Choice& choice) { return choice.id == item.subject; });
    item.answer = static_cast<std::uint8_t>(right - item.choices.begin());
    item.turns_on = near.telling.turns_on;
    item.id = itemId(item);
    return item;
}

/// One item for each thing that a near foil can tell by itself; one at least, if three words can
/// stand together at all.
std::vector<Item> itemsOf(const Blend& blend, const std::vector<Foil>& foils, Unit unit) {
    std::vector<Item> items;
    std::vector<TurnsOn> told;
    for (const Foil& near : foils) {
        if (!items.empty() && !near.telling.sharp) break;
        if (std::find(told.begin(), told.end(), near.telling.turns_on) != told.end()) continue;
        const Foil* far = farFoil(foils, near, blend.word->id);
        if (far == nullptr) continue;
        items.push_back(blendItem(blend, near, *far, unit));
        told.push_back(near.telling.turns_on);
    }
    return items;
}

}  // namespace

std::vector<Item> makeBlends(const Vocabulary& vocabulary, Unit unit) {
    std::vector<const Word*> shown;
    for (const Word& word : vocabulary.words)
        if (!word.picture.empty()) shown.push_back(&word);

    std::vector<Item> items, more;
    for (const Blend& blend : blends(vocabulary, unit)) {
        auto made = itemsOf(blend, foilsOf(blend, shown, unit), unit);
        if (made.empty()) continue;
        items.push_back(std::move(made.front()));
        std::move(made.begin() + 1, made.end(), std::back_inserter(more));
    }
    for (Item& item : more)
        if (items.size() < kEnoughItems) items.push_back(std::move(item));
    return items;
}

}  // namespace wrenlet::exercise
