// A tablet's whole way over a real socket: the page, joining, the pack, what it sends; and what
// goes wrong on the way without anybody meaning harm.
#include <doctest/doctest.h>

#include <filesystem>
#include <set>
#include <thread>

#include "content/practice/store.hpp"
#include "editor/classlist/delete_child.hpp"
#include "editor/document/opened_class.hpp"
#include "editor/serve/tablet_names.hpp"
#include "tests/serve/page_tablet.hpp"
#include "tests/serve/served_room.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using samples::PageTablet;
using samples::responseBy;
using samples::ServedRoom;

namespace {

/// What the class map is made of, once so many answers are handed in.
std::vector<practice::Response> gathered(ServedRoom& room, std::size_t count) {
    room.clock.now_ms += 20'000;
    std::vector<practice::Response> all;
    room.soon([&] {
        all = openClass(room.classroom.folder, room.clock.now_ms).responses;
        return all.size() >= count;
    });
    return all;
}

}  // namespace

TEST_CASE("Serving: the page's files are handed out, and nothing beside them") {
    ServedRoom room;
    REQUIRE(room.start());
    samples::HttpClient browser(room.port());
    const auto page = browser.ask("GET", "/");
    REQUIRE(page);
    CHECK(page->status == 200);
    CHECK(page->body == "<!doctype html><title>Wrenlet</title>");
    CHECK(page->head.find("Content-Type: text/html") != page->head.npos);
    CHECK(page->head.find("nosniff") != page->head.npos);
    CHECK(browser.ask("GET", "/icons/icon-192.png")->body == "png");
    CHECK(browser.ask("GET", "/wrenlet.js")->body == std::string(5000, 'j'));
    const auto small = browser.ask("GET", "/wrenlet.js", {}, "Accept-Encoding: gzip, deflate\r\n");
    CHECK(small->body == "not really");
    CHECK(small->head.find("Content-Encoding: gzip") != small->head.npos);
    CHECK(browser.ask("HEAD", "/wrenlet.js")->status == 200);
    for (const char* not_there :
         {"/notes.txt", "/wrenlet.js.gz", "/class.json", "/link/tablets.json"})
        CHECK(browser.ask("GET", not_there)->status == 404);
}

TEST_CASE("Serving: a page that has not changed is not sent again") {
    ServedRoom room;
    REQUIRE(room.start());
    samples::HttpClient browser(room.port());
    const std::string head = browser.ask("GET", "/")->head;
    const std::size_t at = head.find("ETag: ") + 6;
    const std::string tag = head.substr(at, head.find("\r\n", at) - at);
    const auto again = browser.ask("GET", "/", {}, "If-None-Match: " + tag + "\r\n");
    REQUIRE(again);
    CHECK(again->status == 304);
    CHECK(again->body.empty());
}

TEST_CASE("Serving: a tablet joins, takes the pack, and what it sends is on the class map") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    CHECK_FALSE(room.serving->reception().code());
    REQUIRE(tablet.hello());
    CHECK(tablet.welcome().seats.size() == 2);
    CHECK(tablet.welcome().clock_ms == room.clock.now_ms);
    CHECK(tablet.fetchPack() ==
          practice::samples::fileBytes(room.classroom.packFile("by-the-pond-1.zip")));
    for (int i = 0; i < 450; ++i) tablet.answers(responseBy(i % 2 == 0 ? "c-01" : "c-02"));
    REQUIRE(tablet.hello(true));
    auto seen = room.serving->reception().tablets();
    REQUIRE(seen.size() == 1);
    CHECK(seen[0].state == SeenTablet::State::playing);
    CHECK(seen[0].unsent == 450);
    CHECK(seen[0].has_pack);
    REQUIRE(tablet.sendAll());
    CHECK(room.serving->reception().tablets()[0].kept == 450);

    const auto map = gathered(room, 450);
    REQUIRE(map.size() == 450);
    CHECK(map.front().tablet == tablet.identity().tablet);
    std::set<std::int64_t> sequences;
    for (const practice::Response& response : map) sequences.insert(response.sequence);
    CHECK(sequences.size() == 450);
    CHECK(*sequences.begin() == 1);
    CHECK(*sequences.rbegin() == 450);
}

TEST_CASE("Serving: no child's name is in anything that a tablet is sent") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    REQUIRE(tablet.hello());
    const std::string all = link::writeAnswer(tablet.welcome());
    CHECK(all.find("Wilhelmina") == all.npos);
    CHECK(all.find("Room 4") == all.npos);
}

TEST_CASE("Serving: the same upload twice is kept once, over a restart of the desk too") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    std::vector<practice::Response> sent;
    for (int i = 0; i < 30; ++i) {
        tablet.answers(responseBy("c-01"));
        sent.push_back(tablet.outbox().back());
    }
    for (int time = 0; time < 3; ++time) {
        const auto answer = tablet.say(link::Responses{sent, {}});
        REQUIRE(answer);
        CHECK(std::get<link::Kept>(*answer).kept.size() == 30);
        if (time == 1) {
            room.stop();
            REQUIRE(room.start());
            tablet.movedTo(room.port());
        }
    }
    CHECK(gathered(room, 30).size() == 30);
}

