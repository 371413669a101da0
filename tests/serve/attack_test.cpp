// Who does not belong, over real sockets: each is refused, it stands in the log, and every file of
// the classroom is as it was.
#include <doctest/doctest.h>

#include <chrono>
#include <thread>

#include "content/link/join.hpp"
#include "content/link/over_http.hpp"
#include "content/link/talk.hpp"
#include "tests/serve/page_tablet.hpp"
#include "tests/serve/served_room.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using samples::HttpClient;
using samples::PageTablet;
using samples::responseBy;
using samples::ServedRoom;

namespace {

/// A room with a tablet that belongs, which has sent something, and everything handed in.
struct Room : ServedRoom {
    Room() {
        REQUIRE(start());
        tablet.emplace(port(), "127.0.0.2", 1);
        REQUIRE(tablet->join(newCode()));
        tablet->answers(responseBy("c-01"));
        REQUIRE(tablet->sendAll());
        clock.now_ms += 20'000;
        REQUIRE(soon([&] { return serving->reception().handedIn() > 0; }));
        before = files();
    }
    /// That it was refused with this, and nothing else came of it.
    void refused(const char* what) {
        const std::string log = refusedLog();
        CHECK_MESSAGE(log.find(what) != log.npos, log);
        const auto after = files();
        CHECK(after.size() == before.size());
        for (const auto& [name, bytes] : before) {
            CAPTURE(name);
            CHECK(after.count(name) == 1);
            if (after.count(name) == 1) CHECK(after.at(name) == bytes);
        }
        // And whoever belongs goes on.
        CHECK(tablet->hello());
    }

    std::optional<PageTablet> tablet;
    std::map<std::string, std::string> before;
};

int statusOf(HttpClient& client, std::string_view path, std::string_view body) {
    const auto answer = client.ask("POST", path, body);
    return answer ? answer->status : 0;
}

}  // namespace

TEST_CASE("Attacker: a wrong code") {
    Room room;
    const std::string code = room.newCode();
    link::SystemEntropy entropy;
    HttpClient attacker(room.port(), "127.0.0.9");
    const std::string offer = attacker.ask("GET", link::kJoinPath)->body;
    const auto guess = link::JoiningTablet::begin("22222222", offer, entropy);
    REQUIRE(guess);
    CHECK(statusOf(attacker, link::kJoinPath, guess->request()) == 403);
    const auto too_soon = attacker.ask("POST", link::kJoinPath, guess->request());
    CHECK(too_soon->status == 429);
    CHECK(too_soon->head.find("Retry-After: ") != std::string::npos);
    for (int i = 0; i < 4; ++i) {
        room.clock.now_ms += 60'000 / 4;  // as slow as it has to be, and the code still lives
        CHECK(statusOf(attacker, link::kJoinPath, guess->request()) == 403);
    }
    room.clock.now_ms += 60'000;
    CHECK(statusOf(attacker, link::kJoinPath, guess->request()) == 410);
    CHECK_FALSE(room.serving->reception().code());  // after five the code is gone
    CHECK_FALSE(PageTablet(room.port(), "127.0.0.3", 2).join(code));
    CHECK(room.serving->reception().tablets().size() == 1);
    room.refused("a wrong code");
}

TEST_CASE("Attacker: a code that was used") {
    Room room;
    const std::string code = room.newCode();
    HttpClient attacker(room.port(), "127.0.0.9");
    const std::string offer = attacker.ask("GET", link::kJoinPath)->body;
    REQUIRE(PageTablet(room.port(), "127.0.0.3", 2).join(code));
    room.before = room.files();
    link::SystemEntropy entropy;
    const auto late = link::JoiningTablet::begin(code, offer, entropy);
    CHECK(statusOf(attacker, link::kJoinPath, late->request()) == 410);
    room.refused("a code that is used up or too old");
}

