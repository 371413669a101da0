// Where a unit's clips and pictures come from: the teacher's takes, the demo voice for what she has
// not recorded, her own pictures, the picture set.
#pragma once

#include <filesystem>
#include <functional>
#include <span>
#include <string>
#include <vector>

#include "content/pack/pack_builder.hpp"
#include "content/pack/unit.hpp"
#include "editor/voice/clip_shelf.hpp"
#include "editor/voice/demo_voice.hpp"

namespace wrenlet::desk {

/// Where things lie beside a unit's file.
struct UnitPlaces {
    std::filesystem::path takes;         // the files that the unit's recordings name
    std::filesystem::path recordings;    // loose recordings, each named after its clip with "_" for
                                         // ":" (word_duck.wav, sound_k.flac); may be missing
    std::filesystem::path own_pictures;  // may be missing
    std::filesystem::path picture_set;

    /// Those of a unit's file in its folder, with the picture set of the desk.
    static UnitPlaces beside(const std::filesystem::path& unit_file,
                             const std::filesystem::path& picture_set);
};

/// What is to be said, as a recording remembers it: a word's sounds, a sentence's text.
std::string saidFor(const pack::VoiceNeed& need);

/// What clips are made with.
struct ClipMaking {
    const DemoVoice& voice;
    unsigned threads = 1;
    const ClipShelf* shelf = nullptr;  // none: each is made anew
};

class UnitMedia final : public pack::Media {
  public:
    /// The unit's recordings go before loose ones, and those before the demo voice. All must
    /// outlive it.
    UnitMedia(const pack::Unit& unit, UnitPlaces places, const ClipMaking& making)
        : unit_(unit), places_(std::move(places)), making_(making) {}

    /// A recording of something that has changed since gives the demo voice and a warning.
    std::vector<Result<pack::Clip>> clips(std::span<const pack::VoiceNeed> needs,
                                          const pack::Progress& progress) override;
    Result<pack::Picture> picture(std::string_view id) override;

  private:
    Result<pack::Clip> clip(const pack::VoiceNeed& need) const;
    /// What the shelf holds under `key`, or else what `make` gives.
    Result<pack::Clip> kept(const std::string& key,
                            const std::function<Result<pack::Clip>()>& make) const;

    const pack::Unit& unit_;
    UnitPlaces places_;
    ClipMaking making_;
};

}  // namespace wrenlet::desk
