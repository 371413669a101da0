// Where a unit's clips and pictures come from: the teacher's takes, the demo voice for what she has
// not recorded, her own pictures, the picture set.
#pragma once

#include <filesystem>

#include "content/pack/pack_builder.hpp"
#include "content/pack/unit.hpp"
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

class UnitMedia final : public pack::Media {
  public:
    /// The unit's recordings go before loose ones, and those before the demo voice. All must
    /// outlive it.
    UnitMedia(const pack::Unit& unit, UnitPlaces places, const DemoVoice& voice)
        : unit_(unit), places_(std::move(places)), voice_(voice) {}

    /// A recording of something that has changed since gives the demo voice and a warning.
    Result<pack::Clip> clip(const pack::VoiceNeed& need) override;
    Result<pack::Picture> picture(std::string_view id) override;

  private:
    const pack::Unit& unit_;
    UnitPlaces places_;
    const DemoVoice& voice_;
};

}  // namespace wrenlet::desk
