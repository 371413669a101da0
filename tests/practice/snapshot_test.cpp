#include <doctest/doctest.h>

#include <string>

#include "content/common/random.hpp"
#include "content/practice/store.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::practice;

namespace {

/// A tablet's snapshot of `count` answers; every third one is wrong.
void handIn(const samples::Folder& folder, const std::string& tablet, const std::string& file,
            int count, std::int64_t took_ms = 1000) {
    auto store = Store::open(folder / (file + ".work"), tablet);
    REQUIRE(store.ok());
    REQUIRE(store.value().beginSession("c-01", "p 1", 1, 5).ok());
    for (int i = 0; i < count; ++i) {
        Response response = samples::response();
        if (i % 3 == 2) response.chosen = "pen";
        response.took_ms = took_ms + i;
        REQUIRE(store.value().append(response, i).ok());
    }
    REQUIRE(store.value().snapshot(folder / file).ok());
}

std::string refusal(const std::filesystem::path& path) {
    const auto result = readSnapshot(path);
    return result.ok() ? "read" : sentence(result.problems().front());
}

}  // namespace

TEST_CASE("Snapshot: the desk reads what the tablet kept, and the file stays as it is") {
    const samples::Folder folder;
    handIn(folder, "t-1", "t-1.db", 9);
    const std::string before = samples::fileBytes(folder / "t-1.db");
    const auto read = readSnapshot(folder / "t-1.db");
    REQUIRE(read.ok());
    CHECK(read.problems().empty());
    CHECK(read.value().size() == 9);
    CHECK(read.value() == Store::open(folder / "t-1.db.work", "x").value().all());
    CHECK(samples::fileBytes(folder / "t-1.db") == before);
    CHECK_FALSE(std::filesystem::exists(folder / "t-1.db-wal"));
    CHECK_FALSE(std::filesystem::exists(folder / "t-1.db.new"));
    CHECK_FALSE(std::filesystem::exists(folder / "t-1.db.work.copy"));
}

TEST_CASE("Snapshot: taken while the store is open, and again after more answers") {
    const samples::Folder folder;
    auto store = Store::open(folder / "store.db", "t-1");
    REQUIRE(store.value().beginSession("c-01", "p 1", 1, 5).ok());
    for (int i = 1; i <= 3; ++i) {
        REQUIRE(store.value().append(samples::response(), i).ok());
        REQUIRE(store.value().snapshot(folder / "tablets/t-1.db").ok());
        CHECK(readSnapshot(folder / "tablets/t-1.db").value() == store.value().all());
    }
}

TEST_CASE("Snapshot: one that cannot be written says where") {
    const samples::Folder folder;
    auto store = Store::open(folder / "store.db", "t-1");
    samples::writeBytes(folder / "tablets", "a file where the folder should be");
    const auto result = store.value().snapshot(folder / "tablets/t-1.db");
    REQUIRE_FALSE(result.ok());
    CHECK(result.problems()[0].where == "t-1.db");
}

TEST_CASE("Snapshot: cut at any length it is refused by name, never half read") {
    const samples::Folder folder;
    handIn(folder, "t-1", "t-1.db", 60);
    const std::string whole = samples::fileBytes(folder / "t-1.db");
    Random random(11);
    for (std::size_t i = 0; i < 200; ++i) {
        const std::size_t length =
            i < 120 ? i : random.below(static_cast<std::uint32_t>(whole.size()));
        samples::writeBytes(folder / "cut.db", whole.substr(0, length));
        CHECK(refusal(folder / "cut.db") ==
              "cut.db: This file is cut short, so none of it is counted. Let the tablet play once "
              "more: it hands in the whole again.");
    }
}

TEST_CASE("Snapshot: with bytes spoiled it is refused by name or gives rows in bounds") {
    const samples::Folder folder;
    handIn(folder, "t-1", "t-1.db", 60);
    const std::string whole = samples::fileBytes(folder / "t-1.db");
    Random random(5);
    int refused = 0;
    for (int i = 0; i < 400; ++i) {
        std::string spoiled = whole;
        for (std::uint32_t n = 1 + random.below(8); n > 0; --n)
            spoiled[random.below(static_cast<std::uint32_t>(spoiled.size()))] =
                static_cast<char>(random.below(256));
        samples::writeBytes(folder / "spoiled.db", spoiled);
        const auto result = readSnapshot(folder / "spoiled.db");
        if (!result.ok()) {
            ++refused;
            CHECK(result.problems()[0].where == "spoiled.db");
        } else {
            CHECK(result.value().size() <= 60);
            for (const Response& response : result.value()) CHECK(response.choices.size() <= 16);
        }
    }
    CHECK(refused > 0);
}

