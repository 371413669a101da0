// The word lists and a bench where everything is done at once, shared by the tests of the desk.
#pragma once

#include <doctest/doctest.h>

#include <string>

#include "editor/unit/open_unit.hpp"
#include "editor/voice/demo_voice.hpp"

namespace wrenlet::desk {

struct Library {
    KnownWords known;
    speech::BlockList blocked;
    AtOnce at_once;
    DemoVoice voice;
    Workbench bench;

    Library(KnownWords words, speech::BlockList list)
        : known(std::move(words)),
          blocked(std::move(list)),
          voice(known.lexicon()),
          bench{known,   blocked, std::string(WRENLET_TEST_SHARE) + "/pictures", {}, "", at_once,
                at_once, {}} {}
};

inline Library& library() {
    static Library opened = [] {
        auto known = KnownWords::open(WRENLET_TEST_SHARE);
        REQUIRE(known.ok());
        auto blocked = speech::BlockList::open(std::string(WRENLET_TEST_SHARE) + "/blocked.bin");
        REQUIRE(blocked.ok());
        return Library(std::move(known.value()), std::move(blocked.value()));
    }();
    return opened;
}

}  // namespace wrenlet::desk
