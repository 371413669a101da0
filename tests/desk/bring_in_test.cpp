// Answers of any number of tablets, brought in in any order, any number of times and in any parts.
#include "editor/document/bring_in.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "content/common/random.hpp"
#include "content/practice/store.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {
namespace {

using practice::Response;
using practice::samples::Folder;

/// A snapshot of each tablet after each few of its answers: what sticks carry about.
struct Sticks {
    Folder folder;
    std::vector<std::filesystem::path> files;
    std::vector<Response> all;

    explicit Sticks(Random& random) {
        for (int tablet = 0; tablet < 3; ++tablet) {
            const std::string name = "t-" + std::to_string(tablet);
            auto store = practice::Store::open(folder / (name + "-own.db"), name);
            REQUIRE(store.ok());
            const auto session = store.value().beginSession("c-01", "pond 1", 7, 20'000);
            REQUIRE(session.ok());
            for (int part = 0; part < 3; ++part) {
                for (std::uint32_t i = 0, count = 1 + random.below(4); i < count; ++i) {
                    Response response = practice::samples::response();
                    response.session = session.value().id;
                    response.took_ms = random.below(5000);
                    response.at_ms = random.below(2'000'000'000);  // clocks may be wrong
                    const auto kept = store.value().append(response, 10);
                    REQUIRE(kept.ok());
                    all.push_back(kept.value());
                }
                const auto file = folder / (name + "-" + std::to_string(part) + ".db");
                REQUIRE(store.value().snapshot(file).ok());
                files.push_back(file);
            }
        }
    }
};

std::vector<Response> gathered(const pack::Classroom& classroom) {
    return practice::gather(classroom.tablets()).responses;
}

}  // namespace

TEST_CASE("Brought in: in any order, in any parts and again, the answers are the same") {
    Random random(5);
    for (int round = 0; round < 12; ++round) {
        Sticks sticks(random);
        const Folder room;
        const pack::Classroom classroom{room.path()};
        std::vector<std::filesystem::path> order = sticks.files;
        for (int i = 0; i < 5; ++i) order.push_back(order[random.below(9)]);
        random.shuffle(order);
        std::size_t answers = 0;
        for (std::size_t at = 0; at < order.size();) {
            const std::size_t count = std::min<std::size_t>(1 + random.below(4), order.size() - at);
            const BroughtIn brought = bringIn(std::span(order).subspan(at, count), classroom, {});
            CHECK(brought.problems.empty());
            CHECK(brought.taken.size() + brought.known.size() == count);
            answers += brought.answers;
            at += count;
        }
        CHECK(answers == sticks.all.size());
        CHECK(gathered(classroom) == sticks.all);
        const BroughtIn again = bringIn(sticks.files, classroom, {});
        CHECK(again.answers == 0);
        CHECK(again.taken.empty());
        CHECK(gathered(classroom) == sticks.all);
    }
}

TEST_CASE("Brought in: a half-written file is refused by name, and the rest goes in") {
    Random random(6);
    Sticks sticks(random);
    const Folder room;
    const pack::Classroom classroom{room.path()};
    const std::string whole = practice::samples::fileBytes(sticks.files[2]);
    practice::samples::writeBytes(sticks.files[2], whole.substr(0, whole.size() * 2 / 3));
    const std::vector<std::filesystem::path> both = {sticks.files[2], sticks.files[5],
                                                     sticks.folder / "none.db"};
    const BroughtIn brought = bringIn(both, classroom, {});
    REQUIRE(brought.problems.size() == 2);
    CHECK(brought.problems[0].where == "t-0-2.db");
    CHECK(brought.problems[1].where == "none.db");
    CHECK(brought.taken == std::vector<std::string>{"t-1-2.db"});
    for (const Response& response : gathered(classroom)) CHECK(response.tablet == "t-1");
}

TEST_CASE("Brought in: another copy of a classroom folder is found by its tablets") {
    Random random(7);
    Sticks sticks(random);
    const Folder other, room;
    std::filesystem::create_directories(other / "tablets");
    for (const int newest : {2, 5, 8})
        std::filesystem::copy(sticks.files[std::size_t(newest)], other / "tablets");
    const pack::Classroom classroom{room.path()};
    const std::vector<std::filesystem::path> from = {other.path()};
    CHECK(bringIn(from, classroom, {}).answers == sticks.all.size());
    CHECK(gathered(classroom) == sticks.all);
}

}  // namespace wrenlet::desk
