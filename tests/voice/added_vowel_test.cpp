#include "editor/voice/added_vowel.hpp"

#include <doctest/doctest.h>

#include "editor/voice/demo_voice.hpp"
#include "editor/voice/take.hpp"
#include "tests/fixtures/dictionary.hpp"
#include "tests/fixtures/sounds.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using speech::Phoneme;

namespace {

pack::VoiceNeed lone(Phoneme phoneme) {
    return {"sound:x",
            "/" + std::string(speech::ipa(phoneme)) + "/",
            {{phoneme, speech::Stress::none}},
            pack::VoiceNeed::Kind::sound};
}

/// As the demo voice says it, with silence around it.
struct Said {
    Pcm take;
    double alone_s = 0;               // the consonant's length
    double uh_begin = 0, uh_end = 0;  // s, in the take
};
Said said(const DemoVoice& voice, Phoneme phoneme, bool with_uh) {
    const Pcm alone = voice.say(lone(phoneme));
    const Pcm uh = voice.say(
        {"sound:uh", "uh", {{Phoneme::ah, speech::Stress::primary}}, pack::VoiceNeed::Kind::sound});
    const Stretch voiced = heardIn(uh).all();
    const double before = 0.5 + alone.seconds();
    Said out{fixtures::joined({fixtures::silence(0.5), alone}), alone.seconds(),
             before + double(voiced.begin) / kClipRate, before + double(voiced.end) / kClipRate};
    if (with_uh) out.take = fixtures::joined({out.take, uh});
    out.take = fixtures::joined({out.take, fixtures::silence(0.5)});
    return out;
}

std::optional<Finding> vowelIn(const Pcm& take, Phoneme phoneme, WordEar* ear) {
    return addedVowel(vowelEvidence(take, heardIn(take), lone(phoneme), ear));
}

constexpr Phoneme kStopsAndHisses[] = {Phoneme::p,  Phoneme::b, Phoneme::t, Phoneme::d,
                                       Phoneme::k,  Phoneme::g, Phoneme::f, Phoneme::s,
                                       Phoneme::sh, Phoneme::th};

}  // namespace

TEST_CASE("Added vowel: the ear is sure, or the rule and the ear agree, and a voice is in it") {
    const Finding by_rule{Trouble::added_vowel, 0.1, 0.2, 0.1, {}};
    const VowelLimits limits{-200, -50, 0.02};
    const auto heard = [&](bool rule, double margin, double voiced_s = 0.1) {
        VowelEvidence evidence;
        if (rule) evidence.by_rule = by_rule;
        evidence.by_ear = VowelJudgement{margin, 0.3, 0.5};
        evidence.voiced_s = voiced_s;
        return addedVowel(evidence, limits);
    };
    CHECK(heard(false, -201));
    CHECK_FALSE(heard(false, -199));
    CHECK(heard(true, -51));
    CHECK_FALSE(heard(true, -49));
    CHECK(heard(true, -300, 0.02));
    CHECK_FALSE(heard(true, -300, 0.015));
    CHECK(heard(true, -300)->begin_s == doctest::Approx(0.3));
    CHECK(heard(true, -300)->amount == doctest::Approx(0.2));
    CHECK(addedVowel({by_rule, {}, 0}, limits) == by_rule);
    CHECK_FALSE(addedVowel({}, limits));
}

TEST_CASE("Added vowel: the demo voice's own is heard by the recogniser, and none in its absence") {
    const DemoVoice voice(fixtures::dictionary());
    const auto ear = openWordEar();
    REQUIRE(ear);
    for (const Phoneme phoneme :
         {Phoneme::p, Phoneme::b, Phoneme::t, Phoneme::d, Phoneme::k, Phoneme::g, Phoneme::ch,
          Phoneme::jh, Phoneme::f, Phoneme::v, Phoneme::th, Phoneme::s, Phoneme::z, Phoneme::sh,
          Phoneme::m, Phoneme::n}) {
        CAPTURE(std::string(speech::ipa(phoneme)));
        const auto with =
            vowelEvidence(said(voice, phoneme, true).take, heardIn(said(voice, phoneme, true).take),
                          lone(phoneme), ear.get());
        REQUIRE(with.by_ear);
        CAPTURE(with.by_ear->margin);
        CHECK(addedVowel(with));
        CHECK_FALSE(vowelIn(said(voice, phoneme, false).take, phoneme, ear.get()));
    }
}

TEST_CASE("Added vowel: nothing is asked of l, r, w, y, of a word, and of silence") {
    const auto ear = openWordEar();
    REQUIRE(ear);
    const Pcm buzz = fixtures::joined(
        {fixtures::silence(0.5), fixtures::buzz(-20, 0.4), fixtures::silence(0.5)});
    for (const Phoneme phoneme : {Phoneme::l, Phoneme::r, Phoneme::w, Phoneme::y})
        CHECK_FALSE(vowelIn(buzz, phoneme, ear.get()));
    CHECK_FALSE(vowelIn(fixtures::silence(1), Phoneme::b, ear.get()));
    CHECK_FALSE(ear->vowelAfter(buzz, {}));
    CHECK_FALSE(ear->vowelAfter(fixtures::buzz(-20, 20), {{Phoneme::b}}));
    CHECK_FALSE(ear->vowelAfter(Pcm{}, {{Phoneme::b}}));
}

TEST_CASE("Added vowel: the whole of it is marked and cut off") {
    const DemoVoice voice(fixtures::dictionary());
    const auto opened = openWordEar();
    REQUIRE(opened);
    for (WordEar* ear : {static_cast<WordEar*>(nullptr), opened.get()})
        for (const Phoneme phoneme : kStopsAndHisses) {
            CAPTURE(std::string(speech::ipa(phoneme)));
            CAPTURE(ear != nullptr);
            const Said uh = said(voice, phoneme, true);
            const auto found = vowelIn(uh.take, phoneme, ear);
            REQUIRE(found);
            CAPTURE(uh.uh_begin);
            CAPTURE(uh.uh_end);
            CAPTURE(found->begin_s);
            CAPTURE(found->end_s);
            CHECK(found->begin_s < uh.uh_begin + 0.04);
            CHECK(found->begin_s > uh.uh_begin - 0.06);
            CHECK(found->end_s > uh.uh_end - 0.08);
            const Stretch left = endsWithout(checkedTake(uh.take, lone(phoneme), ear), *found);
            CHECK(double(left.end) / kClipRate - 0.5 - uh.alone_s < 0.1);
            // what remains is as good as the consonant alone, whose hiss is another in each run
            if (vowelIn(said(voice, phoneme, false).take, phoneme, ear)) continue;
            if (const auto again = vowelIn(cutOut(uh.take, left), phoneme, ear))
                CHECK(again->end_s - again->begin_s < 0.06);
        }
}
