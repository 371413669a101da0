// How the desk's window is called.
#include <doctest/doctest.h>

#include <vector>

#include "editor/windows/options.hpp"

namespace wrenlet::desk {

namespace {

Result<DeskOptions> read(const std::vector<std::string>& words) {
    return readOptions(words);
}

}  // namespace

TEST_CASE("The desk opens on a folder, or on none") {
    CHECK(read({}).value().classroom.empty());
    CHECK(read({"room"}).value().classroom == "room");
    CHECK(read({"room", "--unit", "on-the-farm"}).value().unit == "on-the-farm");
    CHECK_FALSE(read({"room", "--unit", "../farm"}).ok());
}

TEST_CASE("A picture is asked for with page, child, skill, size and scale") {
    const auto options = read({"room", "--picture", "p.png", "--child", "Maya", "--skill",
                               "phoneme.blend", "--size", "1920x1080", "--scale", "1.25"});
    REQUIRE(options.ok());
    CHECK(options.value().picture == "p.png");
    CHECK(options.value().page == Page::child);
    CHECK(options.value().child == "Maya");
    CHECK(options.value().skill == "phoneme.blend");
    CHECK(options.value().width == 1920);
    CHECK(options.value().height == 1080);
    CHECK(*options.value().scale == doctest::Approx(1.25));
}

TEST_CASE("What the desk does not understand it names") {
    for (const std::vector<std::string>& words :
         std::vector<std::vector<std::string>>{{"room", "other"},
                                               {"--size", "12x9"},
                                               {"--size", "1280x720x2"},
                                               {"--size", "99999x720"},
                                               {"--scale", "0"},
                                               {"--scale", "nan"},
                                               {"--page", "words"},
                                               {"--picture"},
                                               {"--loud", "yes"}}) {
        const auto options = read(words);
        CHECK(!options.ok());
        REQUIRE(!options.problems().empty());
        CHECK(options.problems()[0].where.find(words.front() == "room" ? "other" : words.front()) !=
              std::string::npos);
    }
}

}  // namespace wrenlet::desk
