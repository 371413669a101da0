#include "editor/classlist/move_child.hpp"

#include <algorithm>
#include <functional>
#include <optional>
#include <set>
#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/badges.hpp"
#include "content/practice/store.hpp"
#include "editor/classlist/class_file.hpp"
#include "editor/document/bring_in.hpp"
#include "editor/ear/ear_file.hpp"

namespace wrenlet::desk {

namespace {

using pack::Child;
using pack::ClassList;

std::optional<Child> childOf(const ClassList& list, const std::string& id) {
    for (const auto* side : {&list.children, &list.left})
        for (const Child& child : *side)
            if (child.id == id) return child;
    return std::nullopt;
}

/// Hers where it is free, else another; empty: none is.
std::string badgeAmong(const ClassList& list, const Child& child) {
    std::set<std::string> taken;
    for (const Child& other : list.children)
        if (other.id != child.id) taken.insert(other.badge);
    if (taken.count(child.badge) == 0) return child.badge;
    for (const pack::Badge& badge : pack::kBadges)
        if (taken.count(std::string(badge.id)) == 0) return std::string(badge.id);
    return {};
}

/// Why she cannot be put onto that list; nothing: she can.
std::optional<Problem> whyNot(const ClassList& list, const Child& child) {
    const std::string where = "the other class.json";
    if (list.isDeleted(child.id))
        return Problem{where, "This child was deleted there for good.",
                       "Add the child there as a new one."};
    const auto same = childOf(list, child.id);
    if (same && same->name != child.name)
        return Problem{where, same->name + " there goes by the same id.",
                       "Add the child there as a new one."};
    if (badgeAmong(list, child).empty())
        return Problem{where, "No badge is free there.", "Let somebody leave that class first."};
    return std::nullopt;
}

/// Her answers alone, file by file, as if brought on a stick.
Result<std::size_t> copyAnswers(const pack::Classroom& from, const std::string& id,
                                const pack::Classroom& to, const ClassList& list) {
    std::set<std::string> others;
    for (const practice::Response& response : practice::gather(from.tablets()).responses)
        if (response.child != id) others.insert(response.child);
    const std::vector<std::string> without(others.begin(), others.end());
    const auto folder = to.folder / "moving";
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    std::vector<Problem> problems;
    for (const auto& file : listFiles(from.tablets(), ".db")) {
        const auto hers = practice::snapshotWithout(file, without);
        if (!hers.ok()) continue;  // it brings nothing here either
        const auto written = writeWhole(folder / file.filename(), hers.value().bytes);
        problems.insert(problems.end(), written.problems().begin(), written.problems().end());
    }
    std::size_t answers = 0;
    if (problems.empty()) {
        const BroughtIn brought = bringIn(std::span(&folder, 1), to, list.deleted);
        answers = brought.answers;
        problems = brought.problems;
    }
    std::filesystem::remove_all(folder, error);
    if (anyError(problems)) return problems;
    return answers;
}

Result<std::size_t> copyMarks(const pack::Classroom& from, const std::string& id,
                              const pack::Classroom& to) {
    const auto here = openEar(from), there = openEar(to);
    if (!here.ok()) return here.problems();
    if (!there.ok()) return there.problems();
    std::vector<practice::Heard> known = there.value(), more;
    for (const practice::Heard& heard : here.value()) {
        if (heard.child != id) continue;
        const auto same = std::find(known.begin(), known.end(), heard);
        if (same != known.end())
            known.erase(same);
        else
            more.push_back(heard);
    }
    if (more.empty()) return std::size_t{0};
    const auto kept = changeEar(to, more);
    if (!kept.ok()) return kept.problems();
    return more.size();
}

}  // namespace

Result<ChildMoved> moveChild(const pack::Classroom& from, const std::string& id,
                             const pack::Classroom& to) {
    const auto here = pack::openClassList(from), there = pack::openClassList(to);
    if (!here.ok()) return here.problems();
    if (!there.ok()) return there.problems();
    const auto child = childOf(here.value(), id);
    if (!child) return Problem{"class.json", "Nobody here has the id " + id + ".", "Look it up."};
    if (auto problem = whyNot(there.value(), *child)) return *problem;

    // First what she did, then her place there, then leaving here: cut off anywhere, nothing is
    // lost and it can be done again.
    const auto answers = copyAnswers(from, id, to, there.value());
    if (!answers.ok()) return answers.problems();
    const auto marks = copyMarks(from, id, to);
    if (!marks.ok()) return marks.problems();
    ChildMoved moved{answers.value(), marks.value(), ""};
    const auto put = changeClassFile(to, [&](ClassList& list) {
        Child placed = *child;
        moved.badge = placed.badge = badgeAmong(list, *child);
        const auto is_her = [&](const Child& one) { return one.id == id; };
        std::erase_if(list.left, is_her);
        if (std::none_of(list.children.begin(), list.children.end(), is_her))
            list.children.push_back(placed);
    });
    if (!put.ok()) return put.problems();
    const auto left = changeClassFile(from, [&](ClassList& list) {
        const auto at = std::find_if(list.children.begin(), list.children.end(),
                                     [&](const Child& one) { return one.id == id; });
        if (at == list.children.end()) return;
        list.left.push_back(*at);
        list.children.erase(at);
    });
    if (!left.ok()) return left.problems();
    return moved;
}

}  // namespace wrenlet::desk
