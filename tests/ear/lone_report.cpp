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

desk::VowelEvidence evidenceIn(const LoneSound& sound, const Room& room, std::uint64_t seed,
                               desk::WordEar* ear) {
    const desk::Pcm take = inRoom(sound.clean, room.snr_db, room.colour, seed);
    return desk::vowelEvidence(take, desk::heardIn(take), sound.need(), ear);
}

std::vector<desk::VowelEvidence> evidenceIn(const std::vector<LoneSound>& sounds, const Room& room,
                                            desk::WordEar* ear) {
    std::vector<desk::VowelEvidence> all;
    for (std::size_t i = 0; i < sounds.size(); ++i)
        all.push_back(evidenceIn(sounds[i], room, stepSeed(11, i), ear));
    return all;
}

/// Of one kind of sound: how many with a vowel were found, how many alone were blamed.
struct Counts {
    int with = 0, without = 0, found = 0, wrongly = 0;
    void add(const LoneSound& sound, bool heard) {
        (sound.with_vowel ? with : without) += 1;
        if (heard) (sound.with_vowel ? found : wrongly) += 1;
    }
    double missedPart() const { return with == 0 ? 0 : double(with - found) / with; }
    double wronglyPart() const { return without == 0 ? 0 : double(wrongly) / without; }
};

constexpr double kBefore = 0.6;  // s, as inRoom puts it

/// One room's lines.
class RoomReport {
  public:
    RoomReport(const std::vector<LoneSound>& sounds, const Room& room, desk::WordEar* ear)
        : sounds_(sounds), room_(room), evidence_(evidenceIn(sounds, room, ear)) {
        for (const auto& evidence : evidence_) findings_.push_back(desk::addedVowel(evidence));
    }

    std::vector<Line> lines() && {
        for (const Group& group : groups()) {
            report(group, "", [](const LoneSound&) { return true; });
            if (!group.headline || !isClean()) continue;
            reportMaker(group, "; by espeak-ng", Voice::Maker::espeak);
            reportMaker(group, "; by festival", Voice::Maker::festival);
            reportMaker(group, "; by flite", Voice::Maker::flite);
            report(group, "; where the voice tells, vowels of 80 ms and more",
                   [](const LoneSound& sound) { return sound.vowel_s >= 0.08; });
            reportPlaces(group);
        }
        for (auto& evidence : evidence_) evidence.by_ear.reset();
        for (std::size_t i = 0; i < sounds_.size(); ++i)
            findings_[i] = desk::addedVowel(evidence_[i]);
        report(groups()[0], "; without the recogniser", [](const LoneSound&) { return true; });
        return std::move(lines_);
    }

  private:
    bool isClean() const { return room_.snr_db == 60; }

    template <typename Counted>
    void report(const Group& group, const std::string& whose, Counted isCounted) {
        Counts counts;
        for (std::size_t i = 0; i < sounds_.size(); ++i)
            if (group.has(sounds_[i].consonant) && isCounted(sounds_[i]))
                counts.add(sounds_[i], findings_[i].has_value());
        const std::string condition = std::string(group.name) + "; " + room_.name + whose;
        Line found = share("added vowel", condition, "found", counts.found, counts.with);
        Line wrong = share("added vowel", condition, "heard where there is none", counts.wrongly,
                           counts.without);
        wrong.more_is_better = false;
        if (group.headline && whose.empty() && (isClean() || room_.snr_db == 12)) {
            found.wanted = isClean() ? 97.1 : 93.2;
            wrong.wanted = isClean() ? 2.9 : 0.2;
        }
        if (counts.with > 0) lines_.push_back(found);
        if (counts.without > 0) lines_.push_back(wrong);
    }

    void reportMaker(const Group& group, const std::string& whose, Voice::Maker maker) {
        report(group, whose, [&](const LoneSound& sound) { return sound.voice.maker == maker; });
    }

    void reportPlaces(const Group& group) {
        int placed = 0, near = 0;
        for (std::size_t i = 0; i < sounds_.size(); ++i) {
            if (!findings_[i] || sounds_[i].vowel_at < 0 || !group.has(sounds_[i].consonant))
                continue;
            ++placed;
            if (std::fabs(findings_[i]->begin_s - kBefore - sounds_[i].vowel_at) <= 0.03) ++near;
        }
        if (placed > 0)
            lines_.push_back(share("added vowel", std::string(group.name) + "; clean",
                                   "its start within 30 ms of the voice's own", near, placed));
    }

