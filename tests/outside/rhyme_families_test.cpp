// The 37 rimes of Wylie & Durrell, "Teaching vowels through phonograms", Elementary English 47
// (1970): nearly 500 words of the primary grades are made from them. The list of rimes and the
// member words are from memory.
#include <doctest/doctest.h>

#include <sstream>
#include <string>

#include "content/speech/rhyme.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::speech;

namespace {

constexpr const char* kFamilies[] = {
    "back pack sack black",    "mail nail snail tail",   "rain train chain brain",
    "cake lake snake rake",    "sale whale tale scale",  "game name flame frame",
    "can fan man pan van",     "bank tank thank",        "cap map nap clap",
    "crash splash trash mash", "bat cat hat rat flat",   "gate plate skate late",
    "saw jaw paw straw",       "day hay play tray",      "beat heat meat seat wheat",
    "bell shell well smell",   "best nest vest chest",   "ice mice rice slice",
    "brick chick kick stick",  "bride ride slide hide",  "knight light night",
    "bill hill pill spill",    "fin pin chin spin",      "line nine vine shine",
    "bring king ring swing",   "drink pink sink think",  "chip hip lip ship",
    "bit hit sit knit",        "block clock rock sock",  "joke smoke poke broke",
    "chop hop mop top shop",   "core store score shore", "hot knot pot dot",
    "duck luck truck",         "bug hug mug rug",        "jump bump stump",
    "bunk junk skunk trunk",
};

}  // namespace

TEST_CASE("Words of one rime family rhyme and words of two do not (Wylie and Durrell 1970)") {
    const Lexicon lexicon = fixtures::dictionary();
    std::vector<std::vector<Pronunciation>> families;
    for (const char* line : kFamilies) {
        std::istringstream words(line);
        families.emplace_back();
        for (std::string word; words >> word;) {
            INFO(word);
            REQUIRE_FALSE(lexicon.lookUp(word).empty());
            families.back().push_back(lexicon.lookUp(word).front());
        }
    }
    CHECK(families.size() == 37);
    // "-ail" and "-ale" are one rime to the ear; all others differ.
    const auto sameRime = [](std::size_t a, std::size_t b) {
        return a == b || (a == 1 && b == 4) || (a == 4 && b == 1);
    };
    for (std::size_t a = 0; a < families.size(); ++a)
        for (std::size_t b = 0; b < families.size(); ++b)
            for (const Pronunciation& x : families[a])
                for (const Pronunciation& y : families[b]) {
                    INFO(ipa(x) << " " << ipa(y));
                    const bool rhyme = rhymeKind(x, y) != RhymeKind::none;
                    CHECK(rhyme == sameRime(a, b));
                }
}
