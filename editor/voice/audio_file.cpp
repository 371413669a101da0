#include "editor/voice/audio_file.hpp"

#include <samplerate.h>
#include <sndfile.h>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <memory>

#include "content/common/files.hpp"

namespace wrenlet::desk {
namespace {

constexpr std::uint64_t kMostFileBytes = 10ull << 20;
constexpr double kVorbisQuality = 0.6;
constexpr float kSoundsFrom = 0.02f;  // of the loudest moment: -34 dB

struct CloseSound {
    void operator()(SNDFILE* file) const { sf_close(file); }
};
using SoundFile = std::unique_ptr<SNDFILE, CloseSound>;

/// A file in memory, for libsndfile to read and write.
struct Memory {
    std::string bytes;
    sf_count_t at = 0;
};

SF_VIRTUAL_IO memoryIo() {
    SF_VIRTUAL_IO io;
    io.get_filelen = [](void* user) {
        return static_cast<sf_count_t>(static_cast<Memory*>(user)->bytes.size());
    };
    io.seek = [](sf_count_t offset, int whence, void* user) {
        auto* memory = static_cast<Memory*>(user);
        const auto size = static_cast<sf_count_t>(memory->bytes.size());
        const sf_count_t from = whence == SEEK_SET ? 0 : whence == SEEK_CUR ? memory->at : size;
        memory->at = std::clamp<sf_count_t>(from + offset, 0, size);
        return memory->at;
    };
    io.read = [](void* to, sf_count_t count, void* user) {
        auto* memory = static_cast<Memory*>(user);
        const auto left = static_cast<sf_count_t>(memory->bytes.size()) - memory->at;
        const sf_count_t taken = std::max<sf_count_t>(0, std::min(count, left));
        std::memcpy(to, memory->bytes.data() + memory->at, static_cast<std::size_t>(taken));
        memory->at += taken;
        return taken;
    };
    io.write = [](const void* from, sf_count_t count, void* user) {
        auto* memory = static_cast<Memory*>(user);
        const auto end = static_cast<std::size_t>(memory->at + count);
        if (memory->bytes.size() < end) memory->bytes.resize(end);
        std::memcpy(memory->bytes.data() + memory->at, from, static_cast<std::size_t>(count));
        memory->at += count;
        return count;
    };
    io.tell = [](void* user) { return static_cast<Memory*>(user)->at; };
    return io;
}

/// The mean of the channels; nothing when the file breaks off before what its header promises.
std::vector<float> mixedDown(SNDFILE* file, const SF_INFO& info) {
    std::vector<float> all(static_cast<std::size_t>(info.frames * info.channels));
    if (sf_readf_float(file, all.data(), info.frames) != info.frames) return {};
    std::vector<float> mono(static_cast<std::size_t>(info.frames));
    for (std::size_t i = 0; i < mono.size(); ++i) {
        float sum = 0;
        for (int c = 0; c < info.channels; ++c)
            sum += all[i * static_cast<std::size_t>(info.channels) + static_cast<std::size_t>(c)];
        mono[i] = std::isfinite(sum) ? sum / static_cast<float>(info.channels) : 0;
    }
    return mono;
}

}  // namespace

Result<Pcm> readRecording(const std::filesystem::path& path) {
    const std::string name = path.filename().string();
    Result<std::string> bytes = readWhole(path, kMostFileBytes);
    if (!bytes.ok()) return bytes.problems();
    Memory memory{std::move(bytes.value())};
    SF_VIRTUAL_IO io = memoryIo();
    SF_INFO info{};
    const SoundFile file(sf_open_virtual(&io, SFM_READ, &info, &memory));
    if (!file || info.channels < 1 || info.channels > 8 || info.samplerate < 8000 ||
        info.samplerate > 192'000)
        return Problem{name, "This is not a recording that can be read.",
                       "Save it as WAV, FLAC, OGG or MP3, at 16 to 48 kHz."};
    if (info.frames <= 0 || info.frames > info.samplerate * kMostRecordingSeconds)
        return Problem{name, "This recording is empty or longer than 30 seconds.",
                       "Cut it to the word or sentence alone."};
    Pcm clip{mixedDown(file.get(), info), info.samplerate};
    if (clip.samples.empty())
        return Problem{name, "This recording breaks off before its end.", "Save it again."};
    return atRate(clip, kClipRate);
}

Pcm atRate(const Pcm& clip, int rate) {
    if (clip.rate == rate || clip.samples.empty()) return {clip.samples, rate};
    const double ratio = static_cast<double>(rate) / clip.rate;
    Pcm out{std::vector<float>(static_cast<std::size_t>(
                std::ceil(static_cast<double>(clip.samples.size()) * ratio))),
            rate};
    SRC_DATA data{};
    data.data_in = clip.samples.data();
    data.data_out = out.samples.data();
    data.input_frames = static_cast<long>(clip.samples.size());
    data.output_frames = static_cast<long>(out.samples.size());
    data.src_ratio = ratio;
    src_simple(&data, SRC_SINC_BEST_QUALITY, 1);
    out.samples.resize(static_cast<std::size_t>(data.output_frames_gen));
    return out;
}

Result<std::string> encodeOgg(const Pcm& clip) {
    Memory memory;
    SF_VIRTUAL_IO io = memoryIo();
    SF_INFO info{};
    info.samplerate = clip.rate;
    info.channels = 1;
    info.format = SF_FORMAT_OGG | SF_FORMAT_VORBIS;
    SoundFile file(sf_open_virtual(&io, SFM_WRITE, &info, &memory));
    const Problem refused{"voice", "A clip could not be encoded.", "Check libsndfile."};
    if (!file) return refused;
    double quality = kVorbisQuality;
    sf_command(file.get(), SFC_SET_VBR_ENCODING_QUALITY, &quality, sizeof quality);
    const auto frames = static_cast<sf_count_t>(clip.samples.size());
    const bool whole = sf_writef_float(file.get(), clip.samples.data(), frames) == frames;
    file.reset();
    if (!whole || memory.bytes.empty()) return refused;
    return std::move(memory.bytes);
}

Pcm trimmed(const Pcm& clip, double margin_s) {
    float most = 0;
    for (const float sample : clip.samples) most = std::max(most, std::fabs(sample));
    const auto sounds = [&](float sample) { return std::fabs(sample) >= most * kSoundsFrom; };
    if (most <= 0) return clip;
    const auto begin = std::find_if(clip.samples.begin(), clip.samples.end(), sounds);
    const auto end = std::find_if(clip.samples.rbegin(), clip.samples.rend(), sounds).base();
    const auto margin = static_cast<std::ptrdiff_t>(margin_s * clip.rate);
    const auto from = begin - std::min(margin, begin - clip.samples.begin());
    const auto to = end + std::min(margin, clip.samples.end() - end);
    return softened({{from, to}, clip.rate}, 0.005);
}

Pcm softened(Pcm clip, double seconds) {
    const std::size_t n =
        std::min(static_cast<std::size_t>(seconds * clip.rate), clip.samples.size() / 2);
    for (std::size_t i = 0; i < n; ++i) {
        const float gain = (static_cast<float>(i) + 0.5f) / static_cast<float>(n);
        clip.samples[i] *= gain;
        clip.samples[clip.samples.size() - 1 - i] *= gain;
    }
    return clip;
}

}  // namespace wrenlet::desk