TEST_CASE("Serving: a desk that is killed hands in what it had taken, when it is started again") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    tablet.answers(responseBy("c-01"));
    REQUIRE(tablet.sendAll());
    // A copy of the folder as a kill would leave it: taken while nothing was handed in.
    const auto copy = room.folder / "killed";
    std::filesystem::copy(room.classroom.folder, copy, std::filesystem::copy_options::recursive);
    room.stop();
    CHECK_FALSE(std::filesystem::exists(copy / "tablets"));
    room.classroom.folder = copy;
    REQUIRE(room.start());
    CHECK(gathered(room, 1).size() == 1);

    // Its numbers go on from where they could have been, and the tablet catches up with them.
    tablet.movedTo(room.port());
    tablet.answers(responseBy("c-02"));
    CHECK(tablet.sendAll());
    CHECK(gathered(room, 2).size() == 2);
}

TEST_CASE("Serving: what another desk handed in stays in the tablet's file") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    tablet.answers(responseBy("c-01"));
    REQUIRE(tablet.sendAll());
    room.stop();
    std::filesystem::remove(room.classroom.folder / "link" / (tablet.identity().tablet + ".db"));
    REQUIRE(room.start());
    tablet.movedTo(room.port());
    tablet.answers(responseBy("c-02"));
    REQUIRE(tablet.sendAll());
    CHECK(gathered(room, 2).size() == 2);
}

TEST_CASE(
    "Serving: a tablet whose clock is wrong is told the time and shown so, and loses nothing") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    tablet.clock_ms = 86'400'000;  // in 1970
    practice::Response early = responseBy("c-01");
    early.at_ms = tablet.clock_ms;
    early.day = 1;
    tablet.answers(early);
    REQUIRE(tablet.hello());
    CHECK(tablet.welcome().clock_ms == room.clock.now_ms);
    CHECK(room.serving->reception().tablets()[0].clock_off_ms ==
          tablet.clock_ms - room.clock.now_ms);
    CHECK(tablet.sendAll());
    CHECK(gathered(room, 1).size() == 1);
}

TEST_CASE("Serving: thirty tablets at once lose nothing and get nothing of another") {
    ServedRoom room;
    const auto identities = room.withTablets(30);
    REQUIRE(room.start());
    std::vector<std::unique_ptr<PageTablet>> tablets;
    for (const link::TabletIdentity& identity : identities) {
        tablets.push_back(std::make_unique<PageTablet>(
            room.port(), "127.0.1." + std::to_string(tablets.size() + 1), tablets.size()));
        tablets.back()->is(identity);
    }
    std::atomic<int> well = 0;
    std::vector<std::thread> hands;
    for (auto& tablet : tablets)
        hands.emplace_back([&well, &tablet] {
            bool all_well = tablet->hello(true);
            for (int i = 0; i < 10 && all_well; ++i) {
                tablet->answers(responseBy("c-01"));
                all_well = tablet->sendAll();
            }
            well += all_well ? 1 : 0;
        });
    for (std::thread& hand : hands) hand.join();
    CHECK(well == 30);
    room.stop();  // hands everything in
    const auto map = openClass(room.classroom.folder, room.clock.now_ms).responses;
    CHECK(map.size() == 300);
    std::map<std::string, int> by_tablet;
    for (const practice::Response& response : map) ++by_tablet[response.tablet.string()];
    CHECK(by_tablet.size() == 30);
    for (const auto& [tablet, count] : by_tablet) CHECK(count == 10);
}

TEST_CASE("Serving: a tablet that says nothing is not seen since, and one removed is told so") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    CHECK(room.serving->reception().tablets()[0].state == SeenTablet::State::away);
    REQUIRE(tablet.hello());
    CHECK(room.serving->reception().tablets()[0].state == SeenTablet::State::waiting);
    const std::int64_t seen = room.clock.now_ms;
    room.clock.now_ms += Reception::kAwayMs;
    CHECK(room.serving->reception().tablets()[0].state == SeenTablet::State::away);
    CHECK(room.serving->reception().tablets()[0].seen_ms == seen);

    REQUIRE(room.serving->reception().remove(tablet.identity().tablet).ok());
    CHECK(room.serving->reception().tablets().empty());
    tablet.answers(responseBy("c-01"));
    const auto answer = tablet.say(link::Responses{tablet.outbox(), {}});
    REQUIRE(answer);
    CHECK(std::holds_alternative<link::Removed>(*answer));
    room.stop();
    REQUIRE(room.start());
    tablet.movedTo(room.port());
    CHECK(std::holds_alternative<link::Removed>(*tablet.say(link::Hello{})));
    room.stop();
    CHECK(openClass(room.classroom.folder, room.clock.now_ms).responses.empty());
}

