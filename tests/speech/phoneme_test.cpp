#include "content/speech/phoneme.hpp"

#include <doctest/doctest.h>

#include <set>

#include "content/speech/features.hpp"

using namespace wrenlet::speech;

namespace {

std::vector<Phoneme> everyPhoneme() {
    std::vector<Phoneme> all;
    for (std::size_t i = 0; i < kPhonemeCount; ++i) all.push_back(static_cast<Phoneme>(i));
    return all;
}

}  // namespace

TEST_CASE("Every phoneme has its own IPA symbol and its own ARPABET letters, there and back") {
    std::set<std::string_view> ipas, arpabets;
    for (const Phoneme phoneme : everyPhoneme()) {
        ipas.insert(ipa(phoneme));
        arpabets.insert(arpabet(phoneme));
        CHECK(fromIpa(ipa(phoneme)) == phoneme);
        CHECK(fromArpabet(arpabet(phoneme)) == phoneme);
    }
    CHECK(ipas.size() == kPhonemeCount);
    CHECK(arpabets.size() == kPhonemeCount);
    CHECK(ipa(Phoneme::r) == "\u0279");
    CHECK(ipa(Phoneme::g) == "\u0261");
    CHECK_FALSE(fromIpa("").has_value());
    CHECK_FALSE(fromIpa("q").has_value());
    CHECK_FALSE(fromArpabet("AE1").has_value());
}

// The Reading Framework (England, 2021): about 24 consonants and 20 vowels; General American has
// fewer vowels, for it says /ɹ/ after them.
TEST_CASE("English has 24 consonants") {
    int consonants = 0;
    for (const Phoneme phoneme : everyPhoneme()) consonants += isVowel(phoneme) ? 0 : 1;
    CHECK(consonants == 24);
}

TEST_CASE("Distance is none to itself, the same both ways, and at most 6") {
    for (const Phoneme a : everyPhoneme())
        for (const Phoneme b : everyPhoneme()) {
            CHECK(distance(a, b) == distance(b, a));
            CHECK((distance(a, b) == 0) == (a == b));
            CHECK(distance(a, b) <= 6);
        }
}

// Treiman and others 1998: foils that differ in voicing alone confuse most.
TEST_CASE("Voice alone is the least distance, and a vowel against a stop is the most") {
    using P = Phoneme;
    for (const auto& [voiceless, voiced] : {std::pair{P::t, P::d},
                                            {P::p, P::b},
                                            {P::k, P::g},
                                            {P::s, P::z},
                                            {P::f, P::v},
                                            {P::th, P::dh},
                                            {P::sh, P::zh},
                                            {P::ch, P::jh}})
        CHECK(distance(voiceless, voiced) == 1);
    CHECK(distance(P::ae, P::t) == 6);
    CHECK(distance(P::m, P::n) < distance(P::m, P::s));
    CHECK(distance(P::ih, P::iy) < distance(P::ih, P::aa));
    CHECK(distance(P::eh, P::ae) < distance(P::iy, P::ae));
}

TEST_CASE("Stops and affricates cannot be held") {
    using P = Phoneme;
    for (const P held : {P::s, P::m, P::f, P::l, P::r, P::sh, P::ae}) CHECK(isContinuant(held));
    for (const P cut : {P::b, P::t, P::k, P::ch, P::jh}) CHECK_FALSE(isContinuant(cut));
}

TEST_CASE("A word's IPA has no spaces and no stress marks") {
    CHECK(ipa(Pronunciation{{Phoneme::k}, {Phoneme::ae, Stress::primary}, {Phoneme::t}}) == "kæt");
    CHECK(ipa(Pronunciation{}).empty());
}
