#include "tests/ear/festival_voice.hpp"

#include <algorithm>

#include "content/common/files.hpp"
#include "editor/voice/audio_file.hpp"
#include "tests/ear/commands.hpp"
#include "tests/ear/tongue.hpp"

namespace wrenlet::ear {
namespace {

using desk::Pcm;
using speech::Phoneme;
using speech::Pronunciation;

bool isDiphone(const Voice& voice) {
    return voice.name.find("hts") == voice.name.npos;
}

/// Seconds that festival's diphones hold a sound, before the pace.
double held(const speech::Sound& sound) {
    if (sound.phoneme == Phoneme::ax) return 0.09;
    return speech::isVowel(sound.phoneme) ? 0.14 : 0.1;
}

/// Scheme that makes `utt`: diphones from segments with their lengths and pitch, the others from a
/// word that the lexicon is told. Empty where the voice has not all sounds.
std::string festivalUtterance(const Voice& voice, const Tongue& tongue, const Pronunciation& sounds,
                              std::size_t number) {
    if (std::any_of(sounds.begin(), sounds.end(), [&](const speech::Sound& sound) {
            return tongue.nameOf(sound.phoneme).empty();
        }))
        return {};
    if (isDiphone(voice)) {
        const std::string pause = '(' + std::string(tongue.pause) + " 0.2) ";
        std::string text = "(set! utt (utt.synth (Utterance Segments (" + pause;
        for (const speech::Sound& sound : sounds) {
            text +=
                '(' + tongue.nameOf(sound.phoneme) + ' ' + std::to_string(held(sound) * voice.pace);
            if (speech::isVowel(sound.phoneme))
                text += " (0.03 " + std::to_string(voice.pitch) + ')';
            text += ") ";
        }
        return text + pause + "))))\n";
    }
    const std::string word = "wrn" + std::to_string(number);
    std::string syllables, open;
    for (const speech::Sound& sound : sounds) {
        open += (open.empty() ? "" : " ") + tongue.nameOf(sound.phoneme);
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
Spoken withEnds(Pcm sound, const std::string& lines, std::string_view pause, std::size_t sounds) {
    Spoken spoken{std::move(sound), {}, 0};
    double last = 0;
    for (std::size_t at = lines.find('\n'); at != lines.npos && at + 1 < lines.size();) {
        const std::size_t end = lines.find('\n', at + 1);
        const std::string line = lines.substr(at + 1, end - at - 1);
        const double until = std::strtod(line.c_str(), nullptr);
        if (!line.ends_with(" " + std::string(pause)) && !line.empty()) {
            if (spoken.ends.empty()) spoken.begin = last;
            spoken.ends.push_back(until);
        }
        last = until;
        at = end;
    }
    if (spoken.ends.size() != sounds) spoken.ends.clear();
    return spoken;
}

}  // namespace

bool hasFestivalVoice(const Voice& voice) {
    return hasProgram("festival") &&
           outputOf("festival -b '(voice_" + voice.name + ")' 2>&1 || echo no").empty();
}

std::vector<Spoken> festival(const Voice& voice, const std::vector<Pronunciation>& all,
                             const std::filesystem::path& scratch) {
    const Tongue tongue = tongueOf(voice.name);
    std::string script = "(voice_" + voice.name + ")\n";
    const auto place = [&](std::size_t i, const char* ending) {
        return (scratch / (std::to_string(i) + ending)).string();
    };
    for (std::size_t i = 0; i < all.size(); ++i) {
        const std::string utterance = festivalUtterance(voice, tongue, all[i], i);
        if (utterance.empty()) continue;
        script += utterance + "(utt.save.wave utt \"" + place(i, ".wav") +
                  "\" 'riff)\n(utt.save.segs utt \"" + place(i, ".segs") + "\")\n";
    }
    std::vector<Spoken> said(all.size());
    const std::filesystem::path file = scratch / "say.scm";
    if (!writeWhole(file, script).ok()) return said;
    outputOf("festival -b '" + file.string() + "' 2>&1");
    for (std::size_t i = 0; i < all.size(); ++i) {
        auto sound = desk::readTake(place(i, ".wav"));
        auto lines = readWhole(place(i, ".segs"), 1 << 16);
        if (sound.ok() && lines.ok())
            said[i] =
                withEnds(std::move(sound.value()), lines.value(), tongue.pause, all[i].size());
        std::filesystem::remove(place(i, ".wav"));
        std::filesystem::remove(place(i, ".segs"));
    }
    return said;
}

}  // namespace wrenlet::ear
