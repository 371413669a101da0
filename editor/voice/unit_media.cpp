#include "editor/voice/unit_media.hpp"

#include <algorithm>

#include "content/common/files.hpp"
#include "content/pack/media_check.hpp"
#include "editor/voice/audio_file.hpp"
#include "editor/voice/take.hpp"

namespace wrenlet::desk {
namespace {

Result<pack::Clip> encoded(const Pcm& sound, bool demo_voice) {
    Result<std::string> bytes = encodeOgg(sound);
    if (!bytes.ok()) return bytes.problems();
    pack::Clip clip;
    clip.seconds = sound.seconds();
    clip.demo_voice = demo_voice;
    clip.bytes = std::move(bytes.value());
    return clip;
}

}  // namespace

Result<pack::Clip> UnitMedia::clip(const pack::VoiceNeed& need) {
    std::string name = need.id;
    std::replace(name.begin(), name.end(), ':', '_');
    for (const char* ending : {".wav", ".flac", ".ogg", ".mp3"}) {
        const std::filesystem::path path = recordings_ / (name + ending);
        std::error_code error;
        if (!std::filesystem::exists(path, error)) continue;
        Result<Pcm> take = readTake(path);
        if (!take.ok()) return take.problems();
        const CheckedTake checked = checkedTake(std::move(take.value()), need);
        if (checked.spoken.empty())
            return Problem{path.filename().string(), "Nothing is heard in this recording.",
                           "Record it again."};
        return encoded(checked.clip, false);
    }
    const Pcm said = voice_.say(need);
    if (said.samples.empty())
        return Problem{need.id, "The demo voice cannot say \"" + need.text + "\".",
                       "Record it: recordings/" + name + ".wav"};
    return encoded(said, true);
}

Result<pack::Picture> UnitMedia::picture(std::string_view id) {
    const std::string name(id);
    Result<std::string> bytes = readWhole(pictures_ / (name + ".svg"), pack::kMostPictureBytes);
    if (!bytes.ok())
        return Problem{name, "There is no picture \"" + name + "\" in the picture set.",
                       "Choose another, or leave the picture out."};
    const std::string why = pack::whyNoPicture(bytes.value());
    if (!why.empty())
        return Problem{name + ".svg", "This file " + why + ".", "Choose another picture."};
    pack::Picture picture;
    picture.id = name;
    picture.bytes = std::move(bytes.value());
    return picture;
}

}  // namespace wrenlet::desk
