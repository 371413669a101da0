#include "game/stage/speaker.hpp"

#include <algorithm>
#include <vector>

namespace wrenlet::game {

namespace {

class Held {
  public:
    explicit Held(SoundLock& lock) : lock_(lock) { lock_.lock(); }
    ~Held() { lock_.unlock(); }
    Held(const Held&) = delete;
    Held& operator=(const Held&) = delete;

  private:
    SoundLock& lock_;
};

// Rounded up, so that a scene that waits for the end never cuts the last sample.
Millis millisUntil(std::int64_t samples) {
    return (samples + kSamplesPerMilli - 1) / kSamplesPerMilli;
}

}  // namespace

Speech Speaker::say(const Utterance& utterance, Millis now) {
    std::vector<std::shared_ptr<const Pcm>> clips;  // decoded before the lock
    for (const Spoken& spoken : utterance) clips.push_back(bank_.clip(spoken.clip));

    const Held held(lock_);
    const std::int64_t wait = millisUntil(std::max<std::int64_t>(0, cue_until_ - mixer_.clock()));
    Speech speech;
    std::vector<Mixer::Line> lines;
    std::vector<std::int64_t> begins;
    std::int64_t at = 0;
    for (const Spoken& spoken : utterance) {
        at += std::max<Millis>(spoken.gap_before, 0) * kSamplesPerMilli;
        if (speech.clips.empty()) at = std::max(at, wait * kSamplesPerMilli);
        const Pcm* pcm = clips[speech.clips.size()].get();
        const std::int64_t length = pcm != nullptr ? static_cast<std::int64_t>(pcm->samples.size())
                                                   : kMissingClipMillis * kSamplesPerMilli;
        if (pcm != nullptr) lines.push_back({pcm, at});
        begins.push_back(mixer_.clock() + at);
        speech.clips.push_back({now + at / kSamplesPerMilli, now + millisUntil(at + length)});
        at += length;
    }
    speech.end = now + millisUntil(at);
    stopVoice();
    mixer_.begin(Mixer::Lane::voice, lines);
    for (std::size_t i = 0; i < clips.size(); ++i)
        if (clips[i] != nullptr) kept_.push_back({std::move(clips[i]), begins[i]});
    said_until_ = mixer_.clock() + at;
    return speech;
}

void Speaker::hush() {
    const Held held(lock_);
    stopVoice();
    said_until_ = mixer_.clock();
}

// What is stopped fades, and so is kept a little longer.
void Speaker::stopVoice() {
    mixer_.stop(Mixer::Lane::voice);
    const std::int64_t clock = mixer_.clock();
    for (Kept& kept : kept_)
        if (kept.stopped < 0) kept.stopped = clock;
    std::erase_if(kept_, [clock](const Kept& kept) {
        return kept.begin >= clock || kept.stopped + kFadeSamples < clock;
    });
}

void Speaker::setVolume(float volume) {
    const Held held(lock_);
    mixer_.setVolume(volume);
}

void Speaker::prepareCues() {
    if (!cues_) cues_.emplace();
}

void Speaker::cue(std::string_view name) {
    prepareCues();
    const Cue* cue = cues_->find(name);
    if (cue == nullptr) return;
    const Held held(lock_);
    const bool speaks = mixer_.clock() < said_until_;
    const Mixer::Line line{speaks ? &cue->under_speech : &cue->alone, 0};
    mixer_.stop(Mixer::Lane::cue);
    mixer_.begin(Mixer::Lane::cue, {&line, 1});
    if (!speaks) cue_until_ = mixer_.clock() + cue->fades_after * kSamplesPerMilli;
}

}  // namespace wrenlet::game
