// The child's program for tests: it draws by the real one, and what is played is a headless game on
// the pack that the desk wrote.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "content/pack/pack_file.hpp"
#include "editor/tryout/child_game.hpp"
#include "tests/practice/samples.hpp"
#include "tests/scenes/player.hpp"

namespace wrenlet::desk {

class PreparedGame final : public ChildGame {
  public:
    Result<std::vector<SaidClip>> still(const StillCall& call) override {
        ++stills;
        return program_->still(call);
    }
    Result<Done> play(const std::filesystem::path& file, const std::string& item) override {
        auto pack = pack::readPackFile(file);
        for (const Problem& problem : pack.problems()) FAIL_CHECK(sentence(problem));
        REQUIRE(pack.ok());
        std::erase_if(pack.value().items,
                      [&](const exercise::Item& one) { return one.id != item; });
        REQUIRE(pack.value().items.size() == 1);
        const practice::samples::Folder folder;
        game::AppOptions options;
        options.tries_out = true;
        fixtures::Player child(folder / "store.db", 1, 7, {}, 3, pack.value(), options);
        REQUIRE(child.waitForTouch());
        const std::string place = child.app().place();
        child.playRightUntil(place.substr(0, place.find(':')) + ": right");
        child.wait(20'000);
        CHECK(child.app().wantsToClose());
        played.push_back(item);
        return Done{};
    }
    void stop() override {}

    int stills = 0;
    std::vector<std::string> played;

  private:
    std::unique_ptr<ChildGame> program_ = gameProgram(WRENLET_TEST_GAME);
};

}  // namespace wrenlet::desk
