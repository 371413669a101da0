#include "game/sdl/sound_device.hpp"

#include <SDL_mixer.h>

namespace wrenlet::game {

namespace {

bool openMixer(int frames) {
    return Mix_OpenAudioDevice(kSampleRate, AUDIO_S16SYS, 2, frames, nullptr, 0) == 0;
}

}  // namespace

SoundDevice::SoundDevice(Mixer& mixer) : mixer_(mixer), mutex_(SDL_CreateMutex()) {}

SoundDevice::~SoundDevice() {
    if (mixing_) {
        Mix_HookMusic(nullptr, nullptr);
        Mix_CloseAudio();
    }
    if (started_) SDL_QuitSubSystem(SDL_INIT_AUDIO);
}

void SoundDevice::open(Use use, int frames) {
    if (open_) return;
    open_ = true;
    SDL_SetHint(SDL_HINT_AUDIO_RESAMPLING_MODE, "best");
    if (use == Use::play) {
        if (start() && openPlaying(frames)) return;
        trouble_ = std::string("No sound can be heard: the tablet gives no sound device (") +
                   SDL_GetError() +
                   "). Check that the speaker or headphones are connected and that no other "
                   "program holds them, then start Wrenlet again.";
    }
    if (!openMute()) {
        if (trouble_.empty())
            trouble_ = std::string("No clip can be decoded here (") + SDL_GetError() + ").";
    } else if (use == Use::play) {
        Mix_HookMusic(&SoundDevice::pull, this);
    }
}

bool SoundDevice::start() {
    started_ = SDL_InitSubSystem(SDL_INIT_AUDIO) == 0;
    return started_;
}

// SDL_mixer decodes only while a device is open, so a mute one stands in.
bool SoundDevice::openMute() {
    if (started_) SDL_QuitSubSystem(SDL_INIT_AUDIO);
    SDL_SetHintWithPriority(SDL_HINT_AUDIODRIVER, "dummy", SDL_HINT_OVERRIDE);
    mixing_ = start() && openMixer(4096);
    return mixing_;
}

bool SoundDevice::openPlaying(int frames) {
    for (const int size : {frames, 2 * frames}) {
        if (!openMixer(size)) continue;
        mixing_ = true;
        buffer_ = size;
        Mix_HookMusic(&SoundDevice::pull, this);
        return true;
    }
    return false;
}

void SoundDevice::pull(void* self, Uint8* bytes, int length) {
    auto& device = *static_cast<SoundDevice*>(self);
    auto* samples = reinterpret_cast<std::int16_t*>(bytes);
    const std::size_t frames = static_cast<std::size_t>(length) / (2 * sizeof(std::int16_t));
    device.lock();
    device.mixer_.mix(samples, frames);
    device.unlock();
    if (device.heard_) device.heard_(samples, frames);
}

}  // namespace wrenlet::game
