// Check values that are printed, or common practice, and belong to no one maker: each says where it
// is from.
#include <doctest/doctest.h>

#include <filesystem>
#include <set>
#include <string>

#include "content/common/files.hpp"
#include "content/exercise/classroom_words.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/list_lines.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/rhyme.hpp"
#include "tests/fixtures/dictionary.hpp"
#include "tests/fixtures/pond.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

std::vector<ClassroomWord> classroom() {
    const auto path = std::filesystem::path(WRENLET_TEST_SHARE) / "words/classroom.tsv";
    const auto text = readWhole(path, kMostListBytes);
    REQUIRE(text.ok());
    return readClassroomWords(text.value(), "classroom.tsv").value();
}

/// The words that stand in an item of the skill, asked or chosen.
std::set<std::string> wordsIn(const std::vector<Item>& items) {
    std::set<std::string> ids;
    for (const Item& item : items) {
        ids.insert(item.subject);
        for (const Choice& choice : item.choices) ids.insert(choice.id);
    }
    return ids;
}

}  // namespace

TEST_CASE("RF.K.2.d rules out bell, car and fox wherever a sound is isolated") {
    // CCSS, 2010: CVC words, "not ... ending with /l/, /r/, or /x/".
    const Vocabulary vocabulary = fixtures::vocabularyOf(
        {"bell", "car", "fox", "cat", "bed", "pig", "mop", "sun", "bag", "ten", "fish", "kite"});
    for (const Task task : {Task::first, Task::middle, Task::last}) {
        const auto words = wordsIn(makeItems(vocabulary, {Unit::phoneme, task}));
        CHECK(words.count("bag") == 1);
        for (const char* left_out : {"bell", "car", "fox"}) CHECK(words.count(left_out) == 0);
    }
}

TEST_CASE("Words that are spelled like a rime family and said otherwise do not rhyme with it") {
    // The members that break the rimes of Wylie and Durrell (1970); from memory.
    for (const auto& [odd, member] : {std::pair{"wash", "cash"},
                                      {"wash", "trash"},
                                      {"swap", "map"},
                                      {"squat", "cat"},
                                      {"great", "meat"},
                                      {"sweat", "meat"},
                                      {"threat", "seat"}}) {
        const auto a = fixtures::said(odd), b = fixtures::said(member);
        INFO(odd << " and " << member);
        CHECK(speech::rhymeKind(a, b) == speech::RhymeKind::none);
        CHECK(speech::rhymeVerdict(a, b, speech::allAccents()).answer == speech::RhymeAnswer::no);
    }
    // They rhyme by ear with words that look otherwise.
    for (const auto& [odd, mate] :
         {std::pair{"great", "plate"}, {"sweat", "net"}, {"threat", "pet"}, {"squat", "dot"}}) {
        INFO(odd << " and " << mate);
        CHECK(speech::rhymeKind(fixtures::said(odd), fixtures::said(mate)) ==
              speech::RhymeKind::perfect);
    }
}

TEST_CASE("Rhymes are told from words that only end alike") {
    // Two sounds at the end are not enough, and one can be (pond, stand; bee, tree): by ear.
    const auto kind = [](const char* a, const char* b) {
        return speech::rhymeKind(fixtures::said(a), fixtures::said(b));
    };
    CHECK(kind("pond", "stand") == speech::RhymeKind::none);
    CHECK(kind("bee", "tree") == speech::RhymeKind::perfect);
    CHECK(kind("leave", "believe") == speech::RhymeKind::identical);
    CHECK(kind("pear", "pair") == speech::RhymeKind::homophone);
    for (const auto& [a, b] :
         {std::pair{"dog", "log"}, {"frog", "hog"}, {"deer", "hear"}, {"poor", "door"}}) {
        INFO(a << " and " << b);
        CHECK(kind(a, b) == speech::RhymeKind::perfect);
    }
}

TEST_CASE("No word is listed as a compound whose parts do not mean it") {
    // By ear and meaning, as a teacher would: a checkmate is no mate, a carpet no pet.
    const std::set<std::string> none = {"carpet",   "season",    "mushroom", "pumpkin",
                                        "cotton",   "button",    "cupboard", "breakfast",
                                        "handsome", "checkmate", "nickname", "cockroach",
                                        "mandate",  "rampage",   "capsize"};
    std::size_t compounds = 0;
    std::set<std::string> listed;
    for (const ClassroomWord& word : classroom()) {
        if (word.parts.empty()) continue;
        ++compounds;
        listed.insert(word.text);
        CHECK_MESSAGE(none.count(word.text) == 0, word.text);
    }
    CHECK(compounds >= 150);
    for (const char* lost_by_rule : {"firefly", "cowboy", "airport"})
        CHECK_MESSAGE(listed.count(lost_by_rule) == 1, lost_by_rule);
}

TEST_CASE("Two pictures of one thing never stand in one item") {
    const Vocabulary vocabulary =
        fixtures::vocabularyOf({"dog", "puppy", "cat", "kitten", "mouse", "rat", "log", "hat",
                                "bat", "frog", "mop", "pig", "sun", "bus", "pen", "duck"});
    std::size_t items = 0;
    for (const SkillRow& row : skillTable())
        for (const Item& item : makeItems(vocabulary, row.skill)) {
            ++items;
            const auto shown = wordsIn({item});
            for (const auto& [a, b] :
                 {std::pair{"dog", "puppy"}, {"cat", "kitten"}, {"mouse", "rat"}}) {
                CHECK(looksAlike(a, b));
                CHECK_MESSAGE(!(shown.count(a) && shown.count(b)), item.id);
            }
        }
    CHECK(items > 200);
}
