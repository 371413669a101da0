// What breaks an item in an accent, on words by which the accents are shown; whole_list_test.cpp
// asks the same of the whole list.
#include "content/exercise/in_accents.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>

#include "content/exercise/item_maker.hpp"
#include "tests/fixtures/pond.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;
using enum wrenlet::speech::Accent;
using fixtures::vocabularyOf;
using speech::Accent;

namespace {

using Accents = std::vector<Accent>;
using Which = std::function<bool(const Item&)>;

/// The items that ask about one of these, heard or chosen.
Which with(std::vector<std::string> ids) {
    return [ids](const Item& item) {
        return std::any_of(ids.begin(), ids.end(), [&item](const std::string& id) {
            const auto is_chosen = [&id](const Choice& choice) { return choice.id == id; };
            const auto is_heard = [&id](const Part& part) { return part.clip == wordClip(id); };
            return item.subject == id ||
                   std::any_of(item.choices.begin(), item.choices.end(), is_chosen) ||
                   std::any_of(item.parts.begin(), item.parts.end(), is_heard);
        });
    };
}

Which both(Which one, Which other) {
    return [=](const Item& item) { return one(item) && other(item); };
}

Which about(const char* subject) {
    return [subject](const Item& item) { return item.subject == subject; };
}

std::vector<Item> made(const Vocabulary& words, const char* skill) {
    return makeItems(words, *skillFromId(skill));
}

/// Some items are such, and those are lost in the accents; some are not, and those are kept.
void checkLost(const Vocabulary& words, const char* skill, const Accents& accents,
               const Which& such) {
    INFO(std::string(skill));
    const std::vector<Item> items = made(words, skill);
    std::vector<Item> others;
    for (const Item& item : items) {
        CHECK_MESSAGE(holdsIn(accents, item, words) == !such(item), item.id);
        if (!such(item)) others.push_back(item);
    }
    CHECK(others.size() < items.size());
    CHECK_FALSE(others.empty());
    CHECK(holdingIn(items, words, accents) == others);
}

void checkKept(const Vocabulary& words, const char* skill, const Accents& accents) {
    INFO(std::string(skill));
    const std::vector<Item> items = made(words, skill);
    CHECK_FALSE(items.empty());
    for (const Item& item : items) CHECK_MESSAGE(holdsIn(accents, item, words), item.id);
}

/// Do these two rhyme? No.
Item noRhyme(const std::string& a, const std::string& b) {
    Item item;
    item.skill = {Unit::onset_rime, Task::rhyme_judge};
    item.subject = a;
    item.parts = {{wordClip(a), a}, {wordClip(b), b}};
    item.choices = {{"yes", "took them for a rhyme"}, {"no", ""}};
    item.answer = 1;
    return item;
}

}  // namespace

TEST_CASE("In accents: without any nothing is left out, and sentences hold in all") {
    const Vocabulary words = fixtures::pond();
    const Accents all(speech::allAccents().begin(), speech::allAccents().end());
    for (const SkillRow& row : skillTable()) {
        const std::vector<Item> items = makeItems(words, row.skill);
        CHECK(holdingIn(items, words, {}) == items);
        if (row.skill.unit == Unit::sentence) CHECK(holdingIn(items, words, all) == items);
    }
}

TEST_CASE("In accents: what comes to rhyme is no foil, and what comes to be one word no rhyme") {
    const Vocabulary leaf = vocabularyOf({"leaf", "beef", "teeth", "sun", "map"});
    const Vocabulary tree = vocabularyOf({"three", "tree", "bee", "sun", "map"});
    const Which leaf_and_teeth = both(with({"leaf", "beef"}), with({"teeth"}));
    const Which three_and_tree = both(with({"three"}), with({"tree"}));
    for (const char* skill : {"onset-rime.rhyme-pick", "onset-rime.odd-one-out"}) {
        checkLost(leaf, skill, {th_fronting}, leaf_and_teeth);
        checkKept(leaf, skill, {th_stopping});
        checkLost(tree, skill, {th_stopping}, three_and_tree);
        checkKept(tree, skill, {th_fronting, non_rhotic});
    }
    const Vocabulary trees = vocabularyOf({"three", "tree", "bee", "sun", "bun"});
    for (const char* skill : {"onset-rime.rhyme-judge", "onset-rime.rhyme-sort"}) {
        checkLost(trees, skill, {th_stopping}, three_and_tree);
        checkKept(trees, skill, {th_fronting, foot_strut});
    }
    CHECK_FALSE(holdsIn(Accents{th_fronting}, noRhyme("leaf", "teeth"), leaf));
    CHECK(holdsIn(Accents{th_fronting}, noRhyme("leaf", "sun"), leaf));
}

