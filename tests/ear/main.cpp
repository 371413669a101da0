#include <algorithm>
#include <cstdio>
#include <cstring>
#include <filesystem>

#include "tests/ear/checks_report.hpp"
#include "tests/ear/endpoint_report.hpp"
#include "tests/ear/human.hpp"
#include "tests/ear/human_lone_report.hpp"
#include "tests/ear/labelled.hpp"
#include "tests/ear/lone_report.hpp"
#include "tests/ear/loudness_report.hpp"
#include "tests/ear/trim_report.hpp"
#include "tests/ear/word_report.hpp"

using namespace wrenlet;
using namespace wrenlet::ear;

namespace {

constexpr const char* kUse =
    "wrenlet-ear: the checks on recordings, measured on a labelled set of synthesized voices\n"
    "  --json     one line a figure\n"
    "  --tune     on the part that thresholds were chosen on\n"
    "  --fresh    on the part that was set aside; without either, on the part that judges\n"
    "  --wrong    with --tune: each lone sound that was judged wrongly, and nothing else\n"
    "  --fit      with --tune: the limits of the added vowel chosen anew, and nothing else\n"
    "  --few      a quick look\n"
    "  --only X   one of: vowel, trim, checks, endpoint, loudness, word\n";

struct Asked {
    bool json = false, wrong = false, fit = false, few = false, understood = true;
    Part part = Part::judge;
    std::string only;
    bool wants(const char* what) const { return only.empty() || only == what; }
};

Asked askedBy(int count, char** arguments) {
    Asked asked;
    for (int i = 1; i < count; ++i) {
        const std::string given = arguments[i];
        if (given == "--json")
            asked.json = true;
        else if (given == "--tune")
            asked.part = Part::tune;
        else if (given == "--fresh")
            asked.part = Part::fresh;
        else if (given == "--wrong")
            asked.wrong = true;
        else if (given == "--fit")
            asked.fit = true;
        else if (given == "--few")
            asked.few = true;
        else if (given == "--only" && i + 1 < count)
            asked.only = arguments[++i];
        else
            asked.understood = false;
    }
    return asked;
}

/// A folder of its own, gone afterwards.
struct Scratch {
    std::filesystem::path path;
    Scratch() {
        std::string name = (std::filesystem::temp_directory_path() / "wrenlet-ear-XXXXXX").string();
        if (mkdtemp(name.data()) != nullptr) path = name;
    }
    ~Scratch() {
        std::error_code error;
        std::filesystem::remove_all(path, error);
    }
};

void append(std::vector<Line>& lines, std::vector<Line> more) {
    std::move(more.begin(), more.end(), std::back_inserter(lines));
}

const std::pair<Voice::Maker, const char*> kMakers[] = {{Voice::Maker::espeak, "espeak-ng"},
                                                        {Voice::Maker::festival, "festival"},
                                                        {Voice::Maker::flite, "flite"}};

}  // namespace

int main(int count, char** arguments) {
    const Asked asked = askedBy(count, arguments);
    if (!asked.understood || ((asked.wrong || asked.fit) && asked.part != Part::tune)) {
        std::fputs(kUse, stderr);
        return 2;
    }
    const Scratch scratch;
    std::vector<std::string> missing;
    const auto voices = voicesOf(asked.part, asked.few, missing);
    for (const std::string& name : missing)
        std::fprintf(stderr, "not on this machine, left out: %s\n", name.c_str());
    const auto lexicon = speech::Lexicon::open(WRENLET_TEST_SHARE "/lexicon.bin");
    if (!lexicon.ok() || voices.empty() || scratch.path.empty()) {
        std::fputs("no voice or no dictionary here\n", stderr);
        return 1;
    }
    std::vector<LoneSound> lone;
    std::vector<Word> said;
    for (std::size_t i = 0; i < voices.size(); ++i) {
        std::fprintf(stderr, "speaking: %s\n", voices[i].id().c_str());
        if (asked.wants("vowel") || asked.wants("loudness"))
            for (LoneSound& sound : loneSounds(voices[i], scratch.path))
                lone.push_back(std::move(sound));
        if (asked.only == "vowel" || asked.wrong || asked.fit) continue;
        for (Word& word :
             words(voices[i], textsOf(i, asked.few ? 12 : 5), lexicon.value(), scratch.path))
            said.push_back(std::move(word));
    }
    const auto ear = desk::openWordEar();
    if (asked.wrong) return std::fputs(wrongLone(lone, ear.get()).c_str(), stdout) < 0;
    if (asked.fit) return !ear || std::fputs(fittedLimits(lone, *ear).c_str(), stdout) < 0;

    std::vector<Line> lines;
    if (asked.wants("vowel")) append(lines, loneReport(lone, ear.get(), asked.few));
    if (asked.wants("trim")) append(lines, trimReport(said));
    if (asked.wants("checks")) append(lines, checksReport(said));
    if (asked.wants("endpoint")) append(lines, endpointReport(said));
    if (asked.wants("loudness")) append(lines, loudnessReport(said, lone, scratch.path));
    for (const auto& [maker, name] : kMakers) {
        std::vector<Word> by;
        std::copy_if(said.begin(), said.end(), std::back_inserter(by),
                     [&](const Word& word) { return word.voice.maker == maker; });
        if (ear && asked.wants("word") && !by.empty())
            append(lines, wordReport(by, name, wordsSaid(lexicon.value()), *ear));
    }
    const auto human = humanWords(lexicon.value(), scratch.path);
    if (asked.wants("vowel")) append(lines, humanLoneReport(human, ear.get()));
    if (ear && asked.wants("word") && !human.empty()) {
        std::vector<desk::SaidWord> all;
        for (const Word& word : human) all.push_back({word.text, word.sounds});
        append(lines, wordReport(human, "a human voice", all, *ear));
    }
    if (asked.json)
        for (const Line& line : lines) std::puts(asJson(line).c_str());
    else
        std::fputs(asTable(lines).c_str(), stdout);
}
