#include "content/exercise/sentence.hpp"

#include <doctest/doctest.h>

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

std::vector<std::string> counted(std::string_view text) {
    std::vector<std::string> words;
    const auto result = spokenWords(text, "here");
    if (result.ok())
        for (const SpokenWord& word : result.value()) words.push_back(word.text);
    return words;
}

std::string complaint(std::string_view text) {
    const auto result = spokenWords(text, "line 3");
    return result.problems().empty() ? "" : sentence(result.problems().front());
}

}  // namespace

TEST_CASE("Words are counted as they are spoken, without marks") {
    CHECK(counted("The duck sits on the pond.") ==
          std::vector<std::string>{"The", "duck", "sits", "on", "the", "pond"});
    CHECK(counted("\"Look!\" said Wren, \"a frog!\"") ==
          std::vector<std::string>{"Look", "said", "Wren", "a", "frog"});
    CHECK(counted("  Is it   wet ? ") == std::vector<std::string>{"Is", "it", "wet"});
    CHECK(counted("We ran \u2013 and hid\u2026").size() == 4);
}

TEST_CASE("A contraction is one word, with either apostrophe") {
    CHECK(counted("I don't know.") == std::vector<std::string>{"I", "don't", "know"});
    CHECK(counted("I don\u2019t know.") == counted("I don't know."));
}

TEST_CASE("What may be read in two ways is refused with its place and a way out") {
    CHECK(complaint("I see 3 ducks.") ==
          "line 3: \"3\" can be read aloud in more than one way. Write the number as words.");
    CHECK(complaint("A merry-go-round stops.").find("hyphen") != std::string::npos);
    CHECK(complaint("Der B\u00E4r schl\u00E4ft.").find("English letter") != std::string::npos);
    CHECK(complaint("A cat \U0001F408 sits.").find("English letter") != std::string::npos);
    CHECK(complaint(std::string_view("a\0b cat", 7)).find("English letter") != std::string::npos);
    CHECK(complaint("").find("no word") != std::string::npos);
    CHECK(complaint("... !").find("no word") != std::string::npos);
    CHECK(spokenWords("I see 3 ducks and 4 frogs.", "").problems().size() == 2);
}

TEST_CASE("One word or nine are kept, and said not to be asked") {
    for (const std::string_view text : {"Look!", "one two three four five six seven eight nine"}) {
        const auto result = spokenWords(text, "here");
        CHECK(result.ok());
        CHECK(result.problems().size() == 1);
    }
    CHECK(spokenWords("one two three four five six seven eight", "").problems().empty());
}
