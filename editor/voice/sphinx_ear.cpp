#include <pocketsphinx.h>
#include <sphinxbase/err.h>
#include <sphinxbase/fsg_model.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <filesystem>

#include "content/common/random.hpp"
#include "editor/voice/audio_file.hpp"
#include "editor/voice/word_ear.hpp"

namespace wrenlet::desk {
namespace {

constexpr int kEarRate = 16'000;            // Hz, of the model
constexpr double kPad = 0.1;                // s of quiet around a word, which the model expects
constexpr double kDither = 1e-4;            // -80 dBFS: digital silence is nothing it knows
constexpr double kLeast = 0.05, kMost = 5;  // s
constexpr const char* kDebians = "/usr/share/pocketsphinx/model/en-us/en-us";
constexpr double kFrames = 100;  // of the model, a second
/// What "uh" after a consonant is like.
constexpr speech::Phoneme kAdded[] = {speech::Phoneme::ah, speech::Phoneme::uh,
                                      speech::Phoneme::er, speech::Phoneme::eh,
                                      speech::Phoneme::aa, speech::Phoneme::ih};

struct FreeDecoder {
    void operator()(ps_decoder_t* decoder) const { ps_free(decoder); }
};
struct FreeConfig {
    void operator()(cmd_ln_t* config) const { cmd_ln_free_r(config); }
};
struct FreeGrammar {
    void operator()(fsg_model_t* grammar) const { fsg_model_free(grammar); }
};
using Decoder = std::unique_ptr<ps_decoder_t, FreeDecoder>;

/// The model's phones: the dictionary's, without a schwa of its own.
std::string phones(const speech::Pronunciation& sounds) {
    std::string text;
    for (const speech::Sound& sound : sounds) {
        if (!text.empty()) text += ' ';
        text += sound.phoneme == speech::Phoneme::ax ? "AH" : speech::arpabet(sound.phoneme);
    }
    return text;
}

/// Of even loudness, with `pad_s` of quiet on both sides.
std::vector<std::int16_t> padded(const Pcm& spoken, double pad_s) {
    const Pcm heard = roughlyAtRate(spoken, kEarRate);
    float top = 1e-6f;
    for (const float sample : heard.samples) top = std::max(top, std::fabs(sample));
    const auto pad = static_cast<std::size_t>(pad_s * kEarRate);
    std::vector<std::int16_t> out;
    Random random(1);
    for (std::size_t i = 0; i < heard.samples.size() + 2 * pad; ++i) {
        double sample = kDither * (2 * random.unit() - 1);
        if (i >= pad && i - pad < heard.samples.size())
            sample += 0.5 * static_cast<double>(heard.samples[i - pad] / top);
        out.push_back(static_cast<std::int16_t>(std::lround(sample * 32'000)));
    }
    return out;
}

class SphinxEar final : public WordEar {
  public:
    explicit SphinxEar(Decoder decoder) : decoder_(std::move(decoder)) {}

    std::optional<EarJudgement> judge(const Pcm& spoken, const speech::Pronunciation& expected,
                                      std::span<const SaidWord> others) override {
        if (others.empty() || spoken.seconds() < kLeast || spoken.seconds() > kMost)
            return std::nullopt;
        const std::vector<std::int16_t> sound = padded(spoken, kPad);
        std::vector<std::string> names;
        for (const SaidWord& other : others) names.push_back(nameOf(other.sounds));
        const auto right = fit(sound, {{nameOf(expected)}});
        const auto other = fit(sound, {names});
        if (!right || !other || frames_ == 0) return std::nullopt;
        const auto at = std::find(names.begin(), names.end(), other->last);
        if (at == names.end()) return std::nullopt;
        return EarJudgement{static_cast<std::size_t>(at - names.begin()),
                            (right->score - other->score) / frames_};
    }

    std::optional<VowelJudgement> vowelAfter(const Pcm& spoken,
                                             const speech::Pronunciation& consonants) override {
        if (consonants.empty() || spoken.seconds() < kLeast || spoken.seconds() > kMost)
            return std::nullopt;
        const std::vector<std::int16_t> sound = padded(spoken, 0);
        std::vector<std::string> vowels;
        for (const speech::Phoneme vowel : kAdded) vowels.push_back(nameOf({{vowel}}));
        // A stop's breath is not a vowel's beginning.
        speech::Pronunciation breathed = consonants;
        breathed.push_back({speech::Phoneme::hh});
        const std::vector<std::string> firsts{nameOf(consonants), nameOf(breathed)};
        const auto alone = fit(sound, {firsts});
        const auto with = fit(sound, {firsts, vowels});
        if (!alone || !with) return std::nullopt;
        const double begin = with->last_begin / kFrames, end = (with->last_end + 1) / kFrames;
        return VowelJudgement{alone->score - with->score, std::min(begin, spoken.seconds()),
                              std::min(end, spoken.seconds())};
    }

  private:
    struct Fit {
        std::string last;                  // the last word
        int last_begin = 0, last_end = 0;  // its first and last frame
        double score = 0;                  // of everything heard, in the decoder's own unit
    };

    /// A pseudo-word for these sounds, told to the decoder once.
    std::string nameOf(const speech::Pronunciation& sounds) {
        const std::string said = phones(sounds);
        const auto at = std::find(known_.begin(), known_.end(), said);
        const std::string name = "w" + std::to_string(at - known_.begin());
        if (at != known_.end()) return name;
        known_.push_back(said);
        ps_add_word(decoder_.get(), name.c_str(), said.c_str(), 0);
        return name;
    }

    /// One word of each list, one after the other. (The decoder's own reader of grammars leaks each
    /// of them.)
    std::optional<Fit> fit(const std::vector<std::int16_t>& sound,
                           const std::vector<std::vector<std::string>>& lists) {
        ps_decoder_t* decoder = decoder_.get();
        const int states = static_cast<int>(lists.size());
        const std::unique_ptr<fsg_model_t, FreeGrammar> grammar(
            fsg_model_init("said", ps_get_logmath(decoder), 1, states + 1));
        if (!grammar) return std::nullopt;
        grammar->start_state = 0;
        grammar->final_state = states;
        for (int from = 0; from < states; ++from)
            for (const std::string& name : lists[static_cast<std::size_t>(from)])
                fsg_model_trans_add(grammar.get(), from, from + 1, 0,
                                    fsg_model_word_add(grammar.get(), name.c_str()));
        if (ps_set_fsg(decoder, "said", grammar.get()) < 0 || ps_set_search(decoder, "said") < 0 ||
            ps_start_utt(decoder) < 0)
            return std::nullopt;
        ps_process_raw(decoder, sound.data(), sound.size(), 0, 1);
        ps_end_utt(decoder);
        Fit found;
        for (ps_seg_t* part = ps_seg_iter(decoder); part != nullptr; part = ps_seg_next(part)) {
            std::int32_t acoustic = 0, language = 0, back = 0;
            ps_seg_prob(part, &acoustic, &language, &back);
            found.score += acoustic;
            const std::string word = ps_seg_word(part);
            if (std::find(lists.back().begin(), lists.back().end(), word) == lists.back().end())
                continue;
            found.last = word;
            ps_seg_frames(part, &found.last_begin, &found.last_end);
        }
        frames_ = ps_get_n_frames(decoder);
        if (found.last.empty()) return std::nullopt;
        return found;
    }

    Decoder decoder_;
    std::vector<std::string> known_;
    int frames_ = 0;
};

}  // namespace

std::unique_ptr<WordEar> openWordEar(const std::filesystem::path& assets) {
    std::error_code error;
    std::filesystem::path model = assets.empty() ? kDebians : assets / "ear";
    if (!std::filesystem::is_directory(model, error)) model = kDebians;
    if (!std::filesystem::is_directory(model, error)) return nullptr;
    err_set_logfp(nullptr);  // what it would tell concerns nobody here
    const std::unique_ptr<cmd_ln_t, FreeConfig> config(cmd_ln_init(
        nullptr, ps_args(), 1, "-hmm", model.string().c_str(), "-remove_silence", "no",
        "-compallsen", "yes", "-beam", "1e-120", "-wbeam", "1e-120", "-pbeam", "1e-120", nullptr));
    if (!config) return nullptr;
    Decoder decoder(ps_init(config.get()));
    if (!decoder) return nullptr;
    return std::make_unique<SphinxEar>(std::move(decoder));
}

}  // namespace wrenlet::desk
