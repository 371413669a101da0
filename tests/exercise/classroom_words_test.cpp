#include "content/exercise/classroom_words.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>
#include <string>

#include "content/common/files.hpp"
#include "content/exercise/list_lines.hpp"
#include "content/speech/compound.hpp"
#include "content/speech/rhyme.hpp"
#include "content/speech/word_parts.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

const std::filesystem::path kShare = WRENLET_TEST_SHARE;

std::vector<ClassroomWord> classroom() {
    const auto text = readWhole(kShare / "words" / "classroom.tsv", kMostListBytes);
    REQUIRE(text.ok());
    auto words = readClassroomWords(text.value(), "classroom.tsv");
    REQUIRE(words.ok());
    for (const Problem& problem : words.problems()) FAIL_CHECK(sentence(problem));
    return std::move(words.value());
}

std::map<std::string, Word> classroomAloud() {
    const auto said = saidAloud(classroom(), fixtures::dictionary(), "classroom.tsv");
    REQUIRE(said.ok());
    for (const Problem& problem : said.problems()) FAIL_CHECK(sentence(problem));
    std::map<std::string, Word> words;
    for (const Word& word : said.value()) words.emplace(word.id, word);
    return words;
}

std::string heard(std::string_view list, std::string_view id) {
    const auto words = readClassroomWords(list, "list");
    REQUIRE(words.ok());
    const auto said = saidAloud(words.value(), fixtures::dictionary(), "list");
    REQUIRE(said.ok());
    for (const Word& word : said.value())
        if (word.id == id) return speech::ipa(word.sounds);
    return "";
}

/// The ids that are kept, in a row.
std::string kept(const Result<std::vector<ClassroomWord>>& words) {
    REQUIRE(words.ok());
    std::string ids;
    for (const ClassroomWord& word : words.value()) ids += (ids.empty() ? "" : " ") + word.id;
    return ids;
}

}  // namespace

TEST_CASE("Classroom words: there are enough, and every one has a topic or is a part only") {
    std::size_t simple = 0, compounds = 0, pictured = 0;
    for (const ClassroomWord& word : classroom()) {
        INFO(word.id);
        CHECK(word.part_only == word.topics.empty());
        CHECK_FALSE((word.part_only && !word.parts.empty()));
        CHECK((word.parts.empty() || word.parts.size() == 2));
        if (!word.part_only) ++(word.parts.empty() ? simple : compounds);
        if (!word.picture.empty()) ++pictured;
    }
    CHECK(simple >= 720);
    CHECK(compounds >= 155);
    CHECK(pictured >= 500);
}

TEST_CASE("Classroom words: the dictionary says every one, or the list does") {
    CHECK(classroomAloud().size() == classroom().size());
}

TEST_CASE("Classroom words: every compound is heard as its parts in a row") {
    const auto words = classroomAloud();
    for (const auto& [id, word] : words) {
        if (word.compound.empty()) continue;
        std::vector<speech::Pronunciation> parts;
        for (const std::string& part : word.compound) parts.push_back(words.at(part).sounds);
        CHECK_MESSAGE(speech::joinsTo(parts, word.sounds), id << " " << speech::ipa(word.sounds));
    }
}

TEST_CASE("Classroom words: every picture is there, and every picture that is there has its word") {
    std::set<std::string> used;
    for (const ClassroomWord& word : classroom()) {
        if (word.picture.empty()) continue;
        CHECK_MESSAGE(used.insert(word.picture).second, word.id << " shares its picture");
    }
    const auto drawn = listFiles(kShare / "pictures", ".svg");
    CHECK(drawn.size() == used.size());
    for (const auto& path : drawn)
        CHECK_MESSAGE(used.count(path.stem().string()) == 1, path.stem().string());
}

