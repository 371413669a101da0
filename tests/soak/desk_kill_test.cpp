// The desk is killed at random moments while words are typed, recordings made and names changed, as
// a flat battery does it, and opened again: nothing older than two seconds is lost.
#include <doctest/doctest.h>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <string>
#include <thread>
#include <vector>

#include "content/common/clock.hpp"
#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "content/pack/classroom.hpp"
#include "content/pack/unit.hpp"
#include "editor/unit/unit_folder.hpp"
#include "editor/voice/audio_file.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using practice::samples::Folder;

namespace {

constexpr std::int64_t kOldMs = 2000;

struct Deed {
    std::string what, which;
    std::int64_t at_ms = 0;
};

struct Ran {
    std::vector<Deed> deeds;
    std::int64_t killed_at_ms = 0;
    bool killed = false;
};

/// Lets the desk be worked on and kills it so long after the first thing done.
Ran typeAndKill(const std::filesystem::path& classroom, std::uint64_t seed, int after_ms) {
    int ends[2];
    REQUIRE(pipe(ends) == 0);
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        dup2(ends[1], 1);
        close(ends[0]);
        execl(WRENLET_TYPIST, WRENLET_TYPIST, classroom.c_str(), WRENLET_TEST_SHARE,
              std::to_string(seed).c_str(), static_cast<char*>(nullptr));
        _exit(127);
    }
    close(ends[1]);
    Ran ran;
    const SystemClock clock;
    std::FILE* from = fdopen(ends[0], "r");
    std::thread killer;
    char line[512];
    while (std::fgets(line, sizeof line, from)) {
        char what[16], which[300];
        long long at_ms = 0;
        if (std::sscanf(line, "%15s %lld %299[^\n]", what, &at_ms, which) != 3) continue;
        ran.deeds.push_back({what, which, at_ms});
        if (!killer.joinable())
            killer = std::thread([&ran, &clock, child, after_ms] {
                std::this_thread::sleep_for(std::chrono::milliseconds(after_ms));
                ran.killed_at_ms = clock.unixMillis();
                kill(child, SIGKILL);
            });
    }
    std::fclose(from);
    if (killer.joinable()) killer.join();
    int status = 0;
    waitpid(child, &status, 0);
    ran.killed = WIFSIGNALED(status);
    return ran;
}

struct Kept {
    std::filesystem::path takes;
    pack::Unit unit;
    pack::ClassList list;
    bool has_unit = false, has_list = false;
};

Kept read(const std::filesystem::path& classroom) {
    Kept kept;
    // One killed before it was saved for the first time leaves a folder that is no unit.
    const auto units = desk::unitsIn(classroom);
    REQUIRE(units.size() <= 1);
    if (!units.empty()) {
        kept.takes = units.front().takes();
        const auto bytes = readWhole(units.front().file(), pack::kMostUnitBytes);
        REQUIRE(bytes.ok());
        auto unit = pack::readUnit(bytes.value(), "unit.json");
        REQUIRE(unit.ok());
        CHECK(unit.problems().empty());
        kept.unit = std::move(unit.value());
        kept.has_unit = true;
    }
    if (auto list = pack::openClassList({classroom}); list.ok()) {
        CHECK(list.problems().empty());
        kept.list = std::move(list.value());
        kept.has_list = true;
    }
    return kept;
}

bool holds(const Kept& kept, const Deed& deed) {
    if (deed.what == "word")
        return std::any_of(kept.unit.words.begin(), kept.unit.words.end(),
                           [&](const auto& word) { return word.text == deed.which; });
    if (deed.what == "take") {
        const auto& all = kept.unit.recordings;
        const auto at = std::find_if(all.begin(), all.end(),
                                     [&](const auto& one) { return one.clip == deed.which; });
        return at != all.end() && desk::readTake(kept.takes / at->take).ok();
    }
    // a name: this one or a later one
    return !kept.list.children.empty() && kept.list.children.front().name.size() > 5 &&
           std::stoll(kept.list.children.front().name.substr(5)) >= std::stoll(deed.which);
}

void killAtTheDesk(int kills) {
    Random random(80);
    int killed = 0, old = 0, takes = 0, young_lost = 0;
    while (killed < kills) {
        const Folder folder;
        std::vector<Deed> before;
        for (int round = 0; round < 6 && killed < kills; ++round) {
            const Ran ran = typeAndKill(folder.path(), 900 + static_cast<std::uint64_t>(killed),
                                        500 + static_cast<int>(random.below(5500)));
            REQUIRE(ran.killed);
            ++killed;
            const Kept kept = read(folder.path());
            for (const Deed& deed : before) {
                CAPTURE(deed.which);
                CHECK(holds(kept, deed));
            }
            for (const Deed& deed : ran.deeds) {
                const bool is_kept = holds(kept, deed);
                const std::int64_t age = ran.killed_at_ms - deed.at_ms;
                CAPTURE(deed.what);
                CAPTURE(deed.which);
                CAPTURE(age);
                if (age > kOldMs) {
                    CHECK(is_kept);
                    ++old;
                    takes += deed.what == "take";
                }
                young_lost += age <= kOldMs && !is_kept;
                if (is_kept && deed.what != "name") before.push_back(deed);
            }
        }
    }
    CHECK(old > kills);
    CHECK(takes > 0);
    MESSAGE(killed, " kills, ", old, " things older than two seconds, ", takes,
            " of them recordings, all there; ", young_lost, " younger ones lost");
}

}  // namespace

#ifdef WRENLET_LONG_SOAK
TEST_CASE("Kill: sixty kills at the desk lose nothing older than two seconds") {
    killAtTheDesk(60);
}
#else
TEST_CASE("Kill: four kills at the desk lose nothing older than two seconds") {
    killAtTheDesk(4);
}
#endif
