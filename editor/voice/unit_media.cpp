#include "editor/voice/unit_media.hpp"

#include <algorithm>
#include <mutex>
#include <optional>
#include <thread>

#include "content/common/files.hpp"
#include "content/pack/media_check.hpp"
#include "editor/voice/audio_file.hpp"
#include "editor/voice/level.hpp"
#include "editor/voice/take.hpp"
#include "editor/voice/trim.hpp"

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

/// What children hear of a take between the ends that she chose.
Result<pack::Clip> recorded(const pack::UnitRecording& recording,
                            const std::filesystem::path& takes, const pack::VoiceNeed& need) {
    const Result<Pcm> take = readTake(takes / recording.take);
    if (!take.ok()) return take.problems();
    const auto sample = [&](std::int64_t us) {
        const auto at = static_cast<std::size_t>(us * take.value().rate / 1'000'000);
        return std::min(at, take.value().samples.size());
    };
    const Stretch kept{sample(recording.from_us), sample(recording.to_us)};
    const Stretch heard = heardIn(take.value()).all();
    const Stretch spoken{std::max(kept.begin, heard.begin), std::min(kept.end, heard.end)};
    if (spoken.empty())
        return Problem{recording.take, "Nothing is heard in the take of \"" + need.text + "\".",
                       "Record it again."};
    return encoded(levelClip(take.value(), kept, spoken, need), false);
}

/// All of a need that its clip depends on.
std::string keyOf(const pack::VoiceNeed& need) {
    std::string key = std::to_string(static_cast<int>(need.kind)) + (need.question ? "?" : ".");
    for (const speech::Sound& sound : need.sounds)
        key += " " + std::to_string(static_cast<int>(sound.phoneme)) + "." +
               std::to_string(static_cast<int>(sound.stress));
    return key + "\n" + need.text;
}

/// A take is never changed; one of the same name, put there by hand, has another size or time.
std::string keyOf(const pack::UnitRecording& recording, const std::filesystem::path& takes,
                  const pack::VoiceNeed& need) {
    const std::filesystem::path take = takes / recording.take;
    std::error_code error;
    const auto bytes = std::filesystem::file_size(take, error);
    const auto at = std::filesystem::last_write_time(take, error).time_since_epoch().count();
    return "hers\n" + keyOf(need) + "\n" + take.string() + "\n" + std::to_string(bytes) + " " +
           std::to_string(at) + " " + std::to_string(recording.from_us) + " " +
           std::to_string(recording.to_us);
}

const pack::UnitRecording* recordingOf(const pack::Unit& unit, const std::string& clip) {
    for (const pack::UnitRecording& recording : unit.recordings)
        if (recording.clip == clip) return &recording;
    return nullptr;
}

}  // namespace

UnitPlaces UnitPlaces::beside(const std::filesystem::path& unit_file,
                              const std::filesystem::path& picture_set) {
    const std::filesystem::path folder = unit_file.parent_path();
    return {folder / "takes", folder / "recordings", folder / "pictures", picture_set};
}

std::string saidFor(const pack::VoiceNeed& need) {
    return need.sounds.empty() ? need.text : speech::ipa(need.sounds);
}

std::vector<Result<pack::Clip>> UnitMedia::clips(std::span<const pack::VoiceNeed> needs,
                                                 const pack::Progress& progress) {
    std::vector<std::optional<Result<pack::Clip>>> made(needs.size());
    std::mutex telling;
    std::size_t next = 0, done = 0;
    bool goes_on = true;
    const auto take = [&]() -> std::optional<std::size_t> {
        const std::lock_guard lock(telling);
        if (!goes_on || next == needs.size()) return {};
        return next++;
    };
    const auto work = [&] {
        while (const auto i = take()) {
            made[*i] = clip(needs[*i]);
            const std::lock_guard lock(telling);
            ++done;
            if (progress && !progress(done, needs.size())) goes_on = false;
        }
    };
    std::vector<std::thread> helpers;
    for (unsigned i = 1; i < making_.threads; ++i) helpers.emplace_back(work);
    work();
    for (std::thread& helper : helpers) helper.join();
    std::vector<Result<pack::Clip>> clips;
    for (auto& clip : made)
        if (clip) clips.push_back(std::move(*clip));
    return clips;
}

Result<pack::Clip> UnitMedia::clip(const pack::VoiceNeed& need) const {
    std::vector<Problem> warnings;
    if (const pack::UnitRecording* recording = recordingOf(unit_, need.id)) {
        if (recording->said == saidFor(need)) {
            Result<pack::Clip> hers = kept(keyOf(*recording, places_.takes, need), [&] {
                return recorded(*recording, places_.takes, need);
            });
            if (hers.ok()) hers.value().voice = recording->voice;
            return hers;
        }
        warnings.push_back({need.id, "\"" + need.text + "\" was recorded before it was changed.",
                            "The demo voice says it until it is recorded again.",
                            Problem::Weight::warning});
    }
    std::string name = need.id;
    std::replace(name.begin(), name.end(), ':', '_');
    for (const char* ending : {".wav", ".flac", ".ogg", ".mp3"}) {
        const std::filesystem::path path =
            places_.recordings / std::filesystem::u8path(name + ending);
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
    Result<pack::Clip> clip = kept("demo\n" + keyOf(need), [&]() -> Result<pack::Clip> {
        const Pcm said = making_.voice.say(need);
        if (said.samples.empty())
            return Problem{need.id, "The demo voice cannot say \"" + need.text + "\".",
                           "Record it: recordings/" + name + ".wav"};
        return encoded(said, true);
    });
    if (!clip.ok()) return clip;
    return {std::move(clip.value()), std::move(warnings)};
}

Result<pack::Clip> UnitMedia::kept(const std::string& key,
                                   const std::function<Result<pack::Clip>()>& make) const {
    if (making_.shelf != nullptr)
        if (std::optional<pack::Clip> clip = making_.shelf->find(key)) return std::move(*clip);
    Result<pack::Clip> made = make();
    if (made.ok() && making_.shelf != nullptr) making_.shelf->put(key, made.value());
    return made;
}

Result<pack::Picture> UnitMedia::picture(std::string_view id) {
    const std::string name(id);
    std::filesystem::path file = places_.picture_set / (name + ".svg");
    for (const char* ending : {".png", ".svg"}) {
        const std::filesystem::path own = places_.own_pictures / (name + ending);
        std::error_code error;
        if (std::filesystem::is_regular_file(own, error)) file = own;
    }
    Result<std::string> bytes = readWhole(file, pack::kMostPictureBytes);
    if (!bytes.ok())
        return Problem{name, "There is no picture \"" + name + "\" in the picture set.",
                       "Choose another, or leave the picture out."};
    const std::string why = pack::whyNoPicture(bytes.value());
    if (!why.empty())
        return Problem{file.filename().string(), "This file " + why + ".",
                       "Choose another picture."};
    pack::Picture picture;
    picture.id = name;
    picture.bytes = std::move(bytes.value());
    return picture;
}

}  // namespace wrenlet::desk
