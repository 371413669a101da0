#include <algorithm>

#include "content/exercise/fairness_rules.hpp"
#include "content/exercise/sentence.hpp"
#include "content/speech/syllable.hpp"

namespace wrenlet::exercise::fairness {

namespace {

void judgeWordCount(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const Sentence* sentence = vocabulary.sentence(item.subject);
    if (sentence == nullptr) {
        why.push_back(quoted(item.subject) + " is not a sentence of the unit");
        return;
    }
    const Result<std::vector<SpokenWord>> spoken = spokenWords(sentence->text, item.subject);
    if (!spoken.ok() || spoken.value() != sentence->words)
        why.push_back("its words are not those of " + quoted(sentence->text));
    judgeNumbers(item, 1, sentence->words.size(), why);
    if (item.turns_on != TurnsOn{std::to_string(sentence->words.size()), Position::word_count})
        why.push_back("it does not turn on the number of words");
    const bool same = std::equal(
        item.parts.begin(), item.parts.end(), sentence->words.begin(), sentence->words.end(),
        [](const Part& part, const SpokenWord& w) { return part.clip == spokenClip(w.text); });
    if (!same) why.push_back("its parts are not the words of the sentence");
}

std::size_t vowelsIn(std::string_view label) {
    std::size_t vowels = 0;
    while (!label.empty()) {
        // The longest symbol that stands there: "aɪ" before "a".
        std::size_t length = label.size();
        while (length > 0 && !speech::fromIpa(label.substr(0, length))) --length;
        if (length == 0) return 0;
        vowels += speech::isVowel(*speech::fromIpa(label.substr(0, length)));
        label.remove_prefix(length);
    }
    return vowels;
}

/// Says it when a part is not what the unit calls one.
void judgeBoxes(const Item& item, const Word& word, Reasons& why) {
    const auto isOneSound = [](const Part& part) { return part.clip.substr(0, 6) == "sound:"; };
    switch (item.skill.unit) {
        case Unit::syllable:
            for (const Part& part : item.parts)
                if (vowelsIn(part.label) != 1)
                    why.push_back("/" + part.label + "/ is not one syllable");
            return;
        case Unit::onset_rime:
            if (item.parts.size() != 2 || item.parts[0].label.empty() ||
                vowelsIn(item.parts[0].label) != 0 || vowelsIn(item.parts[1].label) != 1 ||
                speech::syllableCount(word.sounds) != 1)
                why.push_back("its parts are not the onset and the rime of " + quoted(word.id));
            return;
        case Unit::phoneme:
            if (item.parts.size() != word.sounds.size() ||
                !std::all_of(item.parts.begin(), item.parts.end(), isOneSound))
                why.push_back("its parts are not the sounds of " + quoted(word.id));
            return;
        default:
            return;
    }
}

}  // namespace

void judgeSplit(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const Word* word = vocabulary.word(item.subject);
    if (word == nullptr || word->picture.empty()) {
        why.push_back(quoted(item.subject) + " is no word with a picture");
        return;
    }
    judgeNumbers(item, 2, item.parts.size(), why);
    if (item.choices.size() != 4) why.push_back("its choices are not 2 to 5");
    judgeParts(item, vocabulary, *word, why);
    judgeBoxes(item, *word, why);
    if (item.skill.unit != Unit::compound && speech::countVaries(word->sounds))
        why.push_back("the parts of " + quoted(word->id) + " are not counted alike by all");
    const bool is_count =
        item.turns_on == TurnsOn{std::to_string(item.parts.size()), Position::count};
    if (!is_count && placeOf(item.turns_on, word->sounds) == word->sounds.size())
        why.push_back("/" + item.turns_on.sound + "/ does not stand there in " + quoted(word->id));
    // RF.1.2.d: spoken single-syllable words into their complete sequence of sounds.
    if (item.skill.unit != Unit::phoneme) return;
    if (speech::syllableCount(word->sounds) != 1)
        why.push_back(quoted(word->id) + " has more than one syllable");
    for (std::size_t i = 0; i < word->sounds.size(); ++i) {
        const std::string_view sound = speech::ipa(word->sounds[i].phoneme);
        if (sound == "ɝ" || (sound == "ɹ" && i > 0 && speech::isVowel(word->sounds[i - 1].phoneme)))
            why.push_back("a vowel and /ɹ/ in " + quoted(word->id) + " may be one sound or two");
    }
}

void judgeCount(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    if (item.skill.unit == Unit::sentence) return judgeWordCount(item, vocabulary, why);
    const Word* word = vocabulary.word(item.subject);
    if (word == nullptr || word->picture.empty()) {
        why.push_back(quoted(item.subject) + " is no word with a picture");
        return;
    }
    const auto vowels = static_cast<std::size_t>(
        std::count_if(word->sounds.begin(), word->sounds.end(),
                      [](const speech::Sound& sound) { return speech::isVowel(sound.phoneme); }));
    judgeNumbers(item, 1, vowels, why);
    if (item.choices.size() != 5) why.push_back("its choices are not 1 to 5");
    if (item.parts.size() != vowels) why.push_back("its parts are not its syllables");
    judgeParts(item, vocabulary, *word, why);
    judgeBoxes(item, *word, why);
    if (speech::countVaries(word->sounds))
        why.push_back("the syllables of " + quoted(word->id) + " are not counted alike by all");
    if (item.turns_on != TurnsOn{std::to_string(vowels), Position::count})
        why.push_back("it does not turn on the number of syllables");
}

}  // namespace wrenlet::exercise::fairness