TEST_CASE("Serving: a deleted child is forgotten in what tablets sent, and never comes back") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    tablet.answers(responseBy("c-01"));
    tablet.answers(responseBy("c-02"));
    REQUIRE(tablet.sendAll());
    CHECK(gathered(room, 2).size() == 2);
    REQUIRE(deleteChild(room.classroom, "c-01", 20'000).ok());
    room.clock.now_ms += 5000;
    REQUIRE(tablet.hello());
    CHECK(tablet.welcome().deleted == std::vector<std::string>{"c-01"});
    CHECK(tablet.welcome().seats.size() == 1);
    tablet.answers(responseBy("c-01"));  // it was played before the tablet knew
    CHECK(tablet.sendAll());
    room.stop();
    const auto left = practice::gather(room.classroom.tablets()).responses;
    REQUIRE(left.size() == 1);
    CHECK(left[0].child == "c-02");
    for (const auto& [name, bytes] : room.files()) {
        CAPTURE(name);
        if (name != "class.json" && name.find("receipts/") != 0)
            CHECK(bytes.find("c-01") == bytes.npos);
    }
}

TEST_CASE("Serving: a child is deleted out of what tablets sent when the desk does not serve") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    tablet.answers(responseBy("c-01"));
    tablet.answers(responseBy("c-02"));
    REQUIRE(tablet.sendAll());
    room.stop();
    const auto done = deleteChild(room.classroom, "c-01", 20'000);
    REQUIRE(done.ok());
    CHECK(done.value().problems.empty());
    for (const auto& [name, bytes] : room.files()) {
        CAPTURE(name);
        if (name != "class.json" && name.find("receipts/") != 0)
            CHECK(bytes.find("c-01") == bytes.npos);
    }
    CHECK(practice::gather(room.classroom.tablets()).responses.size() == 1);
}

TEST_CASE("Serving: another pack is at the tablets with their next hello") {
    ServedRoom room;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    REQUIRE(tablet.hello());
    const std::string before = tablet.welcome().pack_hash;
    practice::samples::writeBytes(room.classroom.packFile("by-the-pond-2.zip"), "PK another");
    pack::ClassList list = room.list();
    list.pack = "by-the-pond-2.zip";
    const auto file = room.classroom.classFile();
    const auto written = std::filesystem::last_write_time(file);
    room.write(list);
    // As where files' times are whole seconds, and the new list is as long as the one before.
    std::filesystem::last_write_time(file, written);
    room.clock.now_ms += 2000;
    // A piece of the one before is not given any more, and the hello says why.
    CHECK(std::get<link::Piece>(*tablet.say(link::WantPiece{before, 0})).bytes.empty());
    REQUIRE(tablet.hello());
    CHECK(tablet.welcome().pack == "by-the-pond-2.zip");
    CHECK(tablet.fetchPack() == "PK another");
}

TEST_CASE("Serving: two desks do not serve one classroom") {
    ServedRoom room;
    REQUIRE(room.start());
    const auto second =
        Serving::start(room.classroom, room.options, {room.clock, room.entropy, {}, {}});
    REQUIRE_FALSE(second.ok());
    CHECK(second.problems()[0].what.find("served to tablets already") != std::string::npos);
}

TEST_CASE("Serving: without a page, without a class, on a port in use, it says what to do") {
    ServedRoom room;
    ServingOptions none = room.options;
    none.page = room.folder / "nowhere";
    const auto no_page = Serving::start(room.classroom, none, {room.clock, room.entropy, {}, {}});
    REQUIRE_FALSE(no_page.ok());
    CHECK(sentence(no_page.problems()[0]).find("./play --web") != std::string::npos);
    const auto no_class =
        Serving::start({room.folder / "nowhere"}, room.options, {room.clock, room.entropy, {}, {}});
    CHECK_FALSE(no_class.ok());
    REQUIRE(room.start());
    ServingOptions taken = room.options;
    taken.server.port = room.port();
    ServedRoom other;
    const auto in_use =
        Serving::start(other.classroom, taken, {other.clock, other.entropy, {}, {}});
    REQUIRE_FALSE(in_use.ok());
    CHECK(in_use.problems()[0].what.find("in use") != std::string::npos);
}

TEST_CASE("Tablets are called by plain words, each by its own while there are enough") {
    link::samples::SeededEntropy entropy(5);
    std::set<std::string> names, words;
    for (int i = 0; i < 60; ++i) {
        const std::string name = nameForTablet(
            [&](std::string_view one) { return names.count(std::string(one)) > 0; },
            [&](std::string_view word) { return words.count(std::string(word)) > 0; }, entropy);
        CHECK(names.insert(name).second);
        const std::string word(wordOfTablet(name));
        CHECK(words.insert(word).second == (i < 40));
        CHECK(shownTablet(name).substr(1) == word.substr(1));
    }
    CHECK(shownTablet("t-4f2a") == "t-4f2a");
}
