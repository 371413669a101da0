// Says, once for every machine that builds the program, what most units need in the demo voice: the
// classroom list's words that have a picture, their parts and sounds, the sentences, the game's own
// phrases. A pack of such words is then read instead of made.
//
//   make_clips SHARE    SHARE holds lexicon.bin and words/; the clips go to SHARE/clips
#include <algorithm>
#include <filesystem>
#include <iostream>
#include <system_error>
#include <thread>

#include "content/exercise/item_maker.hpp"
#include "content/pack/pack_builder.hpp"
#include "editor/document/known_words.hpp"
#include "editor/voice/unit_media.hpp"

namespace {

using namespace wrenlet;

/// All that the list's words with a picture can be asked for.
std::vector<pack::VoiceNeed> needsOf(exercise::Vocabulary list) {
    list.words.erase(
        std::remove_if(list.words.begin(), list.words.end(),
                       [](const exercise::Word& word) { return word.picture.empty(); }),
        list.words.end());
    std::vector<exercise::Item> items;
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        std::vector<exercise::Item> more = exercise::makeItems(list, row.skill);
        std::move(more.begin(), more.end(), std::back_inserter(items));
    }
    return pack::voiceNeeds(list, items);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "make_clips SHARE\n";
        return 2;
    }
    const std::filesystem::path share = argv[1];
    const Result<desk::KnownWords> known = desk::KnownWords::open(share);
    for (const Problem& problem : known.problems()) std::cerr << sentence(problem) << "\n";
    if (!known.ok()) return 1;

    std::error_code error;
    std::filesystem::remove_all(share / "clips", error);
    const desk::ClipShelf shelf(share / "clips", desk::ClipShelf::kTheBuild);
    const desk::DemoVoice voice(known.value().lexicon());
    const pack::Unit nothing_recorded;
    desk::UnitMedia media(nothing_recorded, {},
                          {voice, std::max(1u, std::thread::hardware_concurrency()), &shelf});
    for (const Result<pack::Clip>& clip : media.clips(needsOf(known.value().classroom()), {})) {
        for (const Problem& problem : clip.problems()) std::cerr << sentence(problem) << "\n";
        if (!clip.ok()) return 1;
    }
    return 0;
}
