// What a child really hears, read from the mixed samples of scripted sessions of each mechanic.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>

#include "game/stage/cues.hpp"
#include "tests/heard/ear.hpp"
#include "tests/heard/overheard.hpp"

using namespace wrenlet;
using exercise::Skill;
using exercise::Task;
using exercise::Unit;
using heard::Overheard;

namespace {

constexpr Skill kOneOfEachMechanic[] = {
    {Unit::onset_rime, Task::rhyme_sort}, {Unit::phoneme, Task::blend},
    {Unit::phoneme, Task::segment},       {Unit::sentence, Task::count},
    {Unit::letter, Task::sound},          {Unit::phoneme, Task::substitute}};

constexpr std::int64_t kMostWait = 400 * game::kSamplesPerMilli;  // for a cue

const Overheard& session(std::size_t which) {
    static std::map<std::size_t, Overheard> played;
    const auto found = played.find(which);
    if (found != played.end()) return found->second;
    game::Tape tape;
    tape.seed = 11 + which;
    tape.right_share = 0.6;
    tape.most_minutes = 1;
    return played[which] = heard::overhear(kOneOfEachMechanic[which], tape);
}

struct Place {
    std::size_t at = 0;
    std::string clip;
    double like = 1;
};
constexpr double kClear = 0.97;  // so like itself is what nothing else sounds over

/// What was to be heard of one utterance before the next cut it short, and what was.
struct Utterance {
    std::vector<Place> wanted;  // all of it; `whole` of them were over before the cut
    std::size_t whole = 0;
    std::size_t cut = 0;
    std::vector<Place> heard;
};

/// Clips that sound the same have one name.
std::string nameOf(const Overheard& played, const std::string& clip) {
    for (const auto& [name, samples] : played.clips)
        if (samples == played.clips.at(clip)) return name;
    return clip;
}

/// It may wait for a cue: then all of it is as much later as its first clip is heard.
Utterance listenTo(const Overheard& played, std::size_t index) {
    Utterance utterance;
    const heard::Said& said = played.said[index];
    if (said.words.empty()) return utterance;
    const bool last = index + 1 == played.said.size();
    utterance.cut = last ? played.recording.size() : played.said[index + 1].since;
    std::set<std::string> names;
    std::size_t length = 0;
    for (const game::Spoken& spoken : said.words) {
        names.insert(nameOf(played, spoken.clip));
        length += static_cast<std::size_t>(spoken.gap_before) * game::kSamplesPerMilli +
                  played.clips.at(spoken.clip).size();
    }
    const std::vector<std::string> in_order(names.begin(), names.end());
    std::vector<heard::Samples> clips;
    for (const std::string& name : in_order) clips.push_back(played.clips.at(name));
    const std::size_t until = std::min(utterance.cut, said.since + length + 48'000);
    for (const heard::Sounded& found : heard::inOrder(played.recording, said.since, until, clips))
        utterance.heard.push_back({found.heard.at, in_order[found.clip], found.heard.like});

    const auto first_gap =
        static_cast<std::size_t>(said.words.front().gap_before) * game::kSamplesPerMilli;
    std::size_t at = said.since + first_gap;
    if (!utterance.heard.empty() && utterance.heard[0].at > at + 2) at = utterance.heard[0].at;
    for (std::size_t i = 0; i < said.words.size(); ++i) {
        if (i > 0)
            at += static_cast<std::size_t>(said.words[i].gap_before) * game::kSamplesPerMilli;
        utterance.wanted.push_back({at, nameOf(played, said.words[i].clip)});
        at += played.clips.at(said.words[i].clip).size();
        if (at <= utterance.cut) ++utterance.whole;
    }
    return utterance;
}

const Utterance& listen(std::size_t which, std::size_t index) {
    static std::map<std::pair<std::size_t, std::size_t>, Utterance> listened;
    const auto found = listened.find({which, index});
    if (found != listened.end()) return found->second;
    return listened[{which, index}] = listenTo(session(which), index);
}

/// How far behind the moment at which it was to begin its first clip is heard, in samples.
std::int64_t wait(const Overheard& played, std::size_t index, const Utterance& utterance) {
    const heard::Said& said = played.said[index];
    return static_cast<std::int64_t>(utterance.wanted.front().at) -
           static_cast<std::int64_t>(said.since) -
           said.words.front().gap_before * game::kSamplesPerMilli;
}

bool followsACue(const Overheard& played, std::size_t at) {
    return std::any_of(played.cues.begin(), played.cues.end(), [at](const heard::NotedCue& cue) {
        return cue.at <= at && cue.at + static_cast<std::size_t>(kMostWait) >= at;
    });
}

/// A lone consonant: softer than a word, as in speech (see editor/voice/loudness.hpp).
bool isSoft(const std::string& clip) {
    const std::string_view vowels[] = {"a", "æ", "ɑ", "ɔ", "ʌ", "ɛ",  "e",  "ɪ",  "i", "oʊ",
                                       "o", "ʊ", "u", "ɝ", "ə", "aɪ", "aʊ", "ɔɪ", "eɪ"};
    if (clip.rfind("sound:", 0) != 0) return clip == "part:ks";
    return std::none_of(std::begin(vowels), std::end(vowels), [&](std::string_view vowel) {
        return clip.compare(6, vowel.size(), vowel) == 0;
    });
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

/// What is left of a recording when the voice is taken out of it, and how loud each clip was.
struct Apart {
    std::vector<std::int16_t> rest;
    std::vector<std::pair<std::string, double>> levels;     // of a clip's active part, LUFS
    std::vector<std::pair<std::size_t, std::size_t>> soft;  // where lone consonants sound
};

Apart takeApart(std::size_t which) {
    const Overheard& played = session(which);
    Apart apart{played.recording, {}, {}};
    for (std::size_t i = 0; i < played.said.size(); ++i) {
        const Utterance& utterance = listen(which, i);
        for (std::size_t k = 0; k < utterance.heard.size(); ++k) {
            const std::size_t at = utterance.heard[k].at;
            const std::string& name = utterance.heard[k].clip;
            const auto& clip = played.clips.at(name);
            double both = 0, own = 0;
            for (std::size_t n = 0; n < clip.size(); ++n) {
                both += static_cast<double>(clip[n]) * played.recording[at + n];
                own += static_cast<double>(clip[n]) * clip[n];
            }
            std::vector<std::int16_t> alone;
            for (std::size_t n = 0; n < clip.size(); ++n) {
                alone.push_back(static_cast<std::int16_t>(std::lround(clip[n] * both / own)));
                apart.rest[at + n] = static_cast<std::int16_t>(apart.rest[at + n] - alone.back());
            }
            const heard::Samples active = heard::active(alone);
            apart.levels.emplace_back(name, heard::loudness(active));
            if (isSoft(name)) apart.soft.emplace_back(at, at + clip.size());
        }
        // What was cut short was not found, and can't be taken out: it is not looked at.
        if (utterance.whole == utterance.wanted.size()) continue;
        const std::size_t from = utterance.wanted[utterance.whole].at;
        const std::size_t to = std::min(utterance.cut + game::kFadeSamples, apart.rest.size());
        for (std::size_t n = from; n < to; ++n) apart.rest[n] = 0;
    }
    return apart;
}

}  // namespace

TEST_CASE(
    "Heard: in each mechanic all prompts come in their order, their gaps exact to the sample") {
    for (std::size_t which = 0; which < std::size(kOneOfEachMechanic); ++which) {
        CAPTURE(exercise::rowOf(kOneOfEachMechanic[which]).id);
        const Overheard& played = session(which);
        CHECK(played.answers > 1);
        std::size_t heard = 0, gaps = 0, covered = 0;
        for (std::size_t i = 0; i < played.said.size(); ++i) {
            CAPTURE(i);
            const Utterance& utterance = listen(which, i);
            REQUIRE(utterance.heard.size() == utterance.whole);
            for (std::size_t k = 0; k < utterance.whole; ++k) {
                CAPTURE(utterance.wanted[k].clip);
                CHECK(utterance.heard[k].clip == utterance.wanted[k].clip);
                // What sounds under a cue is not quite like itself, nor quite where it is.
                const bool clear = utterance.heard[k].like > kClear;
                const std::size_t off = utterance.heard[k].at > utterance.wanted[k].at
                                            ? utterance.heard[k].at - utterance.wanted[k].at
                                            : utterance.wanted[k].at - utterance.heard[k].at;
                CHECK(off <= (clear ? 0 : 2));
                if (!clear) ++covered;
            }
            if (utterance.whole == 0) continue;
            const std::int64_t waited = wait(played, i, utterance);
            CHECK(waited >= 0);
            CHECK(waited <= (followsACue(played, played.said[i].since) ? kMostWait : 0));
            heard += utterance.whole;
            gaps += utterance.whole - 1;
        }
        CHECK(heard > 25);
        CHECK(gaps > 15);
        CHECK(covered * 10 < heard);
        MESSAGE(heard, " clips, ", gaps, " gaps, ", covered, " under a cue");
    }
}

TEST_CASE("Heard: no sample leaves the mixer above the cap, and both sides are alike") {
    const int cap = static_cast<int>(game::kGainCap * 32767);
    for (std::size_t which = 0; which < std::size(kOneOfEachMechanic); ++which) {
        const Overheard& played = session(which);
        int most = 0;
        for (const std::int16_t sample : played.recording) most = std::max(most, std::abs(sample));
        CHECK(most <= cap);
        CHECK(most > cap / 4);
        CHECK(played.sides_alike);
    }
}

// Words, parts, phrases, sentences and vowels are one loudness; lone consonants are another, softer
// one. Each clip is measured over its active part (libebur128, ITU-R BS.1770 without gates).
TEST_CASE("Heard: levels lie within 2 LU of each other, and cues 9 LU under the voice") {
    std::vector<double> loud, soft;
    std::vector<std::pair<std::string, double>> all;
    std::vector<Apart> sessions;
    for (std::size_t which = 0; which < std::size(kOneOfEachMechanic); ++which) {
        sessions.push_back(takeApart(which));
        for (const auto& [name, lufs] : sessions.back().levels) {
            (isSoft(name) ? soft : loud).push_back(lufs);
            all.emplace_back(name, lufs);
        }
    }
    REQUIRE(loud.size() > 100);
    REQUIRE(soft.size() > 20);
    const double middle = median(loud), middle_soft = median(soft);
    for (const auto& [name, lufs] : all) {
        CAPTURE(name);
        CHECK(std::fabs(lufs - (isSoft(name) ? middle_soft : middle)) <= 2);
    }
    // The mixer brings what was recorded down by its cap, and by nothing else.
    const double brought_down = 20 * std::log10(static_cast<double>(game::kGainCap));
    CHECK(std::fabs(middle - (game::kVoiceLufs + brought_down)) < 1);
    CHECK(middle - middle_soft == doctest::Approx(6).epsilon(0.2));

    double loudest_cue = -HUGE_VAL, loudest_beside_soft = -HUGE_VAL;
    for (const Apart& apart : sessions) {
        loudest_cue = std::max(loudest_cue, heard::loudestMoment(apart.rest));
        for (const auto& [from, to] : apart.soft)
            loudest_beside_soft =
                std::max(loudest_beside_soft,
                         heard::loudestMoment(heard::Samples(apart.rest).subspan(from, to - from)));
    }
    CHECK(loudest_cue <= middle - game::kCueBelowVoice);
    CHECK(loudest_cue >= middle - game::kCueBelowVoice - 12);  // they are heard
    CHECK(loudest_beside_soft <= middle_soft - game::kCueBelowVoice);
    MESSAGE("voice ", middle, " LUFS, ", *std::min_element(loud.begin(), loud.end()), " to ",
            *std::max_element(loud.begin(), loud.end()), "; lone consonants ", middle_soft, ", ",
            *std::min_element(soft.begin(), soft.end()), " to ",
            *std::max_element(soft.begin(), soft.end()), "; cues at most ", loudest_cue,
            ", beside a lone consonant ", loudest_beside_soft);
}
