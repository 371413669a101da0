#include "editor/classlist/class_at_work.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "content/pack/badges.hpp"
#include "content/pack/picture_key.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

std::string freeBadgeIn(const std::set<std::string>& taken) {
    for (const pack::Badge& badge : pack::kBadges)
        if (taken.count(std::string(badge.id)) == 0) return std::string(badge.id);
    return "";
}

std::set<std::string> badgesOf(const pack::ClassList& list) {
    std::set<std::string> badges;
    for (const pack::Child& child : list.children) badges.insert(child.badge);
    return badges;
}

std::set<std::string> namesOf(const pack::ClassList& list) {
    std::set<std::string> names;
    for (const pack::Child& child : list.children) names.insert(child.name);
    return names;
}

/// The first letters of a family name, as many as `count`, whole UTF-8 letters.
std::string lead(const std::string& family, std::size_t count) {
    std::string text;
    for (std::size_t at = 0; at < family.size() && count > 0; --count) {
        const std::size_t size =
            std::max<std::size_t>(1, pack::letterSize(std::string_view(family).substr(at)));
        text += family.substr(at, size);
        at += size;
    }
    return text;
}

/// "Maya K.", with as few letters of the family name as tell her from `taken`; empty: none do.
std::string toldApart(const NewChild& child, const std::set<std::string>& taken) {
    for (std::size_t letters = 1; letters <= pack::kMostNameLetters; ++letters) {
        const std::string start = lead(child.family, letters);
        const bool is_whole = start.size() == child.family.size();
        const std::string name = child.given + " " + start + (is_whole ? "" : ".");
        if (taken.count(name) == 0) return name;
        if (is_whole) break;
    }
    return "";
}

Problem left(std::string_view where, const NewChild& child, std::string what, std::string way_out) {
    return {std::string(where) + (child.line > 0 ? ", line " + std::to_string(child.line) : ""),
            std::move(what), std::move(way_out), Problem::Weight::warning};
}

}  // namespace

const pack::Child* ClassAtWork::leftChild(std::string_view id) const {
    for (const pack::Child& child : list_.left)
        if (child.id == id) return &child;
    return nullptr;
}

void ClassAtWork::replace(pack::ClassList list) {
    const bool is_same =
        list.children == list_.children && list.left == list_.left && list.title == list_.title;
    list_ = std::move(list);
    if (!is_same) history_.startAnew();
}

void ClassAtWork::act(std::string said, std::vector<ClassEdit> edits) {
    history_.act(list_, {std::move(said), std::move(edits)});
}

std::size_t ClassAtWork::placeOf(std::string_view id) const {
    const auto found = std::find_if(list_.children.begin(), list_.children.end(),
                                    [&](const pack::Child& child) { return child.id == id; });
    return static_cast<std::size_t>(found - list_.children.begin());
}

template <class Change>
void ClassAtWork::changeChild(const std::string& id, std::string said, Change change) {
    const std::size_t at = placeOf(id);
    if (at == list_.children.size()) return;
    pack::Child child = list_.children[at];
    change(child);
    if (child == list_.children[at]) return;
    act(std::move(said), {PutChild{id, std::move(child), at}});
}

// Ids are drawn and not counted on, so that none is ever given twice, also by two desks or after a
// child is deleted.
std::string ClassAtWork::newId() {
    constexpr std::string_view kLetters = "abcdefghjkmnpqrstuvwxyz23456789";
    for (;;) {
        std::string id = "c-";
        for (int i = 0; i < 8; ++i)
            id += kLetters[random_.below(static_cast<std::uint32_t>(kLetters.size()))];
        if (child(id) == nullptr && leftChild(id) == nullptr) return id;
    }
}

std::vector<Problem> ClassAtWork::add(const std::vector<NewChild>& children, std::string_view where,
                                      std::string* first) {
    std::vector<Problem> problems;
    std::vector<ClassEdit> edits;
    std::set<std::string> names = namesOf(list_), badges = badgesOf(list_), rosters;
    std::map<std::string, int> alike;
    for (const NewChild& child : children) ++alike[child.given];
    for (const pack::Child& child : list_.children) rosters.insert(child.roster);
    std::size_t count = list_.children.size(), already = 0;
    std::string only;
    for (const NewChild& fresh : children) {
        if (!fresh.roster.empty() && !rosters.insert(fresh.roster).second) {
            ++already;
            continue;
        }
        std::string name = fresh.given;
        const bool is_taken = names.count(name) > 0 || alike[fresh.given] > 1;
        if (is_taken && !fresh.family.empty()) name = toldApart(fresh, names);
        if (name.empty() || names.count(name) > 0) {
            problems.push_back(left(
                where, fresh, fresh.given + " is in the class already.",
                "If this is another one, write a letter with the name: " + fresh.given + " B."));
            continue;
        }
        const std::string badge = freeBadgeIn(badges);
        if (badge.empty() || count >= pack::kMostChildren) {
            problems.push_back(
                left(where, fresh, fresh.given + " did not go in: all badges are given.",
                     "Take out who has left the class, then add " + fresh.given + " again."));
            continue;
        }
        pack::Child child;
        const auto was = std::find_if(list_.left.begin(), list_.left.end(), [&](const auto& one) {
            return !fresh.roster.empty() && one.roster == fresh.roster;
        });
        if (was != list_.left.end()) {
            child = *was;
            edits.push_back(PutLeft{child.id, {}, 0});
        } else {
            child.id = newId();
        }
        child.name = name;
        child.roster = fresh.roster;
        if (child.badge.empty() || badges.count(child.badge) > 0) child.badge = badge;
        names.insert(child.name);
        badges.insert(child.badge);
        if (edits.empty() || only.empty()) {
            only = child.name;
            if (first != nullptr) *first = child.id;
        }
        edits.push_back(PutChild{"", std::move(child), count++});
    }
    if (already > 0 && edits.empty() && problems.empty())
        problems.push_back({std::string(where), "All of these children are in the class already.",
                            "", Problem::Weight::warning});
    const std::size_t added = count - list_.children.size();
    act(added == 1 ? only + " added."
                   : wording::counted(std::int64_t(added), "child", "children") + " added.",
        std::move(edits));
    return problems;
}