TEST_CASE("Attacker: somebody's joining, played again, gives nothing that can be read") {
    Room room;
    const std::string code = room.newCode();
    link::SystemEntropy entropy;
    HttpClient tablet(room.port(), "127.0.0.3"), attacker(room.port(), "127.0.0.9");
    const auto joining =
        link::JoiningTablet::begin(code, tablet.ask("GET", link::kJoinPath)->body, entropy);
    const auto first = tablet.ask("POST", link::kJoinPath, joining->request());
    REQUIRE(joining->finish(first->body));
    const auto files = room.files();
    const auto again = attacker.ask("POST", link::kJoinPath, joining->request());
    CHECK(again->body == first->body);  // what it had heard already
    CHECK(room.files() == files);
    CHECK(room.serving->reception().tablets().size() == 2);
}

TEST_CASE("Attacker: a message played again") {
    Room room;
    room.tablet->answers(responseBy("c-02"));
    const std::string message =
        room.tablet->nextMessage(link::Responses{room.tablet->outbox(), {}});
    HttpClient attacker(room.port(), "127.0.0.9");
    CHECK(statusOf(attacker, link::kTalkPath, message) == 200);  // it only delayed it
    room.clock.now_ms += 20'000;
    const auto handed_in = room.serving->reception().handedIn();
    REQUIRE(room.soon([&] { return room.serving->reception().handedIn() > handed_in; }));
    room.before = room.files();
    const auto replayed = attacker.ask("POST", link::kTalkPath, message);
    REQUIRE(replayed);
    const auto plain = link::openAnswer(room.tablet->identity(),
                                        link::readEnvelope(message)->number, replayed->body);
    REQUIRE(plain);
    CHECK(std::holds_alternative<link::Behind>(*link::readAnswer(*plain)));
    room.refused("that is not newer than its last one");
    // Over a restart too.
    room.stop();
    REQUIRE(room.start());
    room.tablet->movedTo(room.port());
    room.before = room.files();
    HttpClient later(room.port(), "127.0.0.9");
    CHECK(statusOf(later, link::kTalkPath, message) == 200);
    room.refused("that is not newer than its last one");
}

TEST_CASE("Attacker: another tablet's name") {
    Room room;
    PageTablet other(room.port(), "127.0.0.9", 2);
    REQUIRE(other.join(room.newCode()));
    room.before = room.files();
    link::TabletIdentity forged = other.identity();  // its own key,
    forged.tablet = room.tablet->identity().tablet;  // the other's name
    link::SystemEntropy entropy;
    const std::string message = link::sealAsk(
        forged, 1000, link::writeAsk(link::Responses{{responseBy("c-02")}, {}}), entropy);
    CHECK(statusOf(other.http(), link::kTalkPath, message) == 403);
    room.refused("did not write");
    link::TabletIdentity nobody = other.identity();
    nobody.tablet = "t-nobody";
    CHECK(statusOf(other.http(), link::kTalkPath,
                   link::sealAsk(nobody, 1, link::writeAsk(link::Hello{}), entropy)) == 403);
    room.refused("a tablet that is not on the list: t-nobody");
}

TEST_CASE("Attacker: a message changed on its way") {
    Room room;
    room.tablet->answers(responseBy("c-02"));
    std::string message = room.tablet->nextMessage(link::Responses{room.tablet->outbox(), {}});
    message[message.size() / 2] = static_cast<char>(message[message.size() / 2] ^ 1);
    HttpClient attacker(room.port(), "127.0.0.9");
    CHECK(statusOf(attacker, link::kTalkPath, message) == 403);
    room.refused("did not write");
    CHECK(statusOf(attacker, link::kTalkPath, "anything") == 400);
    room.refused("bytes that are no message");
}

TEST_CASE("Attacker: a tablet that belongs and sends what makes no sense") {
    Room room;
    link::SystemEntropy entropy;
    const std::string message =
        link::sealAsk(room.tablet->identity(), 100, std::string("\0\0\0\2{}", 6), entropy);
    CHECK(statusOf(room.tablet->http(), link::kTalkPath, message) == 400);
    practice::Response odd = responseBy("../../c-01");
    odd.sequence = 50;
    odd.choices = TextList();
    const auto answer = room.tablet->say(link::Responses{{odd}, {}});
    REQUIRE(answer);
    CHECK(std::get<link::Kept>(*answer).refused == std::vector<std::int64_t>{50});
    room.refused("that makes no sense");
}

