// Words that would give a skill more to ask: of the classroom list, by topic and by sound. What is
// offered first was tried before: together with the unit's words it does make questions.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/skill.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/block_list.hpp"
#include "editor/document/known_words.hpp"

namespace wrenlet::desk {

struct FindCall {
    exercise::Skill skill{};
    exercise::Vocabulary vocabulary;  // of the unit, its compounds' parts too
    std::string topic;                // "animals"; empty: any
    std::string sound;                // IPA; empty: any. Where: see whereSound()
    std::uint64_t number = 0;         // comes back with what is found
};

struct Offer {
    std::string id;       // in the classroom lists
    std::string text;     // as written
    std::string ipa;      // empty for a sentence
    std::string picture;  // empty: none
    std::string topics;   // "animals, outdoors"
};

struct Offers {
    std::uint64_t number = 0;   // of the call
    std::string why;            // what the skill lacks; empty: it has enough
    std::vector<Offer> offers;  // a dozen at most
    bool together = false;      // it takes all of them, and they do give more
};

/// Takes up to some seconds for 500 words: call it aside.
Offers findMore(const FindCall& call, const KnownWords& known, const speech::BlockList& blocked);

/// Where a sound is looked for in a word, as the end of a sentence: "at the beginning", "at the
/// end", "in the middle", "in it".
std::string_view whereSound(exercise::Skill skill);
/// True iff topic and sound choose among what is offered: sentences have none.
bool choosesAmongWords(exercise::Skill skill);

/// The topics of the classroom list, those with most words first.
std::vector<std::string> topicsOf(const KnownWords& known);
/// The sounds that words of the list have in that place, most frequent first.
std::vector<std::string> soundsOf(const KnownWords& known, exercise::Skill skill);

}  // namespace wrenlet::desk
