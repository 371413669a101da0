// The machine's microphone and loudspeaker through SDL, for the booth and for hearing a word.
#pragma once

#include <SDL.h>

#include <memory>
#include <string>

#include "editor/booth/microphone.hpp"
#include "editor/settings/sound_devices.hpp"

namespace wrenlet::desk {

class SdlMicrophone final : public Microphone {
  public:
    ~SdlMicrophone() override { stop(); }
    Result<int> start() override;
    void stop() override;
    std::vector<float> heard() override;
    /// The one of that name from the next start on; the system's own where there is none such.
    void use(const std::string& name);

  private:
    std::string name_;
    SDL_AudioDeviceID device_ = 0;
};

class SdlSpeaker final : public Speaker {
  public:
    ~SdlSpeaker() override;
    /// Silent where there is no loudspeaker.
    void play(const std::vector<float>& samples, int rate) override;
    bool isPlaying() const override;
    /// As for the microphone, from the next sound on.
    void use(const std::string& name);

  private:
    void close();

    std::string name_;
    SDL_AudioDeviceID device_ = 0;
    int rate_ = 0;
};

/// All that SDL lists. Both must outlive it.
class SdlDevices final : public SoundDevices {
  public:
    SdlDevices(SdlMicrophone& microphone, SdlSpeaker& speaker)
        : microphone_(microphone), speaker_(speaker) {}
    std::vector<std::string> names(SoundWay way) override;
    void use(SoundWay way, const std::string& name) override;

  private:
    SdlMicrophone& microphone_;
    SdlSpeaker& speaker_;
};

}  // namespace wrenlet::desk