TEST_CASE("In accents: two that each keep an item apart may break it together") {
    const Vocabulary words = vocabularyOf({"fourth", "cough"});
    const Item item = noRhyme("fourth", "cough");
    CHECK(holdsIn(Accents{th_fronting}, item, words));
    CHECK(holdsIn(Accents{non_rhotic}, item, words));
    CHECK_FALSE(holdsIn(Accents{non_rhotic, th_fronting}, item, words));
}

TEST_CASE("In accents: choices stay apart, wrong ones too") {
    const Vocabulary words = vocabularyOf({"pig", "three", "tree", "sun", "rain+bow", "rain"});
    std::size_t asked = 0;
    for (Item item : made(words, "phoneme.blend")) {
        if (item.subject != "pig") continue;
        ++asked;
        for (std::size_t i = 0, foil = 0; i < item.choices.size(); ++i)
            if (i != item.answer) item.choices[i].id = ++foil == 1 ? "three" : "tree";
        CHECK(holdsIn(Accents{th_fronting}, item, words));
        CHECK_FALSE(holdsIn(Accents{th_stopping}, item, words));
        item.choices[item.answer].id = "nowhere";
        CHECK_FALSE(holdsIn(Accents{foot_strut}, item, words));
    }
    CHECK(asked > 0);
}

TEST_CASE("In accents: a sound heard alone is the one in the word, and in no foil") {
    const Vocabulary words = vocabularyOf({"thumb", "fan", "pig", "bath", "cup", "book", "sheep"});
    checkLost(words, "phoneme.first", {th_fronting}, [](const Item& item) {
        return item.subject == "sound:θ" || both(with({"thumb"}), with({"fan"}))(item);
    });
    checkLost(words, "phoneme.first", {th_stopping}, about("sound:θ"));
    checkLost(words, "phoneme.last", {th_stopping}, about("sound:θ"));
    checkLost(words, "phoneme.middle", {foot_strut}, [](const Item& item) {
        return item.subject == "sound:ʌ" ||
               (item.subject == "sound:ʊ" && with({"cup", "thumb"})(item));
    });
    checkKept(words, "phoneme.middle", {th_fronting});
}

TEST_CASE("In accents: cards are sorted by the sound that is heard there") {
    const Vocabulary words = vocabularyOf({"thumb", "thin", "fan", "fish", "pig", "pan"});
    const auto sorts = [](const Which& which) {
        return [which](const Item& item) { return item.parts.empty() && which(item); };
    };
    const Which of_both = sorts(both(with({"thumb", "thin"}), with({"fan", "fish"})));
    const Which by_th = sorts(both(with({"thumb", "thin"}), with({"pig", "pan"})));
    std::size_t lost = 0, kept = 0;
    for (const Item& item : made(words, "phoneme.first")) {
        lost += of_both(item);
        kept += by_th(item);
        if (of_both(item)) CHECK_FALSE(holdsIn(Accents{th_fronting}, item, words));
        if (by_th(item)) CHECK(holdsIn(Accents{th_fronting}, item, words));
    }
    CHECK(lost > 0);
    CHECK(kept > 0);
}

TEST_CASE("In accents: a short vowel is one to every ear") {
    checkLost(vocabularyOf({"cup", "cap", "cake", "bike"}), "phoneme.long-short", {foot_strut},
              about("cup"));
}

