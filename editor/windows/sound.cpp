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

/// Of that name, or the system's own where it does not open.
SDL_AudioDeviceID openDevice(const std::string& name, bool captures, int rate) {
    const SDL_AudioSpec wanted = monoAt(rate);
    SDL_AudioDeviceID device = 0;
    if (!name.empty()) device = SDL_OpenAudioDevice(name.c_str(), captures, &wanted, nullptr, 0);
    // SDL converts from whatever the device gives or takes
    if (device == 0) device = SDL_OpenAudioDevice(nullptr, captures, &wanted, nullptr, 0);
    return device;
}

}  // namespace

Result<int> SdlMicrophone::start() {
    const Problem none{"Microphone", "No microphone found.",
                       "Plug one in, or go on with the demo voice."};
    if (device_ != 0) return kRate;
    if (!hasSound()) return none;
    device_ = openDevice(name_, true, kRate);
    if (device_ == 0) return none;
    SDL_PauseAudioDevice(device_, 0);
    return kRate;
}

void SdlMicrophone::stop() {
    if (device_ != 0) SDL_CloseAudioDevice(device_);
    device_ = 0;
}

void SdlMicrophone::use(const std::string& name) {
    if (name == name_) return;
    stop();
    name_ = name;
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
    close();
}

void SdlSpeaker::close() {
    if (device_ != 0) SDL_CloseAudioDevice(device_);
    device_ = 0;
}

void SdlSpeaker::use(const std::string& name) {
    if (name != name_) close();
    name_ = name;
}

void SdlSpeaker::play(const std::vector<float>& samples, int rate) {
    if (!hasSound() || samples.empty()) return;
    if (device_ != 0 && rate != rate_) close();
    if (device_ == 0) {
        device_ = openDevice(name_, false, rate);
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

std::vector<std::string> SdlDevices::names(SoundWay way) {
    std::vector<std::string> names;
    if (!hasSound()) return names;
    const int captures = way == SoundWay::in ? 1 : 0;
    for (int i = 0; i < SDL_GetNumAudioDevices(captures); ++i)
        if (const char* name = SDL_GetAudioDeviceName(i, captures)) names.emplace_back(name);
    return names;
}

void SdlDevices::use(SoundWay way, const std::string& name) {
    if (way == SoundWay::in)
        microphone_.use(name);
    else
        speaker_.use(name);
}

}  // namespace wrenlet::desk