TEST_CASE("Attacker: paths that would lead out of the page") {
    Room room;
    practice::samples::writeBytes(room.folder / "secret", "top secret");
    HttpClient attacker(room.port(), "127.0.0.9");
    for (const char* path :
         {"/../secret", "/../../../../../../etc/passwd", "/%2e%2e/secret", "/..%2fsecret",
          "/icons/../../secret", "/icons/..%2f..%2fsecret", "//etc/passwd", "/etc/passwd",
          "/room/class.json", "/class.json", "/link/tablets.json", "/tablets/", "/.", "/..",
          "/index.html/", "/index.html%00.js", "/INDEX.HTML", "/\\..\\secret", "/~root"}) {
        CAPTURE(path);
        const auto answer = attacker.ask("GET", path);
        REQUIRE(answer);
        CHECK(answer->status >= 400);
        CHECK(answer->body.empty());
    }
    room.refused("a path that is not here: /../secret");
}

TEST_CASE("Attacker: methods that change things elsewhere") {
    Room room;
    HttpClient attacker(room.port(), "127.0.0.9");
    for (const char* method : {"PUT", "DELETE", "OPTIONS", "TRACE", "PATCH", "PROPFIND"}) {
        CAPTURE(method);
        CHECK(attacker.ask(method, "/index.html")->status == 404);
    }
    CHECK(attacker.ask("POST", "/index.html", "x")->status == 404);
    CHECK(attacker.ask("POST", "/wrenlet.js", "x")->status == 404);
    room.refused("a question of a kind that is not answered: PUT /index.html");
}

TEST_CASE("Attacker: a body that is too long, announced or not") {
    Room room;
    HttpClient attacker(room.port(), "127.0.0.9");
    REQUIRE(attacker.connect());
    REQUIRE(
        attacker.write("POST /talk HTTP/1.1\r\nHost: d\r\nContent-Length: 99999999999\r\n\r\n"));
    auto answer = attacker.read();
    REQUIRE(answer);
    CHECK(answer->status == 413);

    HttpClient in_pieces(room.port(), "127.0.0.9");
    REQUIRE(in_pieces.connect());
    REQUIRE(
        in_pieces.write("POST /talk HTTP/1.1\r\nHost: d\r\nTransfer-Encoding: chunked\r\n\r\n"));
    const std::string piece = "10000\r\n" + std::string(0x10000, 'x') + "\r\n";
    for (int i = 0; i < 20; ++i) (void)in_pieces.write(piece);
    (void)in_pieces.write("0\r\n\r\n");
    answer = in_pieces.read();
    REQUIRE(answer);
    CHECK(answer->status == 413);
    room.refused("a message that is too long");
}

TEST_CASE("Attacker: a head without end") {
    Room room;
    HttpClient attacker(room.port(), "127.0.0.9");
    REQUIRE(attacker.connect());
    bool is_open = attacker.write("GET / HTTP/1.1\r\nHost: d\r\n");
    const std::string line = "X-Filler: " + std::string(1000, 'x') + "\r\n";
    for (int i = 0; i < 1000 && is_open; ++i) is_open = attacker.write(line);
    CHECK((!is_open || attacker.isClosedWithin(5000) || attacker.read()->status >= 400));
    CHECK(room.files() == room.before);
    CHECK(room.tablet->hello());
}

