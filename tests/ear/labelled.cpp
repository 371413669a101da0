#include "tests/ear/labelled.hpp"

#include <algorithm>
#include <cmath>

#include "editor/voice/audio_file.hpp"
#include "tests/ear/noise.hpp"
#include "tests/ear/tongue.hpp"

namespace wrenlet::ear {
namespace {

using desk::Pcm;
using desk::Stretch;
using speech::Phoneme;
using speech::Pronunciation;
using Maker = Voice::Maker;

constexpr Phoneme kConsonants[] = {Phoneme::p, Phoneme::b,  Phoneme::t,  Phoneme::d,
                                   Phoneme::k, Phoneme::g,  Phoneme::ch, Phoneme::jh,
                                   Phoneme::f, Phoneme::v,  Phoneme::th, Phoneme::s,
                                   Phoneme::z, Phoneme::sh, Phoneme::m,  Phoneme::n};
constexpr speech::Sound kOpen{Phoneme::aa, speech::Stress::primary};
constexpr speech::Sound kSchwa{Phoneme::ax}, kUh{Phoneme::ah, speech::Stress::primary};

// espeak-ng gives digital silence for these alone.
bool isSilentAlone(Phoneme phoneme) {
    return phoneme == Phoneme::b || phoneme == Phoneme::d || phoneme == Phoneme::g ||
           phoneme == Phoneme::jh;
}

Pcm between(const Pcm& sound, double begin, double end) {
    const auto at = [&](double s) {
        return static_cast<std::size_t>(std::max(0.0, s) * sound.rate);
    };
    return desk::softened(desk::cutOut(sound, {at(begin), at(std::max(begin, end))}), 0.004);
}

/// A last consonant, cut off where the vowel before it has fallen by 18 dB: closure and release.
Pcm cutAfterVowel(const Pcm& sound) {
    const auto frame = static_cast<std::size_t>(sound.rate / 200);
    std::vector<double> power(sound.samples.size() / frame, 0.0);
    for (std::size_t i = 0; i < power.size() * frame; ++i)
        power[i / frame] += static_cast<double>(sound.samples[i] * sound.samples[i]);
    if (power.empty()) return {};
    std::size_t vowel = power.size() - 1;
    const double top = *std::max_element(power.begin(), power.end());
    while (vowel > 0 && power[vowel] < top * 0.016) --vowel;
    return between(sound, static_cast<double>(vowel + 1) / 200, sound.seconds());
}

/// What lies between two vowels, told by the voice: from a third of it on, to 10 ms before the
/// second, for boundaries are no better than that.
Pcm cutByEnds(const Spoken& spoken) {
    const double begin = spoken.ends[0], end = spoken.ends[1];
    return between(spoken.sound, begin + (end - begin) / 3, end - 0.01);
}

Pcm whole(const Spoken& spoken) {
    const Audible heard = audible(spoken.sound, 45);
    return between(spoken.sound, heard.begin - 0.005, heard.end + 0.005);
}

}  // namespace

pack::VoiceNeed LoneSound::need() const {
    return {"sound",
            "/" + std::string(speech::ipa(consonant)) + "/",
            {{consonant}},
            pack::VoiceNeed::Kind::sound};
}

pack::VoiceNeed Word::need() const {
    return {"word:" + text, text, sounds, pack::VoiceNeed::Kind::word};
}

std::vector<Voice> voicesOf(Part part, bool few, std::vector<std::string>& missing) {
    // The first pitch and pace of each list go with its first name, and so on around.
    std::vector<Voice> all;
    const auto say = [&](Maker maker, std::initializer_list<const char*> names,
                         std::vector<int> pitches, std::vector<double> paces) {
        std::size_t i = 0;
        for (const char* name : names) {
            all.push_back({maker, name, pitches[i % pitches.size()], paces[i % paces.size()]});
            ++i;
        }
    };
    switch (part) {
        case Part::tune:
            say(Maker::espeak,
                {"en-us+m1", "en-us+m3", "en-us+m5", "en-us+m7", "en-us+f1", "en-us+f3",
                 "en-us+f5"},
                {35, 45, 55, 65}, {0.9, 1.1, 1.3});
            say(Maker::espeak,
                {"en-us", "en-us+m2", "en-us+m4", "en-us+m6", "en-us+f2", "en-us+f4", "en-gb-x-rp"},
                {30, 42, 54, 66}, {0.85, 1.1, 1.35});
            say(Maker::espeak,
                {"en-us+adam", "en-us+anika", "en-us+boris", "en-us+grandma", "en-us+klatt2",
                 "en-us+linda", "en-us+paul", "en-us+steph"},
                {38, 50, 62, 70, 46}, {1, 1.2, 0.9});
            say(Maker::festival, {"kal_diphone", "kal_diphone", "kal_diphone"}, {95, 125, 155},
                {0.99, 1.05, 1.11});
            say(Maker::festival, {"ked_diphone", "ked_diphone"}, {85, 145}, {1.06, 0.82});
            say(Maker::festival,
                {"lp_diphone", "lp_diphone", "pc_diphone", "czech_dita", "czech_dita", "czech_krb",
                 "czech_krb", "czech_ph", "suo_fi_lj_diphone", "suo_fi_lj_diphone"},
                {190, 230, 120, 170, 210, 250, 280, 105, 180, 220}, {1, 0.8, 0.9, 1.2, 0.75, 1.1});
            say(Maker::flite, {"kal16", "awb", "slt", "awb", "slt"}, {50},
                {1.2, 1.1, 1.25, 0.85, 1});
            break;
        case Part::judge:
            say(Maker::espeak,
                {"en-us+caleb", "en-us+shelby", "en-us+Andrea", "en-us+robert", "en-us+sandro",
                 "en-us+travis", "en-us+Denis", "en-us+norbert", "en-us+Hugo", "en-us+miguel",
                 "en-us+Mike", "en-gb-scotland"},
                {43, 52, 61, 74, 48}, {0.85, 1.05, 1.25, 1.15});
            for (const int hertz : {110, 135, 165})
                say(Maker::festival, {"ked_diphone"}, {hertz}, {0.6 + hertz / 300.0});
            say(Maker::festival,
                {"cmu_us_slt_arctic_hts", "cmu_us_slt_arctic_hts", "cmu_us_slt_arctic_hts"}, {50},
                {0.95, 1.2, 1.35});
            break;
        case Part::fresh:
            say(Maker::espeak,
                {"en-us+benjamin", "en-us+Alicia", "en-us+zac", "en-us+aunty", "en-us+Lee",
                 "en-us+belinda", "en-us+iven", "en-us+victor"},
                {40, 57, 49, 68}, {1.1, 0.9, 1.3});
            say(Maker::festival,
                {"czech_machac", "czech_machac", "hy_fi_mv_diphone", "hy_fi_mv_diphone",
                 "pc_diphone", "kal_diphone", "kal_diphone", "ked_diphone"},
                {100, 130, 95, 125, 150, 110, 140, 120}, {1, 0.8, 1.15});
            break;
    }
    std::vector<Voice> here;
    for (const Voice& voice : all) {
        if (few && (voice.maker != Maker::espeak || here.size() >= 2)) continue;
        if (isHere(voice))
            here.push_back(voice);
        else
            missing.push_back(voice.id());
    }
    return here;
}

std::vector<LoneSound> loneSounds(const Voice& voice, const std::filesystem::path& scratch) {
    const bool tells = voice.maker != Maker::espeak;
    std::vector<Pronunciation> all;
    for (const Phoneme consonant : kConsonants) {
        const speech::Sound sound{consonant};
        all.push_back(tells                      ? Pronunciation{kOpen, sound, kOpen}
                      : isSilentAlone(consonant) ? Pronunciation{kOpen, sound}
                                                 : Pronunciation{sound});
        all.push_back({sound, kSchwa});
        all.push_back({sound, kUh});
    }
    const std::vector<Spoken> said = sayAll(voice, all, scratch);
    std::vector<LoneSound> out;
    for (std::size_t i = 0; i < said.size(); ++i) {
        const Spoken& spoken = said[i];
        LoneSound lone{voice, kConsonants[i / 3], i % 3 != 0, {}};
        if (spoken.sound.samples.empty() || (tells && spoken.ends.empty())) continue;
        if (lone.with_vowel) {
            lone.clean = whole(spoken);
            if (tells) {
                const double cut = std::max(0.0, audible(spoken.sound, 45).begin - 0.005);
                lone.vowel_at = spoken.ends[0] - cut;
                lone.vowel_s = spoken.ends[1] - spoken.ends[0];
            }
        } else {
            lone.clean = tells                           ? cutByEnds(spoken)
                         : isSilentAlone(lone.consonant) ? cutAfterVowel(spoken.sound)
                                                         : whole(spoken);
        }
        lone.clean = desk::roughlyAtRate(lone.clean, desk::kClipRate);
        if (lone.clean.seconds() > 0.008) out.push_back(std::move(lone));
    }
    return out;
}

std::vector<Word> words(const Voice& voice, const std::vector<std::string>& texts,
                        const speech::Lexicon& lexicon, const std::filesystem::path& scratch) {
    std::vector<Word> out;
    std::vector<Pronunciation> all;
    if (tongueOf(voice.name).name != Tongue::Name::english) return out;
    for (const std::string& text : texts) {
        const auto said = lexicon.lookUp(text);
        if (said.empty()) continue;
        out.push_back({voice, text, said.front(), {}});
        all.push_back(said.front());
    }
    const std::vector<Spoken> said = sayAll(voice, all, scratch);
    for (std::size_t i = 0; i < said.size(); ++i) out[i].clean = said[i].sound;
    std::erase_if(out, [](const Word& word) { return word.clean.seconds() < 0.05; });
    return out;
}

}  // namespace wrenlet::ear
