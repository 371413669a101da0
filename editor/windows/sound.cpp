#include "editor/windows/sound.hpp"

#include <algorithm>

namespace wrenlet::desk {

namespace {

constexpr int kRate = 48'000, kBlock = 512;
constexpr std::size_t kMostHeard = 10u * kRate;  // in one go: a stalled window loses what is older

bool hasSound() {
    return SDL_WasInit(SDL_INIT_AUDIO) != 0 || SDL_InitSubSystem(SDL_INIT_AUDIO) == 0;
}

SDL_AudioSpec monoAt(int rate) {
    SDL_AudioSpec wanted{};
    wanted.freq = rate;
    wanted.format = AUDIO_F32SYS;
    wanted.channels = 1;
    wanted.samples = kBlock;
    return wanted;
}

}  // namespace

Result<int> SdlMicrophone::start() {
    const Problem none{"Microphone", "No microphone found.",
                       "Plug one in, or go on with the demo voice."};
    if (device_ != 0) return kRate;
    if (!hasSound()) return none;
    const SDL_AudioSpec wanted = monoAt(kRate);
    // SDL converts from whatever the microphone gives
    device_ = SDL_OpenAudioDevice(nullptr, 1, &wanted, nullptr, 0);
    if (device_ == 0) return none;
    SDL_PauseAudioDevice(device_, 0);
    return kRate;
}

void SdlMicrophone::stop() {
    if (device_ != 0) SDL_CloseAudioDevice(device_);
    device_ = 0;
}

std::vector<float> SdlMicrophone::heard() {
    if (device_ == 0) return {};
    const std::size_t waiting = SDL_GetQueuedAudioSize(device_) / sizeof(float);
    std::vector<float> samples(std::min(waiting, kMostHeard));
    const Uint32 bytes = SDL_DequeueAudio(device_, samples.data(),
                                          static_cast<Uint32>(samples.size() * sizeof(float)));
    samples.resize(bytes / sizeof(float));
    return samples;
}

SdlSpeaker::~SdlSpeaker() {
    if (device_ != 0) SDL_CloseAudioDevice(device_);
}

void SdlSpeaker::play(const std::vector<float>& samples, int rate) {
    if (!hasSound() || samples.empty()) return;
    if (device_ != 0 && rate != rate_) {
        SDL_CloseAudioDevice(device_);
        device_ = 0;
    }
    if (device_ == 0) {
        const SDL_AudioSpec wanted = monoAt(rate);
        device_ = SDL_OpenAudioDevice(nullptr, 0, &wanted, nullptr, 0);
        rate_ = rate;
        if (device_ == 0) return;
    }
    SDL_ClearQueuedAudio(device_);
    SDL_QueueAudio(device_, samples.data(), static_cast<Uint32>(samples.size() * sizeof(float)));
    SDL_PauseAudioDevice(device_, 0);
}

bool SdlSpeaker::isPlaying() const {
    return device_ != 0 && SDL_GetQueuedAudioSize(device_) > 0;
}

}  // namespace wrenlet::desk