TEST_CASE("Classroom words: spellings said in several ways are said as their sense wants") {
    const auto words = classroomAloud();
    const auto said = [&](const char* id) { return speech::ipa(words.at(id).sounds); };
    // By ear, as common dictionaries of American English give them (from memory).
    CHECK(said("bow~hair") == "boʊ");
    CHECK(said("bow~bend") == "baʊ");
    CHECK(said("close~shut") == "kloʊz");
    CHECK(said("close~near") == "kloʊs");
    CHECK(said("tear~rip") == "tɛɹ");
    CHECK(said("tear~cry") == "tɪɹ");
    CHECK(said("wind") == "wɪnd");
    CHECK(said("read") == "ɹid");
    CHECK(said("live") == "lɪv");
    CHECK(said("dove") == "dʌv");
    CHECK(said("chalk") == "tʃɔk");
}

TEST_CASE("Classroom words: each consonant that opens or closes English words has three of them") {
    std::map<std::string, int> first, last, middle;
    for (const auto& [id, word] : classroomAloud()) {
        if (speech::shape(word.sounds) != "CVC") continue;
        ++first[std::string(speech::ipa(word.sounds[0].phoneme))];
        ++middle[std::string(speech::ipa(word.sounds[1].phoneme))];
        ++last[std::string(speech::ipa(word.sounds[2].phoneme))];
    }
    // No English word opens with /ŋ/; /ʒ/ opens none that a child knows and closes few (beige).
    // /h/, /w/ and /j/ close none. The schwa has no stressed syllable to stand in.
    for (const char* sound : {"b", "tʃ", "d", "ð", "f", "ɡ", "h", "dʒ", "k", "l", "m",
                              "n", "p",  "ɹ", "s", "ʃ", "t", "θ", "v",  "w", "j", "z"})
        CHECK_MESSAGE(first[sound] >= 3, sound << " first");
    for (const char* sound : {"b", "tʃ", "d", "ð", "f", "ɡ", "dʒ", "k", "l", "m",
                              "n", "ŋ",  "p", "ɹ", "s", "ʃ", "t",  "θ", "v", "z"})
        CHECK_MESSAGE(last[sound] >= 3, sound << " last");
    for (const char* sound :
         {"æ", "ɛ", "ɪ", "ɑ", "ʌ", "eɪ", "i", "aɪ", "oʊ", "u", "ʊ", "aʊ", "ɔɪ", "ɔ", "ɝ"})
        CHECK_MESSAGE(middle[sound] >= 3, sound << " in the middle");
    CHECK(last["ʒ"] >= 1);
}

TEST_CASE("Classroom words: forty rime families and more can be shown in three pictures") {
    std::map<std::string, std::set<std::string>> families;
    for (const auto& [id, word] : classroomAloud()) {
        const auto parts = speech::onsetAndRime(word.sounds);
        if (!word.picture.empty() && parts)
            families[speech::ipa(parts->rime)].insert(speech::ipa(parts->onset));
    }
    const auto of_three = std::count_if(families.begin(), families.end(),
                                        [](const auto& f) { return f.second.size() >= 3; });
    CHECK(of_three >= 40);
}

TEST_CASE("A word list: columns may be left off, and a bare word is its own id") {
    const auto words = readClassroomWords("# remark\n\ncat\r\nBow~rain\tbow\n", "list");
    CHECK(kept(words) == "cat bow~rain");
    CHECK(words.problems().empty());
    CHECK(words.value()[0].text == "cat");
    CHECK(words.value()[1].text == "bow");
    CHECK(words.value()[1].line == 4);
}

TEST_CASE("A word list: what cannot be a word is named by its line and the rest is kept") {
    const std::string nul("ca\0t", 4);
    const std::string endless(300, 'a');
    for (const std::string& odd :
         {std::string("3"), std::string("cat2"), std::string("\U0001F408"), endless, nul,
          std::string("кот"), std::string("café"), std::string("\u05D7\u05EA\u05D5\u05DC"),
          std::string("\u202Etac"), std::string("\xff\xfe"), std::string("two words"),
          std::string("merry-go-round"), std::string("'tis"), std::string("~rain"),
          std::string("bow~\u2602"), std::string("a\tb\tc\t\t\t\t\tz")}) {
        INFO(odd);
        const auto words = readClassroomWords("dog\n\n" + odd + "\nhen\n", "list");
        CHECK(kept(words) == "dog hen");
        REQUIRE(words.problems().size() == 1);
        const Problem& problem = words.problems().front();
        CHECK(problem.where == "list, line 3");
        CHECK_FALSE(problem.way_out.empty());
        CHECK(problem.weight == Problem::Weight::warning);
        for (const char c : problem.what) CHECK((c >= 0x20 || c < 0));  // fit for a screen
    }
}

