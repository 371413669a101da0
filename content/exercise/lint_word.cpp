#include <algorithm>

#include "content/exercise/lint.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/speech/spelling.hpp"
#include "content/speech/syllable.hpp"
#include "content/speech/word_parts.hpp"

// What is to be said of one word by itself.

namespace wrenlet::exercise {

namespace {

using speech::Phoneme;
using speech::Pronunciation;

std::string quoted(const Word& word) {
    return "\"" + word.text + "\"";
}

std::string lowered(std::string text) {
    for (char& letter : text)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return text;
}

class WordLint {
  public:
    WordLint(const Word& word, const Vocabulary& vocabulary, const LintRules& rules)
        : word_(word), vocabulary_(vocabulary), rules_(rules) {}

    std::vector<Lint> take() {
        if (word_.sounds.empty()) {
            add("unknown", "How " + quoted(word_) + " is said is not known.",
                "Look at its spelling, or give its sounds (\"sounds\").");
            return std::move(found_);
        }
        firstLetter();
        blurred();
        accents();
        if (speech::countVaries(word_.sounds))
            add("count-varies",
                "Some say " + quoted(word_) + " with a beat more than others, so it is never " +
                    "counted or split into syllables.",
                "Take a word with a sure count for syllables.");
        if (word_.picture.empty() && !isPart())
            add("no-picture",
                quoted(word_) + " has no picture, so a child can hear it but not " + "choose it.",
                "Give it a picture, or keep it for listening.");
        rude();
        return std::move(found_);
    }

  private:
    void add(std::string code, std::string why, std::string way_out) {
        found_.push_back({std::move(code), {word_.id}, std::move(why), std::move(way_out)});
    }

    void firstLetter() {
        const std::string text = lowered(word_.text);
        if (!speech::firstLetterMisleads(text, word_.sounds)) return;
        add("first-letter-misleads",
            quoted(word_) + " begins with " + inSlashes(word_.sounds.front().phoneme) +
                ", which is not what the letter " + text.substr(0, 1) + " is first taught to say.",
            "Use it by ear alone; beside letters take another word.");
    }

    void blurred() {
        const Pronunciation& sounds = word_.sounds;
        if (speech::syllableCount(sounds) != 1 || !isBlurred(sounds)) return;
        const std::string standard = "RF.K.2.d leaves such words out.";
        for (std::size_t i = 0; i < sounds.size(); ++i) {
            const Phoneme phoneme = sounds[i].phoneme;
            const bool after_vowel = i > 0 && speech::isVowel(sounds[i - 1].phoneme);
            const bool colours = after_vowel && (phoneme == Phoneme::l || phoneme == Phoneme::r);
            if (!colours && phoneme != Phoneme::er) continue;
            add("vowel-before-l-or-r",
                (colours ? "In " + quoted(word_) + " " + inSlashes(phoneme) +
                               " colours the vowel before it"
                         : "In " + quoted(word_) + " the vowel and /ɹ/ are one sound") +
                    ", so its single sounds are hard to tell apart by ear. " + standard,
                "Use it for rhymes and word parts; for first, middle and last sounds take a word "
                "without it.");
            return;
        }
        add("ends-in-ks",
            quoted(word_) + " ends in two sounds, /k/ and /s/, however it is spelled. " + standard,
            "Use it for rhymes; for first, middle and last sounds take a word with one last "
            "sound.");
    }

    void accents() {
        for (const speech::Accent accent : rules_.accents) {
            const Pronunciation there = speech::inAccent(accent, word_.sounds);
            if (speech::sameSounds(there, word_.sounds)) continue;
            add("accent-dependent",
                quoted(word_) + " is said " + inSlashes(there) + " and not " +
                    inSlashes(word_.sounds) + " " + std::string(speech::accentMeaning(accent)) +
                    ".",
                "If your class speaks so, don't ask for that sound in it.");
        }
    }

    bool isPart() const {
        return std::any_of(
            vocabulary_.words.begin(), vocabulary_.words.end(), [this](const Word& whole) {
                return std::find(whole.compound.begin(), whole.compound.end(), word_.id) !=
                       whole.compound.end();
            });
    }

    void rude() {
        const bool written = rules_.is_rude_written && rules_.is_rude_written(word_.text);
        if (written || (rules_.is_rude && rules_.is_rude(word_.sounds)))
            add("rude", quoted(word_) + " may be heard as a rude word, so it is never asked.",
                "Take another word.");
        else if (rules_.is_rude)
            rudeRemainder();
    }

    void rudeRemainder() {
        const Pronunciation& sounds = word_.sounds;
        if (speech::syllableCount(sounds) == 1) {
            for (std::size_t i = 0; i < sounds.size() && sounds.size() > 1; ++i) {
                Pronunciation left = sounds;
                left.erase(left.begin() + static_cast<std::ptrdiff_t>(i));
                if (rudeIf(left, "when " + inSlashes(sounds[i].phoneme) + " is taken away")) return;
            }
            const auto parts = speech::onsetAndRime(sounds);
            if (parts && !parts->onset.empty())
                rudeIf(parts->rime, "when " + inSlashes(parts->onset) + " is parted from it");
            return;
        }
        std::vector<Pronunciation> parts;
        for (const std::string& id : word_.compound)
            if (const Word* part = vocabulary_.word(id)) parts.push_back(part->sounds);
        if (!rudeParts(parts)) rudeParts(speech::syllables(sounds));
    }

    /// Each part by itself, and what is left without the first or the last.
    bool rudeParts(const std::vector<Pronunciation>& parts) {
        const std::string when = "when it is taken apart";
        for (const Pronunciation& part : parts)
            if (rudeIf(part, when)) return true;
        if (parts.size() < 3) return false;
        Pronunciation without_last, without_first;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            if (i > 0) without_first.insert(without_first.end(), parts[i].begin(), parts[i].end());
            if (i + 1 < parts.size())
                without_last.insert(without_last.end(), parts[i].begin(), parts[i].end());
        }
        return rudeIf(without_first, when) || rudeIf(without_last, when);
    }

    bool rudeIf(const Pronunciation& left, const std::string& when) {
        if (left.empty() || !rules_.is_rude(left)) return false;
        add("rude-remainder",
            "What is left of " + quoted(word_) + " " + when + " is not fit for class.",
            "It is never asked so; to be at ease aloud, take another word.");
        return true;
    }

    const Word& word_;
    const Vocabulary& vocabulary_;
    const LintRules& rules_;
    std::vector<Lint> found_;
};

}  // namespace

LintRules rulesWith(const speech::BlockList& blocked) {
    LintRules rules;
    rules.is_rude = [&blocked](const Pronunciation& sounds) { return blocked.blocks(sounds); };
    rules.is_rude_written = [&blocked](std::string_view word) { return blocked.blocks(word); };
    return rules;
}

std::vector<Lint> lintWord(const Word& word, const Vocabulary& vocabulary, const LintRules& rules) {
    return WordLint(word, vocabulary, rules).take();
}

}  // namespace wrenlet::exercise
