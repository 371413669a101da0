#include <map>
#include <set>

#include "content/exercise/phrases.hpp"
#include "content/pack/pack_builder.hpp"
#include "content/speech/rhyme.hpp"

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
        const bool question = !sentence.text.empty() && sentence.text.back() == '?';
        add({exercise::sentenceClip(sentence.id), sentence.text, {}, Kind::sentence, question});
        for (const exercise::SpokenWord& word : sentence.words)
            add({exercise::spokenClip(word.text), word.text, {}, Kind::word});
    }
    void phrase(const exercise::Phrase& phrase) {
        add({exercise::phraseClip(phrase.id), std::string(phrase.text), {}, Kind::phrase});
    }

    /// A part by its label in IPA, as a word of the vocabulary is made of it.
    void partOf(const exercise::Word& word, const exercise::Part& part) {
        for (std::size_t from = 0; from < word.sounds.size(); ++from) {
            speech::Pronunciation run;
            for (std::size_t i = from; i < word.sounds.size(); ++i) {
                run.push_back(word.sounds[i]);
                if (speech::ipa(run) != part.label) continue;
                if (part.clip == exercise::soundClip(run.front().phoneme) && run.size() == 1)
                    return sound(run.front());
                return this->part(run);
            }
        }
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
    void add(VoiceNeed need) {
        if (ids_.insert(need.id).second) needs_.push_back(std::move(need));
    }

    const exercise::Vocabulary& vocabulary_;
    std::set<std::string> ids_;
    std::vector<VoiceNeed> needs_;
};

void needFor(const exercise::Item& item, const exercise::Vocabulary& vocabulary, Needs& needs) {
    if (const exercise::Sentence* sentence = vocabulary.sentence(item.subject);
        sentence != nullptr && item.skill.task == exercise::Task::count)
        return needs.sentence(*sentence);
    needs.word(item.subject);
    for (const exercise::Choice& choice : item.choices) needs.word(choice.id);
    const exercise::Word* word = vocabulary.word(item.subject);
    if (word == nullptr) return;
    if (item.skill.unit == exercise::Unit::compound)
        for (const std::string& part : word->compound) needs.word(part);
    else
        for (const exercise::Part& part : item.parts) needs.partOf(*word, part);
    if (item.skill.task != exercise::Task::rhyme_sort) return;
    needs.part(speech::rhymingPart(word->sounds));
    for (const exercise::Choice& choice : item.choices)
        if (const exercise::Word* home = vocabulary.word(choice.id))
            needs.part(speech::rhymingPart(home->sounds));
}

}  // namespace

std::vector<VoiceNeed> voiceNeeds(const exercise::Vocabulary& vocabulary,
                                  std::span<const exercise::Item> items) {
    Needs needs(vocabulary);
    for (const exercise::Word& word : vocabulary.words) needs.word(word.id);
    for (const exercise::Item& item : items) needFor(item, vocabulary, needs);
    for (const exercise::Phrase& phrase : exercise::phraseTable()) needs.phrase(phrase);
    return needs.take();
}

}  // namespace wrenlet::pack
