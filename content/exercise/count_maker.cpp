#include <string>

#include "content/exercise/sentence.hpp"
#include "content/exercise/skill_makers.hpp"

namespace wrenlet::exercise {

namespace {

std::string difference(std::size_t counted, std::size_t words) {
    if (counted == words) return "";
    const std::size_t apart = counted < words ? words - counted : counted - words;
    const std::string number = apart == 1 ? "one word" : std::to_string(apart) + " words";
    return number + (counted < words ? " fewer" : " more");
}

}  // namespace

std::vector<Item> makeWordCounts(const Vocabulary& vocabulary) {
    std::vector<Item> items;
    for (const Sentence& sentence : vocabulary.sentences) {
        const std::size_t words = sentence.words.size();
        if (words < kFewestCounted || words > kMostCounted) continue;
        Item item;
        item.skill = {Unit::sentence, Task::count};
        item.subject = sentence.id;
        for (const SpokenWord& word : sentence.words)
            item.parts.push_back({spokenClip(word.text), word.text});
        for (std::size_t counted = 1; counted <= kMostCounted; ++counted)
            item.choices.push_back({std::to_string(counted), difference(counted, words)});
        item.answer = static_cast<std::uint8_t>(words - 1);
        item.turns_on = {std::to_string(words), Position::word_count};
        item.id = itemId(item);
        items.push_back(std::move(item));
    }
    return items;
}

}  // namespace wrenlet::exercise
