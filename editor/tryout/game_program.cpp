#include <chrono>
#include <mutex>
#include <nlohmann/json.hpp>
#include <optional>

#include "editor/tryout/child_game.hpp"
#include "editor/tryout/started.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::size_t kMostPrinted = 64 << 10, kMostSaid = 200;
constexpr int kMostGapMs = 10'000;
constexpr std::chrono::seconds kLongestStill{20};

class GameProgram final : public ChildGame {
  public:
    explicit GameProgram(std::filesystem::path program) : program_(std::move(program)) {}
    ~GameProgram() override { stop(); }

    Result<std::vector<SaidClip>> still(const StillCall& call) override {
        Started game(program_,
                     {"--try", call.pack.string(), "--item", call.item, "--draw", call.png.string(),
                      "--size", std::to_string(call.width) + "x" + std::to_string(call.height)});
        if (!game.isThere()) return notThere();
        std::string printed;
        const bool whole = game.read(printed, kMostPrinted, kLongestStill);
        if (!whole) game.kill();
        if (game.wait() != 0 || !whole) return notDrawn();
        return readSaid(printed);
    }

    Result<Done> play(const std::filesystem::path& pack, const std::string& item) override {
        Started game(program_, {"--try", pack.string(), "--item", item});
        if (!game.isThere()) return notThere();
        {
            const std::lock_guard lock(mutex_);
            playing_ = &game;
        }
        std::string printed;
        const bool whole = game.read(printed, kMostPrinted, std::nullopt);
        if (!whole) game.kill();
        int code = 0;
        {
            const std::lock_guard lock(mutex_);
            code = game.wait();
            playing_ = nullptr;
        }
        if (code > 0)
            return Problem{"Try out", "The game does not open on this machine.",
                           "Look whether it starts by itself."};
        return Done{};
    }

    void stop() override {
        const std::lock_guard lock(mutex_);
        if (playing_ != nullptr) playing_->askToEnd();
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
    Started* playing_ = nullptr;  // not yet waited for, so that its number is nobody else's
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
