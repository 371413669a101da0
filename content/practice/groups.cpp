#include "content/practice/groups.hpp"

#include <algorithm>
#include <map>
#include <optional>

namespace wrenlet::practice {
namespace {

/// What one child misses in one skill.
struct Gap {
    double width = 0;
    std::vector<const SoundLine*> missed;
};

/// By number: children and skills, so that trying places is cheap.
struct Gaps {
    std::vector<std::string> skills;         // in the order in which they are met
    std::vector<std::vector<Gap>> of_child;  // [child][skill]

    explicit Gaps(std::span<const ChildProgress> children) {
        std::map<std::string, std::size_t> numbers;
        for (const ChildProgress& child : children)
            for (const SoundLine& line : child.lines)
                if (numbers.emplace(line.cell.skill, skills.size()).second)
                    skills.push_back(line.cell.skill);
        for (const ChildProgress& child : children) {
            std::vector<Gap> gaps(skills.size());
            for (const SoundLine& line : child.lines) {
                if (line.said != Standing::missed) continue;
                Gap& gap = gaps[numbers[line.cell.skill]];
                gap.width = std::min(kMostGap, gap.width + line.evidence.reading.p_missed);
                gap.missed.push_back(&line);
            }
            of_child.push_back(std::move(gaps));
        }
    }
    double width(std::size_t child, std::size_t skill) const {
        return of_child[child][skill].width;
    }
    bool any(std::size_t child) const {
        return std::any_of(of_child[child].begin(), of_child[child].end(),
                           [](const Gap& gap) { return gap.width > 0; });
    }
    std::size_t sharedSounds(std::size_t a, std::size_t b, std::size_t skill) const {
        std::size_t shared = 0;
        for (const SoundLine* one : of_child[a][skill].missed)
            for (const SoundLine* other : of_child[b][skill].missed)
                shared += one->cell == other->cell;
        return shared;
    }
};

struct Table {
    std::size_t skill = 0;
    std::vector<std::size_t> children;
    std::vector<std::size_t> placed{};  // of them: by the teacher herself

