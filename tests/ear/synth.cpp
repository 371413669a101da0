#include "tests/ear/synth.hpp"

#include "editor/voice/audio_file.hpp"
#include "tests/ear/commands.hpp"
#include "tests/ear/festival_voice.hpp"
#include "tests/ear/flite_voice.hpp"

namespace wrenlet::ear {
namespace {

using desk::Pcm;
using speech::Phoneme;
using speech::Pronunciation;

/// espeak-ng's names of phonemes for US English (Kirshenbaum's ASCII IPA, with its own vowels).
std::string_view espeakName(Phoneme phoneme) {
    switch (phoneme) {
        case Phoneme::aa:
            return "A:";
        case Phoneme::ae:
            return "a";
        case Phoneme::ah:
            return "V";
        case Phoneme::ao:
            return "O:";
        case Phoneme::aw:
            return "aU";
        case Phoneme::ax:
            return "@";
        case Phoneme::ay:
            return "aI";
        case Phoneme::eh:
            return "E";
        case Phoneme::er:
            return "3:";
        case Phoneme::ey:
            return "eI";
        case Phoneme::ih:
            return "I";
        case Phoneme::iy:
            return "i:";
        case Phoneme::ow:
            return "oU";
        case Phoneme::oy:
            return "OI";
        case Phoneme::uh:
            return "U";
        case Phoneme::uw:
            return "u:";
        case Phoneme::ch:
            return "tS";
        case Phoneme::dh:
            return "D";
        case Phoneme::hh:
            return "h";
        case Phoneme::jh:
            return "dZ";
        case Phoneme::ng:
            return "N";
        case Phoneme::sh:
            return "S";
        case Phoneme::th:
            return "T";
        case Phoneme::y:
            return "j";
        case Phoneme::zh:
            return "Z";
        default:
            return {};
    }
}

std::string lower(std::string_view arpabet) {
    std::string out(arpabet);
    for (char& letter : out)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter + 32);
    return out;
}

Spoken espeak(const Voice& voice, const Pronunciation& sounds) {
    std::string names;
    for (const speech::Sound& sound : sounds) {
        if (sound.stress == speech::Stress::primary)
            names += "'\\''";  // as the shell wants a quote
        const std::string_view name = espeakName(sound.phoneme);
        names += name.empty() ? lower(speech::arpabet(sound.phoneme)) : std::string(name);
        names += '|';  // "t" and "S" are not "tS"
    }
    const int words_a_minute = static_cast<int>(170 / voice.pace);
    const std::string bytes =
        outputOf("espeak-ng --stdout -v '" + voice.name + "' -p " + std::to_string(voice.pitch) +
                 " -s " + std::to_string(words_a_minute) + " '[[" + names + "]]' 2>/dev/null");
    if (bytes.empty()) return {};
    auto sound = desk::decodeTake(bytes, "espeak-ng");
    return sound.ok() ? Spoken{std::move(sound.value()), {}, 0} : Spoken{};
}

}  // namespace

std::string Voice::id() const {
    const char* makers[] = {"espeak-ng ", "festival ", "flite "};
    return makers[static_cast<int>(maker)] + name;
}

std::vector<Spoken> sayAll(const Voice& voice, const std::vector<Pronunciation>& all,
                           const std::filesystem::path& scratch) {
    if (voice.maker == Voice::Maker::festival) return festival(voice, all, scratch);
    std::vector<Spoken> said;
    for (const Pronunciation& sounds : all)
        said.push_back(voice.maker == Voice::Maker::espeak ? espeak(voice, sounds)
                                                           : flite(voice, sounds));
    return said;
}

bool isHere(const Voice& voice) {
    if (voice.maker == Voice::Maker::flite) return true;
    if (voice.maker == Voice::Maker::espeak) return hasProgram("espeak-ng");
    return hasFestivalVoice(voice);
}

}  // namespace wrenlet::ear
