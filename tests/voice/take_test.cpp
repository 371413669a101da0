#include "editor/voice/take.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "editor/voice/finding_words.hpp"
#include "editor/voice/level.hpp"
#include "editor/voice/take_checks.hpp"
#include "editor/voice/wave_picture.hpp"
#include "tests/fixtures/sounds.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using namespace wrenlet::fixtures;

namespace {

const pack::VoiceNeed kGoat{"word:goat", "goat", {}, pack::VoiceNeed::Kind::word};

bool found(const CheckedTake& checked, Trouble trouble) {
    return std::any_of(checked.findings.begin(), checked.findings.end(),
                       [&](const Finding& finding) { return finding.trouble == trouble; });
}

/// `said` with quiet around it, in a room of that noise.
Pcm inRoom(const Pcm& said, double room_db, double quiet_s = 0.5) {
    const Pcm take = joined({silence(quiet_s), said, silence(quiet_s)});
    return mixed(take, room(room_db, take.seconds()));
}

}  // namespace

TEST_CASE("A take: what is said in a quiet room is found, trimmed and free of findings") {
    const CheckedTake checked = checkedTake(inRoom(buzz(-20, 0.4), -65), kGoat);
    CHECK(checked.findings.empty());
    CHECK(std::fabs(static_cast<double>(checked.spoken.begin) / kClipRate - 0.5) < 0.03);
    CHECK(std::fabs(static_cast<double>(checked.spoken.end) / kClipRate - 0.9) < 0.03);
    CHECK(std::fabs(checked.clip.seconds() - (0.4 + 2 * kTrimMargin)) < 0.06);
    CHECK(std::fabs(checked.clip.samples.front()) < 1e-4f);
    CHECK(std::fabs(checked.clip.samples.back()) < 1e-4f);
    CHECK(checked.take.seconds() > 1.39);
}

TEST_CASE("A take: soft and loud ones come to one loudness, and no peak passes the cap") {
    for (const double db : {-40.0, -30.0, -20.0, -12.0}) {
        CAPTURE(db);
        const CheckedTake checked = checkedTake(inRoom(buzz(db, 0.4), db - 45), kGoat);
        const Stretch said{static_cast<std::size_t>(kTrimMargin * kClipRate),
                           static_cast<std::size_t>((kTrimMargin + 0.4) * kClipRate)};
        CHECK(std::fabs(loudness(cutOut(checked.clip, said)) - kWordLufs) < 1);
        CHECK(truePeak(checked.clip) < kMostPeakDb + 0.1);
    }
}

TEST_CASE("A take: a lone consonant is not lifted to a word's loudness") {
    const pack::VoiceNeed f{"sound:f", "/f/", {{speech::Phoneme::f}}, pack::VoiceNeed::Kind::sound};
    const pack::VoiceNeed a{
        "sound:a", "/ae/", {{speech::Phoneme::ae}}, pack::VoiceNeed::Kind::sound};
    CHECK(aimedLufs(f) < aimedLufs(kGoat) - 3);
    CHECK(aimedLufs(a) == aimedLufs(kGoat));
}

TEST_CASE("A take: a silent one says so and nothing else") {
    for (const Pcm& take : {silence(1), room(-70, 1), Pcm{}, Pcm{{0.5f}, kClipRate}}) {
        const CheckedTake checked = checkedTake(take, kGoat);
        REQUIRE(checked.findings.size() == 1);
        CHECK(checked.findings[0].trouble == Trouble::silent);
        CHECK(checked.clip.samples.empty());
        CHECK_NOTHROW(wavePicture(checked, 50));
    }
}

