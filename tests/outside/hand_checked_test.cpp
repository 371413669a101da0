// The oracle: 345 items that were answered by hand before any program was asked. Every line is put
// as the program would ask it, from the line's own words, and held against the rules of fairness
// (the line's answer is the one right answer, and no other is) and against what the makers make.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

#include "content/exercise/item_maker.hpp"
#include "tests/outside/hand_checked.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;
using namespace wrenlet::handchecked;

namespace {

Item withAnswer(Item item, std::size_t answer) {
    item.choices[item.answer].means = "wrong";
    item.choices[answer].means.clear();
    item.answer = static_cast<std::uint8_t>(answer);
    return item;
}

bool isAllowed(const std::string& reason, const std::vector<std::string>& refused) {
    return std::any_of(refused.begin(), refused.end(), [&reason](const std::string& known) {
        return reason.find(known) != std::string::npos;
    });
}

/// That the answer of `item` is right to the program, and every other one wrong.
void judge(const Item& item, const Asked& asked, std::vector<std::string>& differing) {
    for (const std::string& reason : unfairness(item, asked.vocabulary))
        if (!isAllowed(reason, asked.refused)) differing.push_back(item.id + ": " + reason);
    for (std::size_t i = 0; i < item.choices.size(); ++i)
        if (i != item.answer && unfairness(withAnswer(item, i), asked.vocabulary).empty())
            differing.push_back(item.id + ": " + item.choices[i].id + " would be right too");
}

bool asksTheSame(const Item& item, const Item& made, bool same_choices) {
    const auto sameClip = [](const Part& a, const Part& b) { return a.clip == b.clip; };
    return made.subject == item.subject &&
           made.choices[made.answer].id == item.choices[item.answer].id &&
           std::equal(made.parts.begin(), made.parts.end(), item.parts.begin(), item.parts.end(),
                      sameClip) &&
           (!same_choices || sameChoices(made, item));
}

/// That the makers make the item (of a join or a split they choose what it turns on), or none that
/// answers the same question otherwise.
void compare(const Item& item, const std::vector<Item>& made, const Asked& asked, bool wanted,
             std::vector<std::string>& differing) {
    const Mechanic mechanic = rowOf(item.skill).mechanic;
    const bool is_fixed = mechanic != Mechanic::join && mechanic != Mechanic::split;
    bool found = false;
    for (const Item& one : made) {
        if (!asksTheSame(item, one, asked.same_choices)) continue;
        found |= !is_fixed || one.turns_on == item.turns_on;
    }
    if (wanted && !found) differing.push_back(item.id + " is not made");
    if (!wanted && found) differing.push_back(item.id + " is made");
}

std::vector<std::string> differences(const Line& line, const Words& words) {
    const Asked asked = handchecked::asked(line, words);
    std::vector<std::string> differing = asked.differing;
    if (asked.items.empty()) return differing;
    const auto made = makeItems(asked.for_making, asked.items.front().skill);
    if (line.isNone()) {
        for (const Item& item : asked.items) {
            if (unfairness(item, asked.for_making).empty())
                differing.push_back(item.id + " would be fair");
            compare(item, made, asked, false, differing);
        }
        return differing;
    }
    for (const Item& item : asked.items) {
        judge(item, asked, differing);
        compare(item, made, asked, asked.left_out.empty(), differing);
    }
    for (const Item& item : asked.sorts) judge(item, asked, differing);
    return differing;
}

}  // namespace

TEST_CASE("By hand: the program answers every item as it was answered by ear") {
    const Words words;
    const auto lines = readTable();
    CHECK(lines.size() >= 300);
    std::size_t agreeing = 0, none = 0;
    std::set<std::string> skills;
    std::map<std::string, std::size_t> left_out;
    for (const Line& line : lines) {
        const auto differing = differences(line, words);
        for (const std::string& what : differing)
            FAIL_CHECK("line " << line.number << ", " << line.text << "\n  " << what);
        agreeing += differing.empty();
        none += line.isNone();
        skills.insert(line.skill);
        if (const auto why = asked(line, words).left_out; !why.empty()) ++left_out[why];
    }
    CHECK(agreeing == lines.size());
    CHECK(none >= 5);
    CHECK(skills.size() == skillTable().size());
    // The makers may leave out what is fair, for reasons of their own; not often.
    std::size_t all_left_out = 0;
    for (const auto& [why, count] : left_out) {
        MESSAGE(count << " fair items are left out: " << why);
        all_left_out += count;
    }
    CHECK(all_left_out * 10 <= lines.size());
}

TEST_CASE("By hand: a line with another answer than the right one is found out") {
    const Words words;
    std::size_t spoiled = 0, caught = 0;
    for (Line line : readTable()) {
        if (line.isNone() || line.choices.size() < 2 || line.right.find(':') != std::string::npos)
            continue;
        const auto other = std::find_if(line.choices.begin(), line.choices.end(),
                                        [&](const auto& choice) { return choice != line.right; });
        if (line.skill == "letter.build") continue;
        line.right = *other;
        ++spoiled;
        caught += !differences(line, words).empty();
        if (differences(line, words).empty()) MESSAGE("not caught: " << line.text);
    }
    CHECK(spoiled >= 200);
    CHECK(caught == spoiled);
}
