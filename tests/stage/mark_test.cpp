#include "game/stage/mark.hpp"

#include <doctest/doctest.h>

using wrenlet::game::Mark;
using Names = std::vector<std::string>;

TEST_CASE("Mark: pieces come first, then replay and the way out, and the wren not at all") {
    CHECK(Mark::orderOf({"replay", "leave", "wren", "home:0", "home:1"}) ==
          Names{"home:0", "home:1", "replay", "leave"});
}

TEST_CASE("Mark: it shows at the first move, goes round both ways and hides for a finger") {
    const Names order = {"a", "b", "c"};
    Mark mark;
    CHECK_FALSE(mark.on(order).has_value());
    mark.move(order, 1);
    CHECK(mark.on(order) == "a");
    mark.move(order, -1);
    CHECK(mark.on(order) == "c");
    mark.move(order, 1);
    CHECK(mark.on(order) == "a");
    mark.hide();
    CHECK_FALSE(mark.on(order).has_value());
    mark.move(order, -1);
    CHECK(mark.on(order) == "c");
}

TEST_CASE("Mark: it stands on the first thing when what it stood on is gone") {
    Mark mark;
    mark.move({"a", "b"}, 1);
    mark.move({"a", "b"}, 1);
    CHECK(mark.on({"c", "d"}) == "c");
    CHECK_FALSE(mark.on({}).has_value());
    mark.move({"c", "d"}, 1);
    CHECK(mark.on({"c", "d"}) == "c");
}
