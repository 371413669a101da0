// The command `serve` as whoever starts it meets it: a program of its own, with its lines and its
// end.
#include <doctest/doctest.h>

#include "editor/document/opened_class.hpp"
#include "tests/serve/page_tablet.hpp"
#include "tests/serve/serve_program.hpp"
#include "tests/serve/served_room.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using samples::ServeProgram;

TEST_CASE(
    "Serving: the command tells address and code, takes answers in, and stops in good order") {
    samples::ServedRoom room;
    ServeProgram served(room.folder.path(), {room.classroom.folder.string(), "--port", "0",
                                             "--json", "--page", (room.folder / "page").string()});
    const std::uint16_t port = served.port();
    const std::string address = served.event("address").value("address", "");
    const auto code = served.event("code");
    CHECK(code.value("address", "") == address + "#" + code.value("code", "?"));
    samples::PageTablet tablet(port, "127.0.0.2", 1);
    REQUIRE(tablet.join(code.value("code", "")));
    REQUIRE(tablet.hello(true));
    tablet.answers(samples::responseBy("c-01"));
    REQUIRE(tablet.sendAll());
    CHECK(served.event("tablet").value("tablet", "") == tablet.identity().tablet);
    served.type("\n");
    const auto next = served.event("code", 2);
    CHECK(next.value("code", "") != code.value("code", ""));
    served.type("remove " + tablet.identity().tablet + "\n");
    CHECK(room.soon([&] {
        const auto answer = tablet.say(link::Hello{});
        return answer && std::holds_alternative<link::Removed>(*answer);
    }));
    CHECK(served.event("refused").value("from", "") == "127.0.0.2");
    CHECK(served.stop() == 0);
    CHECK(openClass(room.classroom.folder, 0).responses.size() == 1);
}

TEST_CASE("Serving: the command says what is missing") {
    samples::ServedRoom room;
    ServeProgram without_page(room.folder.path(), {room.classroom.folder.string(), "--page",
                                                   (room.folder / "nowhere").string()});
    CHECK(without_page.wait() == 1);
    CHECK(without_page.said().find("./play --web") != std::string::npos);
    for (const std::vector<std::string>& args :
         {std::vector<std::string>{}, {"room", "--port", "70000"}, {"room", "--what"}}) {
        ServeProgram off(room.folder.path(), args);
        CHECK(off.wait() == 2);
        CHECK(off.said().find("wrenlet-desk serve CLASSROOM") != std::string::npos);
    }
}
