#include <string>

#include "content/exercise/blend_parts.hpp"
#include "content/exercise/foils.hpp"
#include "content/exercise/skill_makers.hpp"

// A token for each syllable heard. Words whose count varies (fire, towel) are left out; where a
// syllable ends does not matter here, so butter and scissors are counted too.

namespace wrenlet::exercise {

namespace {

constexpr std::size_t kMostSyllables = 5;

std::string means(std::size_t counted, std::size_t syllables) {
    if (counted == syllables) return "";
    const std::size_t apart = counted < syllables ? syllables - counted : counted - syllables;
    return (apart == 1 ? "one syllable" : std::to_string(apart) + " syllables") +
           (counted < syllables ? " fewer" : " more");
}

}  // namespace

std::vector<Item> makeSyllableCounts(const Vocabulary& vocabulary) {
    ItemList list;
    for (const Word* word : picturedWords(vocabulary)) {
        const auto syllables = countedSyllables(vocabulary, *word);
        if (syllables.empty() || syllables.size() > kMostSyllables) continue;
        Item item;
        item.skill = {Unit::syllable, Task::count};
        item.subject = word->id;
        for (const auto& syllable : syllables) item.parts.push_back(partOf(syllable));
        for (std::size_t counted = 1; counted <= kMostSyllables; ++counted)
            item.choices.push_back({std::to_string(counted), means(counted, syllables.size())});
        item.answer = static_cast<std::uint8_t>(syllables.size() - 1);
        item.turns_on = {std::to_string(syllables.size()), Position::count};
        item.id = itemId(item);
        list.add(0, std::move(item));
    }
    return list.take(kMostItems);
}

}  // namespace wrenlet::exercise
