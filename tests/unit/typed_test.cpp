// What a teacher types, pastes or drops.
#include <doctest/doctest.h>

#include "editor/unit/typed.hpp"

namespace wrenlet::desk {

namespace {

std::string wordsOf(const Typed& typed) {
    std::string text;
    for (const pack::UnitWord& word : typed.words) text += (text.empty() ? "" : " ") + word.text;
    return text;
}

}  // namespace

TEST_CASE("Lines, commas, semicolons, tabs and blanks part words") {
    CHECK(wordsOf(readTyped("duck\nfrog, pond;\treed moss\r\nbee", "list")) ==
          "duck frog pond reed moss bee");
}

TEST_CASE("A piece with a mark is a sentence, one with a capital and three words gets its mark") {
    const Typed typed = readTyped(
        "The duck sits on the pond.\nIs the frog wet?\nThe bee can fly\nduck frog", "list");
    REQUIRE(typed.sentences.size() == 3);
    CHECK(typed.sentences[0].text == "The duck sits on the pond.");
    CHECK(typed.sentences[1].text == "Is the frog wet?");
    CHECK(typed.sentences[2].text == "The bee can fly.");
    CHECK(wordsOf(typed) == "duck frog");
    CHECK(typed.problems.empty());
}

TEST_CASE("One bad word costs nothing of the rest, and is told by its line") {
    const Typed typed = readTyped("duck\nfr0g\npond\nduck", "list.txt");
    CHECK(wordsOf(typed) == "duck pond");
    REQUIRE(typed.problems.size() == 2);
    CHECK(typed.problems[0].where == "list.txt, line 2");
    CHECK(typed.problems[0].what.find("fr0g") != std::string::npos);
    CHECK(typed.problems[1].where == "list.txt, line 4");
}

TEST_CASE("A table of a spreadsheet is read: quotes, a byte order mark, Windows letters") {
    CHECK(wordsOf(readTyped("\xEF\xBB\xBF\"duck\",\"frog\"\r\n\"pond\"", "a.csv")) ==
          "duck frog pond");
    // 0x92 is the apostrophe of Windows-1252; a word with a letter that is not English is told
    const Typed typed = readTyped("duck\r\ncaf\xE9\r\nIt\x92s a frog.", "a.csv");
    CHECK(wordsOf(typed) == "duck");
    REQUIRE(typed.sentences.size() == 1);
    CHECK(typed.sentences[0].text == "It's a frog.");
    REQUIRE(typed.problems.size() == 2);
    CHECK(typed.problems[0].what.find("Windows") != std::string::npos);
    CHECK(typed.problems[1].what.find("café") != std::string::npos);
}

TEST_CASE("Text in UTF-16 is told, not guessed") {
    const Typed typed = readTyped(std::string_view("\xFF\xFE"
                                                   "d\0u\0c\0k\0",
                                                   10),
                                  "a.txt");
    CHECK(typed.words.empty());
    REQUIRE(typed.problems.size() == 1);
    CHECK(typed.problems[0].what.find("UTF-16") != std::string::npos);
}

TEST_CASE("A text without end is cut, and told once") {
    std::string text;
    for (int i = 0; i < 400'000; ++i) {
        std::string word = "w";
        for (int rest = i; rest > 0; rest /= 26) word += static_cast<char>('a' + rest % 26);
        text += word + "\n";
    }
    const Typed typed = readTyped(text, "long.txt");
    CHECK(typed.words.size() == pack::kMostUnitWords);
    CHECK(typed.problems.size() == 2);
}

}  // namespace wrenlet::desk
