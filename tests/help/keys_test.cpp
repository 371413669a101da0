#include "editor/help/keys.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>
#include <tuple>

#include "editor/help/help.hpp"

using namespace wrenlet::desk;

TEST_CASE("Keys: no key means two things at one spot, and none of a spot hides one of everywhere") {
    std::set<std::tuple<Spot, Key, Hold>> keys;
    std::set<std::pair<Spot, Does>> uses;
    for (const KeyRow& row : keyRows()) {
        CAPTURE(row.cap);
        CHECK(keys.insert({row.spot, row.key, row.hold}).second);
        CHECK(uses.insert({row.spot, row.does}).second);
    }
    for (const KeyRow& row : keyRows())
        if (row.spot != Spot::everywhere)
            CHECK(keys.count({Spot::everywhere, row.key, row.hold}) == 0);
}

TEST_CASE("Keys: each is told in a row of its own or in that of its pair") {
    for (int i = 0; i < kSpotCount; ++i) {
        const auto spot = static_cast<Spot>(i);
        std::string told;
        for (const KeyRow& row : keysAt(spot)) told += std::string(" ") + row.cap;
        for (const KeyRow& row : keyRows()) {
            if (row.spot != spot || *row.says != '\0') continue;
            const std::string cap = row.cap;
            const std::string last = cap.substr(cap.rfind(' ') + 1);
            CAPTURE(cap);
            const bool is_place = cap.rfind("Alt ", 0) == 0;
            CHECK((is_place || told.find(last) != std::string::npos));
        }
    }
}

TEST_CASE("Help: every spot says what it is for in one line, with its words") {
    std::set<std::string> lines;
    for (int i = static_cast<int>(Spot::words); i < kSpotCount; ++i) {
        const Help& help = helpFor(static_cast<Spot>(i));
        CHECK(std::string(help.name) != "");
        const std::string line = help.what_for;
        CHECK(line.size() > 20);
        CHECK(line.size() < 100);
        CHECK(line.back() == '.');
        CHECK(lines.insert(line).second);
        CHECK(!help.words.empty());
    }
}

TEST_CASE("Help: the cautions name diagnosis, accent, children's data and hearing") {
    std::string all;
    for (const Caution& caution : cautions()) all += std::string(caution.head) + caution.says;
    for (const char* named : {"diagnosis", "local rules", "accent", "headphones", "pathologist"})
        CHECK_MESSAGE(all.find(named) != std::string::npos, named);
}
