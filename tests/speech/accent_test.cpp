// Which words an accent says alike. The pairs are those by which the mergers are named or usually
// shown (Wells, Accents of English, 1982; Labov, Ash and Boberg 2006); from memory.
#include "content/speech/accent.hpp"

#include <doctest/doctest.h>

#include <array>
#include <set>

#include "content/speech/rhyme.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet::speech;
using wrenlet::fixtures::said;
namespace fixtures = wrenlet::fixtures;

namespace {

bool alike(Accent accent, std::string_view a, std::string_view b) {
    return sameSounds(inAccent(accent, said(a)), inAccent(accent, said(b)));
}

RhymeAnswer rhyme(std::string_view a, std::string_view b, std::initializer_list<Accent> on = {}) {
    return rhymeVerdict(said(a), said(b), std::span(on.begin(), on.size())).answer;
}

}  // namespace

TEST_CASE("Accent: each merger says its pairs alike") {
    CHECK(alike(Accent::cot_caught, "cot", "caught"));
    CHECK(alike(Accent::cot_caught, "collar", "caller"));
    CHECK(alike(Accent::pin_pen, "pin", "pen"));
    CHECK(alike(Accent::pin_pen, "him", "hem"));
    CHECK(alike(Accent::th_fronting, "three", "free"));
    CHECK(alike(Accent::th_fronting, "thin", "fin"));
    CHECK(alike(Accent::th_stopping, "three", "tree"));
    CHECK(alike(Accent::th_stopping, "they", "day"));
    CHECK(alike(Accent::foot_strut, "putt", "put"));
    CHECK(alike(Accent::foot_strut, "buck", "book"));
    CHECK(alike(Accent::non_rhotic, "spa", "spar"));
    CHECK(alike(Accent::non_rhotic, "father", "farther"));
    CHECK(alike(Accent::non_rhotic, "sauce", "source"));
    CHECK(alike(Accent::non_rhotic, "panda", "pander"));
    const Pronunciation marry = *fromArpabetLine("M AE1 R IY0");
    const Pronunciation mary = *fromArpabetLine("M EY1 R IY0");
    CHECK(sameSounds(inAccent(Accent::before_r, marry), said("merry")));
    CHECK(sameSounds(inAccent(Accent::before_r, mary), said("merry")));
}

TEST_CASE("Accent: a merger leaves alone what it does not reach") {
    CHECK_FALSE(alike(Accent::cot_caught, "card", "cord"));
    CHECK_FALSE(alike(Accent::cot_caught, "far", "for"));
    CHECK_FALSE(alike(Accent::pin_pen, "pit", "pet"));
    CHECK_FALSE(alike(Accent::th_fronting, "they", "vey"));
    CHECK_FALSE(alike(Accent::before_r, "pat", "pet"));
    CHECK_FALSE(alike(Accent::foot_strut, "pool", "pull"));
    CHECK_FALSE(alike(Accent::non_rhotic, "card", "cord"));
    CHECK_FALSE(alike(Accent::non_rhotic, "row", "oh"));
    CHECK(inAccent(Accent::non_rhotic, said("carrot")) == said("carrot"));
    for (const Accent accent : allAccents()) {
        CHECK(inAccent(accent, said("kite")) == said("kite"));
        CHECK(inAccent(accent, {}).empty());
        CHECK(accentNamed(accentName(accent)) == accent);
        CHECK_FALSE(accentMeaning(accent).empty());
        CHECK_FALSE(rewrites(accent).empty());
    }
    CHECK_FALSE(accentNamed("posh").has_value());
}

TEST_CASE("Accent: stress stays where it was") {
    const Pronunciation caught = inAccent(Accent::cot_caught, said("caught"));
    CHECK(caught[1] == Sound{Phoneme::aa, Stress::primary});
    CHECK(ipa(inAccent(Accent::non_rhotic, said("deer"))) == "dɪə");
    CHECK(ipa(inAccent(Accent::non_rhotic, said("tiger"))) == "taɪɡə");
    CHECK(ipa(inAccent(Accent::non_rhotic, said("bird"))) == "bɝd");
}

TEST_CASE("Accent: features are applied together in one order, whichever they are named in") {
    constexpr std::array kOn = {Accent::non_rhotic, Accent::cot_caught};
    constexpr std::array kTurned = {Accent::cot_caught, Accent::non_rhotic};
    for (const char* word : {"cord", "card", "caught", "water", "door"}) {
        CHECK(inAccent(kOn, said(word)) == inAccent(kTurned, said(word)));
    }
    CHECK_FALSE(sameSounds(inAccent(kOn, said("card")), inAccent(kOn, said("cord"))));
}