TEST_CASE("A take: overdriven tops are found, also when turned down afterwards") {
    Pcm said = buzz(-12, 0.4);
    float top = 0;
    for (const float sample : said.samples) top = std::max(top, std::fabs(sample));
    CHECK_FALSE(found(checkedTake(inRoom(said, -65), kGoat), Trouble::clipped));
    for (float& sample : said.samples)
        sample = 0.4f * std::clamp(sample * 1.26f / top, -1.0f, 1.0f);
    Pcm take = joined({silence(0.5), said, silence(0.5)});
    CHECK(found(checkedTake(take, kGoat), Trouble::clipped));
    // A pure tone has flat tops of its own where it is quantized to 16 bits.
    Pcm soft = tone(100, -20, 0.4);
    for (float& sample : soft.samples) sample = std::round(sample * 32768) / 32768;
    CHECK_FALSE(
        found(checkedTake(joined({silence(0.5), soft, silence(0.5)}), kGoat), Trouble::clipped));
}

TEST_CASE("A take: the room's noise is told in dB, and hum is no noise to it") {
    const CheckedTake noisy = checkedTake(inRoom(buzz(-20, 0.4), -35), kGoat);
    REQUIRE(found(noisy, Trouble::noisy));
    CHECK(std::fabs(noisy.heard.aboveRoomDb() - 15) < 1.5);
    Pcm humming = inRoom(buzz(-20, 0.4), -65);
    humming = mixed(humming, tone(50, -38, humming.seconds()));
    CHECK_FALSE(found(checkedTake(humming, kGoat), Trouble::noisy));
    CHECK_FALSE(found(checkedTake(inRoom(buzz(-20, 0.4), -52), kGoat), Trouble::noisy));
}

TEST_CASE("A take: a start or an end outside it is noticed") {
    const Pcm said = buzz(-20, 0.4);
    const auto late = joined({said, silence(0.5)}), early = joined({silence(0.5), said});
    CHECK(found(checkedTake(late, kGoat), Trouble::cut_off_start));
    CHECK_FALSE(found(checkedTake(late, kGoat), Trouble::cut_off_end));
    CHECK(found(checkedTake(early, kGoat), Trouble::cut_off_end));
    CHECK_FALSE(found(checkedTake(early, kGoat), Trouble::cut_off_start));
}

TEST_CASE("A take: a last stop that was not let go is missing, unless there is room after it") {
    using speech::Phoneme;
    const pack::VoiceNeed cat{
        "word:cat", "cat", {{Phoneme::k}, {Phoneme::ae}, {Phoneme::t}}, kGoat.kind};
    const Pcm said = joined({silence(0.5), buzz(-20, 0.3)});
    const auto ends = [&](const Pcm& end, const pack::VoiceNeed& need) {
        const Pcm take = joined({said, end});
        return found(checkedTake(mixed(take, room(-70, take.seconds())), need),
                     Trouble::cut_off_end);
    };
    CHECK(ends(silence(0.04), cat));
    CHECK_FALSE(ends(silence(0.2), cat));
    CHECK_FALSE(ends(joined({silence(0.05), room(-40, 0.04), silence(0.04)}), cat));
    const pack::VoiceNeed bee{"word:bee", "bee", {{Phoneme::b}, {Phoneme::iy}}, kGoat.kind};
    CHECK_FALSE(ends(silence(0.04), bee));
}

TEST_CASE("A take: a soft release after a closure belongs to the word, far from it it doesn't") {
    // 10 dB over the room: too soft to be speech by itself.
    const auto end = [](double closure_s) {
        const Pcm take = joined(
            {silence(0.5), buzz(-20, 0.3), silence(closure_s), room(-60.5, 0.05), silence(0.4)});
        return static_cast<double>(heardIn(mixed(take, room(-70, take.seconds()))).all().end) /
               kClipRate;
    };
    CHECK(std::fabs(end(0.1) - 0.95) < 0.03);
    CHECK(std::fabs(end(0.2) - 0.8) < 0.03);
}

