#include "editor/voice/another_word.hpp"

#include <doctest/doctest.h>

#include "editor/voice/take.hpp"
#include "tests/fixtures/dictionary.hpp"
#include "tests/fixtures/sounds.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using namespace wrenlet::fixtures;

namespace {

SaidWord word(const char* text) {
    return {text, said(text)};
}

/// Says what it is told to, and notes what it was asked.
struct ToldEar final : WordEar {
    double margin = 0;
    std::size_t likeliest = 0;
    std::vector<std::string> asked;
    std::optional<EarJudgement> judge(const Pcm&, const speech::Pronunciation&,
                                      std::span<const SaidWord> others) override {
        asked.clear();
        for (const SaidWord& other : others) asked.push_back(other.text);
        if (others.empty()) return std::nullopt;
        return EarJudgement{likeliest, margin};
    }
    std::optional<VowelJudgement> vowelAfter(const Pcm&, const speech::Pronunciation&) override {
        return std::nullopt;
    }
};

}  // namespace

TEST_CASE("Another word: named only when it fits clearly better, and never without an ear") {
    const pack::VoiceNeed goat{"word:goat", "goat", said("goat"), pack::VoiceNeed::Kind::word};
    const std::vector<SaidWord> others{word("goat"), word("coat"), word("pig")};
    const Pcm heard = buzz(-20, 0.4);
    ToldEar ear;
    ear.likeliest = 1;
    ear.margin = kAnotherBelow - 1;
    const auto finding = anotherWord(heard, goat, &ear, others);
    REQUIRE(finding);
    CHECK(finding->instead == "pig");
    CHECK(ear.asked == std::vector<std::string>{"coat", "pig"});  // not the word itself
    ear.margin = kAnotherBelow + 1;
    CHECK_FALSE(anotherWord(heard, goat, &ear, others));
    CHECK_FALSE(anotherWord(heard, goat, nullptr, others));
    CHECK_FALSE(anotherWord(heard, goat, &ear, {}));
}

TEST_CASE("Another word: a lone sound and a sentence are not asked about") {
    ToldEar ear;
    ear.margin = -100;
    const std::vector<SaidWord> others{word("pig")};
    const pack::VoiceNeed b{"sound:b", "/b/", {{speech::Phoneme::b}}, pack::VoiceNeed::Kind::sound};
    const pack::VoiceNeed sentence{"s:1", "A pig.", {}, pack::VoiceNeed::Kind::sentence};
    CHECK_FALSE(anotherWord(buzz(-20, 0.4), b, &ear, others));
    CHECK_FALSE(anotherWord(buzz(-20, 0.4), sentence, &ear, others));
}

TEST_CASE("Another word: what she may have said instead lies around it in her list") {
    std::vector<pack::VoiceNeed> queue;
    for (const char* text : {"pig", "goat", "bear", "moon", "bear", "cat"})
        queue.push_back({text, text, said(text), pack::VoiceNeed::Kind::word});
    queue.push_back({"b", "/b/", {{speech::Phoneme::b}}, pack::VoiceNeed::Kind::sound});
    std::vector<std::string> texts;
    for (const SaidWord& other : othersAround(queue, 3)) texts.push_back(other.text);
    CHECK(texts == std::vector<std::string>{"bear", "cat", "goat", "pig"});
    const std::vector<pack::VoiceNeed> alone{queue[0]};
    CHECK(othersAround(alone, 0).empty());
}

TEST_CASE("Another word: the recogniser says nothing to silence, to a click and to no others") {
    const auto ear = openWordEar();
    REQUIRE(ear);
    const auto others = std::vector<SaidWord>{word("pig"), word("umbrella")};
    CHECK_FALSE(ear->judge(Pcm{}, said("goat"), others));
    CHECK_FALSE(ear->judge(buzz(-20, 0.02), said("goat"), others));
    CHECK_FALSE(ear->judge(buzz(-20, 20), said("goat"), others));
    CHECK_FALSE(ear->judge(buzz(-20, 0.4), said("goat"), {}));
    CHECK_NOTHROW(ear->judge(silence(1), said("goat"), others));
    const CheckedTake checked = checkedTake(
        joined({silence(0.5), buzz(-20, 0.4), silence(0.5)}),
        {"word:goat", "goat", said("goat"), pack::VoiceNeed::Kind::word}, ear.get(), others);
    CHECK_FALSE(checked.clip.samples.empty());
}
