#include "editor/document/known_words.hpp"

#include <algorithm>

#include "content/common/files.hpp"
#include "content/exercise/blend_parts.hpp"
#include "content/exercise/classroom_sentences.hpp"
#include "content/exercise/list_lines.hpp"
#include "content/speech/compound.hpp"
#include "content/speech/syllable.hpp"
#include "content/speech/typed_word.hpp"
#include "editor/voice/letter_to_sound.hpp"

namespace wrenlet::desk {

namespace {

using exercise::ClassroomWord;
using speech::Pronunciation;

constexpr const char* kList = "classroom.tsv";
constexpr const char* kSentences = "sentences.tsv";

Result<std::vector<exercise::Sentence>> sentencesOf(const std::filesystem::path& file) {
    const Result<std::string> text = readWhole(file, exercise::kMostListBytes);
    if (!text.ok()) return text.problems();
    auto listed = exercise::readClassroomSentences(text.value(), kSentences);
    if (!listed.ok()) return listed.problems();
    std::vector<exercise::Sentence> sentences;
    for (exercise::ClassroomSentence& one : listed.value())
        sentences.push_back(std::move(one.sentence));
    return {std::move(sentences), listed.problems()};
}

std::vector<Pronunciation> othersThan(const Pronunciation& said,
                                      std::vector<Pronunciation> listed) {
    const auto is_same = [&said](const Pronunciation& other) { return sameSounds(said, other); };
    listed.erase(std::remove_if(listed.begin(), listed.end(), is_same), listed.end());
    return listed;
}

std::vector<Pronunciation> syllablesOf(const exercise::Vocabulary& vocabulary,
                                       const exercise::Word& word) {
    auto counted = exercise::countedSyllables(vocabulary, word);
    return counted.empty() ? speech::syllables(word.sounds) : counted;
}

/// A word that an item could ask about by itself goes before one that is only heard in others.
const ClassroomWord* firstSense(const std::vector<const ClassroomWord*>& senses) {
    for (const ClassroomWord* word : senses)
        if (!word->picture.empty()) return word;
    for (const ClassroomWord* word : senses)
        if (!word->part_only) return word;
    return senses.empty() ? nullptr : senses.front();
}

}  // namespace

KnownWords::KnownWords(speech::Lexicon lexicon, std::vector<ClassroomWord> listed,
                       exercise::Vocabulary classroom)
    : lexicon_(std::move(lexicon)),
      listed_(std::move(listed)),
      classroom_(std::move(classroom)),
      rules_(std::make_unique<FliteRules>()) {}

Result<KnownWords> KnownWords::open(const std::filesystem::path& assets) {
    Result<speech::Lexicon> lexicon = speech::Lexicon::open(assets / "lexicon.bin");
    if (!lexicon.ok()) return lexicon.problems();
    const Result<std::string> text = readWhole(assets / "words" / kList, exercise::kMostListBytes);
    if (!text.ok()) return text.problems();
    auto listed = exercise::readClassroomWords(text.value(), kList);
    if (!listed.ok()) return listed.problems();
    auto words = exercise::saidAloud(listed.value(), lexicon.value(), kList);
    if (!words.ok()) return words.problems();
    auto sentences = sentencesOf(assets / "words" / kSentences);
    if (!sentences.ok()) return sentences.problems();
    std::vector<Problem> warnings = listed.problems();
    for (const auto* more : {&words.problems(), &sentences.problems()})
        warnings.insert(warnings.end(), more->begin(), more->end());
    return {KnownWords(std::move(lexicon.value()), std::move(listed.value()),
                       {std::move(words.value()), std::move(sentences.value())}),
            std::move(warnings)};
}

Result<KnownWord> KnownWords::find(std::string_view typed) const {
    const std::size_t tilde = typed.find('~');
    const Result<std::string> text = speech::typedWord(typed.substr(0, tilde));
    if (!text.ok()) return text.problems();
    std::vector<const ClassroomWord*> senses;
    for (const ClassroomWord& word : listed_)
        if (word.text == text.value()) senses.push_back(&word);
    const ClassroomWord* chosen = firstSense(senses);
    if (tilde != std::string_view::npos) {
        const std::string id = text.value() + std::string(typed.substr(tilde));
        const auto at = std::find_if(senses.begin(), senses.end(),
                                     [&id](const ClassroomWord* word) { return word->id == id; });
        if (at == senses.end())
            return Problem{"\"" + speech::shownWord(typed) + "\"",
                           "The classroom list has no such sense.", "Type the word alone."};
        chosen = *at;
    }
    const exercise::Word* word = chosen == nullptr ? nullptr : classroom_.word(chosen->id);
    if (word == nullptr) return fromSpelling(text.value());
    KnownWord found = fromList(*chosen, *word);
    for (const ClassroomWord* other : senses)
        if (other != chosen) found.other_senses.push_back(other->id);
    return found;
}

std::vector<std::string> KnownWords::likelyParts(std::string_view text) const {
    const auto splits = speech::compoundParts(
        text, [this](std::string_view part) { return lexicon_.lookUp(part); });
    return splits.empty() ? std::vector<std::string>{} : splits.front().parts;
}

std::optional<exercise::Lint> KnownWords::looksCompound(std::string_view id) const {
    const Result<std::string> text = speech::typedWord(id.substr(0, id.find('~')));
    if (!text.ok() || lexicon_.lookUp(text.value()).empty()) return std::nullopt;
    const bool is_listed =
        std::any_of(listed_.begin(), listed_.end(),
                    [&text](const ClassroomWord& word) { return word.text == text.value(); });
    if (is_listed) return std::nullopt;
    const std::vector<std::string> words = likelyParts(text.value());
    if (words.empty()) return std::nullopt;
    std::string parts;
    for (const std::string& part : words) parts += (parts.empty() ? "\"" : " and \"") + part + "\"";
    return exercise::Lint{"looks-compound",
                          {std::string(id)},
                          "\"" + text.value() + "\" looks like " + parts + " put together.",
                          "If that is what it means, give those words as its parts "
                          "(\"compound\"), so that it is parted between them."};
}

KnownWord KnownWords::fromList(const ClassroomWord& listed, const exercise::Word& word) const {
    KnownWord found;
    found.id = listed.id;
    found.text = listed.text;
    found.sense = listed.sense;
    found.sounds = word.sounds;
    found.also = othersThan(word.sounds, lexicon_.lookUp(listed.text));
    found.syllables = syllablesOf(classroom_, word);
    for (const std::string& part : word.compound)
        found.compound.push_back(part.substr(0, part.find('~')));
    found.picture = word.picture;
    found.confirm_by_ear = false;
    found.source = listed.said_as_parts   ? speech::SaidBy::parts
                   : !listed.said.empty() ? speech::SaidBy::repaired
                                          : speech::howSaid(listed.text, lexicon_, nullptr).source;
    return found;
}

Result<KnownWord> KnownWords::fromSpelling(std::string_view text) const {
    const speech::HowSaid said = speech::howSaid(text, lexicon_, rules_.get());
    const bool is_sayable =
        !said.pronunciations.empty() &&
        (!said.confirm_by_ear || speech::syllableCount(said.pronunciations.front()) > 0);
    if (!is_sayable)
        return Problem{"\"" + speech::shownWord(text) + "\"", "How this is said is not known.",
                       "Look at its spelling, or give its sounds in the unit (\"sounds\")."};
    KnownWord found;
    found.text = text;
    found.sounds = said.pronunciations.front();
    found.also = othersThan(found.sounds, said.pronunciations);
    found.source = said.source;
    found.confirm_by_ear = said.confirm_by_ear;
    found.compound = said.parts;
    std::vector<Pronunciation> parts;
    const bool is_hyphenated = text.find('-') != std::string_view::npos;
    for (const std::string& part : is_hyphenated ? likelyParts(text) : said.parts)
        if (const auto listed = lexicon_.lookUp(part); !listed.empty())
            parts.push_back(listed.front());
    found.syllables = speech::joinsTo(parts, found.sounds) ? speech::syllables(parts)
                                                           : speech::syllables(found.sounds);
    return found;
}

}  // namespace wrenlet::desk
