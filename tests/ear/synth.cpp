#include "tests/ear/synth.hpp"

#include "content/common/files.hpp"
#include "editor/voice/audio_file.hpp"
#include "tests/ear/commands.hpp"
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

std::string phoneName(Phoneme phoneme) {
    return phoneme == Phoneme::ax ? "ax" : lower(speech::arpabet(phoneme));
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

bool isDiphone(const Voice& voice) {
    return voice.name.find("diphone") != voice.name.npos;
}

/// Seconds that festival's diphones hold a sound, before the pace.
double held(const speech::Sound& sound) {
    if (sound.phoneme == Phoneme::ax) return 0.09;
    return speech::isVowel(sound.phoneme) ? 0.14 : 0.1;
}

/// Scheme that makes `utt`: diphones from segments with their lengths and pitch, the others from a
/// word that the lexicon is told.
std::string festivalUtterance(const Voice& voice, const Pronunciation& sounds, std::size_t number) {
    std::string text;
    if (isDiphone(voice)) {
        text = "(set! utt (utt.synth (Utterance Segments ((pau 0.2) ";
        for (const speech::Sound& sound : sounds) {
            text += '(' + phoneName(sound.phoneme) + ' ' + std::to_string(held(sound) * voice.pace);
            if (speech::isVowel(sound.phoneme))
                text += " (0.03 " + std::to_string(voice.pitch) + ')';
            text += ") ";
        }
        return text + "(pau 0.2)))))\n";
    }
    const std::string word = "wrn" + std::to_string(number);
    std::string syllables, open;
    for (const speech::Sound& sound : sounds) {
        open += (open.empty() ? "" : " ") + phoneName(sound.phoneme);
        if (!speech::isVowel(sound.phoneme)) continue;
        syllables += "((" + open + ") " + (sound.stress == speech::Stress::none ? "0" : "1") + ") ";
        open.clear();
    }
    if (!open.empty() && !syllables.empty()) {  // what follows the last vowel belongs to it
        const std::size_t at = syllables.rfind(") ", syllables.size() - 3);
        syllables.insert(at, " " + open);
    } else if (!open.empty()) {
        syllables = "((" + open + ") 1)";
    }
    return "(lex.add.entry '(\"" + word + "\" nil (" + syllables + ")))\n" +
           "(Parameter.set 'Duration_Stretch " + std::to_string(voice.pace) + ")\n" +
           "(set! utt (utt.synth (Utterance Text \"" + word + "\")))\n";
}

/// Ends of segments as festival saves them: "0.3200 100 aa" a line after "#".
Spoken withEnds(Pcm sound, const std::string& lines, std::size_t sounds) {
    Spoken spoken{std::move(sound), {}, 0};
    double last = 0;
    for (std::size_t at = lines.find('\n'); at != lines.npos && at + 1 < lines.size();) {
        const std::size_t end = lines.find('\n', at + 1);
        const std::string line = lines.substr(at + 1, end - at - 1);
        const double until = std::strtod(line.c_str(), nullptr);
        if (line.find(" pau") == line.npos && !line.empty()) {
            if (spoken.ends.empty()) spoken.begin = last;
            spoken.ends.push_back(until);
        }
        last = until;
        at = end;
    }
    if (spoken.ends.size() != sounds) spoken.ends.clear();
    return spoken;
}

std::vector<Spoken> festival(const Voice& voice, const std::vector<Pronunciation>& all,
                             const std::filesystem::path& scratch) {
    std::string script = "(voice_" + voice.name + ")\n";
    const auto place = [&](std::size_t i, const char* ending) {
        return (scratch / (std::to_string(i) + ending)).string();
    };
    for (std::size_t i = 0; i < all.size(); ++i)
        script += festivalUtterance(voice, all[i], i) + "(utt.save.wave utt \"" + place(i, ".wav") +
                  "\" 'riff)\n(utt.save.segs utt \"" + place(i, ".segs") + "\")\n";
    std::vector<Spoken> said(all.size());
    const std::filesystem::path file = scratch / "say.scm";
    if (!writeWhole(file, script).ok()) return said;
    outputOf("festival -b '" + file.string() + "' 2>&1");
    for (std::size_t i = 0; i < all.size(); ++i) {
        auto sound = desk::readTake(place(i, ".wav"));
        auto lines = readWhole(place(i, ".segs"), 1 << 16);
        if (sound.ok() && lines.ok())
            said[i] = withEnds(std::move(sound.value()), lines.value(), all[i].size());
        std::filesystem::remove(place(i, ".wav"));
        std::filesystem::remove(place(i, ".segs"));
    }
    return said;
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
    return hasProgram("festival") &&
           outputOf("festival -b '(voice_" + voice.name + ")' 2>&1 || echo no").empty();
}

}  // namespace wrenlet::ear
