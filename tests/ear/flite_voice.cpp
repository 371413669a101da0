#include "tests/ear/flite_voice.hpp"

extern "C" {
#include <flite/flite.h>
cst_voice* register_cmu_us_awb(const char* folder);
cst_voice* register_cmu_us_slt(const char* folder);
cst_voice* register_cmu_us_kal16(const char* folder);
}

#include <memory>

namespace wrenlet::ear {
namespace {

struct DeleteUtterance {
    void operator()(cst_utterance* utterance) const { delete_utterance(utterance); }
};

// Registered once and shared by flite itself.
cst_voice* voiceOf(const std::string& name) {
    flite_init();
    if (name == "awb") return register_cmu_us_awb(nullptr);
    return name == "slt" ? register_cmu_us_slt(nullptr) : register_cmu_us_kal16(nullptr);
}

std::string phones(const speech::Pronunciation& sounds) {
    std::string text;
    for (const speech::Sound& sound : sounds) {
        if (!text.empty()) text += ' ';
        if (sound.phoneme == speech::Phoneme::ax) {
            text += "ax";
        } else {
            for (const char letter : speech::arpabet(sound.phoneme))
                text += static_cast<char>(letter >= 'A' && letter <= 'Z' ? letter + 32 : letter);
        }
        if (speech::isVowel(sound.phoneme))
            text += sound.stress == speech::Stress::none ? '0' : '1';
    }
    return text;
}

}  // namespace

Spoken flite(const Voice& voice, const speech::Pronunciation& sounds) {
    cst_voice* speaker = voiceOf(voice.name);
    feat_set_float(speaker->features, "duration_stretch", static_cast<float>(voice.pace));
    cst_utterance* utterance = new_utterance();
    cst_item* token = relation_append(utt_relation_create(utterance, "Token"), nullptr);
    item_set_string(token, "name", "word");
    item_set_string(token, "whitespace", " ");
    item_set_string(token, "prepunctuation", "");
    item_set_string(token, "punc", "");
    item_set_string(token, "phones", phones(sounds).c_str());
    const std::unique_ptr<cst_utterance, DeleteUtterance> done(
        flite_do_synth(utterance, speaker, utt_synth_tokens));
    Spoken spoken;
    if (!done) return spoken;
    const cst_wave* wave = utt_wave(done.get());
    if (wave == nullptr || cst_wave_num_channels(wave) != 1) return spoken;
    spoken.sound.rate = cst_wave_sample_rate(wave);
    for (int i = 0; i < cst_wave_num_samples(wave); ++i)
        spoken.sound.samples.push_back(static_cast<float>(cst_wave_samples(wave)[i]) / 32768.0f);
    double last = 0;
    for (cst_item* item = relation_head(utt_relation(done.get(), "Segment")); item != nullptr;
         item = item_next(item)) {
        const double end = static_cast<double>(item_feat_float(item, "end"));
        if (std::string(item_feat_string(item, "name")) != "pau") {
            if (spoken.ends.empty()) spoken.begin = last;
            spoken.ends.push_back(end);
        }
        last = end;
    }
    if (spoken.ends.size() != sounds.size()) spoken.ends.clear();
    return spoken;
}

}  // namespace wrenlet::ear
