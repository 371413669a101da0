#include "content/practice/store.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "tests/practice/samples.hpp"

#ifndef _WIN32
#include <sys/resource.h>

#include <csignal>
#endif

using namespace wrenlet;
using namespace wrenlet::practice;

namespace {

Store opened(const std::filesystem::path& path, StoreOptions options = {}) {
    auto store = Store::open(path, "t-4f2a", options);
    for (const Problem& problem : store.problems()) FAIL(sentence(problem));
    return std::move(store.value());
}

std::string why(const Result<Store>& result) {
    return result.ok() ? "opened" : sentence(result.problems().front());
}

}  // namespace

TEST_CASE("Store: a response comes back as it was given, after closing and opening") {
    const samples::Folder folder;
    Response given = samples::response();
    given.means = "heard /ɛ/ for /æ/ \"middle\"";
    given.chosen = "pen";
    given.choices = {"pen", "hat", "do\"g", "ʃ,\\x"};
    given.try_number = 2;
    given.hearings = 3;
    given.turns_on = {"5", exercise::Position::word_count};
    {
        Store store = opened(folder / "deep/er/store.db");
        REQUIRE(store.beginSession("c-01", given.pack, 7, given.day).ok());
        const auto kept = store.append(given, 2400);
        REQUIRE(kept.ok());
        given.tablet = "t-4f2a";
        given.sequence = 1;
        CHECK(kept.value() == given);
    }
    const Store store = opened(folder / "deep/er/store.db");
    CHECK(store.tablet() == "t-4f2a");
    REQUIRE(store.history("c-01").size() == 1);
    CHECK(store.history("c-01")[0] == given);
    CHECK(store.all() == store.history("c-01"));
    CHECK(store.history("c-02").empty());
}

TEST_CASE("Store: sequences run on across sessions and programs, also when rows are deleted") {
    const samples::Folder folder;
    for (int run = 0; run < 3; ++run) {
        Store store = opened(folder / "store.db");
        const auto session = store.beginSession("c-01", "p 1", 1, 5);
        Response response = samples::response();
        response.session = session.value().id;
        for (int i = 1; i <= 4; ++i)
            CHECK(store.append(response, i).value().sequence == run * 4 + i);
    }
    samples::runSql(folder / "store.db", "DELETE FROM response WHERE sequence > 10");
    Store store = opened(folder / "store.db");
    CHECK(store.append(samples::response(), 1).value().sequence == 13);
}

