#include "content/exercise/classroom_sentences.hpp"

#include <doctest/doctest.h>

#include <array>
#include <filesystem>
#include <set>
#include <string>

#include "content/common/files.hpp"
#include "content/exercise/list_lines.hpp"
#include "content/exercise/sentence.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

std::vector<ClassroomSentence> classroom() {
    const std::filesystem::path share = WRENLET_TEST_SHARE;
    const auto text = readWhole(share / "words" / "sentences.tsv", kMostListBytes);
    REQUIRE(text.ok());
    auto sentences = readClassroomSentences(text.value(), "sentences.tsv");
    REQUIRE(sentences.ok());
    for (const Problem& problem : sentences.problems()) FAIL_CHECK(sentence(problem));
    return std::move(sentences.value());
}

bool opensWithAQuestionWord(const Sentence& sentence) {
    static const std::set<std::string> kWords = {"What", "Who",   "Where", "Why",
                                                 "When", "Which", "How"};
    return kWords.count(sentence.words.front().text) > 0;
}

}  // namespace

TEST_CASE("Classroom sentences: sixty and more, told and asked, with each count from 2 to 8") {
    std::array<int, kMostCounted + 1> of_length{};
    int yes_no = 0, wh = 0, contracted = 0;
    const auto sentences = classroom();
    for (const ClassroomSentence& listed : sentences) {
        ++of_length.at(listed.sentence.words.size());
        if (listed.kind == SentenceKind::yes_no) ++yes_no;
        if (listed.kind == SentenceKind::wh) ++wh;
        if (listed.sentence.text.find('\'') != std::string::npos) ++contracted;
    }
    CHECK(sentences.size() >= 60);
    for (std::size_t count = kFewestCounted; count <= kMostCounted; ++count)
        CHECK_MESSAGE(of_length[count] >= 2, count << " words");
    CHECK(yes_no >= 12);
    CHECK(wh >= 8);
    CHECK(yes_no + wh >= 20);
    CHECK(contracted >= 5);
}

TEST_CASE("Classroom sentences: a question word opens those that fall, and no other") {
    for (const ClassroomSentence& listed : classroom()) {
        INFO(listed.sentence.text);
        CHECK(opensWithAQuestionWord(listed.sentence) == (listed.kind == SentenceKind::wh));
        CHECK(rises(listed.kind) == (listed.kind == SentenceKind::yes_no));
    }
}

TEST_CASE("Classroom sentences: the dictionary has each word") {
    const auto dictionary = fixtures::dictionary();
    for (const ClassroomSentence& listed : classroom())
        for (const SpokenWord& word : listed.sentence.words)
            CHECK_MESSAGE(!dictionary.lookUp(word.text).empty(), word.text);
}

TEST_CASE("A sentence list: what cannot be asked is named by its line and the rest is kept") {
    const std::string nul("a\ttelling\tThe c\0t.", 18);
    for (const std::string& odd :
         {std::string("a\ttelling\tI see 3 ducks."), std::string("a\ttelling\tA well-fed duck."),
          std::string("a\ttelling\tLook!"), std::string("a\ttelling\tA duck \U0001F986 swims."),
          std::string("a\ttelling\tDo ducks swim?"), std::string("a\tyes-no\tDucks swim."),
          std::string("a\tasking\tDo ducks swim?"), std::string("a\ttelling"),
          std::string("Ducks swim."), std::string("A B\ttelling\tDucks swim."),
          std::string("a\ttelling\tDucks swim.\tx"), std::string("d-1\ttelling\tDucks eat."),
          std::string("a\ttelling\tThe ducks dive."), std::string("a\ttelling\tУтка спит."),
          std::string("a\ttelling\t\u202E.miws skcuD"),
          std::string("a\ttelling\tI can see a duck and a hen now."),
          "a\ttelling\t" + std::string(2000, 'a') + " b.", nul}) {
        INFO(odd);
        const auto sentences = readClassroomSentences(
            "d-1\ttelling\tThe ducks dive.\n" + odd + "\n\nd-2\twh\tWhere is it?\n", "list");
        REQUIRE(sentences.ok());
        REQUIRE(sentences.problems().size() == 1);
        CHECK(sentences.problems().front().where == "list, line 2");
        REQUIRE(sentences.value().size() == 2);
        CHECK(sentences.value()[1].line == 4);
    }
}

TEST_CASE("A sentence list: a paste of 10 MB is read as far as a list may go") {
    std::string paste = "d-1\ttelling\tThe ducks dive.\n";
    while (paste.size() < 10u << 20) paste += "the ducks dive and the hens do not\n";
    const auto sentences = readClassroomSentences(paste, "list");
    REQUIRE(sentences.ok());
    CHECK(sentences.value().size() == 1);
    CHECK(sentences.problems().size() == kMostListNotes + 1);
}
