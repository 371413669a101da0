// Kills of a desk that serves, and of the network between, at any moment: what a tablet has not
// been told is kept stays with it, and each answer arrives once.
#include <doctest/doctest.h>

#include <memory>
#include <set>
#include <string>

#include "content/common/random.hpp"
#include "editor/document/opened_class.hpp"
#include "tests/serve/page_tablet.hpp"
#include "tests/serve/serve_program.hpp"
#include "tests/serve/served_room.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using samples::ServeProgram;

namespace {

#ifdef WRENLET_LONG_SOAK
constexpr int kTurns = 200;
#else
constexpr int kTurns = 10;
#endif

/// Answers go on while the desk is killed, the network goes and comes, and messages get lost on
/// their way: each arrives once.
void killAtRandom(std::uint64_t seed) {
    samples::ServedRoom room;
    const auto identities = room.withTablets(3);
    Random random(seed);
    std::vector<std::unique_ptr<samples::PageTablet>> tablets;
    const std::string page = (room.folder / "page").string();
    const auto begin = [&] {
        auto desk = std::make_unique<ServeProgram>(
            room.folder.path(), std::vector<std::string>{room.classroom.folder.string(), "--port",
                                                         "0", "--json", "--page", page});
        const std::uint16_t port = desk->port();
        for (auto& tablet : tablets) tablet->movedTo(port);
        return desk;
    };
    auto desk = begin();
    for (std::size_t i = 0; i < identities.size(); ++i) {
        tablets.push_back(std::make_unique<samples::PageTablet>(
            desk->port(), "127.0.0." + std::to_string(i + 2), i));
        tablets.back()->is(identities[i]);
    }
    for (int turn = 0; turn < kTurns; ++turn) {
        for (auto& tablet : tablets) {
            for (std::uint32_t more = random.below(6); more > 0; --more)
                tablet->answers(samples::responseBy(random.below(2) == 0 ? "c-01" : "c-02"));
            switch (random.below(3)) {
                case 0:  // the answer to it gets lost
                    if (!tablet->outbox().empty() && tablet->http().connect()) {
                        const std::string message =
                            tablet->nextMessage(link::Responses{tablet->outbox(), {}});
                        (void)tablet->http().write(
                            "POST /talk HTTP/1.1\r\nHost: d\r\nContent-Length: " +
                            std::to_string(message.size()) + "\r\n\r\n" +
                            // some of it, or all
                            message.substr(
                                0, random.below(2) == 0
                                       ? message.size()
                                       : random.below(static_cast<std::uint32_t>(message.size()))));
                        tablet->http().close();
                    }
                    break;
                case 1:
                    (void)tablet->sendAll();
                    break;
                default:  // it plays on without a network
                    break;
            }
        }
        if (random.below(2) == 0) {
            desk.reset();  // killed
            desk = begin();
        }
    }
    std::int64_t all = 0;
    for (auto& tablet : tablets) {
        CHECK(tablet->sendAll());
        all += tablet->sequence();
    }
    CHECK(desk->stop() == 0);
    const auto map = openClass(room.classroom.folder, 0).responses;
    std::set<std::pair<std::string, std::int64_t>> once;
    for (const practice::Response& response : map)
        once.insert({response.tablet.string(), response.sequence});
    CHECK(std::int64_t(map.size()) == all);
    CHECK(std::int64_t(once.size()) == all);
    CHECK(all > 0);
}

}  // namespace

TEST_CASE("Serving: kills of desk and network lose nothing and double nothing") {
    killAtRandom(1);
}
