#include "content/practice/groups.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "content/common/random.hpp"

namespace wrenlet::practice {
namespace {

SoundLine line(const std::string& skill, const std::string& sound, Standing said,
               double p_missed = .9) {
    SoundLine line;
    line.cell = {skill, {sound, exercise::Position::first}};
    line.said = said;
    line.evidence.reading.p_missed = p_missed;
    return line;
}

ChildProgress child(const std::string& id, std::vector<SoundLine> lines) {
    ChildProgress child;
    child.child.id = id;
    child.child.name = "N" + id;
    child.lines = std::move(lines);
    return child;
}

ChildProgress missing(const std::string& id, const std::string& skill,
                      const std::vector<std::string>& sounds) {
    std::vector<SoundLine> lines;
    for (const std::string& sound : sounds) lines.push_back(line(skill, sound, Standing::missed));
    return child(id, lines);
}

const SmallGroup* groupOf(const Grouping& grouping, const std::string& id) {
    for (const SmallGroup& group : grouping.groups)
        if (std::find(group.children.begin(), group.children.end(), id) != group.children.end())
            return &group;
    return nullptr;
}

bool together(const Grouping& grouping, const std::string& a, const std::string& b) {
    const SmallGroup* group = groupOf(grouping, a);
    return group != nullptr && group == groupOf(grouping, b);
}

std::vector<ChildProgress> threeKinds() {
    std::vector<ChildProgress> children;
    for (int i = 0; i < 11; ++i) {
        const std::string id = "c" + std::to_string(i);
        if (i % 3 == 0) children.push_back(missing(id, "phoneme.first", {"k", "t"}));
        if (i % 3 == 1) children.push_back(missing(id, "onset-rime.rhyme-sort", {"æt", "ʌg"}));
        if (i % 3 == 2) children.push_back(missing(id, "phoneme.last", {"s"}));
    }
    return children;
}

/// Some children of random gaps, as a class may be.
std::vector<ChildProgress> randomClass(Random& random) {
    const std::vector<std::string> skills = {"phoneme.first", "phoneme.last", "phoneme.blend",
                                             "onset-rime.rhyme-sort", "compound.blend"};
    const std::vector<std::string> sounds = {"k", "t", "s", "m"};
    std::vector<ChildProgress> children;
    for (std::uint32_t i = 0, count = random.below(31); i < count; ++i) {
        std::vector<SoundLine> lines;
        for (const std::string& skill : skills)
            for (const std::string& sound : sounds)
                if (random.below(3) == 0)
                    lines.push_back(line(skill, sound, static_cast<Standing>(random.below(4)),
                                         .8 + .2 * random.unit()));
        children.push_back(child("c" + std::to_string(i), lines));
    }
    return children;
}

bool misses(const ChildProgress& child, const std::string& skill) {
    return std::any_of(child.lines.begin(), child.lines.end(), [&](const SoundLine& line) {
        return line.cell.skill == skill && line.said == Standing::missed;
    });
}

}  // namespace

TEST_CASE("Groups: children who share a gap sit together") {
    const Grouping grouping = groupsOf(threeKinds());
    REQUIRE(grouping.groups.size() == 3);
    for (const SmallGroup& group : grouping.groups) {
        CHECK(group.children.size() >= 3);
        CHECK(group.children.size() <= 4);
    }
    CHECK(together(grouping, "c0", "c3"));
    CHECK(together(grouping, "c1", "c10"));
    CHECK_FALSE(together(grouping, "c0", "c1"));
    const SmallGroup* rhyme = groupOf(grouping, "c1");
    CHECK(rhyme->skill == "onset-rime.rhyme-sort");
    REQUIRE(rhyme->sounds.size() == 2);
    CHECK(rhyme->sounds.front().children.size() == rhyme->children.size());
}

TEST_CASE("Groups: within a skill, those who miss the same sounds") {
    std::vector<ChildProgress> children;
    for (int i = 0; i < 8; ++i)
        children.push_back(missing(
            "c" + std::to_string(i), "phoneme.first",
            i % 2 == 0 ? std::vector<std::string>{"k", "g"} : std::vector<std::string>{"s", "sh"}));
    const Grouping grouping = groupsOf(children);
    REQUIRE(grouping.groups.size() == 2);
    for (int i = 2; i < 8; ++i)
        CHECK(together(grouping, i % 2 == 0 ? "c0" : "c1", "c" + std::to_string(i)));
}

TEST_CASE("Groups: who misses nothing, or too little is known of, is in none, and so are shields") {
    std::vector<ChildProgress> children = threeKinds();
    children.push_back(child("steady", {line("phoneme.first", "k", Standing::steady)}));
    children.push_back(child("new", {line("phoneme.first", "k", Standing::too_little)}));
    children.push_back(child("unplayed", {}));
    SoundLine shielded = line("phoneme.first", "k", Standing::growing);
    shielded.shielded = shielded.held_back = true;
    children.push_back(child("shielded", {shielded}));
    children.push_back(missing("odd", "letter.name", {"letter:q"}));
    const Grouping grouping = groupsOf(children);
    CHECK(grouping.nothing == std::vector<std::string>{"steady", "shielded"});
    CHECK(grouping.not_sure == std::vector<std::string>{"new", "unplayed"});
    CHECK(grouping.alone == std::vector<std::string>{"odd"});
}

TEST_CASE("Groups: the same evidence keeps them, and one child's news moves that child alone") {
    std::vector<ChildProgress> children = threeKinds();
    const Grouping monday = groupsOf(children);
    const Grouping tuesday = groupsOf(children, monday.groups);
    REQUIRE(tuesday.groups.size() == monday.groups.size());
    for (std::size_t i = 0; i < monday.groups.size(); ++i)
        CHECK(tuesday.groups[i].children == monday.groups[i].children);
    children[0] = missing("c0", "onset-rime.rhyme-sort", {"æt"});
    const Grouping wednesday = groupsOf(children, monday.groups);
    for (const ChildProgress& one : children)
        for (const ChildProgress& other : children)
            if (one.child.id != "c0" && other.child.id != "c0")
                CHECK(together(wednesday, one.child.id, other.child.id) ==
                      together(monday, one.child.id, other.child.id));
}

TEST_CASE("Groups: in any class each child stands once, in a group of one shared gap or in none") {
    Random random(11);
    std::vector<SmallGroup> before;
    for (int round = 0; round < 300; ++round) {
        const std::vector<ChildProgress> children = randomClass(random);
        const Grouping grouping = groupsOf(children, before);
        std::multiset<std::string> seen;
        int pairs = 0;
        for (const SmallGroup& group : grouping.groups) {
            CHECK(group.children.size() >= 2);
            CHECK(group.children.size() <= kMostInGroup);
            pairs += group.children.size() == 2;
            for (const std::string& id : group.children) {
                seen.insert(id);
                for (const ChildProgress& one : children)
                    if (one.child.id == id) CHECK(misses(one, group.skill));
            }
            CHECK_FALSE(group.sounds.empty());
        }
        for (const auto* rest : {&grouping.alone, &grouping.nothing, &grouping.not_sure})
            seen.insert(rest->begin(), rest->end());
        CHECK(seen.size() == children.size());
        for (const ChildProgress& one : children) CHECK(seen.count(one.child.id) == 1);
        CHECK(pairs <= 5);
        before = grouping.groups;
    }
}

TEST_CASE("Groups: whom the teacher put at a table stays there, also who misses nothing in it") {
    std::vector<ChildProgress> children = threeKinds();
    children.push_back(child("steady", {line("phoneme.first", "k", Standing::steady)}));
    children.push_back(child("unplayed", {}));
    std::vector<SmallGroup> hers = groupsOf(children).groups;
    const auto tableOf = [&](const std::string& id) {
        return std::find_if(hers.begin(), hers.end(), [&](const SmallGroup& group) {
            return std::find(group.children.begin(), group.children.end(), id) !=
                   group.children.end();
        });
    };
    // "c0" is to sit with "c1", and two who miss nothing beside "c2"; a fifth child may stand there
    auto& from = tableOf("c0")->children;
    from.erase(std::find(from.begin(), from.end(), "c0"));
    tableOf("c1")->children.push_back("c0");
    tableOf("c1")->placed.push_back("c0");
    for (const char* id : {"steady", "unplayed"}) {
        tableOf("c2")->children.push_back(id);
        tableOf("c2")->placed.push_back(id);
    }
    const std::size_t many = tableOf("c1")->children.size();
    Grouping next = groupsOf(children, hers);
    CHECK(together(next, "c0", "c1"));
    CHECK(groupOf(next, "c1")->children.size() == many);
    CHECK(groupOf(next, "c0")->placed == std::vector<std::string>{"c0"});
    CHECK(together(next, "steady", "c2"));
    CHECK(together(next, "unplayed", "c2"));
    CHECK(next.nothing.empty());
    CHECK(next.not_sure.empty());
    // and goes back among the others when that table is no more
    for (ChildProgress& one : children)
        if (misses(one, "phoneme.last")) one.lines.clear();
    next = groupsOf(children, next.groups);
    CHECK(groupOf(next, "steady") == nullptr);
    CHECK(std::find(next.nothing.begin(), next.nothing.end(), "steady") != next.nothing.end());
    CHECK(std::find(next.not_sure.begin(), next.not_sure.end(), "unplayed") != next.not_sure.end());
}

TEST_CASE("Groups: as she puts them, the sounds shared are worked out anew") {
    const std::vector<ChildProgress> children = threeKinds();
    const std::vector<std::string> hers = {"c1", "c0", "c3", "c0", "gone"};
    const SmallGroup group = groupFor("phoneme.first", hers, children);
    CHECK(group.children == std::vector<std::string>{"c0", "c3", "c1"});
    REQUIRE(group.sounds.size() == 2);
    CHECK(group.sounds.front().children == std::vector<std::string>{"c0", "c3"});
}

}  // namespace wrenlet::practice