TEST_CASE("A take: said twice, the last one can be kept") {
    const Pcm said = buzz(-20, 0.3);
    const Pcm take = inRoom(joined({said, silence(0.6), said}), -65);
    const CheckedTake checked = checkedTake(take, kGoat);
    REQUIRE(found(checked, Trouble::two_tries));
    const CheckedTake kept = withEnds(checked, endsWithout(checked, checked.findings[0]), kGoat);
    CHECK(std::fabs(kept.clip.seconds() - (0.3 + 2 * kTrimMargin)) < 0.06);
    CHECK(kept.take.samples == take.samples);
    // A stop's closure inside a word is no second try.
    CHECK_FALSE(found(checkedTake(inRoom(joined({said, silence(0.12), said}), -65), kGoat),
                      Trouble::two_tries));
}

TEST_CASE("A take: a click and a breath beside the word are left off") {
    const Pcm take = inRoom(joined({tone(2000, -12, 0.004), silence(0.5), buzz(-20, 0.4),
                                    silence(0.4), room(-52, 0.3)}),
                            -70, 0.3);
    const CheckedTake checked = checkedTake(take, kGoat);
    CHECK(std::fabs(static_cast<double>(checked.spoken.begin) / kClipRate - 0.804) < 0.03);
    CHECK(std::fabs(static_cast<double>(checked.spoken.end) / kClipRate - 1.204) < 0.03);
}

TEST_CASE("A take's wave: columns swing to 1, the ends stand where they were trimmed") {
    const CheckedTake checked = checkedTake(inRoom(buzz(-30, 0.4), -70), kGoat);
    const WavePicture picture = wavePicture(checked, 140);
    REQUIRE(picture.columns.size() == 140);
    float most = 0;
    for (const auto& column : picture.columns) most = std::max({most, column.high, -column.low});
    CHECK(most == doctest::Approx(1));
    CHECK(picture.columns[10].high < 0.1f);
    CHECK(std::fabs(picture.kept_begin - (0.5 - kTrimMargin) / 1.4) < 0.03);
    CHECK(sampleAt(checked, picture.kept_end) <= checked.kept.end);
    CHECK(picture.marks.empty());
    // More columns than samples leave gaps and go on.
    CHECK(
        wavePicture({Pcm{{0.1f, 0.2f}, kClipRate}, {}, {}, {}, -100, {}, {}}, 10).columns.size() ==
        10);
}

TEST_CASE("What a finding says: what happened, where, what to do, in plain words") {
    const pack::VoiceNeed b{"sound:b", "/b/", {{speech::Phoneme::b}}, pack::VoiceNeed::Kind::sound};
    CHECK(wordsOf({Trouble::added_vowel, 0.3, 0.44, 0.14, {}}, b).what ==
          "I heard an \"uh\" after the b, 0.14 seconds.");
    CHECK(wordsOf({Trouble::clipped, 0, 0, 0, {}}, kGoat).what ==
          "Too loud: the tops are cut. Lean back and say \"goat\" again.");
    CHECK(wordsOf({Trouble::cut_off_end, 0, 0, 0, {}}, kGoat).what ==
          "The end of \"goat\" is missing. Wait a moment before you stop.");
    CHECK(wordsOf({Trouble::noisy, 0, 0, 12.3, {}}, kGoat).what ==
          "The room is noisy: speech stands only 12 dB above it. Come closer, or wait for quiet.");
    CHECK(wordsOf({Trouble::another_word, 0, 0, 0, "coat"}, kGoat).what ==
          "This sounds more like \"coat\" than \"goat\".");
    for (int i = 0; i <= static_cast<int>(Trouble::another_word); ++i) {
        const FindingWords words = wordsOf({static_cast<Trouble>(i), 0, 1, 1, "x"}, kGoat);
        CHECK_FALSE(words.tag.empty());
        CHECK_FALSE(words.ways.empty());
        const auto lines = checkLines({{static_cast<Trouble>(i), 0, 1, 1, "x"}}, kGoat);
        CHECK(std::count_if(lines.begin(), lines.end(),
                            [](const CheckLine& line) { return !line.well; }) == 1);
    }
}
