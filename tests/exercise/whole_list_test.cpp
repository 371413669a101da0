// Every item of every skill over the whole classroom list, by two judges that know nothing of the
// makers: the rules of fairness, and the answers by ear (by_ear.hpp). Then items that are spoiled
// on purpose, each of which has to be caught.
#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <map>
#include <set>

#include "content/common/files.hpp"
#include "content/exercise/classroom_sentences.hpp"
#include "content/exercise/classroom_words.hpp"
#include "content/exercise/in_accents.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/list_lines.hpp"
#include "tests/exercise/by_ear.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

using byear::againstStandard;
using byear::wrongs;

const std::filesystem::path kLists = std::filesystem::path(WRENLET_TEST_SHARE) / "words";

std::string listText(const char* name) {
    const auto text = readWhole(kLists / name, kMostListBytes);
    REQUIRE(text.ok());
    return text.value();
}

Vocabulary wholeList() {
    Vocabulary all;
    const auto listed = readClassroomWords(listText("classroom.tsv"), "classroom.tsv");
    const auto said = saidAloud(listed.value(), fixtures::dictionary(), "classroom.tsv");
    REQUIRE(said.ok());
    all.words = said.value();
    const auto sentences = readClassroomSentences(listText("sentences.tsv"), "sentences.tsv");
    for (const ClassroomSentence& one : sentences.value()) all.sentences.push_back(one.sentence);
    return all;
}

/// Units of about `size` words that lie apart in the list, with the parts of their compounds; every
/// word has a picture, as if a teacher had drawn those that the list lacks.
std::vector<Vocabulary> drawnUnits(const Vocabulary& all, std::size_t size) {
    const std::size_t count = all.words.size() / size + 1;
    std::vector<Vocabulary> units(count);
    const auto add = [](Vocabulary& unit, Word word) {
        if (unit.word(word.id) != nullptr) return;
        if (word.picture.empty()) word.picture = "drawn-" + word.id;
        unit.words.push_back(std::move(word));
    };
    for (std::size_t i = 0; i < all.words.size(); ++i) {
        Vocabulary& unit = units[i % count];
        add(unit, all.words[i]);
        for (const std::string& part : all.words[i].compound) add(unit, *all.word(part));
    }
    for (std::size_t i = 0; i < all.sentences.size(); ++i)
        units[i % count].sentences.push_back(all.sentences[i]);
    return units;
}

struct Tally {
    std::size_t items = 0;
    std::map<std::string, std::size_t, std::less<>> by_skill, by_standard;
};

void judgeAll(const Vocabulary& unit, Tally& tally) {
    for (const SkillRow& row : skillTable()) {
        std::set<std::string> ids;
        for (const Item& item : makeItems(unit, row.skill)) {
            ++tally.items;
            ++tally.by_skill[std::string(row.id)];
            ++tally.by_standard[std::string(row.standard)];
            if (!ids.insert(item.id).second) FAIL_CHECK(item.id << " is made twice");
            for (const std::string& why : unfairness(item, unit))
                FAIL_CHECK(item.id << ", by the rules: " << why);
            for (const std::string& why : byear::wrongs(item, unit))
                FAIL_CHECK(item.id << ", by ear: " << why);
            for (const std::string& why : byear::againstStandard(item, unit))
                FAIL_CHECK(item.id << ", " << row.standard << ": " << why);
        }
    }
}

}  // namespace

