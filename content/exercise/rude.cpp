#include "content/exercise/rude.hpp"

#include <algorithm>
#include <string_view>

namespace wrenlet::exercise {

namespace {

bool isRudeWord(std::string_view id, const Vocabulary& vocabulary, const speech::BlockList& list) {
    const Word* word = vocabulary.word(id);
    return word != nullptr && (list.blocks(word->text) || list.blocks(word->sounds));
}

}  // namespace

bool isRude(const Item& item, const Vocabulary& vocabulary, const speech::BlockList& list) {
    constexpr std::string_view kPart = "part:", kWord = "word:";
    for (const Part& part : item.parts) {
        const std::string_view clip = part.clip;
        if (clip.substr(0, kPart.size()) == kPart && list.blocksSaid(clip.substr(kPart.size())))
            return true;
        if (clip.substr(0, kWord.size()) == kWord &&
            isRudeWord(clip.substr(kWord.size()), vocabulary, list))
            return true;
    }
    return isRudeWord(item.subject, vocabulary, list) ||
           std::any_of(item.choices.begin(), item.choices.end(), [&](const Choice& choice) {
               return isRudeWord(choice.id, vocabulary, list);
           });
}

std::vector<Item> withoutRude(std::vector<Item> items, const Vocabulary& vocabulary,
                              const speech::BlockList& list) {
    items.erase(std::remove_if(items.begin(), items.end(),
                               [&](const Item& item) { return isRude(item, vocabulary, list); }),
                items.end());
    return items;
}

}  // namespace wrenlet::exercise
