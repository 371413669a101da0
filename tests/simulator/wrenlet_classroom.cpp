#include "tests/simulator/wrenlet_classroom.hpp"

#include "content/common/random.hpp"
#include "content/practice/focus.hpp"
#include "content/practice/learner.hpp"
#include "content/practice/place.hpp"
#include "content/practice/progress.hpp"
#include "content/practice/scheduler.hpp"

namespace wrenlet::simulator {
namespace {

/// The bank as the scheduler takes it, and what a row asks on the mean of its items.
struct Prepared {
    std::vector<exercise::Item> items;
    practice::QuestionBank questions;
    std::vector<practice::Features> features;  // by item
    std::vector<practice::Place> rows;

    explicit Prepared(const Bank& bank)
        : items(itemsOf(bank)), questions(items) {
        for (const exercise::Item& item : items)
            features.push_back(practice::featuresOf(exercise::rowOf(item.skill).id, item.turns_on));
        for (std::size_t row = 0; row < bank.rows; ++row)
            rows.push_back(rowOf(bank.components[row]));
    }

  private:
    static std::vector<exercise::Item> itemsOf(const Bank& bank) {
        std::vector<exercise::Item> items;
        for (const BankItem& one : bank.items) items.push_back(one.item);
        return items;
    }

    practice::Place rowOf(const Component& component) const {
        std::vector<practice::Features> asked;
        for (const int item : component.items)
            asked.push_back(features[static_cast<std::size_t>(item)]);
        return practice::Place(asked);
    }
};

class WrenletChild {
  public:
    WrenletChild(const Prepared& all, const Pupil& pupil,
                 std::shared_ptr<const practice::ClassPriors> priors)
        : prepared(all),
          id(pupil.id),
          shields(pupil.shields),
          learner(std::move(priors), shields) {}

    void saw(const practice::Response& response) {
        history.push_back(response);
        learner.add(response);
    }
    void read(const std::shared_ptr<const practice::ClassPriors>& priors) {
        learner = practice::Learner(priors, shields);
        for (const practice::Response& response : history) learner.add(response);
    }

    const Prepared& prepared;
    std::string id;
    std::vector<std::string> shields;
    std::vector<practice::Response> history;
    practice::Learner learner;
};

class WrenletReader final : public Reader {
  public:
    explicit WrenletReader(std::shared_ptr<WrenletChild> child) : child_(std::move(child)) {}

    double pRight(int item) const override {
        const auto index = static_cast<std::size_t>(item);
        const Prepared& prepared = child_->prepared;
        return practice::chanceOfRight(
            child_->learner.mastery().known(prepared.features[index]),
            practice::answeringAmong(prepared.items[index].choices.size()));
    }
    Reading row(int row) const override {
        const auto reading = practice::readingOf(
            child_->prepared.rows[static_cast<std::size_t>(row)].known(child_->learner.mastery()));
        return {reading.p_missed, reading.low, reading.high};
    }
    void saw(int, const practice::Response&) override {}
    Held held() const override {
        switch (child_->learner.attention().state()) {
            case practice::Attention::State::guessing:
                return Held::tapping;
            case practice::Attention::State::tired:
                return Held::tired;
            default:
                return Held::listening;
        }
    }

  private:
    std::shared_ptr<WrenletChild> child_;
};

class WrenletPolicy final : public Policy {
  public:
    WrenletPolicy(const practice::Policy& policy, std::shared_ptr<WrenletChild> child)
        : scheduler_(policy), child_(std::move(child)) {}

    int choose(const Moment& moment) override {
        practice::Situation situation;
        situation.bank = &child_->prepared.questions;
        situation.history = child_->history;
        situation.mastery = &child_->learner.mastery();
        situation.session = child_->history.empty() ? 0 : child_->history.back().session;
        if (moment.asked_today == 0) {
            ++situation.session;
            focus_ = practice::focusSkills(*situation.bank, child_->learner.mastery(), {});
        }
        situation.focus = focus_;
        situation.day = moment.day;
        situation.seed = moment.seed;
        situation.asked_so_far = moment.asked_today;
        situation.last_ones = moment.asked_today >= kItems - 2;
        situation.sure_one = moment.asked_today > 0 && child_->learner.attention().wantsSureOne();
        return static_cast<int>(scheduler_.next(situation)->item);
    }
    void saw(int, const practice::Response& response) override { child_->saw(response); }

