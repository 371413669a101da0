// The game is killed at random moments of a session, as a flat battery does it, and started again:
// every answer whose feedback began is there, the store opens, and the session goes on.
#include <doctest/doctest.h>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdio>
#include <future>
#include <optional>
#include <string>
#include <thread>

#include "content/common/random.hpp"
#include "content/practice/store.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using practice::samples::Folder;

namespace {

struct Ran {
    std::int64_t announced = 0;  // the newest answer whose feedback began
    bool killed = false;
    bool ended_well = false;
};

/// When a run is killed: so long after its start, or after its so-manieth answer, which a slow
/// machine reaches later.
struct Moment {
    int answers = 0;
    int millis = 0;
};

/// Runs the game off screen and kills it at that moment, reading what it announces meanwhile.
Ran runAndKill(const std::vector<std::string>& words, Moment moment) {
    int ends[2];
    REQUIRE(pipe(ends) == 0);
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        dup2(ends[1], 1);
        close(ends[0]);
        std::vector<char*> args;
        for (const std::string& word : words) args.push_back(const_cast<char*>(word.c_str()));
        args.push_back(nullptr);
        execv(args[0], args.data());
        _exit(127);
    }
    close(ends[1]);
    std::promise<void> due;
    std::thread killer([&, reached = due.get_future()] {
        reached.wait();
        std::this_thread::sleep_for(std::chrono::milliseconds(moment.millis));
        kill(child, SIGKILL);
    });
    Ran ran;
    std::optional<std::int64_t> at_first;  // what earlier runs left
    bool is_due = moment.answers == 0;
    if (is_due) due.set_value();
    std::FILE* from = fdopen(ends[0], "r");
    char line[512];
    while (std::fgets(line, sizeof line, from)) {
        long long sequence = 0;
        if (std::sscanf(line, "begun %lld\n", &sequence) != 1) continue;
        ran.announced = std::max<std::int64_t>(ran.announced, sequence);
        if (!at_first) at_first = sequence;
        if (!is_due && sequence - *at_first >= moment.answers) {
            is_due = true;
            due.set_value();
        }
    }
    std::fclose(from);
    if (!is_due) due.set_value();  // it ended before
    killer.join();
    int status = 0;
    waitpid(child, &status, 0);
    ran.killed = WIFSIGNALED(status);
    ran.ended_well = WIFEXITED(status) && WEXITSTATUS(status) == 0;
    return ran;
}

void killInSessions(int kills) {
    const Folder folder;
    std::filesystem::create_directories(folder / "classroom");
    std::filesystem::copy(WRENLET_TEST_STARTER, folder / "classroom",
                          std::filesystem::copy_options::recursive |
                              std::filesystem::copy_options::overwrite_existing);
    practice::samples::writeBytes(folder / "tape.json",
                                  R"({"child": "c-01", "right_share": 0.7, "sessions": 1})");
    const std::vector<std::string> words = {WRENLET_PROGRAM,  (folder / "classroom").string(),
                                            "--data",         (folder / "tablet").string(),
                                            "--off-screen",   "--announce",
                                            "--child-script", (folder / "tape.json").string()};
    Random random(50);
    int killed = 0, resumed = 0, rounds = 0;
    std::int64_t before = 0, last_session = 0;
    while (killed < kills && rounds++ < kills * 6) {
        // in turn anywhere in the start, and anywhere between two answers
        const Moment moment{rounds % 2 == 0 ? 1 + static_cast<int>(random.below(3)) : 0,
                            static_cast<int>(random.below(rounds % 2 == 0 ? 400 : 1900))};
        const Ran ran = runAndKill(words, moment);
        killed += ran.killed;
        auto store = practice::Store::open(folder / "tablet/store.db", "none");
        if (!store.ok() && before == 0) continue;  // killed before there was a store
        REQUIRE(store.ok());
        const auto rows = store.value().all();
        const auto count = static_cast<std::int64_t>(rows.size());
        CHECK(count >= ran.announced);
        CHECK(count >= before);
        for (std::size_t i = 0; i < rows.size(); ++i)
            CHECK(rows[i].sequence == static_cast<std::int64_t>(i) + 1);
        if (count > before && before > 0 && rows.back().session == last_session) ++resumed;
        before = count;
        last_session = rows.empty() ? 0 : rows.back().session;
    }
    CHECK(killed == kills);
    CHECK(resumed > 0);
    MESSAGE(killed, " kills, ", before, " answers, ", resumed, " times the session went on");
}

}  // namespace

#ifdef WRENLET_LONG_SOAK
TEST_CASE("Kill: fifty kills in sessions lose nothing whose feedback began") {
    killInSessions(50);
}
#else
TEST_CASE("Kill: six kills in sessions lose nothing whose feedback began") {
    killInSessions(6);
}
#endif