TEST_CASE("Store: a session stays open until it is ended, and knows its seed and time played") {
    const samples::Folder folder;
    const std::uint64_t seed = 0xFEDCBA9876543210ull;
    {
        Store store = opened(folder / "store.db");
        CHECK_FALSE(store.openSession("c-01", "p 1", 5).has_value());
        const Session begun = store.beginSession("c-01", "p 1", seed, 5).value();
        CHECK(begun.id == 1);
        REQUIRE(store.append(samples::response(), 61'000).ok());
    }
    Store store = opened(folder / "store.db");
    const Session expected{1, "c-01", "p 1", seed, 5, 61'000, false};
    REQUIRE(store.openSession("c-01", "p 1", 5).has_value());
    CHECK(*store.openSession("c-01", "p 1", 5) == expected);
    CHECK_FALSE(store.openSession("c-01", "p 1", 6).has_value());
    CHECK_FALSE(store.openSession("c-01", "p 2", 5).has_value());
    CHECK_FALSE(store.openSession("c-02", "p 1", 5).has_value());
    CHECK(store.endedSessions("c-01") == 0);

    REQUIRE(store.endSession(1, 90'000).ok());
    CHECK_FALSE(store.openSession("c-01", "p 1", 5).has_value());
    CHECK(store.endedSessions("c-01") == 1);
}

TEST_CASE("Store: what makes no sense is refused before it is written") {
    const samples::Folder folder;
    Store store = opened(folder / "store.db");
    REQUIRE(store.beginSession("c-01", "p 1", 1, 5).ok());
    Response response = samples::response();
    SUBCASE("no session of that number") {
        response.session = 99;
    }
    SUBCASE("no choices") {
        response.choices = {};
    }
    SUBCASE("no child") {
        response.child = {};
    }
    SUBCASE("a text without end") {
        response.means = std::string(5000, 'x');
    }
    SUBCASE("a try before the first") {
        response.try_number = 0;
    }
    CHECK_FALSE(store.append(response, 1).ok());
    CHECK(store.all().empty());
    REQUIRE(store.append(samples::response(), 1).ok());
    CHECK(store.all().size() == 1);
}

TEST_CASE("Store: a time taken out of range is brought into it, not lost") {
    const samples::Folder folder;
    Store store = opened(folder / "store.db");
    REQUIRE(store.beginSession("c-01", "p 1", 1, 5).ok());
    Response response = samples::response();
    response.took_ms = -5;
    CHECK(store.append(response, 1).value().took_ms == 0);
    response.took_ms = 1'000'000'000'000;
    CHECK(store.append(response, 1).value().took_ms == 86'400'000);
}

TEST_CASE("Store: a second program is told that the first has it open") {
    const samples::Folder folder;
    {
        const Store first = opened(folder / "store.db");
        CHECK(why(Store::open(folder / "store.db", "t-9")) ==
              "store.db: Another program is using this file. Close the other one, then start "
              "again.");
    }
    CHECK(Store::open(folder / "store.db", "t-9").value().tablet() == "t-4f2a");
}

TEST_CASE("Store: other files are refused with their name, and left as they are") {
    const samples::Folder folder;
    const auto path = folder / "store.db";
    std::string message;
    SUBCASE("text") {
        samples::writeBytes(path, std::string(3000, 'x'));
        message = "store.db: This is not a store of answers. Choose another file.";
    }
    SUBCASE("another program's database") {
        samples::runSql(path, "CREATE TABLE note (text); INSERT INTO note VALUES ('mine')");
        message =
            "store.db: This is some other program's file. Choose another folder for this "
            "tablet's answers.";
    }
    SUBCASE("a newer format") {
        { opened(path); }
        samples::runSql(path, "PRAGMA user_version=2");
        message =
            "store.db: A newer Wrenlet wrote this store of answers. Install the newest Wrenlet "
            "on this tablet.";
    }
    SUBCASE("a store without its tables") {
        { opened(path); }
        samples::runSql(path, "DROP TABLE response");
        message =
            "store.db: This store of answers is damaged. Keep the file, and put back the newest "
            "copy of it from the classroom folder.";
    }
    SUBCASE("a folder") {
        std::filesystem::create_directories(path);
        message =
            "store.db: This file cannot be opened or made. Check that its folder is there and "
            "may be written to.";
    }
    const std::string before = samples::fileBytes(path);
    CHECK(why(Store::open(path, "t-4f2a")) == message);
    CHECK(samples::fileBytes(path) == before);
}

TEST_CASE("Store: a tablet's name must be able to name a file") {
    const samples::Folder folder;
    CHECK_FALSE(Store::open(folder / "a.db", "../up").ok());
    CHECK_FALSE(Store::open(folder / "b.db", "").ok());
    CHECK_FALSE(Store::open(folder / "c.db", std::string(41, 't')).ok());
    CHECK(Store::open(folder / "a.db", "t-1").ok());
}

TEST_CASE("Store: when it is full it says so, keeps what it has, and can be opened again") {
    const samples::Folder folder;
    std::size_t kept = 0;
    {
        StoreOptions small;
        small.most_bytes = 64 * 1024;
        Store store = opened(folder / "store.db", small);
        REQUIRE(store.beginSession("c-01", "p 1", 1, 5).ok());
        std::string message;
        while (message.empty() && kept < 10'000) {
            const auto result = store.append(samples::response(), 1);
            if (result.ok())
                CHECK(result.value().sequence == static_cast<std::int64_t>(++kept));
            else
                message = sentence(result.problems().front());
        }
        CHECK(message ==
              "store.db: The disk is full, so this could not be kept. Make some room on it; what "
              "was kept before is safe.");
        CHECK(store.all().size() == kept);
    }
    CHECK(kept > 50);
    Store store = opened(folder / "store.db");
    CHECK(store.all().size() == kept);
    CHECK(store.append(samples::response(), 1).value().sequence ==
          static_cast<std::int64_t>(kept) + 1);
}

#ifndef _WIN32
TEST_CASE("Store: a write that the system refuses half-way loses only itself") {
    const samples::Folder folder;
    std::size_t kept = 0;
    Store store = opened(folder / "store.db");
    REQUIRE(store.beginSession("c-01", "p 1", 1, 5).ok());

    // No file of this process may grow past 200 KB: the log meets that in the middle of a page.
    rlimit before{};
    getrlimit(RLIMIT_FSIZE, &before);
    const auto on_signal = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit tight{200'000, before.rlim_max};
    setrlimit(RLIMIT_FSIZE, &tight);
    bool refused = false;
    while (!refused && kept < 10'000) {
        refused = !store.append(samples::response(), 1).ok();
        if (!refused) ++kept;
    }
    setrlimit(RLIMIT_FSIZE, &before);
    std::signal(SIGXFSZ, on_signal);

    CHECK(refused);
    CHECK(store.all().size() == kept);
    CHECK(store.append(samples::response(), 1).value().sequence ==
          static_cast<std::int64_t>(kept) + 1);
}
#endif

TEST_CASE("Store: its file can be read with any SQLite tool") {
    const samples::Folder folder;
    {
        Store store = opened(folder / "store.db");
        REQUIRE(store.beginSession("c-01", "p 1", 1, 5).ok());
        REQUIRE(store.append(samples::response(), 1).ok());
    }
    const auto path = folder / "store.db";
    CHECK(samples::runSql(path, "SELECT value FROM response, json_each(choices) WHERE key = 1") ==
          "hat");
    CHECK(samples::runSql(path, "PRAGMA application_id") == std::to_string(0x57524E4C));
    CHECK(samples::runSql(path, "PRAGMA user_version") == "1");
    CHECK(samples::runSql(path, "PRAGMA journal_mode") == "wal");
    CHECK(samples::runSql(path, "PRAGMA integrity_check") == "ok");
}

TEST_CASE("What a tablet's page sends keeps its numbers, and the same twice is kept once") {
    const samples::Folder folder;
    auto store = Store::open(folder / "bee.db", "bee");
    REQUIRE(store.ok());
    std::vector<Response> sent;
    for (const std::int64_t sequence : {3, 1, 900}) {
        sent.push_back(samples::response());
        sent.back().tablet = "cactus";  // says another name; the store knows better
        sent.back().sequence = sequence;
    }
    for (int time = 0; time < 2; ++time) {
        const auto taken = store.value().take(sent);
        REQUIRE(taken.ok());
        CHECK(taken.value().kept == std::vector<std::int64_t>{3, 1, 900});
        CHECK(taken.value().refused.empty());
    }
    const auto all = store.value().all();
    REQUIRE(all.size() == 3);
    CHECK(all[0].sequence == 1);
    CHECK(all[2].sequence == 900);
    CHECK(all[0].tablet == "bee");
    REQUIRE(store.value().snapshot(folder / "out.db").ok());
    const auto read = readSnapshot(folder / "out.db");
    REQUIRE(read.ok());
    CHECK(read.value() == all);
}

TEST_CASE("Another answer under a number that is taken is refused, and the first one stands") {
    const samples::Folder folder;
    auto store = Store::open(folder / "bee.db", "bee");
    REQUIRE(store.ok());
    Response first = samples::response();
    first.sequence = 7;
    REQUIRE(store.value().take({&first, 1}).ok());
    Response other = first;
    other.chosen = "dog";
    Response odd = first;
    odd.sequence = 8;
    odd.try_number = 0;
    Response in_anothers = first;
    in_anothers.sequence = 9;
    in_anothers.child = "c-99";
    const auto taken = store.value().take(std::vector{other, odd, in_anothers});
    REQUIRE(taken.ok());
    CHECK(taken.value().kept.empty());
    CHECK(taken.value().refused == std::vector<std::int64_t>{7, 8, 9});
    REQUIRE(store.value().all().size() == 1);
    CHECK(store.value().all()[0].chosen == first.chosen);
}

namespace {

/// Keeps what it is told, as a browser would.
struct KeptAside final : Journal {
    std::vector<Session> sessions;
    std::vector<Response> responses;

    void began(const Session& session) override { sessions.push_back(session); }
    void kept(const Response& response, std::int64_t played_ms) override {
        responses.push_back(response);
        at(response.session).played_ms = played_ms;
    }
    void ended(std::int64_t session, std::int64_t played_ms) override {
        at(session).played_ms = played_ms;
        at(session).ended = true;
    }
    Session& at(std::int64_t id) {
        return *std::find_if(sessions.begin(), sessions.end(),
                             [id](const Session& session) { return session.id == id; });
    }
};

}  // namespace

TEST_CASE("Store: a new one filled from a journal goes on where the old one stood") {
    const samples::Folder folder;
    KeptAside journal;
    auto old = Store::open(folder / "old.db", "t-web");
    REQUIRE(old.ok());
    old.value().setJournal(&journal);
    REQUIRE(old.value().beginSession("c-01", "pond 1", 11, 20'000).ok());
    REQUIRE(old.value().append(samples::response(), 4000).ok());
    REQUIRE(old.value().append(samples::response(), 5000).ok());
    REQUIRE(old.value().endSession(1, 6000).ok());
    REQUIRE(old.value().beginSession("c-02", "pond 1", 12, 20'000).ok());
    auto third = samples::response();
    third.session = 2;
    REQUIRE(old.value().append(third, 700).ok());

    journal.responses.erase(journal.responses.begin());  // a gap stays one
    auto anew = Store::open(folder / "new.db", "t-web");
    REQUIRE(anew.ok());
    REQUIRE(anew.value().refill(journal.sessions, journal.responses).ok());
    CHECK(anew.value().all() == journal.responses);
    CHECK(anew.value().endedSessions("c-01") == 1);
    CHECK(anew.value().openSession("c-02", "pond 1", 20'000) ==
          old.value().openSession("c-02", "pond 1", 20'000));
    CHECK(anew.value().append(third, 800).value().sequence == 4);
    CHECK(anew.value().beginSession("c-02", "pond 1", 12, 20'001).value().id == 3);
}

TEST_CASE("Store: nothing is told that was not committed, and a refill is all or nothing") {
    const samples::Folder folder;
    KeptAside journal;
    auto store = Store::open(folder / "store.db", "t-web");
    REQUIRE(store.ok());
    store.value().setJournal(&journal);
    CHECK_FALSE(store.value().append(samples::response(), 0).ok());  // there is no session 1
    CHECK(journal.responses.empty());
    auto lost = samples::response();
    lost.session = 7;
    const Session session{1, "c-01", "pond 1", 1, 20'000, 0, false};
    CHECK_FALSE(store.value().refill(std::array{session}, std::array{lost}).ok());
    CHECK(store.value().all().empty());
    CHECK_FALSE(store.value().openSession("c-01", "pond 1", 20'000));
}
