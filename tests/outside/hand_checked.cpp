#include "tests/outside/hand_checked.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>

#include "content/common/files.hpp"
#include "content/exercise/classroom_words.hpp"
#include "content/exercise/list_lines.hpp"
#include "content/speech/rhyme.hpp"
#include "tests/fixtures/dictionary.hpp"

namespace wrenlet::handchecked {

namespace {

const std::filesystem::path kTable = WRENLET_TEST_OUTSIDE "/hand_checked_items.tsv";
const std::filesystem::path kList = WRENLET_TEST_SHARE "/words/classroom.tsv";

/// Of a spelling that is several words, the one that the table means.
std::string_view sense(std::string_view text) {
    return text == "bow" ? "bow~hair" : text;
}

/// Foils for everything: of one beat to four, with clusters and without, and compounds.
constexpr std::string_view kOthers[] = {
    "moon",     "ship",    "goat",    "leaf",       "pan",         "duck",      "web",
    "fish",     "bus",     "jam",     "zip",        "vest",        "queen",     "truck",
    "frog",     "stump",   "snail",   "flag",       "spider",      "tiger",     "pencil",
    "zebra",    "robot",   "basket",  "banana",     "elephant",    "potato",    "watermelon",
    "sailboat", "cupcake", "popcorn", "basketball", "grasshopper", "beehive",   "strawberry",
    "yes",      "kite",    "shell",   "chalk",      "sandcastle",  "butterfly", "alligator"};

}  // namespace

std::vector<std::string> split(std::string_view text, std::string_view mark) {
    std::vector<std::string> parts;
    for (std::size_t end; (end = text.find(mark)) != std::string_view::npos;
         text.remove_prefix(end + mark.size()))
        parts.emplace_back(text.substr(0, end));
    parts.emplace_back(text);
    return parts;
}

std::optional<speech::Pronunciation> soundsOf(std::string_view ipa) {
    speech::Pronunciation sounds;
    while (!ipa.empty()) {
        std::size_t length = ipa.size();
        while (length > 0 && !speech::fromIpa(ipa.substr(0, length))) --length;
        if (length == 0) return std::nullopt;
        sounds.push_back({*speech::fromIpa(ipa.substr(0, length))});
        ipa.remove_prefix(length);
    }
    if (sounds.empty()) return std::nullopt;
    return sounds;
}

std::vector<Line> readTable() {
    const auto text = readWhole(kTable, 1 << 20);
    REQUIRE(text.ok());
    std::vector<Line> lines;
    std::size_t number = 0;
    for (const std::string& row : split(text.value(), "\n")) {
        ++number;
        if (row.empty() || row[0] == '#') continue;
        const auto columns = split(row, "\t");
        INFO("line " << number);
        REQUIRE(columns.size() == 6);
        Line line{number, row, columns[0], columns[1], columns[3], columns[4], columns[5], {}};
        if (columns[2] != "-") line.choices = split(columns[2], ", ");
        if (const auto range = split(columns[2], ".."); range.size() == 2) {
            line.choices.clear();
            for (int i = std::stoi(range[0]); i <= std::stoi(range[1]); ++i)
                line.choices.push_back(std::to_string(i));
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

Words::Words() : lexicon_(fixtures::dictionary()) {
    const auto text = readWhole(kList, exercise::kMostListBytes);
    REQUIRE(text.ok());
    const auto listed = exercise::readClassroomWords(text.value(), "classroom.tsv");
    auto said = exercise::saidAloud(listed.value(), lexicon_, "classroom.tsv");
    REQUIRE(said.ok());
    list_ = std::move(said.value());
    for (std::size_t i = 0; i < list_.size(); ++i) {
        by_text_.emplace(list_[i].text, i);
        by_id_.emplace(list_[i].id, i);
    }
}

std::optional<exercise::Word> Words::word(std::string_view text) const {
    auto found = by_id_.find(sense(text));
    if (found == by_id_.end() && (found = by_text_.find(text)) == by_text_.end()) {
        const auto listed = lexicon_.lookUp(text);
        if (listed.empty()) return std::nullopt;
        const std::string id(text);
        return exercise::Word{id, id, listed.front(), {}, id};
    }
    exercise::Word word = list_[found->second];
    word.picture = word.id;
    return word;
}

exercise::Vocabulary Words::vocabulary(const std::vector<std::string>& texts) const {
    exercise::Vocabulary vocabulary;
    const auto add = [&](const std::string& text) {
        auto found = word(text);
        INFO(text);
        REQUIRE(found.has_value());
        if (vocabulary.word(found->id) == nullptr) vocabulary.words.push_back(std::move(*found));
    };
    for (const std::string& text : texts) add(text);
    for (std::size_t i = 0; i < vocabulary.words.size(); ++i)
        for (const std::string& part : std::vector(vocabulary.words[i].compound)) add(part);
    return vocabulary;
}

exercise::Vocabulary Words::amongOthers(const std::vector<std::string>& texts) const {
    std::vector<std::string> all = texts;
    all.insert(all.end(), std::begin(kOthers), std::end(kOthers));
    return vocabulary(all);
}

std::vector<std::string> Words::rhymes(const exercise::Word& word, std::size_t most) const {
    std::vector<std::string> found;
    for (const exercise::Word& other : list_)
        if (found.size() < most &&
            speech::rhymeKind(word.sounds, other.sounds) == speech::RhymeKind::perfect)
            found.push_back(other.id);
    if (found.size() >= most) return found;
    lexicon_.forEach([&](std::string_view text, const std::vector<speech::Pronunciation>& said) {
        if (found.size() < most && !said.empty() && said.front().size() <= word.sounds.size() &&
            speech::rhymeKind(word.sounds, said.front()) == speech::RhymeKind::perfect)
            found.emplace_back(text);
    });
    return found;
}

}  // namespace wrenlet::handchecked
