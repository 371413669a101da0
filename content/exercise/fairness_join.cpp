#include <algorithm>

#include "content/exercise/fairness_rules.hpp"

namespace wrenlet::exercise::fairness {

namespace {

/// True iff the sounds from one end on are written `text`, whole sounds each: "chip" does not begin
/// with /t/, for /tʃ/ is one sound.
template <class From>
bool isSaid(From begin, From end, std::string_view text, bool backwards) {
    if (text.empty()) return false;
    for (; begin != end && !text.empty(); ++begin) {
        const std::string_view sound = speech::ipa(begin->phoneme);
        if (sound.size() > text.size()) return false;
        const std::size_t at = backwards ? text.size() - sound.size() : 0;
        if (text.substr(at, sound.size()) != sound) return false;
        backwards ? text.remove_suffix(sound.size()) : text.remove_prefix(sound.size());
    }
    return text.empty();
}

bool standsThere(const TurnsOn& turns_on, const Word& word) {
    const speech::Pronunciation& said = word.sounds;
    switch (turns_on.position) {
        case Position::first:
            return isSaid(said.begin(), said.end(), turns_on.sound, false);
        case Position::last:
            return isSaid(said.rbegin(), said.rend(), turns_on.sound, true);
        case Position::middle:
            for (std::size_t i = 1; i + 1 < word.sounds.size(); ++i)
                if (speech::ipa(word.sounds[i].phoneme) == turns_on.sound) return true;
            return false;
        default:
            return false;
    }
}

}  // namespace

void judgeJoin(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    if (shownWords(item, std::vector{item.subject}, vocabulary, why).empty()) return;
    const Word& word = *vocabulary.word(item.subject);
    if (item.choices[item.answer].id != item.subject)
        why.push_back("the right choice is not " + quoted(item.subject));
    if (item.parts.size() < 2 || item.parts.size() > 4)
        why.push_back("it has " + std::to_string(item.parts.size()) + " parts");
    judgeParts(item, vocabulary, word, why);
    const bool is_part = item.turns_on.position == Position::whole &&
                         std::any_of(item.parts.begin(), item.parts.end(), [&](const Part& part) {
                             return part.label == item.turns_on.sound;
                         });
    if (!is_part && !standsThere(item.turns_on, word))
        why.push_back("/" + item.turns_on.sound + "/ does not stand there in " + quoted(word.id));
}

}  // namespace wrenlet::exercise::fairness
