#include "content/practice/scheduler.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

#include "content/common/random.hpp"
#include "content/practice/focus.hpp"
#include "content/practice/hard_rules.hpp"
#include "content/practice/policy.hpp"

namespace wrenlet::practice {
namespace {

using exercise::Item;
using exercise::Skill;
using Reason = Asked::Reason;

/// Among the skills that are played.
int teachingPlace(Skill skill) {
    int place = 0;
    for (const auto& row : exercise::skillTable()) {
        if (row.skill == skill) break;
        place += row.is_played ? 1 : 0;
    }
    return place;
}

/// Counts of first tries in a whole skill.
struct Tries {
    int seen = 0;
    int right = 0;
};
using TriesBySkill = std::map<std::string_view, Tries>;

TriesBySkill triesBySkill(const Mastery& mastery) {
    TriesBySkill tries;
    for (const auto& [cell, evidence] : mastery.cells()) {
        Tries& skill = tries[cell.skill];
        skill.seen += evidence.seen;
        skill.right += evidence.right;
    }
    return tries;
}

double successInSkill(const Tries& tries, Skill skill) {
    const double before =
        kPolicy.first_skill_success - kPolicy.later_skill_step * teachingPlace(skill);
    return (tries.right + kPolicy.skill_prior_tries * before) /
           (tries.seen + kPolicy.skill_prior_tries);
}

double unknownShare(double success, std::size_t choices) {
    const double guess = 1.0 / static_cast<double>(std::max<std::size_t>(2, choices));
    return 1 - std::clamp((success - guess) / (1 - guess), 0.0, 1.0);
}

/// What is known of one cell when the next item is chosen.
struct CellFacts {
    double success = 0;
    int asked_today = 0;
    bool is_new = true;
    bool missed_before_today = false;
    double overdue = -1;  // 0 from the day it is due, 1 when overdue by the longest wait
};

double overdueOf(const Evidence& evidence, std::int64_t day) {
    if (evidence.right_in_a_row == 0) return -1;
    const auto& waits = kPolicy.days_until_due;
    const auto last = static_cast<int>(std::size(waits)) - 1;
    const auto wait = waits[std::min(evidence.right_in_a_row - 1, last)];
    const std::int64_t over = day - evidence.last_day - wait;
    return over < 0 ? -1
                    : std::min(1.0, static_cast<double>(over) / static_cast<double>(waits[last]));
}

/// FNV-1a: an item's own number, whatever its place in the pack.
std::uint64_t hashOf(std::string_view text) {
    std::uint64_t hash = 0xcbf29ce484222325ull;
    for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3ull;
    return hash;
}

struct Candidate {
    std::size_t item = 0;
    const CellFacts* cell = nullptr;
    bool in_focus = false;
    double score = 0;
};

class Choice {
  public:
    Choice(const Situation& situation, const Mastery& mastery)
        : situation_(situation),
          mastery_(mastery),
          rules_(situation),
          today_(triesToday(situation)),
          seed_(stepSeed(situation.seed, static_cast<std::uint64_t>(situation.asked_so_far))),
          tries_(triesBySkill(mastery)) {
        for (const std::string& id : focusOf(situation, mastery))
            if (const auto skill = exercise::skillFromId(id)) focus_.push_back(*skill);
        double day = kPolicy.good_day;
        for (const Response* response : today_)
            day += kPolicy.day_weight * ((response->isRight() ? 1 : 0) - day);
        floor_ =
            std::clamp(kPolicy.floor + kPolicy.good_day - day, kPolicy.floor, kPolicy.floor_most);
    }

    std::optional<Asked> choose();

  private:
    bool wantsSureOne() const {
        return situation_.last_ones || situation_.asked_so_far < kPolicy.warm_up_items;
    }
    const CellFacts& factsOf(const Item& item);
    std::vector<std::uint8_t> keptOrder(const Item& item) const;
    std::vector<std::uint8_t> freeOrder(const Item& item, Random& random) const;
    Candidate candidate(std::size_t index);
    double score(const Item& item, const CellFacts& cell) const;
    std::vector<Candidate> staying();
    std::vector<Candidate> allowed();
    Reason narrow(std::vector<Candidate>& candidates, Random& random) const;
    const Candidate& best(const std::vector<Candidate>& candidates) const;

