#include "editor/booth/booth_words.hpp"

#include <algorithm>

#include "content/speech/features.hpp"
#include "content/speech/respelling.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

using Kind = pack::VoiceNeed::Kind;

constexpr std::string_view kLetterName = "letter-name:";

/// The shortest word in which the sounds are heard together, and where; empty: in none.
struct Heard {
    std::string word;
    bool first = false, last = false;
};

Heard heardIn(const speech::Pronunciation& sounds, const exercise::Vocabulary& words) {
    Heard best;
    std::size_t best_size = 0;
    for (const exercise::Word& word : words.words) {
        const auto at =
            std::search(word.sounds.begin(), word.sounds.end(), sounds.begin(), sounds.end(),
                        [](const auto& a, const auto& b) { return a.phoneme == b.phoneme; });
        if (at == word.sounds.end() || word.sounds.size() == sounds.size()) continue;
        const bool first = at == word.sounds.begin();
        const bool last = at + static_cast<std::ptrdiff_t>(sounds.size()) == word.sounds.end();
        const bool better = best.word.empty() || (first && !best.first) ||
                            (first == best.first && word.sounds.size() < best_size);
        if (!better) continue;
        best = {word.text, first, last};
        best_size = word.sounds.size();
    }
    return best;
}

std::string placeIn(const Heard& heard) {
    return heard.first  ? "the first sound of "
           : heard.last ? "the last sound of "
                        : "the sound in ";
}

BoothWords soundWords(const pack::VoiceNeed& need, const exercise::Vocabulary& words) {
    const speech::Phoneme phoneme = need.sounds.front().phoneme;
    const Heard heard = heardIn(need.sounds, words);
    BoothWords said;
    said.shown = speech::plainLetters(phoneme);
    said.kind = "sound";
    if (heard.word.empty()) {
        said.head = "Say just this sound";
        said.about = need.text;
    } else {
        said.head = "Say just " + placeIn(heard) + heard.word;
        said.about = (heard.first || heard.last ? "as in " : "inside ") + heard.word;
    }
    if (speech::isVowel(phoneme))
        said.how = "Hold it a moment, one even sound.";
    else if (!speech::isContinuant(phoneme))
        said.how = "Short and quick, then let go. No \u201cuh\u201d after it.";
    else
        said.how = "Hold it a moment. No \u201cuh\u201d after it.";
    return said;
}

}  // namespace

BoothWords boothWords(const pack::VoiceNeed& need, const exercise::Vocabulary& words) {
    switch (need.kind) {
        case Kind::sound:
            if (need.sounds.size() == 1) return soundWords(need, words);
            break;
        case Kind::part: {
            const Heard heard = heardIn(need.sounds, words);
            const std::string plain = speech::respelling(need.sounds);
            return {plain, heard.word.empty() ? need.text : "as in " + heard.word,
                    "Say this part of a word",
                    "As it sounds in the word, nothing before it and nothing after.", "part"};
        }
        case Kind::word:
            if (need.id.compare(0, kLetterName.size(), kLetterName) == 0)
                return {need.text, "the letter\u2019s name", "Say the name of the letter",
                        "Its name as in the alphabet, not its sound.", "letter"};
            return {need.text, need.sounds.empty() ? "" : "/" + speech::ipa(need.sounds) + "/",
                    "Say the word " + need.text, "As you say it to the class, clear and not slow.",
                    "word"};
        case Kind::sentence:
            return {need.text, "", need.question ? "Ask this" : "Say this",
                    need.question ? "Let your voice rise at the end."
                                  : "Let your voice fall at the end.",
                    "sentence"};
        case Kind::phrase:
            return {need.text, "", "The game says this", "Friendly and calm, to one child.",
                    "for the game"};
    }
    return {need.text, "", "Say this", "", "sound"};
}

}  // namespace wrenlet::desk
