#include "content/exercise/vocabulary.hpp"

#include <algorithm>

namespace wrenlet::exercise {

namespace {

template <class Things>
auto findById(const Things& things, std::string_view id) -> decltype(things.data()) {
    const auto found = std::find_if(things.begin(), things.end(),
                                    [id](const auto& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

std::string clip(std::string_view kind, std::string_view name) {
    std::string id(kind);
    id += ':';
    id += name;
    return id;
}

}  // namespace

const Word* Vocabulary::word(std::string_view id) const {
    return findById(words, id);
}

const Sentence* Vocabulary::sentence(std::string_view id) const {
    return findById(sentences, id);
}

std::string wordClip(std::string_view word_id) {
    return clip("word", word_id);
}

std::string soundClip(speech::Phoneme phoneme) {
    return clip("sound", speech::ipa(phoneme));
}

std::string partClip(const speech::Pronunciation& part) {
    return clip("part", speech::ipa(part));
}

std::string sentenceClip(std::string_view sentence_id) {
    return clip("sentence", sentence_id);
}

std::string spokenClip(std::string_view text) {
    std::string id = clip("spoken", text);
    for (char& letter : id)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return id;
}

std::string letterNameClip(std::string_view letter) {
    return clip("letter-name", letter);
}

std::string phraseClip(std::string_view phrase_id) {
    return clip("phrase", phrase_id);
}

}  // namespace wrenlet::exercise
