#include "content/speech/lexicon.hpp"

#include <doctest/doctest.h>

#include <string>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "content/speech/lexicon_file.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::speech;

namespace {

/// A file that is gone when the test ends.
class Scratch {
  public:
    explicit Scratch(std::string_view bytes)
        : path_(std::filesystem::temp_directory_path() /
                ("wrenlet-lexicon-" + std::to_string(reinterpret_cast<std::uintptr_t>(this)))) {
        REQUIRE(writeWhole(path_, bytes).ok());
    }
    ~Scratch() {
        std::error_code ignored;
        std::filesystem::remove(path_, ignored);
    }
    const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

std::vector<LexiconEntry> fewWords() {
    std::vector<LexiconEntry> entries;
    for (const char* word : {"cat", "catnap", "cats", "dog", "don't", "a", "zoo"})
        entries.push_back({word, {*fromArpabetLine("K AE1 T"), *fromArpabetLine("AH0")}});
    for (char letter = 'a'; letter <= 'z'; ++letter)
        entries.push_back({std::string("mo") + letter, {*fromArpabetLine("M OW1")}});
    return entries;
}

std::string fewWordsFile() {
    return writeLexicon(fewWords()).value();
}

}  // namespace

TEST_CASE("Every word written to a lexicon is found in it, with all its pronunciations") {
    const Scratch file(fewWordsFile());
    const auto lexicon = Lexicon::open(file.path());
    REQUIRE(lexicon.ok());
    CHECK(lexicon.value().wordCount() == fewWords().size());
    for (const LexiconEntry& entry : fewWords()) {
        INFO(entry.word);
        CHECK(lexicon.value().lookUp(entry.word) == entry.said);
    }
    for (const char* stranger : {"ca", "catn", "catnaps", "mo", "zz", "'", "aa"})
        CHECK(lexicon.value().lookUp(stranger).empty());
}

TEST_CASE("A word is found in any case and with either apostrophe") {
    const Lexicon lexicon = fixtures::dictionary();
    CHECK(ipa(lexicon.lookUp("cat").front()) == "kæt");
    CHECK(lexicon.lookUp("Cat") == lexicon.lookUp("cat"));
    CHECK(lexicon.lookUp("DON\u2019T") == lexicon.lookUp("don't"));
    CHECK_FALSE(lexicon.lookUp("don't").empty());
}

TEST_CASE("Odd input is simply not found") {
    const Lexicon lexicon = fixtures::dictionary();
    const std::string endless(300, 'a');
    const std::string_view with_nul("ca\0t", 4);
    for (const std::string_view odd :
         {std::string_view(), std::string_view(endless), with_nul, std::string_view("k\u00E4t"),
          std::string_view("\U0001F408"), std::string_view("\xff\xfe"), std::string_view("c a t"),
          std::string_view("cat("), std::string_view("3")})
        CHECK(lexicon.lookUp(odd).empty());
}

TEST_CASE("The built dictionary has the package's words") {
    // cmu-pronouncing-dictionary 3.0.0: 126,046 words, of which a few abbreviations are left out.
    const std::size_t words = fixtures::dictionary().wordCount();
    CHECK(words > 125'000);
    CHECK(words <= 126'046);
}

TEST_CASE("A lexicon that is missing, foreign or cut short is refused with its name") {
    const auto missing = Lexicon::open("/nowhere/lexicon.bin");
    CHECK_FALSE(missing.ok());
    CHECK(missing.problems().front().where == "lexicon.bin");
    const std::string whole = fewWordsFile();
    for (std::size_t size = 0; size < whole.size(); ++size) {
        const Scratch cut(std::string_view(whole).substr(0, size));
        CHECK_FALSE(Lexicon::open(cut.path()).ok());
    }
    const Scratch longer(whole + "x");
    CHECK_FALSE(Lexicon::open(longer.path()).ok());
    const Scratch foreign(std::string(5000, 'x'));
    CHECK_FALSE(Lexicon::open(foreign.path()).ok());
    CHECK_FALSE(Lexicon::open(std::filesystem::temp_directory_path()).ok());
}

TEST_CASE("Damage inside a lexicon never reads outside it") {
    const std::string whole = fewWordsFile();
    Random random(7);
    int opened = 0;
    for (int round = 0; round < 400; ++round) {
        std::string damaged = whole;
        for (int hit = 0; hit < 3; ++hit) {
            const std::size_t at = random.below(static_cast<std::uint32_t>(damaged.size()));
            damaged[at] = static_cast<char>(random.below(256));
        }
        const Scratch file(damaged);
        const auto lexicon = Lexicon::open(file.path());
        if (!lexicon.ok()) continue;
        ++opened;
        for (const LexiconEntry& entry : fewWords())
            for (const Pronunciation& sounds : lexicon.value().lookUp(entry.word))
                for (const Sound& sound : sounds)
                    CHECK(static_cast<std::size_t>(sound.phoneme) < kPhonemeCount);
    }
    CHECK(opened > 0);  // otherwise only the header was tried
}

TEST_CASE("A lexicon is not written from words it could not give back") {
    CHECK_FALSE(writeLexicon({}).ok());
    CHECK_FALSE(writeLexicon({{"", {}}}).ok());
    CHECK_FALSE(writeLexicon({{std::string(64, 'a'), {}}}).ok());
    CHECK_FALSE(writeLexicon({{"cat", {}}, {"cat", {}}}).ok());
}
