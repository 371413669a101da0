// The machine's microphone and loudspeaker through SDL, for the booth and for hearing a word.
#pragma once

#include <SDL.h>

#include <memory>

#include "editor/booth/microphone.hpp"

namespace wrenlet::desk {

class SdlMicrophone final : public Microphone {
  public:
    ~SdlMicrophone() override { stop(); }
    Result<int> start() override;
    void stop() override;
    std::vector<float> heard() override;

  private:
    SDL_AudioDeviceID device_ = 0;
};

class SdlSpeaker final : public Speaker {
  public:
    ~SdlSpeaker() override;
    /// Silent where there is no loudspeaker.
    void play(const std::vector<float>& samples, int rate) override;
    bool isPlaying() const override;

  private:
    SDL_AudioDeviceID device_ = 0;
    int rate_ = 0;
};

}  // namespace wrenlet::desk
