#include "editor/classlist/class_merge.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "content/pack/badges.hpp"

namespace wrenlet::desk {

namespace {

/// A child and on which side she stands.
struct Placed {
    pack::Child child;
    bool has_left = false;
};
using ById = std::map<std::string, Placed>;

ById byId(const pack::ClassList& list) {
    ById all;
    for (const pack::Child& child : list.left) all[child.id] = {child, true};
    for (const pack::Child& child : list.children) all[child.id] = {child, false};
    return all;
}

std::vector<std::string> inOrder(const pack::ClassList& list) {
    std::vector<std::string> ids;
    for (const pack::Child& child : list.children) ids.push_back(child.id);
    return ids;
}

template <class Value>
const Value& either(const Value& base, const Value& mine, const Value& theirs) {
    return mine == base ? theirs : mine;
}

Placed together(const Placed& base, const Placed& mine, const Placed& theirs) {
    Placed made = mine;
    made.child.name = either(base.child.name, mine.child.name, theirs.child.name);
    made.child.badge = either(base.child.badge, mine.child.badge, theirs.child.badge);
    made.child.shields = either(base.child.shields, mine.child.shields, theirs.child.shields);
    made.child.key = either(base.child.key, mine.child.key, theirs.child.key);
    made.child.roster = either(base.child.roster, mine.child.roster, theirs.child.roster);
    made.has_left = either(base.has_left, mine.has_left, theirs.has_left);
    return made;
}

std::optional<Placed> merged(const Placed* base, const Placed* mine, const Placed* theirs) {
    if (mine != nullptr && theirs != nullptr)
        return together(base != nullptr ? *base : *theirs, *mine, *theirs);
    const Placed* only = mine != nullptr ? mine : theirs;
    if (only == nullptr) return std::nullopt;
    const bool is_removed =
        base != nullptr && base->child == only->child && base->has_left == only->has_left;
    return is_removed ? std::nullopt : std::optional<Placed>(*only);
}

void giveOwnBadges(std::vector<pack::Child>& children) {
    std::set<std::string> all, seen;
    for (const pack::Child& child : children) all.insert(child.badge);
    for (pack::Child& child : children) {
        if (seen.insert(child.badge).second) continue;
        for (const pack::Badge& badge : pack::kBadges) {
            const std::string id(badge.id);
            if (!all.insert(id).second) continue;
            child.badge = id;
            seen.insert(id);
            break;
        }
    }
}

}  // namespace

pack::ClassList mergeClassLists(const pack::ClassList& base, const pack::ClassList& mine,
                                const pack::ClassList& theirs) {
    pack::ClassList made = theirs;
    made.title = either(base.title, mine.title, theirs.title);
    made.pack = either(base.pack, mine.pack, theirs.pack);
    made.settings = either(base.settings, mine.settings, theirs.settings);
    made.children.clear();
    made.left.clear();
    const ById before = byId(base), ours = byId(mine), others = byId(theirs);
    const auto in = [](const ById& all, const std::string& id) {
        const auto at = all.find(id);
        return at == all.end() ? nullptr : &at->second;
    };
    made.deleted = theirs.deleted;
    for (const std::string& id : mine.deleted)
        if (!theirs.isDeleted(id)) made.deleted.push_back(id);
    std::set<std::string> done(made.deleted.begin(), made.deleted.end());
    const auto take = [&](const pack::Child& child) {
        if (!done.insert(child.id).second) return;
        const auto placed = merged(in(before, child.id), in(ours, child.id), in(others, child.id));
        if (placed) (placed->has_left ? made.left : made.children).push_back(placed->child);
    };
    const bool is_ours = inOrder(theirs) == inOrder(base);
    for (const pack::ClassList* list : {is_ours ? &mine : &theirs, is_ours ? &theirs : &mine}) {
        for (const pack::Child& child : list->children) take(child);
        for (const pack::Child& child : list->left) take(child);
    }
    giveOwnBadges(made.children);
    return made;
}

}  // namespace wrenlet::desk
