// What goes into a pack of a unit, with silent clips and blank pictures.
#include "content/pack/pack_builder.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>

#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;

namespace {

class BlankMedia final : public pack::Media {
  public:
    std::vector<Result<pack::Clip>> clips(std::span<const pack::VoiceNeed> needs,
                                          const pack::Progress&) override {
        return {needs.size(), pack::Clip{}};
    }
    Result<pack::Picture> picture(std::string_view) override { return pack::Picture{}; }
};

Result<pack::Pack> packOf(const std::vector<const char*>& words, const std::string& accents) {
    std::string json = R"({"format": "wrenlet unit", "format_version": 1, "id": "u", "title": "U",
        "sentences": ["The cat ran."], "accents": [)" +
                       accents + R"(], "words": [)";
    for (const char* word : words) {
        if (word != words.front()) json += ", ";
        json += R"({"text": ")" + std::string(word) + R"(", "picture": ")" + word + R"("})";
    }
    const auto unit = pack::readUnit(json + "]}", "u.json");
    REQUIRE(unit.ok());
    const auto blocked = speech::BlockList::open(WRENLET_TEST_SHARE "/blocked.bin");
    REQUIRE(blocked.ok());
    BlankMedia media;
    return pack::buildPack(unit.value(), 1, fixtures::dictionary(), blocked.value(), media, {});
}

std::size_t count(const pack::Pack& pack, const char* skill,
                  const std::function<bool(const exercise::Item&)>& which) {
    return static_cast<std::size_t>(
        std::count_if(pack.items.begin(), pack.items.end(), [&](const exercise::Item& item) {
            return exercise::rowOf(item.skill).id == skill && which(item);
        }));
}

std::size_t asking(const pack::Pack& pack, const char* skill, const std::string& word) {
    return count(pack, skill, [&](const exercise::Item& item) { return item.subject == word; });
}

bool isHeard(const pack::Pack& pack, const std::string& id) {
    return std::any_of(pack.clips.begin(), pack.clips.end(),
                       [&id](const pack::Clip& clip) { return clip.id == id; });
}

bool warns(const std::vector<Problem>& problems, const std::string& what) {
    return std::any_of(problems.begin(), problems.end(), [&what](const Problem& problem) {
        return problem.what.find(what) != std::string::npos;
    });
}

/// To some ears these are one word, and no rhyme.
bool isThreeAndTree(const exercise::Item& item) {
    const auto has = [&item](const char* word) {
        return item.subject == word ||
               std::any_of(item.choices.begin(), item.choices.end(),
                           [word](const exercise::Choice& choice) { return choice.id == word; });
    };
    return has("three") && has("tree");
}

}  // namespace

TEST_CASE("Pack builder: items that break in the unit's accents are left out") {
    const std::vector<const char*> words = {"three", "tree", "bee",  "thumb", "cup",
                                            "cat",   "hat",  "moon", "spoon", "pig"};
    const auto plain = packOf(words, ""), stopping = packOf(words, R"("th-stopping")");
    REQUIRE(plain.ok());
    REQUIRE(stopping.ok());
    const pack::Pack &all = plain.value(), &held = stopping.value();
    CHECK(asking(all, "phoneme.blend", "thumb") > 0);
    CHECK(asking(held, "phoneme.blend", "thumb") == 0);
    CHECK(asking(held, "phoneme.blend", "cup") == asking(all, "phoneme.blend", "cup"));
    CHECK(asking(held, "sentence.count", "s-1") == 1);
    CHECK(count(all, "onset-rime.rhyme-sort", isThreeAndTree) > 0);
    CHECK(count(held, "onset-rime.rhyme-sort", isThreeAndTree) == 0);
    CHECK(asking(held, "onset-rime.rhyme-sort", "moon") > 0);
    CHECK(isHeard(all, "sound:θ"));
    CHECK_FALSE(isHeard(held, "sound:θ"));
}

TEST_CASE("Pack builder: a skill of which the unit's accents leave nothing is told") {
    const std::vector<const char*> words = {"thumb", "cup", "bug", "truck"};
    const std::string told = "no items for \"Join sounds\" that hold in the unit's accents.";
    const auto plain = packOf(words, ""), strut = packOf(words, R"("foot-strut")");
    REQUIRE(plain.ok());
    REQUIRE(strut.ok());
    CHECK(asking(plain.value(), "phoneme.blend", "cup") > 0);
    CHECK(asking(strut.value(), "phoneme.blend", "cup") == 0);
    CHECK_FALSE(warns(plain.problems(), "accents"));
    CHECK(warns(strut.problems(), told));
    CHECK(warns(strut.problems(), "no items for \"Join word parts\"."));
}
