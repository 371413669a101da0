// The voice of the game: lays a scene's words out on the mixer's sample clock and tells the scene
// when each will sound, in the game's own time.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "game/stage/cues.hpp"
#include "game/stage/mixer.hpp"
#include "game/stage/voice.hpp"

namespace wrenlet::game {

/// Where decoded clips come from.
class ClipBank {
  public:
    virtual ~ClipBank() = default;
    /// The clip, decoded now if it is not held; null when there is none or it is no sound. The bank
    /// may let it go when others are asked for: whoever plays it keeps it.
    virtual std::shared_ptr<const Pcm> clip(std::string_view id) = 0;
};

/// Keeps a sound device's callback out of the mixer while voices change.
class SoundLock {
  public:
    virtual ~SoundLock() = default;
    virtual void lock() = 0;
    virtual void unlock() = 0;
};

/// Silence in place of a clip that the pack lacks, so that the rest is still heard in turn.
inline constexpr Millis kMissingClipMillis = 300;

class Speaker final : public Voice {
  public:
    /// All three must outlive it.
    Speaker(Mixer& mixer, ClipBank& bank, SoundLock& lock)
        : mixer_(mixer), bank_(bank), lock_(lock) {}

    /// Waits for a cue that has just begun to fade: no sound of a word is covered by it.
    Speech say(const Utterance& utterance, Millis now) override;
    void hush() override;
    /// Softer while something is said.
    void cue(std::string_view name) override;
    void setVolume(float volume) override;
    /// Computes the cues, unless they are, so that the first touch does not wait for it.
    void prepareCues();
    std::string trouble() const override { return trouble_; }

    /// What the sound device says of itself, in words for an adult; empty when all is well.
    void setTrouble(std::string trouble) { trouble_ = std::move(trouble); }

  private:
    struct Kept {
        std::shared_ptr<const Pcm> pcm;
        std::int64_t begin = 0;     // the mixer's sample
        std::int64_t stopped = -1;  // the sample at which it was; -1: it may sound
    };
    void stopVoice();

    Mixer& mixer_;
    ClipBank& bank_;
    SoundLock& lock_;
    std::vector<Kept> kept_;  // what the mixer may still read
    std::optional<Cues> cues_;
    std::int64_t said_until_ = 0, cue_until_ = 0;  // the mixer's samples
    std::string trouble_;
};

}  // namespace wrenlet::game
