#include "tests/ear/lone_report.hpp"

#include <algorithm>
#include <cmath>

#include "content/common/random.hpp"
#include "editor/voice/added_vowel.hpp"
#include "tests/ear/noise.hpp"

namespace wrenlet::ear {
namespace {

using speech::Phoneme;

struct Room {
    const char* name;
    double snr_db;
    Colour colour;
    bool few;  // also in a quick look
};
constexpr Room kRooms[] = {{"clean", 60, Colour::pink, true},
                           {"30 dB, pink noise", 30, Colour::pink, false},
                           {"20 dB, pink noise", 20, Colour::pink, false},
                           {"12 dB, pink noise", 12, Colour::pink, true},
                           {"12 dB, white noise", 12, Colour::white, false}};

struct Group {
    const char* name;
    std::vector<Phoneme> sounds;
    bool headline;  // what the figures held against it are about
    bool has(Phoneme phoneme) const {
        return std::find(sounds.begin(), sounds.end(), phoneme) != sounds.end();
    }
};
const std::vector<Group>& groups() {
    static const std::vector<Group> all{
        {"stops, s, sh",
         {Phoneme::p, Phoneme::b, Phoneme::t, Phoneme::d, Phoneme::k, Phoneme::g, Phoneme::ch,
          Phoneme::jh, Phoneme::s, Phoneme::sh},
         true},
        {"f, th", {Phoneme::f, Phoneme::th}, false},
        {"m, n, v, z", {Phoneme::m, Phoneme::n, Phoneme::v, Phoneme::z}, false}};
    return all;
}

std::optional<desk::Finding> heard(const LoneSound& sound, const Room& room, std::uint64_t seed) {
    const desk::Pcm take = inRoom(sound.clean, room.snr_db, room.colour, seed);
    return desk::addedVowel(take, desk::heardIn(take), sound.need());
}

constexpr double kBefore = 0.6;  // s, as inRoom puts it

}  // namespace

std::vector<Line> loneReport(const std::vector<LoneSound>& sounds, bool few) {
    std::vector<Line> lines;
    for (const Room& room : kRooms) {
        if (few && !room.few) continue;
        const bool is_clean = room.snr_db == 60;
        std::vector<std::optional<desk::Finding>> findings;
        for (std::size_t i = 0; i < sounds.size(); ++i)
            findings.push_back(heard(sounds[i], room, stepSeed(11, i)));
        const auto report = [&](const Group& group, const std::string& whose, auto counts) {
            int with = 0, without = 0, found = 0, wrongly = 0;
            for (std::size_t i = 0; i < sounds.size(); ++i) {
                if (!group.has(sounds[i].consonant) || !counts(sounds[i])) continue;
                (sounds[i].with_vowel ? with : without) += 1;
                if (findings[i]) (sounds[i].with_vowel ? found : wrongly) += 1;
            }
            const std::string condition = std::string(group.name) + "; " + room.name + whose;
            Line is_found = share("added vowel", condition, "found", found, with);
            Line is_wrong =
                share("added vowel", condition, "heard where there is none", wrongly, without);
            is_wrong.more_is_better = false;
            if (group.headline && whose.empty() && (is_clean || room.snr_db == 12)) {
                is_found.wanted = is_clean ? 97.1 : 93.2;
                is_wrong.wanted = is_clean ? 2.9 : 0.2;
            }
            if (with > 0) lines.push_back(is_found);
            if (without > 0) lines.push_back(is_wrong);
        };
        for (const Group& group : groups()) {
            report(group, "", [](const LoneSound&) { return true; });
            if (!group.headline || !is_clean) continue;
            report(group, "; by espeak-ng", [](const LoneSound& sound) {
                return sound.voice.maker == Voice::Maker::espeak;
            });
            report(group, "; by festival", [](const LoneSound& sound) {
                return sound.voice.maker == Voice::Maker::festival;
            });
            report(group, "; by flite",
                   [](const LoneSound& sound) { return sound.voice.maker == Voice::Maker::flite; });
            report(group, "; where the voice tells, vowels of 80 ms and more",
                   [](const LoneSound& sound) { return sound.vowel_s >= 0.08; });
            int placed = 0, near = 0;
            for (std::size_t i = 0; i < sounds.size(); ++i) {
                if (!findings[i] || sounds[i].vowel_at < 0 || !group.has(sounds[i].consonant))
                    continue;
                ++placed;
                if (std::fabs(findings[i]->begin_s - kBefore - sounds[i].vowel_at) <= 0.03) ++near;
            }
            if (placed > 0)
                lines.push_back(share("added vowel", std::string(group.name) + "; clean",
                                      "its start within 30 ms of the voice's own", near, placed));
        }
    }
    return lines;
}

std::string wrongLone(const std::vector<LoneSound>& sounds) {
    std::string out;
    for (const Room& room : kRooms)
        for (std::size_t i = 0; i < sounds.size(); ++i) {
            const auto finding = heard(sounds[i], room, stepSeed(11, i));
            if (finding.has_value() == sounds[i].with_vowel) continue;
            out += std::string(room.name) + ": " + sounds[i].voice.id() + " /" +
                   std::string(speech::arpabet(sounds[i].consonant)) +
                   (sounds[i].with_vowel ? "/ with a vowel: not heard"
                                         : "/ alone: heard " + std::to_string(finding->amount) +
                                               " s at " + std::to_string(finding->begin_s)) +
                   ", clip " + std::to_string(sounds[i].clean.seconds()) + " s\n";
        }
    return out;
}

}  // namespace wrenlet::ear
