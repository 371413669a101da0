// What is read at the desk, asked aloud, and its answer, against sentences written by hand for the
// starter's words.
#include "editor/look/asking.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "content/pack/pack_file.hpp"
#include "content/speech/respelling.hpp"
#include "tests/fixtures/dictionary.hpp"

namespace wrenlet::desk {
namespace {

const pack::Pack& starter() {
    static const pack::Pack pack = [] {
        auto read = pack::readPackFile(WRENLET_TEST_STARTER "/packs/by-the-pond-1.zip");
        REQUIRE(read.ok());
        return std::move(read.value());
    }();
    return pack;
}

struct Row {
    const char *skill, *ask, *answer;
};
constexpr std::array<Row, 33> kRows{{
    {"sentence.count", "Say it after me: The frog can hop. How many words?", "4"},
    {"sentence.tune", "Listen: The frog can hop. Is that asking or telling?", "telling"},
    {"onset-rime.rhyme-judge", "Do king and ring rhyme?", "yes"},
    {"onset-rime.rhyme-sort", "Which rhymes with hat: cat or house?", "cat"},
    {"onset-rime.odd-one-out", "Which does not rhyme: cat, rat or rock?", "rock"},
    {"onset-rime.rhyme-pick", "Which rhymes with cat: coat, hat or key?", "hat"},
    {"compound.blend", "Put together: jelly … fish", "jellyfish"},
    {"compound.segment", "Say jellyfish as its two small words.", "jelly, fish"},
    {"compound.add", "Say bow. Now put rain at the beginning.", "rainbow"},
    {"compound.delete", "Say rainbow. Now say it without bow.", "rain"},
    {"compound.substitute", "Say sunflower. Change flower to glasses.", "sunglasses"},
    {"syllable.count", "Clap cat. How many syllables?", "1"},
    {"syllable.blend", "Put together: /buh/ … /loon/", "balloon"},
    {"syllable.segment", "Say balloon one syllable after the other.", "/buh/, /loon/"},
    {"syllable.add", "Say bee. Now put /ver/ at the end.", "beaver"},
    {"syllable.delete", "Say beaver. Now say it without /ver/.", "bee"},
    {"onset-rime.blend", "Put together: /tr/ … /ayn/", "train"},
    {"onset-rime.segment", "Say cat in two parts: how it begins, then the rest.", "/k/, /at/"},
    {"phoneme.first", "What is the first sound in log?", "/l/"},
    {"phoneme.last", "What is the last sound in hen?", "/n/"},
    {"phoneme.middle", "What is the middle sound in moon?", "/oo/"},
    {"phoneme.blend", "Put together: /n/ … /e/ … /s/ … /t/", "nest"},
    {"phoneme.segment", "Say the sounds of leaf, one after the other.", "/l/, /ee/, /f/"},
    {"phoneme.add", "Say bow. Now put /t/ at the end.", "boat"},
    {"phoneme.delete", "Say beach. Now say it without /ch/.", "bee"},
    {"phoneme.substitute", "Say coat. Change /k/ to /g/.", "goat"},
    {"phoneme.long-short", "Is the vowel of cat long or short?", "short"},
    {"letter.name", "Show a. What is its name?", "“ay”"},
    {"letter.sound", "Show b. What does it say?", "/b/"},
    {"letter.for-sound", "Which letter says /t/?", "t"},
    {"letter.both-sounds", "Show a. Say both its sounds, the short one first.", "/a/, /ay/"},
    {"letter.digraph", "Which letters say /ch/ in beach?", "ch"},
    {"letter.build", "Show c a t. What word do they make?", "cat"},
}};

}  // namespace

TEST_CASE("Aloud: each skill is asked and answered as a teacher would") {
    std::map<std::string, std::set<std::pair<std::string, std::string>>> said;
    for (const exercise::Item& item : starter().items) {
        const Aloud one = asking(item, starter().vocabulary).aloud;
        said[std::string(exercise::rowOf(item.skill).id)].insert({one.ask, one.answer});
    }
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        const auto by_hand = std::find_if(kRows.begin(), kRows.end(),
                                          [&](const Row& one) { return one.skill == row.id; });
        CAPTURE(std::string(row.id));
        REQUIRE(by_hand != kRows.end());
        CHECK(said[by_hand->skill].count({by_hand->ask, by_hand->answer}) == 1);
    }
}

TEST_CASE("Asking: to read, sounds stand in slashes and words in quotes") {
    std::map<std::string, std::set<std::string>> read;
    for (const exercise::Item& item : starter().items)
        read[std::string(exercise::rowOf(item.skill).id)].insert(
            asking(item, starter().vocabulary).read);
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        CAPTURE(std::string(row.id));
        CHECK_FALSE(read[std::string(row.id)].empty());
        CHECK(read[std::string(row.id)].count("") == 0);
    }
    const auto has = [&](const char* skill, const char* text) {
        CHECK_MESSAGE(read[skill].count(text) == 1, text);
    };
    has("sentence.count", "How many words are in \"The frog can hop.\"?");
    has("compound.delete", "Say \"rainbow\" without \"bow\": which word is it?");
    has("phoneme.substitute", "Say \"coat\" with /ɡ/ for /k/: which word is it?");
    has("phoneme.blend", "Which word is n + ɛ + s + t?");
    has("phoneme.segment", "How many sounds are in \"leaf\"?");
    has("onset-rime.rhyme-sort", "Which one rhymes with \"hat\"?");
    has("letter.build", "Which word do the letters c + a + t make?");
}

// The oracle is the dictionary itself: what the word in the question begins and ends with.
TEST_CASE("Aloud: first and last sounds are those that the dictionary gives the word") {
    int asked = 0;
    for (const exercise::Item& item : starter().items) {
        const std::string_view skill = exercise::rowOf(item.skill).id;
        if (skill != "phoneme.first" && skill != "phoneme.last") continue;
        const Aloud one = asking(item, starter().vocabulary).aloud;
        const std::size_t in = one.ask.find(" in ");
        const std::string word = one.ask.substr(in + 4, one.ask.size() - in - 5);
        const exercise::Word* found = nullptr;
        for (const exercise::Word& each : starter().vocabulary.words)
            if (each.text == word) found = &each;
        REQUIRE(found != nullptr);
        const auto& sounds =
            found->compound.empty() && found->id == word ? fixtures::said(word) : found->sounds;
        const auto phoneme =
            skill == "phoneme.first" ? sounds.front().phoneme : sounds.back().phoneme;
        CAPTURE(one.ask);
        CHECK(one.answer == "/" + std::string(speech::plainLetters(phoneme)) + "/");
        ++asked;
    }
    CHECK(asked > 100);
}

TEST_CASE("Aloud: sounds are written in plain letters, and what is no IPA stays") {
    CHECK(inPlainLetters("tʃ") == "/ch/");
    CHECK(inPlainLetters("æt") == "/at/");
    CHECK(inPlainLetters("oʊ") == "/oh/");
    CHECK(inPlainLetters("seven!") == "seven!");
    CHECK(inPlainLetters("") == "//");
}

}  // namespace wrenlet::desk
