#include <string>

#include "content/exercise/skill_makers.hpp"
#include "content/exercise/tune.hpp"

namespace wrenlet::exercise {

std::vector<Item> makeTunes(const Vocabulary& vocabulary) {
    std::vector<Item> items;
    for (const Sentence& sentence : vocabulary.sentences) {
        const auto tune = tuneOf(sentence);
        if (!tune || items.size() >= kMostItems) continue;
        const bool asks = *tune == Tune::asking;
        Item item;
        item.skill = {Unit::sentence, Task::tune};
        item.subject = sentence.id;
        item.choices = {{"asking", asks ? "" : "took a tune that falls for a question's"},
                        {"telling", asks ? "did not hear the tune rise at the end" : ""}};
        item.answer = asks ? 0 : 1;
        item.turns_on = {asks ? "asking" : "telling", Position::tune};
        item.id = itemId(item);
        items.push_back(std::move(item));
    }
    return items;
}

}  // namespace wrenlet::exercise
