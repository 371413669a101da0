#include "content/practice/learner.hpp"

#include <algorithm>
#include <utility>

#include "content/practice/policy.hpp"
#include "content/practice/shield.hpp"

namespace wrenlet::practice {

bool isAmong(const Response& response, std::span<const LeftOut> left_out) {
    return std::any_of(left_out.begin(), left_out.end(), [&response](const LeftOut& one) {
        return one.session == response.session && one.tablet == response.tablet &&
               one.first <= response.sequence && response.sequence <= one.last;
    });
}

std::map<std::int64_t, int> answersByDay(std::span<const LeftOut> left_out) {
    std::map<std::int64_t, int> days;
    for (const LeftOut& one : left_out) days[one.day] += one.answers;
    return days;
}

Learner::Learner(std::shared_ptr<const ClassPriors> priors, std::vector<std::string> shields)
    : mastery_(std::move(priors), shields), shields_(std::move(shields)) {}

void Learner::enterSessionOf(const Response& response) {
    if (response.session == session_ && response.tablet == tablet_) return;
    tablet_ = response.tablet;
    session_ = response.session;
    counted_.clear();
    leaves_out_ = false;
    attention_.beginSession();
}

void Learner::leaveOut(const Response& response) {
    if (!leaves_out_) {
        LeftOut found{response.tablet, response.session, response.day, response.sequence, 0, 0};
        while (!counted_.empty() &&
               static_cast<std::size_t>(found.answers) + 1 < attention_.guessed()) {
            mastery_.takeBack(counted_.back().before);
            found.first = counted_.back().sequence;
            ++found.answers;
            counted_.pop_back();
        }
        counted_.clear();
        left_out_.push_back(std::move(found));
        leaves_out_ = true;
    }
    left_out_.back().last = response.sequence;
    ++left_out_.back().answers;
}

void Learner::add(const Response& response) {
    if (!response.isEvidence()) return;
    enterSessionOf(response);
    const double expected =
        chanceOfRight(mastery_.known(featuresOf(response.skill, response.turns_on)),
                      answeringAmong(response.choices.size()));
    const bool tells =
        response.isRight() || !isShielded(response.turns_on, response.means, shields_);
    attention_.add(glanceAt(response, expected, tells));
    if (attention_.state() == Attention::State::guessing) {
        leaveOut(response);
        return;
    }
    leaves_out_ = false;
    if (counted_.size() >= kAttending.most_kept) counted_.erase(counted_.begin());
    counted_.push_back({response.sequence, mastery_.before(response)});
    mastery_.add(response);
}

void Learner::hear(const Heard& heard) {
    counted_.clear();
    mastery_.hear(heard);
}

std::size_t Learner::bytes() const {
    std::size_t bytes = sizeof(*this) + mastery_.bytes() - sizeof(mastery_) + attention_.bytes() -
                        sizeof(attention_) + counted_.capacity() * sizeof(Counted) +
                        left_out_.capacity() * sizeof(LeftOut);
    for (const Counted& one : counted_)
        bytes += one.before.keys.capacity() * sizeof(FeatureKey) +
                 one.before.met.capacity() * sizeof(Mastery::Met);
    return bytes;
}

int Learner::notCounted() const {
    int answers = 0;
    for (const LeftOut& one : left_out_) answers += one.answers;
    return answers;
}

int Learner::notCounted(std::string_view tablet, std::int64_t session) const {
    int answers = 0;
    for (const LeftOut& one : left_out_)
        if (one.session == session && one.tablet == tablet) answers += one.answers;
    return answers;
}

}  // namespace wrenlet::practice
