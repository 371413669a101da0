// `wrenlet-desk progress` on a classroom folder as tablets leave it.
#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "content/common/files.hpp"
#include "content/practice/store.hpp"
#include "editor/commands/command.hpp"
#include "editor/look/wording.hpp"
#include "tests/desk/demo_class.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace {

struct Said {
    int status;
    std::string out, err;
};

Said progress(std::vector<std::string> words) {
    std::ostringstream out, err;
    const int status = progressCommand(words, {out, err, {}});
    return {status, out.str(), err.str()};
}

// The demo class's list, and one tablet that brought some of its answers.
void fillClassroom(const practice::samples::Folder& folder) {
    const pack::Classroom classroom{folder / "room"};
    std::filesystem::create_directories(classroom.tablets());
    REQUIRE(writeWhole(classroom.classFile(), pack::writeClassList(demo::classList())).ok());
    auto store = practice::Store::open(folder / "store.db", "t-1");
    REQUIRE(store.ok());
    const auto session = store.value().beginSession("c-01", "by-the-pond 3", 1, demo::kLastDay);
    REQUIRE(session.ok());
    int kept = 0;
    for (practice::Response response : demo::responses(7)) {
        if (response.child != "c-01" || ++kept > 60) continue;
        response.session = session.value().id;
        const auto appended = store.value().append(response, 1000);
        for (const Problem& problem : appended.problems()) MESSAGE(sentence(problem));
        REQUIRE(appended.ok());
    }
    REQUIRE(store.value().snapshot(classroom.snapshot("t-1")).ok());
}

}  // namespace

TEST_CASE("progress prints the class, each child's sounds with counts, and the caution") {
    const practice::samples::Folder folder;
    fillClassroom(folder);
    const Said said = progress({(folder / "room").string()});
    CHECK(said.status == 0);
    CHECK(said.out.find("Demo class: 22 children, 60 answers from 1 tablet") != std::string::npos);
    CHECK(said.out.find(std::string(kCaution)) != std::string::npos);
    CHECK(said.out.find("Callum: 60 answers on ") != std::string::npos);
    CHECK(said.out.find("Uma: not played yet") != std::string::npos);
    CHECK(said.err.empty());
}

TEST_CASE("progress --json prints nothing but JSON") {
    const practice::samples::Folder folder;
    fillClassroom(folder);
    const Said said = progress({(folder / "room").string(), "--json"});
    CHECK(said.status == 0);
    const auto json = nlohmann::json::parse(said.out, nullptr, false);
    CHECK(!json.is_discarded());
    CHECK(json.is_object());
}

TEST_CASE("progress names a file that it cannot read and goes on with the rest") {
    const practice::samples::Folder folder;
    fillClassroom(folder);
    practice::samples::writeBytes(folder / "room" / "tablets" / "t-2.db", "not a store at all");
    const Said said = progress({(folder / "room").string()});
    CHECK(said.err.find("t-2.db") != std::string::npos);
    CHECK(said.out.find("Callum: 60 answers") != std::string::npos);
}

TEST_CASE("progress says what it needs") {
    CHECK(progress({}).status == 2);
    CHECK(progress({"room", "--loud"}).status == 2);
    const Said nowhere = progress({"/nowhere/at/all"});
    CHECK(nowhere.status == 1);
    CHECK(!nowhere.err.empty());
    CHECK(nowhere.out.empty());
}

}  // namespace wrenlet::desk
