#include <doctest/doctest.h>

#include <cmath>

#include "editor/voice/level.hpp"
#include "tests/ear/lone_report.hpp"
#include "tests/ear/loudness_report.hpp"
#include "tests/ear/trim_report.hpp"
#include "tests/ear/word_report.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::ear;

// A quick look at what ./check --ear measures whole: few voices, wide bounds.
namespace {

std::vector<Voice> fewVoices() {
    std::vector<std::string> missing;
    return voicesOf(Part::tune, true, missing);
}

double valueOf(const std::vector<Line>& lines, const std::string& condition,
               const std::string& figure) {
    for (const Line& line : lines)
        if (line.condition.find(condition) != line.condition.npos && line.figure == figure) {
            REQUIRE(line.of > 0);
            return line.value;
        }
    FAIL(figure << " was not measured");
    return 0;
}

std::vector<Word> fewWords() {
    const auto lexicon = fixtures::dictionary();
    std::vector<Word> said;
    const auto voices = fewVoices();
    for (std::size_t i = 0; i < voices.size(); ++i)
        for (Word& word : words(voices[i], textsOf(i, 12), lexicon, {}))
            said.push_back(std::move(word));
    return said;
}

}  // namespace

TEST_CASE("The ear: a vowel added to a lone consonant is heard, and seldom one that is not there") {
    std::vector<LoneSound> sounds;
    for (const Voice& voice : fewVoices())
        for (LoneSound& sound : loneSounds(voice, {})) sounds.push_back(std::move(sound));
    const auto ear = desk::openWordEar();
    REQUIRE(ear);
    const std::vector<Line> lines = loneReport(sounds, ear.get(), true);
    for (const char* room : {"clean", "12 dB"}) {
        CHECK(valueOf(lines, std::string("stops, s, sh; ") + room, "found") > 85);
        CHECK(valueOf(lines, std::string("stops, s, sh; ") + room, "heard where there is none") <
              15);
    }
}

TEST_CASE("The ear: speech is found to 30 ms in a quiet room") {
    const std::vector<Line> lines = trimReport(fewWords());
    CHECK(valueOf(lines, "40 dB", "ends within 30 ms of the truth") > 85);
    CHECK(valueOf(lines, "40 dB", "ends cut in the clip, margins and all") < 5);
}

TEST_CASE("The ear: a wrong word is noticed and a right one is not blamed") {
    const auto ear = desk::openWordEar();
    REQUIRE(ear);
    const auto lexicon = fixtures::dictionary();
    const std::vector<Line> lines = wordReport(fewWords(), "few", wordsSaid(lexicon), *ear);
    CHECK(valueOf(lines, "unrelated", "wrong word noticed") > 75);
    CHECK(valueOf(lines, "unrelated", "right word blamed") < 15);
}

TEST_CASE("Loudness: the five tones of EBU Tech 3341 read within 0.1 LU") {
    // Minimum requirements test signals 1 to 5, a 1 kHz sine from both sides; from memory.
    for (const MeterTone& tone : meterTones())
        CHECK(std::fabs(desk::gatedLoudness(tone.sound) - tone.lufs) <= 0.1);
}

TEST_CASE("The ear's bounds: Wilson's interval for 10 of 100 is 5.5 to 17.4 percent") {
    // The textbook example, e.g. R's prop.test(10, 100, correct = FALSE): 0.0552 to 0.1744.
    const Line line = share("", "", "", 10, 100);
    CHECK(line.value == doctest::Approx(10));
    CHECK(*line.low == doctest::Approx(5.52).epsilon(0.002));
    CHECK(*line.high == doctest::Approx(17.44).epsilon(0.002));
    CHECK_FALSE(share("", "", "", 0, 0).low);
}