    bool isPlaced(std::size_t child) const {
        return std::find(placed.begin(), placed.end(), child) != placed.end();
    }
};

double worthOf(const Table& table, const Gaps& gaps) {
    double worth = 0;
    for (std::size_t i = 0; i < table.children.size(); ++i) {
        const double width = gaps.width(table.children[i], table.skill);
        if (width <= 0 && !table.isPlaced(table.children[i])) return -1;
        worth += width;
        for (std::size_t j = 0; j < i; ++j)
            worth += kSharedSound * static_cast<double>(gaps.sharedSounds(
                                        table.children[i], table.children[j], table.skill));
    }
    return worth;
}

/// The worthiest table of `most` at the most out of these children; the widest gap first, then
/// whoever adds most. Nothing when fewer than `least` share any skill.
std::optional<Table> bestTable(const std::vector<std::size_t>& free, const Gaps& gaps,
                               std::size_t least, std::size_t most) {
    std::optional<Table> best;
    double best_worth = 0;
    for (std::size_t skill = 0; skill < gaps.skills.size(); ++skill) {
        Table table{skill, {}};
        std::vector<std::size_t> left;
        for (const std::size_t child : free)
            if (gaps.width(child, skill) > 0) left.push_back(child);
        while (!left.empty() && table.children.size() < most) {
            std::size_t pick = 0;
            double pick_worth = -1;
            for (std::size_t i = 0; i < left.size(); ++i) {
                Table with = table;
                with.children.push_back(left[i]);
                if (const double worth = worthOf(with, gaps); worth > pick_worth + 1e-9) {
                    pick_worth = worth;
                    pick = i;
                }
            }
            table.children.push_back(left[pick]);
            left.erase(left.begin() + static_cast<std::ptrdiff_t>(pick));
        }
        if (table.children.size() < least) continue;
        const double worth = worthOf(table, gaps) / static_cast<double>(table.children.size());
        if (worth > best_worth + 1e-9) {
            best_worth = worth;
            best = std::move(table);
        }
    }
    return best;
}

void take(std::vector<std::size_t>& from, const std::vector<std::size_t>& these) {
    std::erase_if(from, [&](std::size_t child) {
        return std::find(these.begin(), these.end(), child) != these.end();
    });
}

bool isAmong(const std::vector<std::string>& ids, const std::string& id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

/// Yesterday's tables with the children who still miss something in their skill, and those whom the
/// teacher put there.
std::vector<Table> stillThere(std::span<const SmallGroup> before,
                              std::span<const ChildProgress> children, const Gaps& gaps,
                              std::vector<std::size_t>& free) {
    std::vector<Table> tables;
    for (const SmallGroup& group : before) {
        const auto skill = std::find(gaps.skills.begin(), gaps.skills.end(), group.skill);
        if (skill == gaps.skills.end()) continue;
        Table table{static_cast<std::size_t>(skill - gaps.skills.begin()), {}};
        const std::size_t most =
            group.placed.empty() ? kMostInGroup : std::max(kMostInGroup, group.children.size());
        for (const std::size_t child : free)
            if (isAmong(group.placed, children[child].child.id)) table.placed.push_back(child);
        table.children = table.placed;
        for (const std::size_t child : free)
            if (isAmong(group.children, children[child].child.id) && !table.isPlaced(child) &&
                gaps.width(child, table.skill) > 0 && table.children.size() < most)
                table.children.push_back(child);
        const bool any_misses =
            std::any_of(table.children.begin(), table.children.end(),
                        [&](std::size_t child) { return gaps.width(child, table.skill) > 0; });
        if (table.children.size() < kLeastInGroup || !any_misses) continue;
        take(free, table.children);
        tables.push_back(std::move(table));
    }
    return tables;
}

void seatTheRest(std::vector<Table>& tables, const Gaps& gaps, std::vector<std::size_t>& free) {
    while (const auto table = bestTable(free, gaps, kLeastInGroup, kMostInGroup)) {
        take(free, table->children);
        tables.push_back(*table);
    }
    for (std::size_t i = 0; i < free.size();) {
        Table* best = nullptr;
        double most = 0;
        for (Table& table : tables)
            if (table.children.size() < kMostInGroup && gaps.width(free[i], table.skill) > most) {
                best = &table;
                most = gaps.width(free[i], table.skill);
            }
        if (best == nullptr) {
            ++i;
            continue;
        }
        best->children.push_back(free[i]);
        free.erase(free.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

/// Two children change places, the one change that is worth most at a time. Tables at which the
/// teacher placed somebody are left as they are.
void changePlaces(std::vector<Table>& tables, const Gaps& gaps) {
    for (int round = 0; round < 200; ++round) {
        double most = kMoved;
        std::size_t *one = nullptr, *other = nullptr;
        for (std::size_t a = 0; a < tables.size(); ++a)
            for (std::size_t b = a + 1; b < tables.size(); ++b) {
                if (!tables[a].placed.empty() || !tables[b].placed.empty()) continue;
                const double now = worthOf(tables[a], gaps) + worthOf(tables[b], gaps);
                for (std::size_t& left : tables[a].children)
                    for (std::size_t& right : tables[b].children) {
                        std::swap(left, right);
                        const double first = worthOf(tables[a], gaps);
                        const double second = worthOf(tables[b], gaps);
                        std::swap(left, right);
                        if (first < 0 || second < 0 || first + second - now < most) continue;
                        most = first + second - now;
                        one = &left;
                        other = &right;
                    }
            }
        if (one == nullptr) return;
        std::swap(*one, *other);
    }
}

}  // namespace

SmallGroup groupFor(const std::string& skill, std::span<const std::string> children,
                    std::span<const ChildProgress> progress) {
    SmallGroup group{skill, {}, {}};
    std::map<std::string, double> widths;
    for (const std::string& id : children) {
        const auto found = std::find_if(progress.begin(), progress.end(),
                                        [&](const auto& child) { return child.child.id == id; });
        if (found == progress.end() || widths.count(id) != 0) continue;
        double width = 0;
        for (const SoundLine& line : found->lines) {
            if (line.cell.skill != skill || line.said != Standing::missed) continue;
            width = std::min(kMostGap, width + line.evidence.reading.p_missed);
            auto sound = std::find_if(
                group.sounds.begin(), group.sounds.end(),
                [&](const SharedSound& shared) { return shared.turns_on == line.cell.turns_on; });
            if (sound == group.sounds.end())
                sound = group.sounds.insert(sound, {line.cell.turns_on, {}});
            sound->children.push_back(id);
        }
        widths[id] = width;
        group.children.push_back(id);
    }
    std::stable_sort(group.children.begin(), group.children.end(),
                     [&](const auto& a, const auto& b) { return widths[a] > widths[b]; });
    std::stable_sort(group.sounds.begin(), group.sounds.end(),
                     [](const SharedSound& a, const SharedSound& b) {
                         return a.children.size() > b.children.size();
                     });
    return group;
}

Grouping groupsOf(std::span<const ChildProgress> children, std::span<const SmallGroup> before) {
    const Gaps gaps(children);
    Grouping grouping;
    std::vector<std::size_t> free, without;
    for (std::size_t i = 0; i < children.size(); ++i) {
        const std::string& id = children[i].child.id;
        const bool is_placed =
            std::any_of(before.begin(), before.end(),
                        [&](const SmallGroup& group) { return isAmong(group.placed, id); });
        (gaps.any(i) || is_placed ? free : without).push_back(i);
    }
    std::vector<Table> tables = stillThere(before, children, gaps, free);
    seatTheRest(tables, gaps, free);
    changePlaces(tables, gaps);
    while (const auto pair = bestTable(free, gaps, 2, 2)) {
        take(free, pair->children);
        tables.push_back(*pair);
    }
    std::stable_sort(tables.begin(), tables.end(), [&](const Table& a, const Table& b) {
        return worthOf(a, gaps) > worthOf(b, gaps);
    });
    for (const Table& table : tables) {
        std::vector<std::string> ids;
        for (const std::size_t child : table.children) ids.push_back(children[child].child.id);
        grouping.groups.push_back(groupFor(gaps.skills[table.skill], ids, children));
        for (const std::size_t child : table.placed)
            grouping.groups.back().placed.push_back(children[child].child.id);
    }
    for (const std::size_t child : free)
        if (gaps.any(child))
            grouping.alone.push_back(children[child].child.id);
        else
            without.push_back(child);
    std::sort(without.begin(), without.end());
    for (const std::size_t child : without) {
        const auto& lines = children[child].lines;
        const bool is_sure = std::any_of(lines.begin(), lines.end(), [](const SoundLine& line) {
            return line.said != Standing::too_little;
        });
        (is_sure ? grouping.nothing : grouping.not_sure).push_back(children[child].child.id);
    }
    return grouping;
}

}  // namespace wrenlet::practice