TEST_CASE(
    "Whole list: every item has one right answer to every ear (CCSS RF.K.2.a-e, RF.1.2.a-d)") {
    const Vocabulary all = wholeList();
    Tally tally;
    judgeAll(all, tally);
    for (const Vocabulary& unit : drawnUnits(all, 180)) judgeAll(unit, tally);
    MESSAGE(tally.items << " items");
    CHECK(tally.items >= 20'000);
    for (const SkillRow& row : skillTable())
        CHECK_MESSAGE(tally.by_skill[std::string(row.id)] >= 10, row.id);
    for (const char* code : {"RF.K.2.a", "RF.K.2.b", "RF.K.2.c", "RF.K.2.d", "RF.K.2.e", "RF.1.2.a",
                             "RF.1.2.b", "RF.1.2.d"})
        CHECK_MESSAGE(tally.by_standard[code] >= 100, code);
}

namespace {

struct Held {
    std::size_t made = 0, kept = 0, wrong = 0;  // wrong to the ear, of all that are made
};

void holdAll(const Vocabulary& unit, const std::vector<byear::OtherEar>& others,
             std::vector<Held>& held) {
    for (const SkillRow& row : skillTable()) {
        const std::vector<Item> items = makeItems(unit, row.skill);
        for (std::size_t i = 0; i < others.size(); ++i) {
            held[i].made += items.size();
            for (const Item& item : items)
                held[i].wrong += !byear::wrongsTo(others[i].ear, item, unit).empty();
            const std::vector<Item> kept = holdingIn(items, unit, others[i].accents);
            held[i].kept += kept.size();
            for (const Item& item : kept)
                for (const std::string& why : byear::wrongsTo(others[i].ear, item, unit))
                    FAIL_CHECK(item.id << ": " << why);
        }
    }
}

}  // namespace

TEST_CASE("Whole list: what is kept for an accent has one right answer to that ear too") {
    const Vocabulary all = wholeList();
    const std::vector<byear::OtherEar> others = byear::otherEars();
    std::vector<Held> held(others.size());
    holdAll(all, others, held);
    for (const Vocabulary& unit : drawnUnits(all, 180)) holdAll(unit, others, held);
    for (std::size_t i = 0; i < others.size(); ++i) {
        const auto& [made, kept, wrong] = held[i];
        MESSAGE(std::string(others[i].ear.name)
                << ": " << kept << " of " << made << " kept, " << wrong << " would be wrong");
        CHECK(kept * 10 >= made * 9);
        CHECK(made - kept >= wrong);
        CHECK(wrong >= 20);
    }
}

namespace {

using Spoil = std::function<void(Item&, Vocabulary&)>;

Word* wordIn(Vocabulary& vocabulary, const std::string& id) {
    const auto found = std::find_if(vocabulary.words.begin(), vocabulary.words.end(),
                                    [&id](const Word& word) { return word.id == id; });
    return found == vocabulary.words.end() ? nullptr : &*found;
}

std::string& foilOf(Item& item) {
    return item.choices[item.answer == 0 ? 1 : 0].id;
}

void moveAnswer(Item& item, Vocabulary&) {
    const std::size_t next = (item.answer + 1u) % item.choices.size();
    std::swap(item.choices[item.answer].means, item.choices[next].means);
    item.answer = static_cast<std::uint8_t>(next);
}

/// A second word that is said like the right one, with a picture of its own, becomes a foil.
void makeFoilRight(Item& item, Vocabulary& vocabulary) {
    Word twin = *wordIn(vocabulary, item.choices[item.answer].id);
    twin.id += "~twin";
    twin.text += "e";
    twin.picture = "twin";
    foilOf(item) = twin.id;
    vocabulary.words.push_back(std::move(twin));
}

void dropPicture(Item& item, Vocabulary& vocabulary) {
    Word* shown = wordIn(vocabulary, item.choices[item.answer].id);
    if (shown == nullptr) shown = wordIn(vocabulary, item.subject);
    shown->picture.clear();
}

void shareAPicture(Item& item, Vocabulary& vocabulary) {
    wordIn(vocabulary, foilOf(item))->picture =
        wordIn(vocabulary, item.choices[item.answer].id)->picture;
}

void changeSound(Item& item, Vocabulary&) {
    item.turns_on.sound = "ʒ";
}

void movePlace(Item& item, Vocabulary&) {
    item.turns_on.position =
        item.turns_on.position == Position::first ? Position::last : Position::first;
}

void dropPart(Item& item, Vocabulary&) {
    item.parts.pop_back();
}

void swapParts(Item& item, Vocabulary&) {
    std::swap(item.parts.front(), item.parts.back());
}

std::string added(Vocabulary& vocabulary, const char* text, const char* said) {
    Word word{std::string(text) + "~added", text, *speech::fromArpabetLine(said), {}, text};
    word.picture += "-added";
    vocabulary.words.push_back(word);
    return word.id;
}

void setRight(Item& item, const char* answer) {
    for (std::size_t i = 0; i < item.choices.size(); ++i)
        if (item.choices[i].id == answer) item.answer = static_cast<std::uint8_t>(i);
    for (Choice& choice : item.choices) choice.means = choice.id == answer ? "" : "wrong";
}

/// Do these two rhyme? The first is heard with this rime.
void judgeThese(Item& item, const std::string& first, const std::string& second, const char* rime,
                const char* answer) {
    item.subject = first;
    item.parts = {{wordClip(first), first}, {wordClip(second), second}};
    item.turns_on.sound = rime;
    setRight(item, answer);
}

void judgeHomophones(Item& item, Vocabulary& vocabulary) {
    judgeThese(item, added(vocabulary, "pear", "P EH1 R"), added(vocabulary, "pair", "P EH1 R"),
               "ɛɹ", "yes");
}

void judgeIdentical(Item& item, Vocabulary& vocabulary) {
    judgeThese(item, added(vocabulary, "leave", "L IY1 V"),
               added(vocabulary, "believe", "B IH0 L IY1 V"), "iv", "yes");
}

void judgePinAndTen(Item& item, Vocabulary& vocabulary) {
    judgeThese(item, added(vocabulary, "pin", "P IH1 N"), added(vocabulary, "ten", "T EH1 N"), "ɪn",
               "no");
}

void judgeCotAndThought(Item& item, Vocabulary& vocabulary) {
    judgeThese(item, added(vocabulary, "cot", "K AA1 T"), added(vocabulary, "thought", "TH AO1 T"),
               "ɑt", "no");
}

/// The right card becomes a word whose vowel is another one to some.
void pickHen(Item& item, Vocabulary& vocabulary) {
    item.choices[item.answer].id = added(vocabulary, "hen", "HH EH1 N");
    item.subject = "sound:ɛ";
    item.parts = {{"sound:ɛ", "ɛ"}};
    item.turns_on.sound = "ɛ";
}

/// The last choice becomes this word.
Spoil chooseAlso(const char* id) {
    return [id](Item& item, Vocabulary&) { foilOf(item) = id; };
}

struct Spoiler {
    const char* name;
    Spoil spoil;
    std::set<std::string_view> skills;  // none: all
};

std::vector<Spoiler> spoilers() {
    const std::set<std::string_view> words = {"onset-rime.rhyme-sort", "onset-rime.odd-one-out",
                                              "onset-rime.rhyme-pick", "syllable.blend",
                                              "syllable.delete",       "onset-rime.blend",
                                              "phoneme.first",         "phoneme.last",
                                              "phoneme.middle",        "phoneme.blend",
                                              "phoneme.add",           "phoneme.delete",
                                              "phoneme.substitute",    "letter.build"};
    std::set<std::string_view> shown = words;
    shown.insert({"syllable.count", "phoneme.segment", "phoneme.long-short", "letter.digraph"});
    const std::set<std::string_view> joined = {"compound.blend", "syllable.blend",
                                               "onset-rime.blend", "phoneme.blend"};
    std::set<std::string_view> split = joined;
    split.insert({"syllable.segment", "phoneme.segment", "syllable.count", "letter.build"});
    const std::set<std::string_view> isolated = {"phoneme.first", "phoneme.last", "phoneme.middle"};
    return {{"the answer is moved", moveAnswer, {}},
            {"a foil is right too", makeFoilRight, words},
            {"a picture is dropped", dropPicture, shown},
            {"two cards are one picture", shareAPicture, words},
            {"it turns on another sound", changeSound, {}},
            {"its sound is moved",
             movePlace,
             {"phoneme.first", "phoneme.last", "phoneme.middle", "phoneme.add", "phoneme.delete",
              "phoneme.substitute", "phoneme.long-short"}},
            {"a part is left out", dropPart, split},
            {"its parts are swapped", swapParts, joined},
            {"homophones are to rhyme", judgeHomophones, {"onset-rime.rhyme-judge"}},
            {"leave and believe are to rhyme", judgeIdentical, {"onset-rime.rhyme-judge"}},
            {"pin and ten rhyme to some", judgePinAndTen, {"onset-rime.rhyme-judge"}},
            {"cot and thought rhyme to some", judgeCotAndThought, {"onset-rime.rhyme-judge"}},
            {"hen has another vowel to some", pickHen, {"phoneme.middle"}},
            {"RF.K.2.d: bell ends in /l/", chooseAlso("bell"), isolated},
            {"RF.K.2.d: car ends in /r/", chooseAlso("car"), isolated},
            {"RF.K.2.d: fox ends in /x/", chooseAlso("fox"), isolated},
            {"RF.K.2.d: tree is no CVC", chooseAlso("tree"), isolated}};
}

bool isCaughtByEar(const Item& item, const Vocabulary& vocabulary) {
    return !wrongs(item, vocabulary).empty() || !againstStandard(item, vocabulary).empty();
}

/// The words that the standard names, beside the rest.
Vocabulary unitToSpoil() {
    const Vocabulary all = wholeList();
    Vocabulary unit;
    for (const Word& word : all.words)
        if (!word.picture.empty() || word.text == "bell" || word.text == "car" ||
            word.text == "fox" || word.text == "tree")
            unit.words.push_back(word);
    for (std::size_t i = 0; i < unit.words.size(); ++i)
        for (const std::string& part : std::vector(unit.words[i].compound))
            if (unit.word(part) == nullptr) unit.words.push_back(*all.word(part));
    unit.sentences = all.sentences;
    return unit;
}

}  // namespace

TEST_CASE("Whole list: whatever is spoiled in an item is caught by ear and by the rules") {
    const Vocabulary unit = unitToSpoil();
    std::size_t kinds = 0, spoiled = 0;
    for (const SkillRow& row : skillTable()) {
        const auto items = makeItems(unit, row.skill);
        REQUIRE_FALSE(items.empty());
        for (const Spoiler& spoiler : spoilers()) {
            if (!spoiler.skills.empty() && spoiler.skills.count(row.id) == 0) continue;
            ++kinds;
            constexpr std::size_t kOfAKind = 8;
            const std::size_t step = items.size() / kOfAKind + 1;
            for (std::size_t i = 0; i < items.size(); i += step) {
                Item item = items[i];
                Vocabulary words = unit;
                spoiler.spoil(item, words);
                item.id = itemId(item);
                // "nine" begins as it ends: its parts swapped are its parts.
                if (item == items[i] && words.words == unit.words) continue;
                ++spoiled;
                CHECK_MESSAGE(isCaughtByEar(item, words), "by ear, ", spoiler.name, ": ", item.id);
                CHECK_MESSAGE(!unfairness(item, words).empty(), "by the rules, ", spoiler.name,
                              ": ", item.id);
            }
        }
    }
    CHECK(kinds >= 100);
    CHECK(spoiled >= 500);
}
