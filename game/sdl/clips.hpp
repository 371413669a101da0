// The pack's recordings, decoded when they are first wanted or, before that, in idle moments. So
// much is held and no more: what was not heard for longest goes first, and is decoded again when it
// is wanted again.
#pragma once

#include <cstdint>
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
    /// Six minutes of sound.
    static constexpr std::size_t kMostBytes = 32u << 20;

    /// `ready` makes sure that clips can be decoded (opens the sound device). The pack must outlive
    /// it and stay as it is.
    DecodedClips(const pack::Pack& pack, std::function<void()> ready,
                 std::size_t most_bytes = kMostBytes)
        : pack_(pack), ready_(std::move(ready)), most_bytes_(most_bytes) {}

    std::shared_ptr<const Pcm> clip(std::string_view id) override;
    /// Decodes the next clip that is not held; false when none is left or enough are held.
    bool decodeOne();
    std::size_t bytes() const { return bytes_; }

  private:
    struct Held {
        std::shared_ptr<const Pcm> pcm;  // null: no sound
        std::uint64_t wanted = 0;        // the newest was wanted last
        std::size_t bytes() const { return pcm ? pcm->samples.size() * sizeof(std::int16_t) : 0; }
    };
    std::shared_ptr<const Pcm> decode(const pack::Clip& clip);
    void makeRoom();

    const pack::Pack& pack_;
    std::function<void()> ready_;
    std::size_t most_bytes_;
    std::map<std::string, Held, std::less<>> held_;
    std::uint64_t wanted_ = 0;
    std::size_t next_ = 0;
    std::size_t bytes_ = 0;
};

/// Any encoding that SDL_mixer reads, as mono at 48 kHz. Nothing when it is no sound.
/// REQUIRES: an open sound device.
std::unique_ptr<Pcm> decodeClip(std::string_view bytes);

}  // namespace wrenlet::game
