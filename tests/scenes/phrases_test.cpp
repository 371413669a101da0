// What the game says around the items, heard in play, against what a pack's clips are made for.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

#include "content/common/random.hpp"
#include "content/exercise/phrases.hpp"
#include "tests/fixtures/pond_pack.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using practice::samples::Folder;

namespace {

std::set<std::string> neededFor(std::span<const exercise::Item> items) {
    std::set<std::string> clips;
    for (const exercise::Phrase& phrase : exercise::phrasesFor(items))
        clips.insert(exercise::phraseClip(phrase.id));
    return clips;
}

/// The same pack, with every phrase there is: what a pack lacks the game would leave out.
pack::Pack withEveryPhrase(pack::Pack pack) {
    for (const exercise::Phrase& phrase : exercise::phraseTable()) {
        const std::string id = exercise::phraseClip(phrase.id);
        if (pack.clip(id) != nullptr) continue;
        pack::Clip clip;
        clip.id = id;
        clip.seconds = 0.4;
        pack.clips.push_back(clip);
        std::sort(pack.clips.begin(), pack.clips.end(),
                  [](const auto& a, const auto& b) { return a.id < b.id; });
    }
    return pack;
}

/// Two sessions of two children who are right at about half, and what was said in them.
std::set<std::string> phrasesHeard(const pack::Pack& pack) {
    const Folder folder;
    fixtures::Player player(folder / "store.db", 2, 7, {}, 6, pack, {}, {"apple", "ball"});
    Random random(5);
    for (int touches = 0; touches < 400; ++touches) {
        if (!player.waitForTouch()) player.wait(1'000);
        const auto things = player.app().touchables();
        const auto right = player.app().rightTouch();
        const bool knows = things.empty() || random.below(2) == 0;
        if (right && knows) player.tap(*right);
        if (!knows) player.tap(things[random.below(static_cast<std::uint32_t>(things.size()))]);
    }
    std::set<std::string> heard;
    for (const game::Utterance& utterance : player.voice().said)
        for (const game::Spoken& spoken : utterance)
            if (spoken.clip.rfind("phrase:", 0) == 0) heard.insert(spoken.clip);
    return heard;
}

}  // namespace

TEST_CASE("Phrases: what is said in play is what a pack of those items has a clip for, no less") {
    std::set<std::string> heard_at_all;
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        const pack::Pack pack = fixtures::pondPack(row.skill);
        REQUIRE_FALSE(pack.items.empty());
        const std::set<std::string> needed = neededFor(pack.items);
        for (const std::string& clip : phrasesHeard(withEveryPhrase(pack))) {
            CAPTURE(row.id);
            CAPTURE(clip);
            CHECK(needed.count(clip) == 1);
            heard_at_all.insert(clip);
        }
    }
    for (const exercise::Phrase& phrase : exercise::phraseTable()) {
        CAPTURE(phrase.id);
        CHECK(heard_at_all.count(exercise::phraseClip(phrase.id)) == 1);
    }
}

TEST_CASE("Phrases: a pack that only counts words asks a teacher for twelve of them") {
    const pack::Pack pack = fixtures::pondPack({exercise::Unit::sentence, exercise::Task::count});
    CHECK(neededFor(pack.items).size() == 12);
    CHECK(exercise::phrasesFor({}).size() == 8);
}
