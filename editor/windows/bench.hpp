// What the desk works on units with, opened for a run of the program: the word lists, the threads
// that look and save, and where on this machine a copy goes when a unit cannot be saved.
#pragma once

#include <filesystem>
#include <functional>
#include <memory>

#include "editor/unit/open_unit.hpp"
#include "editor/voice/clip_shelf.hpp"
#include "editor/voice/demo_voice.hpp"

namespace wrenlet::desk {

struct Bench {
    Bench(KnownWords words, speech::BlockList list)
        : known(std::move(words)),
          blocked(std::move(list)),
          voice(known.lexicon()),
          workbench{known, blocked, {}, {}, {}, looking, saving, {}} {}
    Bench(const Bench&) = delete;
    Bench& operator=(const Bench&) = delete;

    KnownWords known;
    speech::BlockList blocked;
    DemoVoice voice;
    std::unique_ptr<ClipShelf> clips;
    OnThread looking, saving, checking, saying, building, drawing, playing, finding, serving;
    Workbench workbench;
};

/// The folder that this program lies in.
std::filesystem::path programFolder();

/// Where this program keeps what is its own on this machine; empty when the system names no place.
std::filesystem::path ownFolder();

/// Null when the word lists cannot be read; the class can be looked at without them. `own` is the
/// folder for copies of units and for clips made before; empty: the user's own data folder.
std::unique_ptr<Bench> openBench(const std::filesystem::path& assets,
                                 const std::filesystem::path& own, std::int64_t now_ms,
                                 std::function<void()> wake);

}  // namespace wrenlet::desk
