// Lint: what a teacher should know of a word, or of words together, before a child hears them. A
// warning forbids nothing; item makers leave such words out wherever they would mislead, and here
// it is said which, why, and what to take instead.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/skill.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/block_list.hpp"

namespace wrenlet::exercise {

/// Codes of one word by itself:
///   unknown                it has no sounds; nothing else is said of it then
///   first-letter-misleads  it does not begin with what its first letter is taught to say
///   vowel-before-l-or-r    of one syllable, with a vowel that /l/ or /ɹ/ colours (RF.K.2.d)
///   ends-in-ks             of one syllable, ending in the two sounds of the letter x (RF.K.2.d)
///   accent-dependent       an accent says it with another sound
///   count-varies           speakers count its syllables differently
///   no-picture             it can be heard and never chosen; a compound's part needs none
///   rude                   it is written or said like a word that is not fit for class
///   rude-remainder         what an exercise would leave of it is not fit for class
/// Of words together:
///   shared-picture         two have one picture
///   looks-alike            children may call either picture by the other's name
///   said-alike             two are said alike
///   accent-dependent       in an accent two are said alike, or rhyme that else do not
///   cluster-among-singles  few begin with several consonants, most with one
/// Of words and a skill:
///   too-few-words          they give fewer than kFewestQuestions questions
struct Lint {
    std::string code;
    std::vector<std::string> words;  // ids, in the order of the vocabulary
    std::string why;                 // one plain sentence or two
    std::string way_out;
    std::optional<Skill> skill = std::nullopt;  // of too-few-words
    std::vector<std::string> suggestions = {};  // of too-few-words: ids of words or sentences
    bool operator==(const Lint&) const = default;
};

inline constexpr std::string_view kTooFewWords = "too-few-words";

struct LintRules {
    /// Each judged by itself. Those that item makers heed; see speech::saidAlikeByMany().
    std::vector<speech::Accent> accents = {speech::Accent::cot_caught, speech::Accent::before_r,
                                           speech::Accent::pin_pen};
    /// Whether a pronunciation is unfit for class; null: nothing is.
    std::function<bool(const speech::Pronunciation&)> is_rude;
    /// The same for a word as it is written.
    std::function<bool(std::string_view)> is_rude_written;
};

/// The usual rules, with what `blocked` keeps out. REQUIRES: `blocked` outlives them.
LintRules rulesWith(const speech::BlockList& blocked);

/// `vocabulary` holds the parts of compounds; `word` need not be in it.
std::vector<Lint> lintWord(const Word& word, const Vocabulary& vocabulary, const LintRules& rules);

/// Of the vocabulary's words together; words without sounds are passed over.
std::vector<Lint> lintTogether(const Vocabulary& vocabulary, const LintRules& rules);

/// Fewer different questions than this are soon known by heart.
inline constexpr std::size_t kFewestQuestions = 8;

/// The questions of a skill that these words give; the same one with other foils counts once.
std::size_t questionCount(const Vocabulary& vocabulary, Skill skill);

/// Nothing when there are enough, or all the letters that a skill asks about. Suggests words (or
/// sentences) of `list`, the fewest it finds, no more than twelve: together with `vocabulary` they
/// do give more questions, and each stands in one or, for letters, brings one. A suggested compound
/// needs its parts as words too.
std::optional<Lint> lintSkill(const Vocabulary& vocabulary, Skill skill, const Vocabulary& list,
                              const LintRules& rules);

/// `vocabulary` with these words and sentences of `list`, and with compounds' parts, which are
/// heard and have no picture.
Vocabulary withSuggestions(const Vocabulary& vocabulary, const std::vector<std::string>& ids,
                           const Vocabulary& list);

}  // namespace wrenlet::exercise
