#include "content/exercise/compared.hpp"

#include <optional>

#include "content/exercise/foils.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/exercise/vowel_length.hpp"
#include "content/speech/rhyme.hpp"

namespace wrenlet::exercise {

namespace {

std::string clipOf(const speech::Pronunciation& sounds) {
    return partOf(sounds).clip;
}

bool isOfRhyme(const Item& item) {
    const Task task = item.skill.task;
    return task == Task::rhyme_judge || task == Task::rhyme_sort || task == Task::odd_one_out ||
           task == Task::rhyme_pick;
}

/// The place in a word of the one sound that is asked about; nothing where it is no such item.
std::optional<std::size_t> placeIn(const Item& item, const Word& word) {
    if (word.sounds.empty()) return std::nullopt;
    switch (item.skill.task) {
        case Task::first:
            return 0;
        case Task::last:
            return word.sounds.size() - 1;
        case Task::middle:
            return word.sounds.size() / 2;
        case Task::long_short: {
            const auto vowel = lengthOf(word.sounds);
            return vowel ? std::optional(vowel->place) : std::nullopt;
        }
        default:
            return std::nullopt;
    }
}

}  // namespace

std::string decidingClip(const Item& item, const Word& word) {
    if (isOfRhyme(item)) return partClip(speech::rhymingPart(word.sounds));
    const auto place = placeIn(item, word);
    return place ? clipOf({word.sounds[*place]}) : std::string();
}

Position decidingPlace(const Item& item, const Word& word) {
    if (isOfRhyme(item)) return Position::rime;
    const auto place = placeIn(item, word);
    return place ? positionOf(word.sounds, *place) : Position::whole;
}

std::vector<std::string> saidBy(const Item& item, const Letter& letter) {
    const bool is_right = letter.id == item.choices[item.answer].id;
    std::vector<std::string> clips;
    switch (item.skill.task) {
        case Task::name:
            return {letterNameClip(letter.text)};
        case Task::both_sounds:
            for (const auto& sounds : letter.taught) clips.push_back(clipOf(sounds));
            return clips;
        case Task::digraph:
            if (is_right && item.parts.size() > 1) return {item.parts[1].clip};
            break;
        default:
            break;
    }
    return {clipOf(letter.taught.front())};
}

const Letter* letterSaying(std::string_view clip) {
    for (const Letter& letter : letters())
        if (clipOf(letter.taught.front()) == clip) return &letter;
    return nullptr;
}

}  // namespace wrenlet::exercise