TEST_CASE("Attacker: slow loris, a question one byte at a time on every connection it gets") {
    ServedRoom room;
    room.options.server.asking_s = 2;
    room.options.server.idle_s = 1;
    room.options.server.most_from_one_address = 8;
    REQUIRE(room.start());
    PageTablet tablet(room.port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.newCode()));
    REQUIRE(tablet.hello());
    std::vector<std::unique_ptr<HttpClient>> slow;
    for (int i = 0; i < 40; ++i) {
        slow.push_back(std::make_unique<HttpClient>(room.port(), "127.0.0.9"));
        if (slow.back()->connect()) (void)slow.back()->write("GET / HTTP/1.1\r\nX: ");
    }
    const auto began = std::chrono::steady_clock::now();
    std::size_t open = slow.size();
    bool is_served = true;
    while (open > 0 && std::chrono::steady_clock::now() - began < std::chrono::seconds(20)) {
        open = 0;
        for (auto& one : slow)
            if (!one->isClosedWithin(0) && one->write("x")) ++open;
        is_served = is_served && tablet.hello();  // a tablet is answered all the while
        std::this_thread::sleep_for(std::chrono::milliseconds(250));
    }
    CHECK(open == 0);
    CHECK(is_served);
    CHECK(std::chrono::steady_clock::now() - began >= std::chrono::seconds(1));
    const std::string log = room.refusedLog();
    CHECK(log.find("127.0.0.9  a question that took too long to come") != log.npos);
}

TEST_CASE("Attacker: old messages without end do not use up what the tablet itself may ask") {
    Room room;
    const std::string old = room.tablet->nextMessage(link::Hello{});
    HttpClient attacker(room.port(), "127.0.0.9");
    for (int i = 0; i < 100; ++i) CHECK(statusOf(attacker, link::kTalkPath, old) == 200);
    CHECK(room.tablet->hello());
    room.refused("that is not newer than its last one");
    // And a browser that looks for what is not there is not taken for an attacker.
    HttpClient browser(room.port(), "127.0.0.2");
    for (int i = 0; i < 2 * Refusals::kMostInAMinute; ++i)
        CHECK(browser.ask("GET", "/no-such-icon.png")->status == 404);
    CHECK(room.tablet->hello());
}

TEST_CASE("Attacker: who is refused without end is not listened to for a while") {
    Room room;
    HttpClient attacker(room.port(), "127.0.0.9");
    for (int i = 0; i < Refusals::kMostInAMinute; ++i)
        CHECK(statusOf(attacker, link::kTalkPath, "x") == 400);
    CHECK(statusOf(attacker, link::kTalkPath, "x") == 429);
    CHECK(room.tablet->hello());
    room.clock.now_ms += 61'000;
    CHECK(statusOf(attacker, link::kTalkPath, "x") == 400);
    room.refused("bytes that are no message");
}

TEST_CASE(
    "Attacker: a tablet that sends without a pause is told to wait, and the log stays small") {
    Room room;
    int too_often = 0;
    for (int i = 0; i < 200; ++i)
        if (statusOf(room.tablet->http(), link::kTalkPath,
                     room.tablet->nextMessage(link::Hello{})) == 429)
            ++too_often;
    CHECK(too_often > 100);  // its allowance is for twice twenty, by a clock that stands
    room.clock.now_ms += 5000;
    Refusals refusals(room.folder / "many.log");
    for (int i = 0; i < 100'000; ++i)
        refusals.note("127.0.0.9", std::string(100, 'x'), room.clock.now_ms + i * 100);
    CHECK(std::filesystem::file_size(room.folder / "many.log") < 2 * Refusals::kMostFileBytes);
    CHECK(refusals.count() == 100'000);
    CHECK(refusals.newest().size() == Refusals::kMostKept);
    CHECK(room.tablet->hello());
}

TEST_CASE("Attacker: the keys are for this computer's user alone") {
    Room room;
    namespace fs = std::filesystem;
    const auto open_to_others = [](const fs::path& path) {
        return (fs::status(path).permissions() & (fs::perms::group_all | fs::perms::others_all)) !=
               fs::perms::none;
    };
    CHECK_FALSE(open_to_others(room.classroom.folder / "link"));
    CHECK_FALSE(open_to_others(room.classroom.folder / "link/tablets.json"));
}
