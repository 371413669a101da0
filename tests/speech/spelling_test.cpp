#include "content/speech/spelling.hpp"

#include <doctest/doctest.h>

#include <string>

#include "content/common/files.hpp"
#include "content/exercise/classroom_words.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::speech;
using fixtures::said;

namespace {

/// "c=k a_e=eɪ k=k"; "?" when there is no way.
std::string laid(std::string_view word) {
    const auto parts = alignSpelling(word, said(word));
    if (!parts) return "?";
    std::string text;
    for (const Spelled& part : *parts)
        text += (text.empty() ? "" : " ") + part.letters + "=" + ipa(part.sounds);
    return text;
}

const std::vector<Correspondence> kFirstTaught = {
    {"s", {Phoneme::s}},  {"a", {Phoneme::ae}}, {"t", {Phoneme::t}}, {"p", {Phoneme::p}},
    {"i", {Phoneme::ih}}, {"n", {Phoneme::n}},  {"k", {Phoneme::k}}, {"ck", {Phoneme::k}}};

}  // namespace

// What teachers of phonics say of these words; from memory.
TEST_CASE("Spelling: letters lie beside the sounds that they say") {
    CHECK(laid("cat") == "c=k a=æ t=t");
    CHECK(laid("ship") == "sh=ʃ i=ɪ p=p");
    CHECK(laid("duck") == "d=d u=ʌ ck=k");
    CHECK(laid("box") == "b=b o=ɑ x=ks");
    CHECK(laid("queen") == "qu=kw ee=i n=n");
    CHECK(laid("light") == "l=l igh=aɪ t=t");
    CHECK(laid("boat") == "b=b oa=oʊ t=t");
    CHECK(laid("sing") == "s=s i=ɪ ng=ŋ");
    CHECK(laid("think") == "th=θ i=ɪ n=ŋ k=k");
    CHECK(laid("car") == "c=k ar=ɑɹ");
    CHECK(laid("fork") == "f=f or=ɔɹ k=k");
    CHECK(laid("bird") == "b=b ir=ɝ d=d");
    CHECK(laid("phone") == "ph=f o_e=oʊ n=n");
    CHECK(laid("fridge") == "f=f r=ɹ i=ɪ dge=dʒ");
    CHECK(laid("caught") == "c=k augh=ɔ t=t");
    CHECK(laid("steak") == "s=s t=t ea=eɪ k=k");
    CHECK(laid("apple") == "a=æ pp=p le=əl");
}

TEST_CASE("Spelling: the e at the end goes with its vowel") {
    CHECK(laid("cake") == "c=k a_e=eɪ k=k");
    CHECK(laid("cakes") == "c=k a_e=eɪ k=k s=s");
    CHECK(laid("baked") == "b=b a_e=eɪ k=k d=t");
    CHECK(laid("five") == "f=f i_e=aɪ v=v");
    CHECK(laid("nose") == "n=n o_e=oʊ s=z");
    CHECK(laid("cube") == "c=k u_e=ju b=b");
    CHECK(laid("notebook") == "n=n o_e=oʊ t=t b=b oo=ʊ k=k");
    // no long vowel before it
    CHECK(laid("give") == "g=ɡ i=ɪ ve=v");
    CHECK(laid("house") == "h=h ou=aʊ se=s");
}

TEST_CASE("Spelling: silent letters go with a sound, or say nothing") {
    CHECK(laid("knee") == "kn=n ee=i");
    CHECK(laid("lamb") == "l=l a=æ mb=m");
    CHECK(laid("write") == "wr=ɹ i_e=aɪ t=t");
    CHECK(laid("castle") == "c=k a=æ st=s le=əl");
    CHECK(laid("gnome") == "gn=n o_e=oʊ m=m");
    CHECK(laid("giraffe") == "g=dʒ ir=əɹ a=æ ff=f e=");
}

TEST_CASE("Spelling: a vowel that is reduced is flagged") {
    const auto flags = [](std::string_view word) {
        const auto parts = alignSpelling(word, said(word));
        REQUIRE(parts.has_value());
        std::string text;
        for (const Spelled& part : *parts)
            if (part.reduced) text += part.letters + " ";
        return text;
    };
    CHECK(flags("about") == "a ");
    CHECK(flags("rabbit") == "i ");
    CHECK(flags("lemon") == "o ");
    CHECK(flags("cat").empty());
    CHECK(flags("pig").empty());
}

