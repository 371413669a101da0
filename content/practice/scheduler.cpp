#include "content/practice/scheduler.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <unordered_map>

#include "content/common/random.hpp"
#include "content/exercise/change_tiles.hpp"
#include "content/practice/attention.hpp"
#include "content/practice/hard_rules.hpp"

namespace wrenlet::practice {
namespace {

using exercise::Item;
using exercise::Skill;
using Reason = Asked::Reason;
using Entry = QuestionBank::Entry;
using Question = QuestionBank::Question;

/// What is known of one question when the next item is chosen.
struct Outlook {
    double success = 0;  // P(right)
    double score = 0;    // without what is the item's own
    bool in_focus = false;
    bool missed_before = false;
    bool is_due = false;
    bool is_held_back = false;
};

struct Candidate {
    Entry entry;
    double score = 0;
};

bool isIn(const std::vector<Skill>& skills, Skill skill) {
    return std::find(skills.begin(), skills.end(), skill) != skills.end();
}

class Choice {
  public:
    Choice(const Policy& policy, const Situation& situation, const Mastery& mastery);
    std::optional<Asked> choose();

  private:
    bool wantsSureOne() const {
        return situation_.last_ones || situation_.sure_one ||
               situation_.asked_so_far < policy_.warm_up_items;
    }
    const Item& itemOf(const Entry& entry) const { return bank_.items()[entry.item]; }
    void lookAtPlaces();
    void holdBackNewSkills();
    void lookAhead();
    Outlook outlookOf(const Question& question) const;
    std::vector<std::uint8_t> keptOrder(const Item& item) const;
    std::vector<std::uint8_t> freeOrder(const Item& item, Random& random) const;
    Candidate candidate(const Entry& entry) const;
    /// Of a chain: on to a word it has not had, to its first word, or back to another.
    enum class Link : std::uint8_t { onward, closing, back };
    Link linkOf(const Item& item) const;
    std::vector<Candidate> staying() const;
    std::vector<Candidate> allowed() const;
    Reason reasonFor(const Candidate& one) const;
    const Candidate& best(const std::vector<Candidate>& candidates) const;

    const Policy& policy_;
    const Situation& situation_;
    const Mastery& mastery_;
    const QuestionBank& bank_;
    HardRules rules_;
    std::vector<const Response*> today_;
    std::uint64_t seed_;
    std::vector<Skill> focus_, pinned_;
    double pull_ = 0;