TEST_CASE("In accents: sounds said alone make the word") {
    const Vocabulary words = vocabularyOf({"thumb", "three", "bath", "cup", "pig", "train", "map"});
    const Which th = [](const Item& item) {
        return item.subject == "thumb" || item.subject == "three" || item.subject == "bath";
    };
    checkLost(words, "phoneme.blend", {th_fronting}, th);
    checkLost(words, "phoneme.segment", {th_fronting}, th);
    checkLost(words, "phoneme.segment", {foot_strut},
              [](const Item& item) { return item.subject == "thumb" || item.subject == "cup"; });
    checkLost(words, "letter.build", {th_fronting}, about("bath"));
    // The onset of "three" and the rime of "bath" are said as in the word.
    checkLost(words, "onset-rime.blend", {th_fronting}, about("thumb"));
    checkKept(words, "onset-rime.blend", {foot_strut, non_rhotic});
}

TEST_CASE("In accents: syllables stay as many, and said alone make the word") {
    const Vocabulary words = vocabularyOf(
        {"chair", "overalls", "banana", "potato", "tiger", "pencil", "carrot", "bath", "bath+tub",
         "tub", "car+pool", "car", "pool", "fire+man", "fire", "man", "ear+ache", "ear", "ache"});
    checkLost(words, "syllable.count", {non_rhotic},
              [](const Item& item) { return item.subject == "chair" || item.subject == "ear"; });
    checkLost(words, "onset-rime.segment", {non_rhotic}, about("chair"));
    checkKept(words, "onset-rime.blend", {non_rhotic});
    checkLost(words, "syllable.blend", {non_rhotic}, about("overalls"));
    checkKept(words, "syllable.segment", {non_rhotic});
    for (const char* skill : {"compound.blend", "compound.segment", "compound.delete"}) {
        checkLost(words, skill, {non_rhotic}, about("earache"));
        checkKept(words, skill, {th_fronting, foot_strut});
    }
}

TEST_CASE("In accents: by ear the change gives the right word, and no other") {
    const Vocabulary words =
        vocabularyOf({"red", "thread", "two", "tooth", "bat", "bath", "bad", "mat", "map", "cap",
                      "cup", "car", "cart", "art", "back", "fed", "bread", "bed"});
    const auto with_sound = [](const char* clip) {
        return [clip](const Item& item) {
            return std::any_of(item.parts.begin(), item.parts.end(),
                               [clip](const Part& part) { return part.clip == clip; });
        };
    };
    checkLost(words, "phoneme.add", {th_fronting}, with_sound("sound:θ"));
    checkLost(words, "phoneme.delete", {th_stopping}, with_sound("sound:θ"));
    checkKept(words, "phoneme.delete", {non_rhotic});
    checkLost(words, "phoneme.substitute", {foot_strut}, with_sound("sound:ʌ"));
    const Vocabulary berry = vocabularyOf(
        {"berry", "bear", "bacon", "bay", "candy", "can", "sun", "pig", "pillow", "pill", "tree"});
    checkLost(berry, "syllable.delete", {non_rhotic}, about("berry"));
}

TEST_CASE("In accents: letters say their sounds, and no other letters say them too") {
    const Vocabulary words = vocabularyOf({"phone", "ship", "bath", "duck", "run", "cup", "rat"});
    checkLost(words, "letter.digraph", {th_fronting}, [](const Item& item) {
        return item.subject == "bath" || (item.subject == "phone" && with({"letter:th"})(item));
    });
    checkKept(words, "letter.name", {non_rhotic});
    checkKept(words, "letter.sound", {non_rhotic});
    checkLost(words, "letter.for-sound", {foot_strut}, about("sound:ʌ"));
    checkKept(words, "letter.for-sound", {non_rhotic, th_fronting, th_stopping});
    checkLost(words, "letter.both-sounds", {foot_strut}, about("letter:u"));
    // No accent that is known brings these about.
    Item sound = made(words, "letter.sound").front();
    sound.subject = "letter:s";
    sound.choices = {{"sound:s", ""}, {"sound:z", "took /z/ for /s/"}};
    sound.answer = 0;
    CHECK_FALSE(holdsIn(Accents{non_rhotic}, sound, words));
    Item name = made(words, "letter.name").front();
    for (Choice& choice : name.choices) choice.id = name.subject;
    CHECK_FALSE(holdsIn(Accents{non_rhotic}, name, words));
}