    const std::vector<LoneSound>& sounds_;
    Room room_;
    std::vector<desk::VowelEvidence> evidence_;
    std::vector<std::optional<desk::Finding>> findings_;
    std::vector<Line> lines_;
};

/// What an error costs: a recording blamed wrongly costs a teacher more than an "uh" let through,
/// and the sounds that the figures are held against count double.
double costOf(const std::vector<LoneSound>& sounds,
              const std::vector<std::vector<desk::VowelEvidence>>& rooms,
              desk::VowelLimits limits) {
    constexpr double kBlamed = 3, kHeadline = 2;
    double cost = 0;
    for (const auto& room : rooms) {
        for (const Group& group : groups()) {
            Counts counts;
            for (std::size_t i = 0; i < sounds.size(); ++i)
                if (group.has(sounds[i].consonant))
                    counts.add(sounds[i], desk::addedVowel(room[i], limits).has_value());
            cost += (group.headline ? kHeadline : 1) *
                    (counts.missedPart() + kBlamed * counts.wronglyPart());
        }
    }
    return cost / static_cast<double>(rooms.size());
}

}  // namespace

std::vector<Line> loneReport(const std::vector<LoneSound>& sounds, desk::WordEar* ear, bool few) {
    std::vector<Line> lines;
    for (const Room& room : kRooms)
        if (!few || room.few)
            for (Line& line : RoomReport(sounds, room, ear).lines())
                lines.push_back(std::move(line));
    return lines;
}

std::string wrongLone(const std::vector<LoneSound>& sounds, desk::WordEar* ear) {
    std::string out;
    for (const Room& room : kRooms)
        for (std::size_t i = 0; i < sounds.size(); ++i) {
            const auto evidence = evidenceIn(sounds[i], room, stepSeed(11, i), ear);
            const auto finding = desk::addedVowel(evidence);
            if (finding.has_value() == sounds[i].with_vowel) continue;
            out += std::string(room.name) + ": " + sounds[i].voice.id() + " /" +
                   std::string(speech::arpabet(sounds[i].consonant)) +
                   (sounds[i].with_vowel ? "/ with a vowel: not heard"
                                         : "/ alone: heard " + std::to_string(finding->amount) +
                                               " s at " + std::to_string(finding->begin_s)) +
                   ", margin " +
                   (evidence.by_ear ? std::to_string(evidence.by_ear->margin) : "none") +
                   ", voiced " + std::to_string(evidence.voiced_s) + " s" + ", clip " +
                   std::to_string(sounds[i].clean.seconds()) + " s\n";
        }
    return out;
}

std::string fittedLimits(const std::vector<LoneSound>& sounds, desk::WordEar& ear) {
    std::vector<std::vector<desk::VowelEvidence>> rooms;
    for (const Room& room : kRooms) rooms.push_back(evidenceIn(sounds, room, &ear));
    struct Tried {
        double cost;
        desk::VowelLimits limits;
    };
    std::vector<Tried> all;
    for (int surely = -500; surely <= 0; surely += 20)
        for (int with_rule = -100; with_rule <= 200; with_rule += 20)
            for (int frames = 0; frames <= 8; ++frames) {
                const desk::VowelLimits limits{double(surely), double(with_rule), frames * 0.005};
                all.push_back({costOf(sounds, rooms, limits), limits});
            }
    std::sort(all.begin(), all.end(),
              [](const Tried& a, const Tried& b) { return a.cost < b.cost; });
    std::string out = "cost, surely, with_rule, voiced_s; the best first\n";
    for (std::size_t i = 0; i < std::min<std::size_t>(30, all.size()); ++i) {
        const auto& [cost, limits] = all[i];
        out += std::to_string(cost) + ' ' + std::to_string(limits.surely) + ' ' +
               std::to_string(limits.with_rule) + ' ' + std::to_string(limits.voiced_s) + '\n';
    }
    return out;
}

}  // namespace wrenlet::ear