TEST_CASE("A word list: an id or a picture counts once") {
    const auto words =
        readClassroomWords("cat\tcat\t\t\tcat\nCat\nkitty\tkitty\t\t\tcat\n", "list");
    CHECK(kept(words) == "cat kitty");
    REQUIRE(words.problems().size() == 2);
    CHECK(words.problems()[0].where == "list, line 2");
    CHECK(words.problems()[1].where == "list, line 3");
    CHECK(words.value()[1].picture.empty());
}

TEST_CASE("A word list: a compound without its parts is left out, and so is one made of it") {
    const auto words = readClassroomWords(
        "rain\nrainbow\t\t\train bow\nrainbows\t\t\trainbow s\nraincoat\t\t\train coat\ncoat\n"
        "loop\t\t\tloop rain\n",
        "list");
    CHECK(kept(words) == "rain raincoat coat");
    CHECK(words.problems().size() == 3);
}

TEST_CASE("A word list: sounds are taken from its last column before the dictionary") {
    CHECK(heard("bow\t\t\t\t\t\tb aʊ\n", "bow") == "baʊ");
    CHECK(heard("cat\n", "cat") == "kæt");
    CHECK(heard("sea\nhorse\nseahorse\t\t\tsea horse\t\t\tparts\n", "seahorse") == "sihɔɹs");
    for (const char* bad : {"cat\t\t\t\t\t\tparts\n", "cat\t\t\t\t\t\tk a t\n",
                            "cat\t\t\t\t\t\tk t\n", "cat\t\t\t\t\t\tˈk æ t\n"}) {
        const auto words = readClassroomWords(bad, "list");
        CHECK(kept(words).empty());
        CHECK(words.problems().size() == 1);
    }
    const auto stressed = readClassroomWords("giraffe\t\t\t\t\t\tdʒ ə ɹ ˈæ f\n", "list");
    REQUIRE(stressed.value().size() == 1);
    CHECK(stressed.value()[0].said[1].stress == speech::Stress::none);
    CHECK(stressed.value()[0].said[3].stress == speech::Stress::primary);
}

TEST_CASE("A word list: a word that nobody knows how to say is left out by line") {
    const auto words = readClassroomWords("cat\nxqzt\n", "list");
    const auto said = saidAloud(words.value(), fixtures::dictionary(), "list");
    REQUIRE(said.ok());
    CHECK(said.value().size() == 1);
    REQUIRE(said.problems().size() == 1);
    CHECK(said.problems().front().where == "list, line 2");
}

TEST_CASE("A word list: a paste of 10 MB is read as far as a list may go, its notes counted") {
    std::string paste;
    while (paste.size() < 10u << 20) paste += "cat\n1234\n\U0001F408\n";
    const auto words = readClassroomWords(paste, "list");
    CHECK(kept(words) == "cat");
    CHECK(words.problems().size() == kMostListNotes + 1);
    const auto one_line = readClassroomWords(std::string(10u << 20, 'a'), "list");
    CHECK(kept(one_line).empty());
    CHECK(one_line.problems().size() == 1);
}

TEST_CASE("A word list: more words than a list may hold are noted once") {
    std::string many;
    for (int i = 0; i < 17576; ++i)
        many += std::string{char('a' + i / 676), char('a' + i / 26 % 26), char('a' + i % 26), '\n'};
    const auto words = readClassroomWords(many, "list");
    REQUIRE(words.ok());
    CHECK(words.value().size() == kMostListedWords);
    REQUIRE(words.problems().size() == 1);
    CHECK(words.problems().front().where == "list, line 5001");
}
