// Where a unit's clips and pictures come from: the teacher's recordings beside the unit, the demo
// voice for what she has not recorded, the picture set.
#pragma once

#include <filesystem>

#include "content/pack/pack_builder.hpp"
#include "editor/voice/demo_voice.hpp"

namespace wrenlet::desk {

class UnitMedia final : public pack::Media {
  public:
    /// `recordings` may be missing; a recording is named after its clip, with "_" for ":"
    /// (word_duck.wav, sound_k.flac), and replaces the demo voice.
    UnitMedia(std::filesystem::path recordings, std::filesystem::path pictures,
              const DemoVoice& voice)
        : recordings_(std::move(recordings)), pictures_(std::move(pictures)), voice_(voice) {}

    Result<pack::Clip> clip(const pack::VoiceNeed& need) override;
    Result<pack::Picture> picture(std::string_view id) override;

  private:
    std::filesystem::path recordings_, pictures_;
    const DemoVoice& voice_;
};

}  // namespace wrenlet::desk
