// Whether a take is likelier another word than the one asked for. A recogniser stands behind this
// interface, so that the desk runs where there is none. It can warn of the wrong clip; it can't
// tell words apart that differ in one sound, so it never blocks.
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

class WordEar {
  public:
    virtual ~WordEar() = default;
    /// Takes tens of milliseconds: not on the thread that draws. One ear serves one thread at a
    /// time. Nothing when it can't tell: no others, too short, silence.
    virtual std::optional<EarJudgement> judge(const Pcm& spoken,
                                              const speech::Pronunciation& expected,
                                              std::span<const SaidWord> others) = 0;
};

/// The recogniser of this machine, with the model in ear/ of `assets`, else with the machine's own;
/// null when neither is there.
std::unique_ptr<WordEar> openWordEar(const std::filesystem::path& assets = {});

}  // namespace wrenlet::desk
