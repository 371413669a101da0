#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <mutex>
#include <nlohmann/json.hpp>
#include <optional>

#include "editor/tryout/child_game.hpp"

extern char** environ;

namespace wrenlet::desk {

namespace {

constexpr std::size_t kMostPrinted = 64 << 10, kMostSaid = 200;
constexpr int kMostGapMs = 10'000;
constexpr std::chrono::seconds kLongestStill{20};

/// A program that was started and is waited for.
class Started {
  public:
    explicit Started(const std::vector<std::string>& call) {
        int ends[2] = {-1, -1};
        if (pipe2(ends, O_CLOEXEC) != 0) return;
        from_ = ends[0];
        posix_spawn_file_actions_t actions;
        posix_spawn_file_actions_init(&actions);
        posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
        posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
        std::vector<char*> words;
        for (const std::string& word : call) words.push_back(const_cast<char*>(word.c_str()));
        words.push_back(nullptr);
        if (posix_spawn(&process_, call.front().c_str(), &actions, nullptr, words.data(),
                        environ) != 0)
            process_ = -1;
        posix_spawn_file_actions_destroy(&actions);
        close(ends[1]);
    }
    ~Started() {
        if (from_ >= 0) close(from_);
    }
    Started(const Started&) = delete;
    Started& operator=(const Started&) = delete;

    pid_t process() const { return process_; }

    /// Reads to the end; false when it prints too much or takes longer than it may.
    bool read(std::string& text, std::optional<std::chrono::seconds> longest) {
        using Clock = std::chrono::steady_clock;
        const Clock::time_point begun = Clock::now();
        char block[4096];
        for (;;) {
            int wait = -1;
            if (longest) {
                const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(
                    begun + *longest - Clock::now());
                if (left.count() <= 0) return false;
                wait = static_cast<int>(left.count());
            }
            pollfd one{from_, POLLIN, 0};
            if (poll(&one, 1, wait) < 0 && errno != EINTR) return false;
            if (one.revents == 0) continue;
            const ssize_t got = ::read(from_, block, sizeof block);
            if (got <= 0) return got == 0;
            text.append(block, static_cast<std::size_t>(got));
            if (text.size() > kMostPrinted) return false;
        }
    }

    /// Its exit code; -1 when it did not end by itself.
    int wait() {
        int status = 0;
        while (waitpid(process_, &status, 0) < 0)
            if (errno != EINTR) return -1;
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }

  private:
    pid_t process_ = -1;
    int from_ = -1;
};

class GameProgram final : public ChildGame {
  public:
    explicit GameProgram(std::filesystem::path program) : program_(std::move(program)) {}
    ~GameProgram() override { stop(); }

    Result<std::vector<SaidClip>> still(const StillCall& call) override {
        Started game({program_.string(), "--try", call.pack.string(), "--item", call.item, "--draw",
                      call.png.string(), "--size",
                      std::to_string(call.width) + "x" + std::to_string(call.height)});
        if (game.process() < 0) return notThere();
        std::string printed;
        const bool whole = game.read(printed, kLongestStill);
        if (!whole) kill(game.process(), SIGKILL);
        if (game.wait() != 0 || !whole) return notDrawn();
        return readSaid(printed);
    }

    Result<Done> play(const std::filesystem::path& pack, const std::string& item) override {
        Started game({program_.string(), "--try", pack.string(), "--item", item});
        if (game.process() < 0) return notThere();
        {
            const std::lock_guard lock(mutex_);
            playing_ = game.process();
        }
        std::string printed;
        const bool whole = game.read(printed, std::nullopt);
        if (!whole) kill(game.process(), SIGKILL);
        int code = 0;
        {
            const std::lock_guard lock(mutex_);
            code = game.wait();
            playing_ = -1;
        }
        if (code > 0)
            return Problem{"Try out", "The game does not open on this machine.",
                           "Look whether it starts by itself."};
        return Done{};
    }

    void stop() override {
        const std::lock_guard lock(mutex_);
        if (playing_ > 0) kill(playing_, SIGTERM);
    }

  private:
    Problem notThere() const {
        return {program_.filename().string(), "The child's program is not beside the desk's.",
                "Install Wrenlet anew."};
    }
    static Problem notDrawn() {
        return {"Try out", "This question could not be drawn.", "Choose another one, or play it."};
    }

    std::filesystem::path program_;
    std::mutex mutex_;
    pid_t playing_ = -1;  // not yet waited for, so that its number is nobody else's
};

}  // namespace

Result<std::vector<SaidClip>> readSaid(const std::string& printed) {
    const auto json = nlohmann::json::parse(printed, nullptr, false);
    const Problem other{"Try out", "The game answers in a way that the desk does not know.",
                        "Install both anew, of one version."};
    if (!json.is_object() || !json.contains("said") || !json["said"].is_array() ||
        json["said"].size() > kMostSaid)
        return other;
    std::vector<SaidClip> said;
    for (const auto& one : json["said"]) {
        if (!one.is_object() || !one.contains("clip") || !one["clip"].is_string()) return other;
        const auto gap = one.find("gap_ms");
        const bool has_gap = gap != one.end() && gap->is_number_integer();
        const std::int64_t gap_ms = has_gap ? gap->get<std::int64_t>() : 0;
        if (gap_ms < 0 || gap_ms > kMostGapMs) return other;
        said.push_back({one["clip"].get<std::string>(), static_cast<int>(gap_ms)});
    }
    return said;
}

std::unique_ptr<ChildGame> gameProgram(const std::filesystem::path& program) {
    return std::make_unique<GameProgram>(program);
}

}  // namespace wrenlet::desk
