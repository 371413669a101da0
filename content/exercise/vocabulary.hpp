// What items are made of: a unit's words with their sounds, parts and pictures, and its sentences.
// Ids are stable: they name the same word in every pack and in every child's history.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "content/speech/phoneme.hpp"

namespace wrenlet::exercise {

struct Word {
    std::string id;    // the word, or "word~sense" where it has several: "bow~rain"
    std::string text;  // as written: "rainbow"
    speech::Pronunciation sounds;
    std::vector<std::string>
        compound;         // ids of its parts in order: {"rain", "bow~rain"}; else empty
    std::string picture;  // id of a picture; empty when there is none
    bool operator==(const Word&) const = default;
};

struct SpokenWord {
    std::string text;  // "don't": as spoken, one word; punctuation left off
    bool operator==(const SpokenWord&) const = default;
};

struct Sentence {
    std::string id;                 // "s-" and a stable hash or number
    std::string text;               // with its mark
    std::vector<SpokenWord> words;  // as counted aloud
    bool operator==(const Sentence&) const = default;
};

struct Vocabulary {
    std::vector<Word> words;
    std::vector<Sentence> sentences;

    /// Null when there is no such word or sentence.
    const Word* word(std::string_view id) const;
    const Sentence* sentence(std::string_view id) const;
};

/// Ids of clips: what has to be heard. Files name clips by these; see pack/.
std::string wordClip(std::string_view word_id);           // "word:rainbow"
std::string soundClip(speech::Phoneme phoneme);           // "sound:tʃ"
std::string partClip(const speech::Pronunciation& part);  // "part:æt" (a rime or a syllable)
std::string sentenceClip(std::string_view sentence_id);   // "sentence:s-3"
std::string spokenClip(std::string_view text);            // "spoken:don't" (a word in a sentence)
std::string letterNameClip(std::string_view letter);      // "letter-name:b"; of a digraph: both
std::string phraseClip(std::string_view phrase_id);       // "phrase:rhyme.ask"; see phrases.hpp

}  // namespace wrenlet::exercise
