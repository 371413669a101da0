// The voice that speaks until the teacher has recorded hers: flite's, from our own phonemes, so
// that it says "bow" as the unit means it. Nobody takes it for a person, and its clips say so.
#pragma once

#include <memory>

#include "content/pack/pack_builder.hpp"
#include "content/speech/lexicon.hpp"
#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

class DemoVoice {
  public:
    explicit DemoVoice(const speech::Lexicon& lexicon);
    ~DemoVoice();
    DemoVoice(const DemoVoice&) = delete;
    DemoVoice& operator=(const DemoVoice&) = delete;

    /// The clip at kClipRate and its loudness. A stop alone is cut from between two vowels, so that
    /// no vowel is added to it; a sound that can be held is held. Empty when it can't be said. The
    /// same need gives the same clip, in whatever order; may be called from several threads.
    Pcm say(const pack::VoiceNeed& need) const;

  private:
    struct Engine;
    std::unique_ptr<Engine> engine_;
    const speech::Lexicon& lexicon_;
};

}  // namespace wrenlet::desk