TEST_CASE("Snapshot: files that are none are named, with what to do") {
    const samples::Folder folder;
    const auto path = folder / "odd.db";
    std::string message;
    SUBCASE("text") {
        samples::writeBytes(path, std::string(5000, 'x'));
        message = "odd.db: This is not a tablet's answers. Take it out of this folder.";
    }
    SUBCASE("another program's database") {
        samples::runSql(path, "CREATE TABLE note (text)");
        message = "odd.db: This is some other program's file. Take it out of this folder.";
    }
    SUBCASE("a newer format") {
        handIn(folder, "t-1", "odd.db", 1);
        samples::runSql(path, "PRAGMA user_version=2");
        message =
            "odd.db: A newer Wrenlet wrote this file. Install the newest Wrenlet on this "
            "computer.";
    }
    SUBCASE("a tablet's own store") {
        { const auto store = Store::open(path, "t-1"); }
        message =
            "odd.db: This is a tablet's own store, copied by hand. Take it out, and let the "
            "tablet hand in its answers.";
    }
    SUBCASE("the table of answers is a query that never ends") {
        handIn(folder, "t-1", "odd.db", 1);
        samples::runSql(path,
                        "ALTER TABLE response RENAME TO old; CREATE VIEW response AS WITH "
                        "RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT old.* "
                        "FROM old, n");
        message =
            "odd.db: This file is damaged, so none of it is counted. Let the tablet play once "
            "more: it hands in the whole again.";
    }
    SUBCASE("not there") {
        message = "odd.db: This file is not there. Check the folder and the name.";
    }
    CHECK(refusal(path) == message);
}

TEST_CASE("Snapshot: rows out of bounds are left out and counted") {
    const samples::Folder folder;
    handIn(folder, "t-1", "t-1.db", 10);
    samples::runSql(folder / "t-1.db",
                    "UPDATE response SET choices = '[1,2]' WHERE sequence = 2;"
                    "UPDATE response SET try_number = -1 WHERE sequence = 3;"
                    "UPDATE response SET position = 'upstairs' WHERE sequence = 4;"
                    "UPDATE response SET child = zeroblob(30) WHERE sequence = 5;"
                    "UPDATE response SET took_ms = 'long' WHERE sequence = 6;"
                    "UPDATE response SET tablet = 't-2' WHERE sequence = 7;"
                    "UPDATE response SET hearings = 4294967297 WHERE sequence = 8;");
    const auto result = readSnapshot(folder / "t-1.db");
    REQUIRE(result.ok());
    CHECK(result.value().size() == 3);
    REQUIRE(result.problems().size() == 1);
    CHECK(sentence(result.problems()[0]) ==
          "t-1.db: 7 of the answers in it make no sense and are left out.");
}

TEST_CASE("Gather: each answer once, whatever the files are called and how often they come") {
    const samples::Folder folder;
    std::filesystem::create_directories(folder / "tablets");
    handIn(folder, "t-1", "tablets/t-1.db", 6);
    handIn(folder, "t-2", "tablets/t-2.db", 4);
    const Gathered once = gather(folder / "tablets");
    CHECK(once.responses.size() == 10);
    CHECK(once.problems.empty());

    // Copies that a sync program leaves, one of them from earlier, and names that sort otherwise.
    std::filesystem::copy(folder / "tablets/t-1.db", folder / "tablets/t-1 (copy).db");
    handIn(folder, "t-1", "tablets/a.db", 3);
    std::filesystem::rename(folder / "tablets/t-2.db", folder / "tablets/0.db");
    const Gathered again = gather(folder / "tablets");
    CHECK(again.problems.empty());
    CHECK(again.responses == once.responses);
}

TEST_CASE("Gather: of two rows under one number the tablet's own file wins, and it is said") {
    const samples::Folder folder;
    std::filesystem::create_directories(folder / "tablets");
    handIn(folder, "t-1", "tablets/t-1.db", 6, 1000);
    handIn(folder, "t-1", "tablets/a.db", 8, 5000);
    const Gathered gathered = gather(folder / "tablets");
    REQUIRE(gathered.responses.size() == 8);
    CHECK(gathered.responses[5].took_ms == 1005);
    CHECK(gathered.responses[6].took_ms == 5006);
    REQUIRE(gathered.problems.size() == 1);
    CHECK(sentence(gathered.problems[0]) ==
          "a.db: 6 of the answers in it differ from those of the same number in t-1.db, which are "
          "kept. Check whether two tablets go by one name.");
}

TEST_CASE("Gather: what cannot be read is named and the rest goes in") {
    const samples::Folder folder;
    std::filesystem::create_directories(folder / "tablets");
    handIn(folder, "t-1", "tablets/t-1.db", 6);
    handIn(folder, "t-2", "tablets/t-2.db", 40);
    const std::string whole = samples::fileBytes(folder / "tablets/t-2.db");
    samples::writeBytes(folder / "tablets/t-2.db", whole.substr(0, whole.size() / 2));
    samples::writeBytes(folder / "tablets/notes.db", "notes of somebody");
    const Gathered gathered = gather(folder / "tablets");
    CHECK(gathered.responses.size() == 6);
    REQUIRE(gathered.problems.size() == 2);
    CHECK(gathered.problems[0].where == "notes.db");
    CHECK(gathered.problems[1].where == "t-2.db");
    CHECK(gather(folder / "no such folder").responses.empty());
}
