// The pack's recordings, decoded when they are first wanted or, before that, in idle moments.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>

#include "content/pack/pack.hpp"
#include "game/stage/speaker.hpp"

namespace wrenlet::game {

class DecodedClips final : public ClipBank {
  public:
    /// `ready` makes sure that clips can be decoded (opens the sound device). The pack must outlive
    /// it and stay as it is.
    DecodedClips(const pack::Pack& pack, std::function<void()> ready)
        : pack_(pack), ready_(std::move(ready)) {}

    const Pcm* clip(std::string_view id) override;
    /// Decodes the next clip that is not yet; false when none is left or enough are held.
    bool decodeOne();
    std::size_t bytes() const { return bytes_; }

  private:
    static constexpr std::size_t kMostIdleBytes = 96u << 20;
    const Pcm* decode(const pack::Clip& clip);

    const pack::Pack& pack_;
    std::function<void()> ready_;
    std::map<std::string, std::unique_ptr<Pcm>, std::less<>> held_;  // null: no sound
    std::size_t next_ = 0;
    std::size_t bytes_ = 0;
};

/// Any encoding that SDL_mixer reads, as mono at 48 kHz. Nothing when it is no sound.
/// REQUIRES: an open sound device.
std::unique_ptr<Pcm> decodeClip(std::string_view bytes);

}  // namespace wrenlet::game