    /// Of a sound in its place, whatever the skill.
    struct Place {
        int today = 0;
        bool just_now = false;
        bool missed_before = false;
        double overdue = -1;  // 0 from the day it is due, 1 when overdue by the longest wait
    };
    std::vector<Place> places_;
    std::map<Skill, int> skill_today_;
    std::vector<Skill> held_back_;                       // new, and not today's to begin
    std::unordered_map<std::uint64_t, int> times_seen_;  // lately, by the item's key
    std::vector<Outlook> outlooks_;                      // by question
};

Choice::Choice(const Policy& policy, const Situation& situation, const Mastery& mastery)
    : policy_(policy),
      situation_(situation),
      mastery_(mastery),
      bank_(*situation.bank),
      rules_(situation),
      today_(triesToday(situation)),
      seed_(stepSeed(situation.seed, static_cast<std::uint64_t>(situation.asked_so_far))) {
    for (const std::string& id : situation.focus)
        if (const auto skill = exercise::skillFromId(id)) focus_.push_back(*skill);
    for (const std::string& id : situation.pinned)
        if (const auto skill = exercise::skillFromId(id)) pinned_.push_back(*skill);
    double right = policy_.aim * policy_.aim_tries;
    for (const Response* response : today_) right += response->isRight() ? 1 : 0;
    const double share = right / (policy_.aim_tries + static_cast<double>(today_.size()));
    pull_ = std::max(policy_.pull_least, policy_.pull + policy_.pull_slope * (policy_.aim - share));
    const std::size_t lately = std::min(situation.history.size(), policy_.lately);
    for (const Response& response : situation.history.last(lately))
        if (response.isEvidence()) ++times_seen_[QuestionBank::keyOf(response.item)];
    lookAtPlaces();
    holdBackNewSkills();
    lookAhead();
}

void Choice::holdBackNewSkills() {
    std::vector<Skill> hard;
    int begun = 0;
    for (const auto& row : exercise::skillTable()) {
        const Features features = featuresOf(row.id, {});
        const auto today = skill_today_.find(row.skill);
        const int times = today == skill_today_.end() ? 0 : today->second;
        if (mastery_.belief(features.task().back()).seen > times || isIn(pinned_, row.skill))
            continue;
        begun += times > 0;
        if (times == 0 &&
            aboutKnown(mastery_.sum(features.task_ease, features.task())) < policy_.easy_skill)
            hard.push_back(row.skill);
    }
    if (begun >= policy_.new_skills) held_back_ = std::move(hard);
}

void Choice::lookAtPlaces() {
    places_.resize(bank_.places().size());
    const auto placeOf = [&](const exercise::TurnsOn& turns_on) -> Place* {
        const auto number = bank_.placeOf(turns_on);
        return number ? &places_[*number] : nullptr;
    };
    for (std::size_t i = 0; i < today_.size(); ++i) {
        if (const auto skill = exercise::skillFromId(today_[i]->skill)) ++skill_today_[*skill];
        if (Place* place = placeOf(today_[i]->turns_on)) {
            ++place->today;
            place->just_now |= i + 2 >= today_.size();
        }
    }
    const auto& waits = policy_.days_until_due;
    const int last = static_cast<int>(std::size(waits)) - 1;
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const auto belief = mastery_.belief(bank_.features()[bank_.places()[i]]);
        Place& place = places_[i];
        place.missed_before = belief.missed_running > 0 && place.today == 0;
        if (belief.right_running == 0) continue;
        const auto wait = waits[std::min(belief.right_running - 1, last)];
        const auto over = static_cast<double>(situation_.day - belief.last_day - wait);
        if (over >= 0) place.overdue = std::min(1.0, over / static_cast<double>(waits[last]));
    }
}

void Choice::lookAhead() {
    std::vector<Gaussian> beliefs;
    beliefs.reserve(bank_.features().size());
    for (const Feature& feature : bank_.features()) beliefs.push_back(mastery_.belief(feature).now);
    outlooks_.reserve(bank_.questions().size());
    const auto sum = [&beliefs](double ease, std::span<const QuestionBank::Part> parts) {
        Gaussian z{ease, 0};
        for (const QuestionBank::Part& part : parts) {
            z.mean += part.share * beliefs[part.feature].mean;
            z.variance += part.share * part.share * beliefs[part.feature].variance;
        }
        return z;
    };
    struct Shares {
        double task, sound;
    };
    std::vector<Shares> known;
    // What there would be to gain if a skill or a sound were known a little better.
    std::map<Skill, double> reach_of_skill;
    std::vector<double> reach_of_place(places_.size());
    for (const Question& question : bank_.questions()) {
        const double t = aboutKnown(sum(question.task_ease, bank_.ofTask(question)));
        const double s = aboutKnown(sum(question.sound_ease, bank_.ofSound(question)));
        known.push_back({t, s});
        reach_of_skill[question.skill] += question.weight * s;
        reach_of_place[question.place] += question.weight * t;
    }
    const double a = policy_.alone;
    const auto toLearn = [this](double share) {
        return (1 - share) * (1 - policy_.middle + policy_.middle * 4 * share * (1 - share));
    };
    for (std::size_t i = 0; i < bank_.questions().size(); ++i) {
        const Question& question = bank_.questions()[i];
        const auto [t, s] = known[i];
        const Answering& answering = question.answering;
        Outlook outlook = outlookOf(question);
        outlook.success = answering.guess + (1 - answering.guess - answering.slip) * t * s;
        const double need = question.is_on_a_sound ? 1 : policy_.other_place;
        outlook.score += policy_.sound_need * need * toLearn(s) * (a + (1 - a) * t) *
                             reach_of_place[question.place] +
                         policy_.skill_need * toLearn(t) * (a + (1 - a) * s) *
                             std::min(policy_.most_reach, reach_of_skill[question.skill]) -
                         pull_ * (1 - outlook.success);
        outlooks_.push_back(outlook);
    }
}

/// All but what is believed.
Outlook Choice::outlookOf(const Question& question) const {
    const bool is_pinned = isIn(pinned_, question.skill);
    const Place& place = places_[question.place];
    Outlook outlook;
    outlook.in_focus = isIn(focus_, question.skill);
    outlook.is_held_back = isIn(held_back_, question.skill);
    outlook.missed_before = place.missed_before;
    outlook.is_due = place.overdue >= 0;
    const auto skill_today = skill_today_.find(question.skill);
    const bool leaves =
        !today_.empty() && today_.back()->skill != exercise::rowOf(question.skill).id;
    outlook.score = policy_.focus * outlook.in_focus + policy_.pinned * is_pinned +
                    policy_.missed * place.missed_before +
                    policy_.overdue * std::max(0.0, place.overdue) -
                    policy_.again_today * place.today - policy_.just_now * place.just_now -
                    policy_.skill_today *
                        (is_pinned || skill_today == skill_today_.end() ? 0 : skill_today->second) -
                    policy_.another_task * leaves;
    return outlook;
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

Candidate Choice::candidate(const Entry& entry) const {
    const Outlook& outlook = outlooks_[entry.question];
    const double thrown = Random(stepSeed(seed_, entry.key)).unit() * policy_.chance;
    // In doubt whether she listens, what she surely knows and is hard to guess.
    if (situation_.sure_one && !situation_.last_ones)
        return {entry,
                tellsListening(outlook.success, itemOf(entry).choices.size()) + 0.1 * thrown};
    const auto seen = times_seen_.find(entry.key);
    const int times = seen == times_seen_.end() ? 0 : std::min(3, seen->second);
    const double score = outlook.score - policy_.times_seen * times + thrown;
    // Where success is all that counts, the rest decides among what is as good as certain.
    if (wantsSureOne()) return {entry, std::min(outlook.success, policy_.sure) + .01 * score};
    return {entry, score};
}

Choice::Link Choice::linkOf(const Item& item) const {
    constexpr std::size_t kFewestToClose = 3;
    const auto& chain = situation_.chain;
    const auto found = std::find(chain.begin(), chain.end(), item.choices[item.answer].id);
    if (found == chain.end()) return Link::onward;
    return found == chain.begin() && chain.size() >= kFewestToClose ? Link::closing : Link::back;
}

std::vector<Candidate> Choice::staying() const {
    std::vector<Candidate> candidates;
    if (!situation_.stay_with || *situation_.stay_with >= bank_.items().size()) return {};
    const Item& last = bank_.items()[*situation_.stay_with];
    bool closes = false;
    for (const Entry& entry : bank_.entries()) {
        const Item& item = itemOf(entry);
        if (exercise::followsInChain(last, item)) {
            const Link link = linkOf(item);
            if (link == Link::back || rules_.stepsToAllow(item, entry.key, std::nullopt) > 0)
                continue;
            if (link == Link::closing && !closes) candidates.clear();
            if (link == Link::closing || !closes) candidates.push_back(candidate(entry));
            closes = closes || link == Link::closing;
            continue;
        }
        if (!(item.skill == last.skill) || !exercise::sameChoices(item, last)) continue;
        const auto order = keptOrder(item);
        if (order.empty()) continue;
        const Asked asked{entry.item, order};
        if (rules_.stepsToAllow(item, entry.key, asked.answerPlace(item)) == 0)
            candidates.push_back(candidate(entry));
    }
    return candidates;
}

std::vector<Candidate> Choice::allowed() const {
    std::vector<Candidate> candidates;
    int fewest_steps = 1'000;
    for (const Entry& entry : bank_.entries()) {
        if (outlooks_[entry.question].is_held_back) continue;
        const Item& item = itemOf(entry);
        const bool is_fixed = item.choices.size() == 1 || exercise::keepsOrder(item);
        const int steps = rules_.stepsToAllow(
            item, entry.key, is_fixed ? std::optional<std::size_t>(item.answer) : std::nullopt);
        if (steps > fewest_steps) continue;
        if (steps < fewest_steps) candidates.clear();
        fewest_steps = steps;
        candidates.push_back(candidate(entry));
    }
    return candidates;
}

Reason Choice::reasonFor(const Candidate& one) const {
    if (wantsSureOne())
        return situation_.last_ones  ? Reason::ending
               : situation_.sure_one ? Reason::sure
                                     : Reason::warm_up;
    const Outlook& outlook = outlooks_[one.entry.question];
    if (outlook.missed_before) return Reason::missed;
    return outlook.is_due && !outlook.in_focus ? Reason::due : Reason::focus;
}

const Candidate& Choice::best(const std::vector<Candidate>& candidates) const {
    return *std::max_element(candidates.begin(), candidates.end(),
                             [&](const Candidate& a, const Candidate& b) {
                                 if (a.score != b.score) return a.score < b.score;
                                 return itemOf(a.entry).id > itemOf(b.entry).id;
                             });
}

std::optional<Asked> Choice::choose() {
    Random random(seed_);
    const auto candidates = allowed();
    if (candidates.empty()) return std::nullopt;
    const auto stays = staying();
    if (!stays.empty()) {
        const Candidate& one = best(stays);
        if (!wantsSureOne() || one.score >= best(candidates).score - policy_.stay) {
            auto order = keptOrder(itemOf(one.entry));
            if (order.empty()) order = freeOrder(itemOf(one.entry), random);
            return Asked{one.entry.item, std::move(order), reasonFor(one)};
        }
    }
    const Candidate& one = best(candidates);
    return Asked{one.entry.item, freeOrder(itemOf(one.entry), random), reasonFor(one)};
}

}  // namespace

std::size_t Asked::answerPlace(const exercise::Item& item_asked) const {
    const auto found = std::find(order.begin(), order.end(), item_asked.answer);
    return static_cast<std::size_t>(found - order.begin());
}

std::optional<Asked> PracticeScheduler::next(const Situation& situation) const {
    if (situation.bank == nullptr) return std::nullopt;
    if (situation.mastery) return Choice(policy_, situation, *situation.mastery).choose();
    Mastery mastery;
    for (const Response& response : situation.history) mastery.add(response);
    return Choice(policy_, situation, mastery).choose();
}

}  // namespace wrenlet::practice
