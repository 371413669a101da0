#include "editor/bring/brought_lines.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace wrenlet::desk {

namespace {

using Kind = BroughtLine::Kind;

class Comparing {
  public:
    Comparing(const Brought& brought, const pack::Unit& unit, const exercise::Vocabulary& here)
        : brought_(brought), here_(here) {
        for (const pack::UnitWord& word : unit.words) words_[pack::wordId(word)] = &word;
        for (const pack::UnitSentence& sentence : unit.sentences) sentences_.insert(sentence.text);
        for (const pack::UnitRecording& one : unit.recordings) recordings_[one.clip] = &one;
        for (const pack::UnitSentence& sentence : unit.sentences)
            sentence_ids_[sentence.text] = sentence.id;
    }

    std::vector<BroughtLine> lines() {
        for (const pack::UnitWord& word : brought_.words) takeWord(word);
        for (const pack::UnitSentence& sentence : brought_.sentences)
            if (sentences_.count(sentence.text) == 0)
                add({Kind::sentence, sentence.id, sentence.text, "new sentence", true, true});
        for (const BroughtRecording& one : brought_.recordings) takeRecording(one);
        return std::move(lines_);
    }

  private:
    void add(BroughtLine line) {
        line.is_taken = line.is_new;
        lines_.push_back(std::move(line));
    }
    void takeWord(const pack::UnitWord& word) {
        const std::string id = pack::wordId(word);
        const auto at = words_.find(id);
        if (at == words_.end())
            return add({Kind::word, id, word.text,
                        word.picture.empty() ? "new word" : "new word, with its picture", true,
                        true});
        const exercise::Word* there = brought_.vocabulary.word(id);
        const exercise::Word* here = here_.word(id);
        if (there != nullptr && here != nullptr && there->sounds != here->sounds)
            add({Kind::sounds, id, word.text,
                 "said /" + speech::ipa(there->sounds) + "/ there, /" + speech::ipa(here->sounds) +
                     "/ here",
                 false, true});
        if (word.picture.empty() || word.picture == at->second->picture) return;
        const bool has_none = at->second->picture.empty();
        add({Kind::picture, id, word.text,
             has_none ? "a picture, and here is none" : "another picture", has_none, true});
    }
    void takeRecording(const BroughtRecording& one) {
        std::string clip = one.clip;
        for (const pack::UnitSentence& sentence : brought_.sentences)
            if (exercise::sentenceClip(sentence.id) == clip &&
                sentence_ids_.count(sentence.text) > 0)
                clip = exercise::sentenceClip(sentence_ids_[sentence.text]);
        const auto at = recordings_.find(clip);
        const bool is_new = at == recordings_.end();
        add({Kind::recording, one.clip, one.text,
             is_new ? "a recording" : "another recording of it", is_new, true});
    }

    const Brought& brought_;
    const exercise::Vocabulary& here_;
    std::map<std::string, const pack::UnitWord*> words_;
    std::set<std::string> sentences_;
    std::map<std::string, std::string> sentence_ids_;
    std::map<std::string, const pack::UnitRecording*> recordings_;
    std::vector<BroughtLine> lines_;
};

}  // namespace

std::vector<BroughtLine> broughtLines(const Brought& brought, const pack::Unit& unit,
                                      const exercise::Vocabulary& here) {
    return Comparing(brought, unit, here).lines();
}

}  // namespace wrenlet::desk
