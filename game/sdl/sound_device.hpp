// The sound device: pulls samples out of the mixer at 48 kHz. Where there is none the game goes on
// in silence, in the same time, and says so to an adult.
#pragma once

#include <SDL.h>

#include <functional>
#include <string>

#include "game/sdl/handles.hpp"
#include "game/stage/mixer.hpp"
#include "game/stage/speaker.hpp"

namespace wrenlet::game {

class SoundDevice final : public SoundLock {
  public:
    enum class Use {
        play,         // on the machine's device
        decode_only,  // nothing is pulled: whoever runs the clock pulls the mixer itself
    };
    /// Told of every buffer handed over, on the device's own thread (for measuring).
    using Heard = std::function<void(const std::int16_t* stereo, std::size_t frames)>;

    /// The mixer must outlive it. Opens nothing yet.
    explicit SoundDevice(Mixer& mixer);
    ~SoundDevice() override;
    SoundDevice(const SoundDevice&) = delete;
    SoundDevice& operator=(const SoundDevice&) = delete;

    void setHeard(Heard heard) { heard_ = std::move(heard); }  // before open()
    /// Opens it if it is not open, with buffers of so many frames. Clips can be decoded from then
    /// on, with a device or without.
    void open(Use use, int frames = 512);
    bool isOpen() const { return open_; }
    /// Frames of one buffer, or 0 when nothing is played.
    int bufferFrames() const { return buffer_; }
    /// Why nothing can be heard, in words for an adult; empty when all is well.
    const std::string& trouble() const { return trouble_; }

    void lock() override { SDL_LockMutex(mutex_.get()); }
    void unlock() override { SDL_UnlockMutex(mutex_.get()); }

  private:
    static void pull(void* self, Uint8* bytes, int length);
    bool start();
    bool openPlaying(int frames);
    bool openMute();

    Mixer& mixer_;
    MutexPtr mutex_;
    Heard heard_;
    std::string trouble_;
    int buffer_ = 0;
    bool open_ = false;
    bool started_ = false;  // SDL's audio, by this device
    bool mixing_ = false;   // SDL_mixer has a device
};

}  // namespace wrenlet::game