TEST_CASE("Accent: no item turns on what many speakers say alike") {
    const auto many = [](std::string_view a, std::string_view b) {
        return saidAlikeByMany(said(a), said(b));
    };
    CHECK(many("cot", "caught"));
    CHECK(many("pin", "pen"));
    CHECK(many("pair", "pear"));
    CHECK_FALSE(many("card", "cord"));
    CHECK_FALSE(many("cat", "cot"));
    CHECK_FALSE(many("three", "free"));
    CHECK_FALSE(many("spa", "spar"));
    // apart by two of them at once
    CHECK(saidAlikeByMany(*fromArpabetLine("D AO1 T EH2 N"), *fromArpabetLine("D AA1 T IH2 N")));
}

TEST_CASE("Rhyme: what holds in every accent that is on is a rhyme, what holds in some depends") {
    CHECK(rhyme("cat", "hat") == RhymeAnswer::yes);
    CHECK(rhyme("cat", "hat", {Accent::cot_caught, Accent::non_rhotic}) == RhymeAnswer::yes);
    CHECK(rhyme("cat", "dog", {Accent::cot_caught}) == RhymeAnswer::no);
    CHECK(rhyme("hot", "caught") == RhymeAnswer::no);
    CHECK(rhyme("hot", "caught", {Accent::cot_caught}) == RhymeAnswer::depends);
    CHECK(rhyme("pin", "ten") == RhymeAnswer::no);
    CHECK(rhyme("pin", "ten", {Accent::pin_pen}) == RhymeAnswer::depends);
    CHECK(rhyme("saw", "door", {Accent::non_rhotic}) == RhymeAnswer::depends);
    CHECK(rhyme("far", "door", {Accent::cot_caught, Accent::non_rhotic}) == RhymeAnswer::no);
    // a rhyme here, and the same word twice there
    CHECK(rhyme("three", "free", {Accent::th_fronting}) == RhymeAnswer::depends);
    CHECK(rhyme("pear", "pair") == RhymeAnswer::no);
}

TEST_CASE("Accent: words are alike to many just when one of the many ways has them alike") {
    std::vector<Pronunciation> words;
    fixtures::dictionary().forEach([&words](std::string_view, const auto& listed) {
        static constexpr std::size_t kMostSounds = 3;
        if (listed.front().size() <= kMostSounds) words.push_back(listed.front());
    });
    std::size_t pairs = 0, pairs_alike = 0;
    for (std::size_t i = 0; i < words.size(); i += 9) {
        const auto ways = waysOfMany(words[i]);
        for (std::size_t j = i % 7; j < words.size(); j += 7) {
            const auto others = waysOfMany(words[j]);
            bool any = false;
            for (std::size_t way = 0; way < ways.size(); ++way)
                any |= sameSounds(ways[way], others[way]);
            ++pairs, pairs_alike += any;
            if (saidAlikeByMany(words[i], words[j]) != any)
                FAIL_CHECK(ipa(words[i]) << " and " << ipa(words[j]));
        }
    }
    CHECK(pairs > 100'000);
    CHECK(pairs_alike > 100);
}

TEST_CASE("Rhyme: a verdict names its kind and says why") {
    const auto verdict = [](std::string_view a, std::string_view b) {
        constexpr std::array kOn = {Accent::pin_pen};
        return rhymeVerdict(said(a), said(b), kOn);
    };
    CHECK(verdict("cat", "hat").kind == RhymeKind::perfect);
    CHECK(verdict("leave", "believe").kind == RhymeKind::identical);
    CHECK(verdict("pear", "pair").kind == RhymeKind::homophone);
    CHECK(verdict("cat", "dog").kind == RhymeKind::none);
    CHECK(verdict("cat", "hat").why.find("/æt/") != std::string::npos);
    CHECK(verdict("pear", "pair").why.find("/pɛɹ/") != std::string::npos);
    CHECK(verdict("cat", "dog").why.find("/ɑɡ/") != std::string::npos);
    CHECK(verdict("pin", "ten").why.find("pin and pen are said alike") != std::string::npos);
    CHECK(verdict("cat", "dog").why.find("pin and pen") == std::string::npos);
    std::set<std::string_view> names;
    for (const auto answer : {RhymeAnswer::yes, RhymeAnswer::no, RhymeAnswer::depends})
        names.insert(rhymeAnswerName(answer));
    CHECK(names == std::set<std::string_view>{"yes", "no", "depends"});
}
