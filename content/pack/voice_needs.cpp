#include <optional>
#include <set>

#include "content/exercise/change_tiles.hpp"
#include "content/exercise/compared.hpp"
#include "content/exercise/letter_table.hpp"
#include "content/exercise/phrases.hpp"
#include "content/exercise/tune.hpp"
#include "content/pack/pack_builder.hpp"

namespace wrenlet::pack {
namespace {

using Kind = VoiceNeed::Kind;

/// Gathers what is to be said, each once.
class Needs {
  public:
    explicit Needs(const exercise::Vocabulary& vocabulary) : vocabulary_(vocabulary) {}

    void word(std::string_view id) {
        const exercise::Word* word = vocabulary_.word(id);
        if (word != nullptr)
            add({exercise::wordClip(word->id), word->text, word->sounds, Kind::word});
    }
    void sound(const speech::Sound& sound) {
        add({exercise::soundClip(sound.phoneme),
             "/" + std::string(speech::ipa(sound.phoneme)) + "/",
             {sound},
             Kind::sound});
    }
    void part(const speech::Pronunciation& sounds) {
        add({exercise::partClip(sounds), "/" + speech::ipa(sounds) + "/", sounds, Kind::part});
    }
    void sentence(const exercise::Sentence& sentence) {
        const bool question = exercise::tuneOf(sentence) == exercise::Tune::asking;
        add({exercise::sentenceClip(sentence.id), sentence.text, {}, Kind::sentence, question});
        for (const exercise::SpokenWord& word : sentence.words)
            add({exercise::spokenClip(word.text), word.text, {}, Kind::word});
    }
    void phrase(const exercise::Phrase& phrase) {
        add({exercise::phraseClip(phrase.id), std::string(phrase.text), {}, Kind::phrase});
    }

    /// A clip by its id; what it says is a word, a sound, a letter's name, or a run of sounds in
    /// one of `words`.
    void clip(const std::string& id, std::span<const exercise::Word* const> words) {
        const std::size_t colon = id.find(':');
        const std::string kind = id.substr(0, colon), name = id.substr(colon + 1);
        if (kind == "word") word(name);
        if (kind == "letter" || kind == "letter-name") letter(name);
        if (kind == "sound")
            if (const auto phoneme = speech::fromIpa(name)) sound({*phoneme});
        if (kind != "part") return;
        for (const exercise::Word* word : words)
            if (const auto run = runIn(*word, name)) return part(*run);
        // What no word of the item has: a letter's two sounds at once.
        for (const exercise::Letter& letter : exercise::letters())
            for (const speech::Pronunciation& sounds : letter.taught)
                if (speech::ipa(sounds) == name) return part(sounds);
    }

    /// In the order in which they are pleasant to record: words, sounds and parts, then sentences.
    std::vector<VoiceNeed> take() {
        std::vector<VoiceNeed> all;
        for (const Kind kind : {Kind::word, Kind::sound, Kind::part, Kind::sentence, Kind::phrase})
            for (const VoiceNeed& need : needs_)
                if (need.kind == kind) all.push_back(need);
        return all;
    }

  private:
    /// The sounds that are `label` in IPA, as the word has them, stress and all.
    static std::optional<speech::Pronunciation> runIn(const exercise::Word& word,
                                                      const std::string& label) {
        for (std::size_t from = 0; from < word.sounds.size(); ++from) {
            speech::Pronunciation run;
            for (std::size_t i = from; i < word.sounds.size(); ++i) {
                run.push_back(word.sounds[i]);
                if (speech::ipa(run) == label) return run;
            }
        }
        return std::nullopt;
    }

    /// A letter's name; two letters that are one sound have none.
    void letter(const std::string& name) {
        const exercise::Letter* letter = exercise::letterById("letter:" + name);
        if (letter != nullptr && !letter->name.empty())
            add({exercise::letterNameClip(name), name, letter->name, Kind::word});
    }

    void add(VoiceNeed need) {
        if (ids_.insert(need.id).second) needs_.push_back(std::move(need));
    }

    const exercise::Vocabulary& vocabulary_;
    std::set<std::string> ids_;
    std::vector<VoiceNeed> needs_;
};

std::vector<std::string> choicesAndSubject(const exercise::Item& item) {
    std::vector<std::string> ids{item.subject};
    for (const exercise::Choice& choice : item.choices) ids.push_back(choice.id);
    return ids;
}

void needFor(const exercise::Item& item, const exercise::Vocabulary& vocabulary, Needs& needs) {
    if (const exercise::Sentence* sentence = vocabulary.sentence(item.subject);
        sentence != nullptr && item.skill.unit == exercise::Unit::sentence)
        return needs.sentence(*sentence);
    std::vector<const exercise::Word*> words;
    const auto meet = [&](const std::string& id) {
        const exercise::Word* word = vocabulary.word(id);
        if (word == nullptr) return needs.clip(id, {});  // a sound or a letter
        needs.word(id);
        words.push_back(word);
    };
    for (const std::string& id : choicesAndSubject(item)) meet(id);
    for (const exercise::Part& part : item.parts) needs.clip(part.clip, words);
    if (exercise::mechanicOf(item) == exercise::Mechanic::change) {
        const exercise::ChangeTiles tiles = exercise::changeTiles(item, vocabulary);
        for (const exercise::Part& part : tiles.after) needs.clip(part.clip, words);
        for (const exercise::Choice& choice : item.choices)
            if (const exercise::Word* word = vocabulary.word(choice.id))
                for (const exercise::Part& part :
                     exercise::changeParts(*word, vocabulary, item.skill.unit))
                    needs.clip(part.clip, words);
    }
    const std::string& right = item.choices[item.answer].id;
    for (const exercise::Word* word : words) {
        // A sound that is in no asked word may be none of the unit's accents.
        const bool is_asked = word->id == right || word->id == item.subject ||
                              exercise::decidingPlace(item, *word) == exercise::Position::rime;
        if (is_asked) needs.clip(exercise::decidingClip(item, *word), words);
    }
    using exercise::Task;
    const Task task = item.skill.task;
    if (item.skill.unit != exercise::Unit::letter || task == Task::build) return;
    for (const std::string& id : choicesAndSubject(item)) {
        // What two letters say in no word of the unit may be no sound of its accents.
        if (task == Task::digraph && id != item.choices[item.answer].id) continue;
        if (const exercise::Letter* letter = exercise::letterById(id))
            for (const std::string& clip : exercise::saidBy(item, *letter)) needs.clip(clip, words);
    }
}

}  // namespace

std::vector<VoiceNeed> voiceNeeds(const exercise::Vocabulary& vocabulary,
                                  std::span<const exercise::Item> items) {
    Needs needs(vocabulary);
    for (const exercise::Word& word : vocabulary.words) needs.word(word.id);
    for (const exercise::Item& item : items) needFor(item, vocabulary, needs);
    for (const exercise::Phrase& phrase : exercise::phrasesFor(items)) needs.phrase(phrase);
    return needs.take();
}

}  // namespace wrenlet::pack
