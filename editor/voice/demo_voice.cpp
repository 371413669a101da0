#include "editor/voice/demo_voice.hpp"

extern "C" {
#include <flite/flite.h>
cst_voice* register_cmu_us_rms(const char* folder);
void unregister_cmu_us_rms(cst_voice* voice);
}

#include <algorithm>
#include <cstdlib>
#include <mutex>
#include <string>

#include "editor/voice/audio_file.hpp"
#include "editor/voice/loudness.hpp"
#include "editor/voice/trim.hpp"

namespace wrenlet::desk {
namespace {

using pack::VoiceNeed;
using speech::Phoneme;
using speech::Pronunciation;
using Kind = VoiceNeed::Kind;

// Slower than flite's own pace. Of eight voices and paces tried, this one's words were recognised
// best by a program (97 of 100); no person has judged it.
constexpr float kWordStretch = 1.25f;
constexpr float kHeldStretch = 1.6f;
constexpr float kSentenceStretch = 1.1f;
// flite takes the breath in a voice from the C library's random numbers; begun anew for each clip,
// it does not depend on what was said before.
constexpr unsigned kBreath = 1;
constexpr double kMargin = 0.04;  // s of quiet left around what is said

struct Segment {
    std::string name;
    double begin, end;  // s
};

struct Said {
    Pcm sound;
    std::vector<Segment> segments;
};

struct DeleteUtterance {
    void operator()(cst_utterance* utterance) const { delete_utterance(utterance); }
};
using Utterance = std::unique_ptr<cst_utterance, DeleteUtterance>;

/// "k ae1 t": the synthesizer's phones.
std::string phones(const Pronunciation& sounds) {
    std::string text;
    for (const speech::Sound& sound : sounds) {
        if (!text.empty()) text += ' ';
        std::string phone;
        for (const char letter : speech::arpabet(sound.phoneme))
            phone += static_cast<char>(letter >= 'A' && letter <= 'Z' ? letter + 32 : letter);
        if (sound.phoneme == Phoneme::ax) phone = "ax";
        text += phone;
        if (speech::isVowel(sound.phoneme))
            text += sound.stress == speech::Stress::none && sounds.size() > 1 ? '0' : '1';
    }
    return text;
}

Said heard(cst_utterance* utterance) {
    Said said;
    if (utterance == nullptr) return said;
    const cst_wave* wave = utt_wave(utterance);
    if (wave == nullptr || cst_wave_num_channels(wave) != 1) return said;
    said.sound.rate = cst_wave_sample_rate(wave);
    said.sound.samples.reserve(static_cast<std::size_t>(cst_wave_num_samples(wave)));
    for (int i = 0; i < cst_wave_num_samples(wave); ++i)
        said.sound.samples.push_back(static_cast<float>(cst_wave_samples(wave)[i]) / 32768.0f);
    double begin = 0;
    for (cst_item* item = relation_head(utt_relation(utterance, "Segment")); item != nullptr;
         item = item_next(item)) {
        const double end = static_cast<double>(item_feat_float(item, "end"));
        said.segments.push_back({item_feat_string(item, "name"), begin, end});
        begin = end;
    }
    return said;
}

Pcm between(const Said& said, double begin, double end) {
    const auto size = static_cast<double>(said.sound.samples.size());
    const auto at = [&](double s) {
        return said.sound.samples.begin() +
               static_cast<std::ptrdiff_t>(std::clamp(s * said.sound.rate, 0.0, size));
    };
    return {{at(begin), at(std::max(begin, end))}, said.sound.rate};
}

/// From the first sound to the last, without the pauses around them.
Pcm spoken(const Said& said) {
    double begin = -1, end = 0;
    for (const Segment& segment : said.segments) {
        if (segment.name == "pau") continue;
        if (begin < 0) begin = segment.begin;
        end = segment.end;
    }
    if (begin < 0) return {};
    return withoutSilence(between(said, std::max(0.0, begin - kMargin), end + 2 * kMargin),
                          kMargin);
}

bool isStop(Phoneme phoneme) {
    switch (phoneme) {
        case Phoneme::p:
        case Phoneme::b:
        case Phoneme::t:
        case Phoneme::d:
        case Phoneme::k:
        case Phoneme::g:
        case Phoneme::ch:
        case Phoneme::jh:
            return true;
        default:
            return false;
    }
}

bool hasVowel(const Pronunciation& sounds) {
    return std::any_of(sounds.begin(), sounds.end(),
                       [](const speech::Sound& sound) { return speech::isVowel(sound.phoneme); });
}

/// The end read faster and faster, so that its pitch rises: the synthesizer asks as it tells.
Pcm risen(const Pcm& said) {
    constexpr double kLast = 0.5, kSteepest = 2.2;  // s, and times as high at the very end
    const auto size = static_cast<double>(said.samples.size());
    const double from = std::max(0.0, size - kLast * said.rate);
    Pcm out;
    out.rate = said.rate;
    for (double at = 0; at + 1 < size;) {
        const auto index = static_cast<std::size_t>(at);
        const float part = static_cast<float>(at - static_cast<double>(index));
        out.samples.push_back(said.samples[index] * (1 - part) + said.samples[index + 1] * part);
        at += at < from ? 1 : 1 + (kSteepest - 1) * (at - from) / (size - from);
    }
    return out;
}

constexpr speech::Sound kOpenVowel{Phoneme::ah, speech::Stress::primary};

}  // namespace

struct DemoVoice::Engine {
    Engine() : voice((flite_init(), register_cmu_us_rms(nullptr))) {}
    ~Engine() { unregister_cmu_us_rms(voice); }
    Engine(const Engine&) = delete;
    Engine& operator=(const Engine&) = delete;