TEST_CASE("Spelling: letters and sounds keep their order and none is lost") {
    const Lexicon lexicon = fixtures::dictionary();
    for (const char* word : {"elephant", "butterfly", "strawberry", "receive", "don't", "people",
                             "choir", "two", "mailbox", "xylophone"}) {
        const auto parts = alignSpelling(word, said(word));
        INFO(word);
        REQUIRE(parts.has_value());
        Pronunciation sounds;
        std::size_t letters = 0;
        for (const Spelled& part : *parts) {
            sounds.insert(sounds.end(), part.sounds.begin(), part.sounds.end());
            letters += part.letters.size() - (part.letters.find('_') != std::string::npos);
        }
        CHECK(sounds == said(word));
        CHECK(letters == std::string_view(word).size());
    }
}

TEST_CASE("Spelling: what cannot be laid side by side is refused") {
    CHECK_FALSE(alignSpelling("", said("cat")).has_value());
    CHECK_FALSE(alignSpelling("cat", {}).has_value());
    CHECK_FALSE(alignSpelling("cat", said("dog")).has_value());
    CHECK_FALSE(alignSpelling("c4t", said("cat")).has_value());
    CHECK_FALSE(alignSpelling("k\u00E4t", said("cat")).has_value());
    CHECK_FALSE(alignSpelling(std::string(300, 'a'), said("cat")).has_value());
}

TEST_CASE("Spelling: a word is decodable iff each of its parts is taught") {
    const auto decodable = [](std::string_view word) {
        return isDecodable(word, said(word), kFirstTaught);
    };
    for (const char* word : {"sat", "pin", "tap", "kit", "snack", "stick"}) {
        INFO(word);
        CHECK(decodable(word));
    }
    for (const char* word : {"cat", "pine", "ink", "knit", "phone", "piano"}) {
        INFO(word);
        CHECK_FALSE(decodable(word));
    }
    CHECK_FALSE(isDecodable("sat", said("dog"), kFirstTaught));
    CHECK_FALSE(isDecodable("sat", said("sat"), {}));
    const std::vector<Correspondence> with_e = {
        {"p", {Phoneme::p}}, {"n", {Phoneme::n}}, {"i_e", {Phoneme::ay}}};
    CHECK(isDecodable("pine", said("pine"), with_e));
}

TEST_CASE("Spelling: words whose first letter misleads are known") {
    for (const char* word : {"one", "unicorn", "eye", "knee", "gem", "city", "phone", "giraffe",
                             "ship", "write", "cheese", "owl", "arm", "circle", "gnome", "hour"}) {
        INFO(word);
        CHECK(firstLetterMisleads(word, said(word)));
    }
    for (const char* word : {"cat", "goat", "apple", "ice", "egg", "eagle", "up", "yellow", "queen",
                             "whale", "zebra", "octopus", "open", "insect", "jam"}) {
        INFO(word);
        CHECK_FALSE(firstLetterMisleads(word, said(word)));
    }
    CHECK_FALSE(firstLetterMisleads("", said("cat")));
    CHECK_FALSE(firstLetterMisleads("cat", {}));
}

// Counted here: 124,714 of 125,932 words, 99.03 %; what is left are letters read out (fbi), foreign
// names (szczech) and slips.
TEST_CASE("Spelling: 99 of 100 words of the dictionary are aligned") {
    std::size_t words = 0, aligned = 0;
    fixtures::dictionary().forEach(
        [&](std::string_view word, const std::vector<Pronunciation>& listed) {
            ++words;
            aligned += alignSpelling(word, listed.front()).has_value();
        });
    INFO(aligned << " of " << words);
    CHECK(words > 125'000);
    CHECK(aligned * 100 >= words * 99);
}

TEST_CASE("Spelling: every classroom word is aligned") {
    const auto text = readWhole(WRENLET_TEST_SHARE "/words/classroom.tsv", 1 << 20);
    REQUIRE(text.ok());
    const auto listed = exercise::readClassroomWords(text.value(), "classroom.tsv");
    REQUIRE(listed.ok());
    const auto words = exercise::saidAloud(listed.value(), fixtures::dictionary(), "classroom.tsv");
    REQUIRE(words.ok());
    CHECK(words.value().size() > 500);
    for (const exercise::Word& word : words.value()) {
        INFO(word.text << " " << ipa(word.sounds));
        CHECK(alignSpelling(word.text, word.sounds).has_value());
    }
}
