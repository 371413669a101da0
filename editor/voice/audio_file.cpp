#include "editor/voice/audio_file.hpp"

#include <ogg/ogg.h>
#include <samplerate.h>
#include <sndfile.h>
#include <soxr.h>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <functional>
#include <memory>

#include "content/common/files.hpp"
#include "editor/voice/recording.hpp"
#include "editor/voice/tiny_as_none.hpp"

namespace wrenlet::desk {
namespace {

// About 50 kbit/s of one voice up to 20 kHz, which common practice finds enough for speech; tablets
// fetch every clip over the classroom's network.
constexpr double kVorbisQuality = 0.4;
constexpr int kMostChannels = 8;

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

Problem tooLong(const std::string& where) {
    return {where, "This recording is longer than 30 seconds.",
            "Cut it to the word or sentence alone."};
}

Problem breaksOff(const std::string& where) {
    return {where, "This recording breaks off before its end.", "Save or copy it again."};
}

std::uint32_t littleEndian(std::string_view bytes, std::size_t at) {
    std::uint32_t number = 0;
    for (std::size_t i = 4; i-- > 0;)
        number = number << 8 | static_cast<unsigned char>(bytes[at + i]);
    return number;
}

/// True iff a WAV file's head names more sound than the file holds, which libsndfile lets pass: a
/// copy that was cut short. What a program that writes into a pipe puts there (all ones, or close
/// to it) is no promise.
bool promisesMore(std::string_view bytes) {
    constexpr std::uint32_t kUnknown = 0x7fff'0000;
    if (bytes.size() < 12 || bytes.substr(0, 4) != "RIFF" || bytes.substr(8, 4) != "WAVE")
        return false;
    for (std::size_t at = 12; at + 8 <= bytes.size();) {
        const std::uint32_t size = littleEndian(bytes, at + 4);
        if (bytes.substr(at, 4) == "data") return size < kUnknown && size > bytes.size() - at - 8;
        at += 8 + static_cast<std::size_t>(size) + size % 2;
    }
    return false;
}

/// Silence at that rate, as long as the clip.
Pcm roomFor(const Pcm& clip, int rate) {
    const double ratio = static_cast<double>(rate) / clip.rate;
    return {std::vector<float>(static_cast<std::size_t>(
                std::ceil(static_cast<double>(clip.samples.size()) * ratio))),
            rate};
}

/// The number that an OGG stream bears is drawn at random; a clip is a stream alone, and the same
/// sound shall give the same bytes.
std::string numberedAlike(const std::string& bytes) {
    constexpr std::size_t kNumberAt = 14, kNumberBytes = 4;  // of a page's head, RFC 3533
    ogg_sync_state pages;
    ogg_sync_init(&pages);
    char* const room = ogg_sync_buffer(&pages, static_cast<long>(bytes.size()));
    std::memcpy(room, bytes.data(), bytes.size());
    ogg_sync_wrote(&pages, static_cast<long>(bytes.size()));
    std::string alike;
    alike.reserve(bytes.size());
    for (ogg_page page; ogg_sync_pageout(&pages, &page) == 1;) {
        std::memset(page.header + kNumberAt, 0, kNumberBytes);
        ogg_page_checksum_set(&page);
        alike.append(reinterpret_cast<const char*>(page.header),
                     static_cast<std::size_t>(page.header_len));
        alike.append(reinterpret_cast<const char*>(page.body),
                     static_cast<std::size_t>(page.body_len));
    }
    ogg_sync_clear(&pages);
    return alike;
}

/// The bytes of a file of one channel that `write` fills; it returns whether it wrote all.
Result<std::string> encoded(int rate, int format, const std::function<bool(SNDFILE*)>& write) {
    Memory memory;
    SF_VIRTUAL_IO io = memoryIo();
    SF_INFO info{};
    info.samplerate = rate;
    info.channels = 1;
    info.format = format;
    SoundFile file(sf_open_virtual(&io, SFM_WRITE, &info, &memory));
    const bool whole = file && write(file.get());
    file.reset();
    if (!whole || memory.bytes.empty())
        return Problem{"voice", "A clip could not be encoded.", "Check libsndfile."};
    return std::move(memory.bytes);
}

}  // namespace

Result<Pcm> readTake(const std::filesystem::path& path) {
    const std::string name = path.filename().string();
    std::error_code error;
    if (const auto size = std::filesystem::file_size(path, error);
        !error && size > kMostRecordingBytes)
        return tooLong(name);
    Result<std::string> bytes = readWhole(path, kMostRecordingBytes);
    if (!bytes.ok()) return bytes.problems();
    return decodeTake(std::move(bytes.value()), name);
}

Result<Pcm> decodeTake(std::string bytes, std::string_view name) {
    const std::string where(name);
    if (bytes.size() > kMostRecordingBytes) return tooLong(where);
    if (promisesMore(bytes)) return breaksOff(where);
    Memory memory{std::move(bytes)};
    SF_VIRTUAL_IO io = memoryIo();
    SF_INFO info{};
    const SoundFile file(sf_open_virtual(&io, SFM_READ, &info, &memory));
    if (!file || info.channels < 1 || info.channels > kMostChannels ||
        info.samplerate < kLeastRate || info.samplerate > kMostRate)
        return Problem{where, "This is not a recording that can be read.",
                       "Save it as WAV, FLAC, OGG or MP3, at 16 to 48 kHz."};
    if (info.frames <= 0) return Problem{where, "This recording is empty.", "Record it again."};
    if (info.frames > static_cast<sf_count_t>(info.samplerate * kMostRecordingSeconds))
        return tooLong(where);
    Pcm take{mixedDown(file.get(), info), info.samplerate};
    if (take.samples.empty()) return breaksOff(where);
    return take;
}

Pcm atRate(const Pcm& clip, int rate) {
    if (clip.rate == rate || clip.samples.empty()) return {clip.samples, rate};
    Pcm out = roomFor(clip, rate);
    const soxr_quality_spec_t quality = soxr_quality_spec(SOXR_HQ, 0);
    std::size_t made = 0;
    soxr_oneshot(clip.rate, rate, 1, clip.samples.data(), clip.samples.size(), nullptr,
                 out.samples.data(), out.samples.size(), &made, nullptr, &quality, nullptr);
    out.samples.resize(made);
    return out;
}

Pcm roughlyAtRate(const Pcm& clip, int rate) {
    if (clip.rate == rate || clip.samples.empty()) return {clip.samples, rate};
    Pcm out = roomFor(clip, rate);
    SRC_DATA data{};
    data.data_in = clip.samples.data();
    data.data_out = out.samples.data();
    data.input_frames = static_cast<long>(clip.samples.size());
    data.output_frames = static_cast<long>(out.samples.size());
    data.src_ratio = static_cast<double>(rate) / clip.rate;
    src_simple(&data, SRC_SINC_FASTEST, 1);
    out.samples.resize(static_cast<std::size_t>(data.output_frames_gen));
    return out;
}

Result<std::string> encodeOgg(const Pcm& clip) {
    const TinyAsNone quick;
    Result<std::string> bytes =
        encoded(clip.rate, SF_FORMAT_OGG | SF_FORMAT_VORBIS, [&](SNDFILE* file) {
            double quality = kVorbisQuality;
            sf_command(file, SFC_SET_VBR_ENCODING_QUALITY, &quality, sizeof quality);
            const auto frames = static_cast<sf_count_t>(clip.samples.size());
            return sf_writef_float(file, clip.samples.data(), frames) == frames;
        });
    if (!bytes.ok()) return bytes;
    return numberedAlike(bytes.value());
}

// By whole numbers: libsndfile would scale floats by one step less than full scale, and a take of
// 16 bits would not come back to the bit.
Result<std::string> encodeFlac(const Pcm& take) {
    constexpr double kFull = 8'388'608;
    std::vector<int> steps;
    steps.reserve(take.samples.size());
    for (const float sample : take.samples) {
        const double step = std::round(static_cast<double>(sample) * kFull);
        steps.push_back(static_cast<int>(std::clamp(step, -kFull, kFull - 1)) * 256);
    }
    return encoded(take.rate, SF_FORMAT_FLAC | SF_FORMAT_PCM_24, [&](SNDFILE* file) {
        const auto frames = static_cast<sf_count_t>(steps.size());
        return sf_writef_int(file, steps.data(), frames) == frames;
    });
}

}  // namespace wrenlet::desk