    Said sayPhones(const std::string& word, const std::string& said_as, float stretch) const {
        const std::lock_guard alone(mutex);
        std::srand(kBreath);
        feat_set_float(voice->features, "duration_stretch", stretch);
        cst_utterance* utterance = new_utterance();
        cst_item* token = relation_append(utt_relation_create(utterance, "Token"), nullptr);
        item_set_string(token, "name", word.c_str());
        item_set_string(token, "whitespace", " ");
        item_set_string(token, "prepunctuation", "");
        item_set_string(token, "punc", "");
        item_set_string(token, "phones", said_as.c_str());
        const Utterance done(flite_do_synth(utterance, voice, utt_synth_tokens));
        return heard(done.get());
    }

    Said sayText(const std::string& text) const {
        const std::lock_guard alone(mutex);
        std::srand(kBreath);
        feat_set_float(voice->features, "duration_stretch", kSentenceStretch);
        const Utterance done(flite_synth_text(text.c_str(), voice));
        return heard(done.get());
    }

    /// Consonants alone, cut out from before (and for stops, between) vowels.
    Pcm sayConsonants(const Pronunciation& sounds) const {
        Pronunciation around = sounds;
        const bool between_vowels = isStop(sounds.front().phoneme);
        if (between_vowels) around.insert(around.begin(), kOpenVowel);
        around.push_back(kOpenVowel);
        const float stretch = between_vowels ? kWordStretch : kHeldStretch;
        const Said said = sayPhones("sound", phones(around), stretch);
        std::size_t first = 0;
        while (first < said.segments.size() && said.segments[first].name == "pau") ++first;
        if (between_vowels) ++first;
        const std::size_t last = first + sounds.size();
        if (last >= said.segments.size()) return {};
        return softened(between(said, said.segments[first].begin, said.segments[last - 1].end),
                        0.008);
    }

    cst_voice* voice;
    mutable std::mutex mutex;  // flite keeps its settings in the voice
};

DemoVoice::DemoVoice(const speech::Lexicon& lexicon)
    : engine_(std::make_unique<Engine>()), lexicon_(lexicon) {}
DemoVoice::~DemoVoice() = default;

Pcm DemoVoice::say(const VoiceNeed& need) const {
    if (need.kind == Kind::sentence || need.kind == Kind::phrase) {
        const Pcm said = spoken(engine_->sayText(need.text));
        return broughtTo(atRate(need.question ? risen(said) : said, kClipRate), kWordLufs);
    }

    Pronunciation sounds = need.sounds;
    if (sounds.empty())
        if (const auto listed = lexicon_.lookUp(need.text); !listed.empty())
            sounds = listed.front();
    if (sounds.empty())
        return broughtTo(atRate(spoken(engine_->sayText(need.text)), kClipRate), kWordLufs);
    if (!hasVowel(sounds))
        return broughtTo(atRate(engine_->sayConsonants(sounds), kClipRate), kSoundLufs);
    const float stretch = sounds.size() == 1 ? kHeldStretch : kWordStretch;
    return broughtTo(atRate(spoken(engine_->sayPhones("word", phones(sounds), stretch)), kClipRate),
                     kWordLufs);
}

}  // namespace wrenlet::desk
