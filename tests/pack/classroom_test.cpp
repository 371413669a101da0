#include "content/pack/classroom.hpp"

#include <doctest/doctest.h>

using namespace wrenlet;
using pack::Child;
using pack::ClassList;

namespace {

ClassList room() {
    ClassList list;
    list.title = "Room 4";
    list.children = {{"c-01", "Mia", "badge-01", {}}, {"c-02", "Zoë", "badge-02", {"b/v"}}};
    list.pack = "by-the-pond-1.zip";
    list.children[1].key = {"sock", "apple"};
    list.settings.session_minutes = 7;
    list.settings.focus = {"compound.blend"};
    return list;
}

}  // namespace

TEST_CASE("A class list reads back as it was written") {
    const auto read = pack::readClassList(writeClassList(room()), "class.json");
    REQUIRE(read.ok());
    CHECK(read.problems().empty());
    CHECK(read.value() == room());
    CHECK(read.value().child("c-02")->name == "Zoë");
    CHECK(read.value().child("c-99") == nullptr);
}

TEST_CASE("Two children of one id, a path for a pack and an odd badge are told by place") {
    ClassList list = room();
    list.children[1].id = "c-01";
    list.children[1].badge = "../badge";
    list.pack = "../outside.zip";
    const auto read = pack::readClassList(writeClassList(list), "class.json");
    REQUIRE_FALSE(read.ok());
    std::string all;
    for (const Problem& problem : read.problems()) all += sentence(problem) + "\n";
    CHECK(all.find("class.json, children, 2: Another child has the id \"c-01\"") !=
          std::string::npos);
    CHECK(all.find("class.json, children, 2: \"../badge\"") != std::string::npos);
    CHECK(all.find("class.json, pack: \"../outside.zip\"") != std::string::npos);
}

TEST_CASE("A skill that this program does not know is passed over with a warning") {
    ClassList list = room();
    list.settings.focus.push_back("tone.hum");
    const auto read = pack::readClassList(writeClassList(list), "class.json");
    REQUIRE(read.ok());
    CHECK(read.value().settings.focus == std::vector<std::string>{"compound.blend"});
    CHECK(read.problems().size() == 1);
}

TEST_CASE("A key that is none is left out with a warning that says where, what and what to do") {
    const std::vector<std::vector<std::string>> bad = {{"dragon", "apple"},
                                                       {"apple"},
                                                       {"apple", "apple"},
                                                       {"apple", "ball", "cake"},
                                                       {"../x", ""}};
    for (const auto& key : bad) {
        CAPTURE(key.front());
        ClassList list = room();
        list.children[1].key = key;
        const auto read = pack::readClassList(writeClassList(list), "class.json");
        REQUIRE(read.ok());
        CHECK(read.value().child("c-02")->key.empty());
        REQUIRE(read.problems().size() == 1);
        CHECK(read.problems()[0].where == "class.json, children, 2, key");
        CHECK(read.problems()[0].way_out.find("Choose two of apple, ball,") == 0);
    }
    std::string json = writeClassList(room());
    json.replace(json.find("\"key\": ["), 8, "\"key\": 5, \"x\": [");
    CHECK_FALSE(pack::readClassList(json, "class.json").ok());
}

TEST_CASE("A session outside five to eight minutes is brought inside with a warning") {
    for (const auto& [minutes, taken] : {std::pair{3, 5}, {5, 5}, {8, 8}, {10, 8}}) {
        CAPTURE(minutes);
        ClassList list = room();
        list.settings.session_minutes = minutes;
        const auto read = pack::readClassList(writeClassList(list), "class.json");
        REQUIRE(read.ok());
        CHECK(read.value().settings.session_minutes == taken);
        CHECK(read.problems().size() == (minutes == taken ? 0 : 1));
    }
}
