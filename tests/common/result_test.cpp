#include "content/common/result.hpp"

#include <doctest/doctest.h>

using namespace wrenlet;

TEST_CASE("A problem reads as a sentence: where, what, what to do") {
    const Problem problem{"farm.json, word 3", "\"duk\" is not a word we know.", "Change it."};
    CHECK(sentence(problem) == "farm.json, word 3: \"duk\" is not a word we know. Change it.");
}

TEST_CASE("Warnings alone do not stop a result") {
    Problem warning{"here", "look", ""};
    warning.weight = Problem::Weight::warning;
    const Result<int> result(7, {warning});
    CHECK(result.ok());
    CHECK_FALSE(anyError(result.problems()));
}