  private:
    practice::PracticeScheduler scheduler_;
    std::shared_ptr<WrenletChild> child_;
    std::vector<std::string> focus_;
};

class RandomPolicy final : public Policy {
  public:
    explicit RandomPolicy(std::shared_ptr<WrenletChild> child) : child_(std::move(child)) {}

    int choose(const Moment& moment) override {
        std::vector<int> free;
        for (std::size_t item = 0; item < moment.resting.size(); ++item)
            if (moment.resting[item] == 0) free.push_back(static_cast<int>(item));
        return free[Random(moment.seed).below(static_cast<std::uint32_t>(free.size()))];
    }
    void saw(int, const practice::Response& response) override { child_->saw(response); }

  private:
    std::shared_ptr<WrenletChild> child_;
};

class WrenletClassroom final : public Classroom {
  public:
    using MakePolicy = std::function<std::shared_ptr<Policy>(std::shared_ptr<WrenletChild>)>;

    WrenletClassroom(std::shared_ptr<const Prepared> prepared, MakePolicy make)
        : prepared_(std::move(prepared)), make_(std::move(make)) {}

    Seat seat(const Pupil& pupil) override {
        children_.push_back(std::make_shared<WrenletChild>(*prepared_, pupil, priors_));
        return {make_(children_.back()), std::make_shared<WrenletReader>(children_.back())};
    }
    bool watchesTapping() const override { return true; }

    /// As the desk makes it of a classroom folder (practice/progress); the wider range is read of
    /// the same beliefs.
    std::vector<std::vector<SaidLine>> said() const override {
        pack::ClassList list;
        std::vector<practice::Response> responses;
        for (const auto& child : children_) {
            list.children.push_back({child->id, child->id, "", child->shields});
            responses.insert(responses.end(), child->history.begin(), child->history.end());
        }
        const auto progress = practice::progressOf(list, responses);
        std::vector<std::vector<SaidLine>> all;
        for (std::size_t i = 0; i < children_.size(); ++i) {
            all.emplace_back();
            for (const practice::SoundLine& line : progress[i].lines)
                all.back().push_back(saidOf(line, children_[i]->learner.mastery()));
        }
        return all;
    }

    void dayEnded() override {
        std::vector<const practice::Mastery*> all;
        for (const auto& child : children_) all.push_back(&child->learner.mastery());
        priors_ =
            std::make_shared<const practice::ClassPriors>(practice::ClassPriors::fittedTo(all));
        for (const auto& child : children_) child->read(priors_);
    }

  private:
    static SaidLine saidOf(const practice::SoundLine& line, const practice::Mastery& mastery) {
        const practice::Evidence& evidence = line.evidence;
        const int wrong = evidence.seen - evidence.right;
        const practice::Known known =
            mastery.known(practice::featuresOf(line.cell.skill, line.cell.turns_on));
        return {line.cell,
                evidence.seen,
                line.said == practice::Standing::missed,
                wrong > 0 && evidence.shielded == wrong,
                {evidence.reading.low, evidence.reading.high},
                practice::rangeOf(known, .9)};
    }

    std::shared_ptr<const Prepared> prepared_;
    MakePolicy make_;
    std::shared_ptr<const practice::ClassPriors> priors_ =
        std::make_shared<const practice::ClassPriors>();
    std::vector<std::shared_ptr<WrenletChild>> children_;
};

}  // namespace

MakeClassroom makeWrenlet(const practice::Policy& policy) {
    return [policy](const Bank& bank) -> std::unique_ptr<Classroom> {
        return std::make_unique<WrenletClassroom>(
            std::make_shared<const Prepared>(bank), [policy](std::shared_ptr<WrenletChild> child) {
                return std::make_shared<WrenletPolicy>(policy, std::move(child));
            });
    };
}

MakeClassroom makeRandomSameEstimator() {
    return [](const Bank& bank) -> std::unique_ptr<Classroom> {
        return std::make_unique<WrenletClassroom>(
            std::make_shared<const Prepared>(bank), [](std::shared_ptr<WrenletChild> child) {
                return std::make_shared<RandomPolicy>(std::move(child));
            });
    };
}

}  // namespace wrenlet::simulator
