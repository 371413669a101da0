// Whether a take is likelier another word than the one asked for, and whether a vowel was said
// after lone consonants. A recogniser stands behind this interface, so that the desk runs where
// there is none. It can warn of the wrong clip; it can't tell words apart that differ in one sound,
// so it never blocks.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>

#include "content/speech/phoneme.hpp"
#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

struct SaidWord {
    std::string text;
    speech::Pronunciation sounds;
};

/// How well each word fits what is heard.
struct EarJudgement {
    std::size_t likeliest = 0;  // index into the others
    double margin = 0;  // per 10 ms, the expected word over that one; below 0: that one fits
                        // better
};

/// How well consonants alone fit what is heard, held against the same with a vowel after them.
struct VowelJudgement {
    double margin = 0;              // in the recogniser's unit; below 0: with a vowel fits better
    double begin_s = 0, end_s = 0;  // the vowel, if it is one, in what was heard
};

class WordEar {
  public:
    virtual ~WordEar() = default;
    /// Takes tens of milliseconds: not on the thread that draws. One ear serves one thread at a
    /// time. Nothing when it can't tell: no others, too short, silence.
    virtual std::optional<EarJudgement> judge(const Pcm& spoken,
                                              const speech::Pronunciation& expected,
                                              std::span<const SaidWord> others) = 0;
    /// As above. `spoken`: with some of the room around it, which tells noise from speech. Nothing
    /// when it can't tell: no consonants, too short or too long.
    virtual std::optional<VowelJudgement> vowelAfter(const Pcm& spoken,
                                                     const speech::Pronunciation& consonants) = 0;
};

/// The recogniser of this machine, with the model in ear/ of `assets`, else with the machine's own;
/// null when neither is there.
std::unique_ptr<WordEar> openWordEar(const std::filesystem::path& assets = {});

}  // namespace wrenlet::desk