    const Situation& situation_;
    const Mastery& mastery_;
    HardRules rules_;
    std::vector<const Response*> today_;
    std::uint64_t seed_;
    TriesBySkill tries_;
    std::vector<Skill> focus_;
    double floor_ = 0;
    std::map<std::tuple<Skill, std::string_view, exercise::Position>, CellFacts> cells_;
};

const CellFacts& Choice::factsOf(const Item& item) {
    const auto [found, is_new] =
        cells_.try_emplace({item.skill, item.turns_on.sound, item.turns_on.position});
    CellFacts& facts = found->second;
    if (!is_new) return facts;
    const Cell cell{std::string(exercise::rowOf(item.skill).id), item.turns_on};
    facts.success = successInSkill(tries_[exercise::rowOf(item.skill).id], item.skill);
    for (const Response* response : today_)
        if (response->skill == cell.skill && response->turns_on == cell.turns_on)
            ++facts.asked_today;
    const auto met = mastery_.cells().find(cell);
    if (met == mastery_.cells().end()) return facts;
    const Evidence& evidence = met->second;
    facts.is_new = false;
    facts.success = (evidence.right + kPolicy.cell_prior_tries * facts.success) /
                    (evidence.seen + kPolicy.cell_prior_tries);
    if (evidence.missed_since_right > 0) facts.success -= kPolicy.just_missed;
    facts.missed_before_today = evidence.missed_since_right > 0 && facts.asked_today == 0;
    facts.overdue = overdueOf(evidence, situation_.day);
    return facts;
}

/// The places at which the choices stood in the last item; empty when they were others.
std::vector<std::uint8_t> Choice::keptOrder(const Item& item) const {
    std::vector<std::uint8_t> order;
    if (today_.empty()) return order;
    for (const std::string& id : today_.back()->choices)
        for (std::size_t i = 0; i < item.choices.size(); ++i)
            if (item.choices[i].id == id) order.push_back(static_cast<std::uint8_t>(i));
    if (order.size() != item.choices.size()) order.clear();
    return order;
}

std::vector<std::uint8_t> Choice::freeOrder(const Item& item, Random& random) const {
    std::vector<std::uint8_t> order(item.choices.size());
    std::iota(order.begin(), order.end(), std::uint8_t{0});
    if (exercise::keepsOrder(item)) return order;
    random.shuffle(order);
    const auto size = static_cast<std::uint32_t>(order.size());
    const auto barred = rules_.barredPlace();
    if (size > 1 && barred && *barred < size && order[*barred] == item.answer)
        std::swap(order[*barred], order[(*barred + 1 + random.below(size - 1)) % size]);
    return order;
}

double Choice::score(const Item& item, const CellFacts& cell) const {
    const double throw_of_dice = Random(stepSeed(seed_, hashOf(item.id))).unit() * kPolicy.chance;
    // Where success is all that counts, chance only takes turns among like items.
    if (wantsSureOne()) return cell.success + 0.1 * throw_of_dice;
    const bool leaves = !today_.empty() && today_.back()->skill != exercise::rowOf(item.skill).id;
    return unknownShare(cell.success, item.choices.size()) -
           kPolicy.strain * std::max(0.0, floor_ - cell.success) -
           kPolicy.again_today * cell.asked_today - (leaves ? kPolicy.another_task : 0) +
           kPolicy.overdue * std::max(0.0, cell.overdue) + throw_of_dice;
}

Candidate Choice::candidate(std::size_t index) {
    const Item& item = situation_.items[index];
    const CellFacts& cell = factsOf(item);
    const bool in_focus = std::find(focus_.begin(), focus_.end(), item.skill) != focus_.end();
    return {index, &cell, in_focus, score(item, cell)};
}

std::vector<Candidate> Choice::staying() {
    std::vector<Candidate> candidates;
    if (!situation_.stay_with || *situation_.stay_with >= situation_.items.size()) return {};
    const Item& last = situation_.items[*situation_.stay_with];
    for (std::size_t i = 0; i < situation_.items.size(); ++i) {
        const Item& item = situation_.items[i];
        if (!(item.skill == last.skill) || !exercise::sameChoices(item, last)) continue;
        const auto order = keptOrder(item);
        if (order.empty()) continue;
        const Asked asked{i, order};
        if (rules_.stepsToAllow(item, asked.answerPlace(item)) == 0)
            candidates.push_back(candidate(i));
    }
    return candidates;
}

std::vector<Candidate> Choice::allowed() {
    std::vector<Candidate> candidates;
    int fewest_steps = 1'000;
    for (std::size_t i = 0; i < situation_.items.size(); ++i) {
        const Item& item = situation_.items[i];
        if (!exercise::isPlayed(item.skill)) continue;
        if (item.choices.empty() || item.answer >= item.choices.size()) continue;
        const bool is_fixed = item.choices.size() == 1 || exercise::keepsOrder(item);
        const int steps = rules_.stepsToAllow(
            item, is_fixed ? std::optional<std::size_t>(item.answer) : std::nullopt);
        if (steps > fewest_steps) continue;
        if (steps < fewest_steps) candidates.clear();
        fewest_steps = steps;
        candidates.push_back(candidate(i));
    }
    return candidates;
}

/// Leaves those that serve what the dice say, or the next purpose that anything serves.
Reason Choice::narrow(std::vector<Candidate>& candidates, Random& random) const {
    const auto keepIf = [&](const auto& serves) {
        if (std::none_of(candidates.begin(), candidates.end(), serves)) return false;
        candidates.erase(std::remove_if(candidates.begin(), candidates.end(),
                                        [&](const Candidate& one) { return !serves(one); }),
                         candidates.end());
        return true;
    };
    const double thrown = random.unit();
    const bool for_focus = thrown < kPolicy.focus_share;
    const bool for_missed = !for_focus && thrown < kPolicy.focus_share + kPolicy.missed_share;
    const auto in_focus = [](const Candidate& one) { return one.in_focus; };
    const auto missed = [](const Candidate& one) { return one.cell->missed_before_today; };
    const auto due = [](const Candidate& one) { return one.cell->overdue >= 0; };
    const auto is_new = [](const Candidate& one) { return one.cell->is_new; };
    if (for_focus && keepIf(in_focus)) return Reason::focus;
    if (for_missed && keepIf(missed)) return Reason::missed;
    if (!for_focus && (keepIf(due) || keepIf(is_new))) return Reason::due;
    if (keepIf(missed)) return Reason::missed;
    return keepIf(in_focus) ? Reason::focus : Reason::due;
}

const Candidate& Choice::best(const std::vector<Candidate>& candidates) const {
    return *std::max_element(candidates.begin(), candidates.end(),
                             [&](const Candidate& a, const Candidate& b) {
                                 if (a.score != b.score) return a.score < b.score;
                                 return situation_.items[a.item].id > situation_.items[b.item].id;
                             });
}

std::optional<Asked> Choice::choose() {
    Random random(seed_);
    auto candidates = allowed();
    if (candidates.empty()) return std::nullopt;
    const auto stays = staying();
    const Reason sure = situation_.last_ones ? Reason::ending : Reason::warm_up;

    if (!stays.empty()) {
        const Candidate& one = best(stays);
        if (!wantsSureOne() || one.score >= best(candidates).score - kPolicy.stay) {
            const Reason reason = wantsSureOne()                  ? sure
                                  : one.cell->missed_before_today ? Reason::missed
                                  : one.in_focus                  ? Reason::focus
                                                                  : Reason::due;
            return Asked{one.item, keptOrder(situation_.items[one.item]), reason};
        }
    }
    const Reason reason = wantsSureOne() ? sure : narrow(candidates, random);
    const Candidate& one = best(candidates);
    return Asked{one.item, freeOrder(situation_.items[one.item], random), reason};
}

}  // namespace

std::size_t Asked::answerPlace(const exercise::Item& item_asked) const {
    const auto found = std::find(order.begin(), order.end(), item_asked.answer);
    return static_cast<std::size_t>(found - order.begin());
}

std::optional<Asked> FirstScheduler::next(const Situation& situation) const {
    if (situation.mastery) return Choice(situation, *situation.mastery).choose();
    Mastery mastery;
    for (const Response& response : situation.history) mastery.add(response);
    return Choice(situation, mastery).choose();
}

}  // namespace wrenlet::practice
