#include "content/practice/attention.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "content/exercise/skill.hpp"
#include "content/practice/policy.hpp"

namespace wrenlet::practice {
namespace {

/// Density of a bell curve, with a share of answers that come from anywhere (she was called away).
double density(double x, double mean, double variance) {
    const auto bell = [x](double at, double square) {
        const double off = x - at;
        return std::exp(-off * off / (2 * square)) / std::sqrt(2 * std::numbers::pi * square);
    };
    const double stray = kAttending.stray;
    return (1 - stray) * bell(mean, variance) +
           stray * bell(std::log(kAttending.usual_ms), kAttending.stray_variance);
}

/// How likely she goes from one way of answering to another between two answers: row to column.
constexpr std::array<std::array<double, Attention::kWays>, Attention::kWays> stepChances() {
    const auto& a = kAttending;
    const double fast = a.becomes_fast, own = a.becomes_own_pace;
    const double listens_on = 1 - fast - own;
    const double taps_on = 1 - a.listens_again - a.changes_pace;
    return {{
        {listens_on - a.becomes_quick - a.becomes_tired, a.becomes_quick, a.becomes_tired, fast,
         own},
        {a.slows_down, listens_on - a.slows_down, 0, fast, own},
        {a.wakes_up, 0, listens_on - a.wakes_up, fast, own},
        {a.listens_again, 0, 0, taps_on, a.changes_pace},
        {a.listens_again, 0, 0, a.changes_pace, taps_on},
    }};
}

/// The share of such questions that she is believed to know.
double knownOf(double expected, std::size_t choices) {
    if (choices < 2) return 0;
    const double even = 1.0 / static_cast<double>(choices);
    return std::clamp((expected - even) / (1 - even), 0.0, kAttending.most_known);
}

}  // namespace

double tellsListening(double expected, std::size_t choices) {
    if (choices < 2) return 0;
    const double even = 1.0 / static_cast<double>(choices);
    const double known = knownOf(expected, choices);
    return even * std::log(even / (known + (1 - known) * even)) - (1 - even) * std::log(1 - known);
}

Glance glanceAt(const Response& response, double expected, bool tells) {
    Glance glance{expected, response.isRight(), tells};
    glance.choices = std::max<std::size_t>(1, response.choices.size());
    const auto found = std::find(response.choices.begin(), response.choices.end(), response.chosen);
    if (found != response.choices.end())
        glance.place = static_cast<std::size_t>(found - response.choices.begin());
    if (const auto skill = exercise::skillFromId(response.skill))
        glance.kind = static_cast<std::size_t>(exercise::rowOf(*skill).mechanic);
    glance.log_ms = logTime(response.took_ms);
    glance.replayed = response.hearings > 1;
    return glance;
}

double Habit::of(std::size_t habit, std::size_t place, std::size_t choices) const {
    const double any = 1.0 / static_cast<double>(choices);
    if (habit == 0 || !has_last_ || last_ >= choices || choices < 2) return any;
    const bool is_same = place == last_;
    const double others = static_cast<double>(choices - 1);
    const double kept = kAttending.habit_kept;
    if (habit == 1) return is_same ? kept : (1 - kept) / others;
    return is_same ? 1 - kept : kept / others;
}

double Habit::likely(std::size_t place, std::size_t choices) const {
    double likely = 0;
    for (std::size_t habit = 0; habit < kHabits; ++habit)
        likely += weights_[habit] * of(habit, place, choices);
    return likely;
}

void Habit::touched(std::size_t place, std::size_t choices) {
    double total = 0;
    for (std::size_t habit = 0; habit < kHabits; ++habit) {
        weights_[habit] =
            std::pow(weights_[habit], kAttending.habit_memory) * of(habit, place, choices);
        total += weights_[habit];
    }
    for (double& weight : weights_) weight /= total;
    last_ = place;
    has_last_ = true;
}

Attention::Attention()
    : sure_(kAttending.sure_weight), shown_(kAttending.sure_weight * kAttending.sure_at_first) {
    beginSession();
}

void Attention::keep(std::size_t answers, double& sure, double& shown) const {
    for (std::size_t i = 0; i < answers; ++i) {
        const double kept = std::min(1.0, kAttending.sure_memory / (sure + heard_[i].sure));
        sure = kept * (sure + heard_[i].sure);
        shown = kept * (shown + heard_[i].shown);
    }
}

double Attention::keeps() const {
    double sure = sure_, shown = shown_;
    keep(heard_.size() - std::min(heard_.size(), kAttending.sure_after), sure, shown);
    return std::clamp(shown / sure, kAttending.least_kept, 1.0);
}

void Attention::beginSession() {
    keep(state_ == State::guessing ? heard_.size() - guessed() : heard_.size(), sure_, shown_);
    chances_ = {1 - kAttending.quick_at_first - kAttending.tired_at_first -
                    2 * kAttending.guessing_at_first,
                kAttending.quick_at_first, kAttending.tired_at_first, kAttending.guessing_at_first,
                kAttending.guessing_at_first};
    habit_ = {};
    heard_.clear();
    tiredness_ = {};
    state_ = State::listening;
    doubtful_ = 0;
    timing_.newSession();
    settled_ = timing_;
}

void Attention::add(const Glance& glance) {
    const double believed = knownOf(glance.expected, glance.choices);
    // Some children's beliefs promise more than their answers keep.
    const double known = believed * keeps();
    const double tired_known = known * kAttending.tired_share;
    const double by_habit = habit_.likely(glance.place, glance.choices);
    const bool tells = glance.tells && glance.choices > 1;
    const auto answered = [&](double share) {
        return tells ? (glance.right ? share : 0) + (1 - share) * by_habit : by_habit;
    };
    const Gaussian time = timing_.expected(glance.kind, 1 - known);
    const auto heard = [&glance](double often) { return glance.replayed ? often : 1 - often; };
    const double fast =
        .5 * density(glance.log_ms, std::log(kAttending.tapper_ms), kAttending.tapper_variance) +
        .5 * density(glance.log_ms, time.mean - kAttending.tapper_quicker,
                     time.variance + kAttending.tapper_variance);
    const double own = density(glance.log_ms, time.mean, time.variance);
    const std::array<double, kWays> likely = {
        answered(known) * own * heard(timing_.replays()),
        answered(known) * fast * heard(timing_.replays()),
        answered(tired_known) *
            density(glance.log_ms, time.mean + kAttending.tired_slower, time.variance) *
            heard(timing_.replays()),
        by_habit * fast * heard(kAttending.tapper_replays),
        by_habit * own * heard(kAttending.tapper_replays),
    };
    const double spread = settled_.spread();
    const double slower = glance.log_ms - settled_.expected(glance.kind, 1 - known).mean;
    const double farthest = kAttending.farthest * spread;
    tiredness_.add({tells, glance.right, known, 1.0 / static_cast<double>(glance.choices),
                    std::clamp(slower, -farthest, farthest), spread * spread});

    const auto steps = stepChances();
    std::array<double, kWays> next{};
    double total = 0;
    for (std::size_t to = 0; to < kWays; ++to) {
        for (std::size_t from = 0; from < kWays; ++from)
            next[to] += chances_[from] * steps[from][to];
        next[to] *= likely[to];
        total += next[to];
    }
    for (std::size_t way = 0; way < kWays; ++way) chances_[way] = next[way] / total;

    if (heard_.size() >= kAttending.most_kept) {
        heard_.front().teach(settled_);
        heard_.erase(heard_.begin());
    }
    const double against = likely[kListening];
    const bool is_sure = tells && believed >= kAttending.sure_from;
    const double even = 1.0 / static_cast<double>(glance.choices);
    heard_.push_back({{std::log(likely[kFast] / against), std::log(likely[kOwnPace] / against)},
                      glance.kind,
                      1 - known,
                      glance.log_ms,
                      glance.replayed,
                      is_sure ? believed : 0,
                      is_sure ? ((glance.right ? 1 : 0) - even) / (1 - even) : 0});
    habit_.touched(glance.place, glance.choices);
    const State before = state_;
    decide();
    if (state_ != State::guessing) {
        heard_.back().teach(timing_);
    } else if (before != State::guessing) {
        // What was guessed tells nothing of her own times.
        timing_ = settled_;
        for (std::size_t i = 0; i + guessed() < heard_.size(); ++i) heard_[i].teach(timing_);
    }
}

std::size_t Attention::guessed() const {
    std::size_t guessed = state_ == State::guessing ? 1 : 0;
    double best = -1e300;
    std::array<double, 2> sums{};
    for (std::size_t back = 1; back <= heard_.size(); ++back)
        for (std::size_t pace = 0; pace < sums.size(); ++pace) {
            sums[pace] += heard_[heard_.size() - back].for_guessing[pace];
            if (sums[pace] <= best) continue;
            best = sums[pace];
            guessed = back;
        }
    return guessed;
}

void Attention::decide() {
    const double chance = guessing();
    doubtful_ = chance >= kAttending.reminds_from ? doubtful_ + 1 : 0;
    if (state_ == State::guessing) {
        if (chance > kAttending.listens_below) return;
        // What came before she listened again is settled.
        heard_.erase(heard_.begin(), heard_.end() - 1);
        settled_ = timing_;
    }
    state_ = chance >= kAttending.guessing_from           ? State::guessing
             : chance >= kAttending.unsure_from           ? State::unsure
             : tiredness_.nats() >= kAttending.tired_from ? State::tired
                                                          : State::listening;
    if (state_ == State::guessing) tiredness_ = {};  // what was guessed tells nothing of it
}

std::string_view attentionWord(Attention::State state) {
    switch (state) {
        case Attention::State::unsure:
            return "unsure";
        case Attention::State::guessing:
            return "guessing";
        case Attention::State::tired:
            return "tired";
        case Attention::State::listening:
            break;
    }
    return "listening";
}

}  // namespace wrenlet::practice
