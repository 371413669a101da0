#include <algorithm>
#include <set>

#include "content/exercise/sentence.hpp"
#include "content/pack/pack_builder.hpp"
#include "content/pack/pack_json.hpp"
#include "content/pack/text_rules.hpp"
#include "content/speech/compound.hpp"

namespace wrenlet::pack {
namespace {

using exercise::Vocabulary;
using exercise::Word;
using speech::Pronunciation;

std::string lowered(std::string text) {
    for (char& letter : text)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return text;
}

/// Sounds without a stress mark are stressed on their first vowel, and those of a compound half
/// stressed on its other full vowels.
Result<Pronunciation> given(const UnitWord& word, const std::string& where) {
    Pronunciation sounds;
    for (const std::string& text : word.sounds) {
        const auto sound = soundFromText(text);
        if (!sound)
            return Problem{where, inQuotes(text) + " is no sound of English in IPA.",
                           "Write each sound by itself, like \"k\", \"æ\", \"t\"."};
        sounds.push_back(*sound);
    }
    const bool stressed = std::any_of(sounds.begin(), sounds.end(), [](const speech::Sound& s) {
        return s.stress == speech::Stress::primary;
    });
    auto stress = stressed ? speech::Stress::none : speech::Stress::primary;
    for (speech::Sound& sound : sounds) {
        if (stress == speech::Stress::none || !speech::isVowel(sound.phoneme)) continue;
        const bool is_first = stress == speech::Stress::primary;
        if (is_first || sound.phoneme != speech::Phoneme::ax) sound.stress = stress;
        stress = word.compound.empty() ? speech::Stress::none : speech::Stress::secondary;
    }
    return sounds;
}

class Reader {
  public:
    Reader(const Unit& unit, const speech::Lexicon& lexicon) : unit_(unit), lexicon_(lexicon) {}

    KnownVocabulary read() {
        for (const UnitWord& word : unit_.words) readWord(word);
        addParts();
        for (const UnitSentence& sentence : unit_.sentences) readSentence(sentence);
        return {std::move(vocabulary_), std::move(problems_)};
    }

  private:
    std::string place(std::string_view list, std::size_t number) const {
        return unit_.where + ", " + std::string(list) + ", " + std::to_string(number);
    }

    void readWord(const UnitWord& from) {
        const std::string where = place("words", from.place);
        Word word{wordId(from), from.text, {}, {}, from.picture};
        for (const std::string& part : from.compound) word.compound.push_back(lowered(part));
        if (!from.sounds.empty()) {
            Result<Pronunciation> sounds = given(from, where);
            if (!sounds.ok()) return note(sounds.problems());
            word.sounds = std::move(sounds.value());
        } else {
            word.sounds = lookUp(from, where);
        }
        if (!word.sounds.empty()) vocabulary_.words.push_back(std::move(word));
    }

    /// How the dictionary says it; a compound it lacks is said as its parts are.
    Pronunciation lookUp(const UnitWord& word, const std::string& where) {
        const auto listed = lexicon_.lookUp(word.text);
        if (!listed.empty()) return listed.front();
        std::vector<Pronunciation> parts;
        for (const std::string& part : word.compound) {
            const auto said = lexicon_.lookUp(part.substr(0, part.find('~')));
            if (!said.empty()) parts.push_back(said.front());
        }
        if (!parts.empty() && parts.size() == word.compound.size()) return speech::joined(parts);
        problems_.push_back({where, inQuotes(word.text) + " is not in our word list.",
                             "Change it, or give its sounds: at the desk under Words, in a file as "
                             "\"sounds\"."});
        return {};
    }

    /// Parts of compounds are heard, so they are words too, though without a picture of their own.
    void addParts() {
        const std::vector<Word> words = vocabulary_.words;
        for (const Word& word : words)
            for (const std::string& id : word.compound) {
                if (vocabulary_.word(id) != nullptr) continue;
                const std::string text = id.substr(0, id.find('~'));
                const auto listed = lexicon_.lookUp(text);
                if (listed.empty())
                    problems_.push_back({unit_.where + ", " + word.id,
                                         "Its part " + inQuotes(id) + " is not in our word list.",
                                         "Add that word with its sounds."});
                else
                    vocabulary_.words.push_back({id, text, listed.front(), {}, ""});
            }
    }

    void readSentence(const UnitSentence& from) {
        Result<std::vector<exercise::SpokenWord>> words =
            exercise::spokenWords(from.text, place("sentences", from.place));
        note(words.problems());
        if (words.ok())
            vocabulary_.sentences.push_back({from.id, from.text, std::move(words.value())});
    }

    void note(const std::vector<Problem>& problems) {
        problems_.insert(problems_.end(), problems.begin(), problems.end());
    }

    const Unit& unit_;
    const speech::Lexicon& lexicon_;
    Vocabulary vocabulary_;
    std::vector<Problem> problems_;
};

}  // namespace

KnownVocabulary readKnownWords(const Unit& unit, const speech::Lexicon& lexicon) {
    return Reader(unit, lexicon).read();
}

Result<Vocabulary> readVocabulary(const Unit& unit, const speech::Lexicon& lexicon) {
    KnownVocabulary known = readKnownWords(unit, lexicon);
    if (anyError(known.problems)) return std::move(known.problems);
    return {std::move(known.vocabulary), std::move(known.problems)};
}

}  // namespace wrenlet::pack