void ClassAtWork::keepGivenNames(const std::vector<std::string>& ids) {
    std::vector<ClassEdit> edits;
    std::set<std::string> names = namesOf(list_);
    for (const std::string& id : ids) {
        const std::size_t at = placeOf(id);
        if (at == list_.children.size()) continue;
        pack::Child child = list_.children[at];
        const std::string given = child.name.substr(0, child.name.find(' '));
        if (given == child.name || !names.insert(given).second) continue;
        child.name = given;
        edits.push_back(PutChild{id, std::move(child), at});
    }
    act(wording::counted(std::int64_t(edits.size()), "name") + " shortened.", std::move(edits));
}

bool ClassAtWork::rename(const std::string& id, std::string_view name) {
    const std::string tidy = pack::tidied(name);
    if (!whyNoName(tidy).empty() || child(id) == nullptr) return false;
    if (tidy != child(id)->name && namesOf(list_).count(tidy) > 0) return false;
    changeChild(id, child(id)->name + " is called " + tidy + " now.",
                [&](pack::Child& child) { child.name = tidy; });
    return true;
}

void ClassAtWork::giveBadge(const std::string& id, std::string_view badge) {
    const pack::Badge* drawn = pack::badge(badge);
    const std::size_t at = placeOf(id);
    if (drawn == nullptr || at == list_.children.size() || list_.children[at].badge == badge)
        return;
    pack::Child child = list_.children[at];
    std::vector<ClassEdit> edits;
    std::string said = child.name + " has the " + std::string(drawn->name) + " now.";
    for (std::size_t i = 0; i < list_.children.size(); ++i) {
        if (list_.children[i].badge != badge) continue;
        pack::Child other = list_.children[i];
        other.badge = child.badge;
        said = child.name + " and " + other.name + " change badges.";
        edits.push_back(PutChild{other.id, std::move(other), i});
    }
    child.badge = badge;
    edits.push_back(PutChild{id, std::move(child), at});
    act(std::move(said), std::move(edits));
}

void ClassAtWork::giveKey(const std::string& id, const std::vector<std::string>& key) {
    const auto is_picture = [](const std::string& one) {
        return std::find(pack::kKeyPictures.begin(), pack::kKeyPictures.end(), one) !=
               pack::kKeyPictures.end();
    };
    const bool is_key = key.size() == pack::kKeyLength && key[0] != key[1] && is_picture(key[0]) &&
                        is_picture(key[1]);
    if (child(id) == nullptr || (!key.empty() && !is_key)) return;
    changeChild(id,
                key.empty() ? child(id)->name + " plays without a key."
                            : child(id)->name + " has the key " + key[0] + ", then " + key[1] + ".",
                [&](pack::Child& child) { child.key = key; });
}

void ClassAtWork::giveKeyByChance(const std::string& id) {
    constexpr auto kCount = static_cast<std::uint32_t>(pack::kKeyPictures.size());
    std::vector<std::string> key;
    const auto isTaken = [&] {
        return std::any_of(list_.children.begin(), list_.children.end(),
                           [&](const pack::Child& child) { return child.key == key; });
    };
    for (int tries = 0; tries < 200; ++tries) {
        const std::uint32_t one = random_.below(kCount);
        const std::uint32_t other = (one + 1 + random_.below(kCount - 1)) % kCount;
        key = {std::string(pack::kKeyPictures[one]), std::string(pack::kKeyPictures[other])};
        if (!isTaken()) break;
    }
    giveKey(id, key);
}

void ClassAtWork::setShields(const std::string& id, const std::vector<std::string>& shields,
                             bool on, std::string_view said) {
    if (child(id) == nullptr) return;
    changeChild(
        id,
        child(id)->name + ": " + std::string(said) + (on ? " shielded." : " no longer shielded."),
        [&](pack::Child& child) {
            for (const std::string& shield : shields) {
                auto& all = child.shields;
                const auto at = std::find(all.begin(), all.end(), shield);
                if (on && at == all.end()) all.push_back(shield);
                if (!on && at != all.end()) all.erase(at);
            }
        });
}

void ClassAtWork::leave(const std::string& id) {
    const pack::Child* goes = child(id);
    if (goes == nullptr || list_.left.size() >= pack::kMostLeft) return;
    act(goes->name + " has left the class. The answers are kept.",
        {PutChild{id, {}, 0}, PutLeft{"", *goes, list_.left.size()}});
}

bool ClassAtWork::comeBack(const std::string& id) {
    const pack::Child* was = leftChild(id);
    if (was == nullptr || list_.children.size() >= pack::kMostChildren) return false;
    pack::Child child = *was;
    if (badgesOf(list_).count(child.badge) > 0) child.badge = freeBadge();
    if (child.badge.empty()) return false;
    const std::string said = child.name + " is back in the class.";
    act(said, {PutLeft{id, {}, 0}, PutChild{"", std::move(child), list_.children.size()}});
    return true;
}

std::string ClassAtWork::freeBadge() const {
    return freeBadgeIn(badgesOf(list_));
}

const pack::Child* ClassAtWork::sharesBadge(const pack::Child& child) const {
    for (const pack::Child& other : list_.children)
        if (other.id != child.id && other.badge == child.badge) return &other;
    return nullptr;
}

}  // namespace wrenlet::desk
