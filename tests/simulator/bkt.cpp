#include "tests/simulator/bkt.hpp"

#include <algorithm>

#include "content/common/random.hpp"

namespace wrenlet::simulator {

namespace {

constexpr double kMastered = 0.95;
constexpr double kInvented = 8;  // answers in the sense of the start, of each kind
constexpr int kRounds = 30;

struct Sums {
    double known = 0, children = 0;
    double learned = 0, could_learn = 0;
    double slipped = 0, knew = 0;
    double guessed = 0, knew_not = 0;
};

/// Forward and backward over one sequence, its shares added to the sums. Nothing is forgotten.
void addSequence(const Sequence& answers, const BktCell& cell, Sums& sums) {
    const std::size_t n = answers.size();
    if (n == 0) return;
    const auto said = [&cell, &answers](std::size_t t, bool known) {
        const double right = known ? 1 - cell.slip : cell.guess;
        return answers[t] != 0 ? right : 1 - right;
    };
    std::vector<double> ahead(n);  // P(known at t | answers to t)
    std::vector<double> back_known(n, 1), back_not(n, 1), scale(n);
    double prior = cell.known;
    for (std::size_t t = 0; t < n; ++t) {
        const double known = prior * said(t, true), not_known = (1 - prior) * said(t, false);
        scale[t] = known + not_known;
        ahead[t] = known / scale[t];
        prior = ahead[t] + (1 - ahead[t]) * cell.learn;
    }
    for (std::size_t t = n - 1; t-- > 0;) {
        const double known = said(t + 1, true) * back_known[t + 1] / scale[t + 1];
        const double not_known = said(t + 1, false) * back_not[t + 1] / scale[t + 1];
        back_known[t] = known;
        back_not[t] = cell.learn * known + (1 - cell.learn) * not_known;
    }
    for (std::size_t t = 0; t < n; ++t) {
        const double known = ahead[t] * back_known[t];
        if (t == 0) {
            sums.known += known;
            sums.children += 1;
        }
        sums.knew += known;
        sums.knew_not += 1 - known;
        (answers[t] != 0 ? sums.guessed : sums.slipped) += answers[t] != 0 ? 1 - known : known;
        if (t + 1 < n) {
            sums.could_learn += 1 - known;
            sums.learned +=
                (1 - ahead[t]) * cell.learn * said(t + 1, true) * back_known[t + 1] / scale[t + 1];
        }
    }
}

class BktChild final : public Policy, public Reader {
  public:
    BktChild(const Bank& bank, std::shared_ptr<const BktModel> model)
        : bank_(bank), model_(std::move(model)) {
        for (const BktCell& cell : *model_) known_.push_back(cell.known);
    }

    int choose(const Moment& moment) override {
        Random random(moment.seed);
        std::vector<int> best;
        double best_known = -2;
        for (std::size_t i = 0; i < bank_.items.size(); ++i) {
            if (moment.resting[i] != 0) continue;
            const double known = at(bank_.cellOf(i));
            // Mastered ones only when nothing else is left, the surest last.
            const double worth = known < kMastered ? known : -known;
            if (worth > best_known) {
                best_known = worth;
                best.clear();
            }
            if (worth == best_known) best.push_back(static_cast<int>(i));
        }
        return best[random.below(static_cast<std::uint32_t>(best.size()))];
    }

    double pRight(int item) const override {
        const int cell = bank_.cellOf(static_cast<std::size_t>(item));
        return (*model_)[static_cast<std::size_t>(cell)].pRight(at(cell));
    }

    /// A row is what its items' cells are. Two states leave no range between them.
    Reading row(int row) const override {
        double sum = 0;
        const auto& items = bank_.components[static_cast<std::size_t>(row)].items;
        for (const int item : items) sum += at(bank_.cellOf(static_cast<std::size_t>(item)));
        const double known = sum / static_cast<double>(items.size());
        return {1 - known, known > 0.9 ? 1.0 : 0.0, known < 0.1 ? 0.0 : 1.0};
    }

    void saw(int item, const practice::Response& response) override {
        const auto cell = static_cast<std::size_t>(bank_.cellOf(static_cast<std::size_t>(item)));
        known_[cell] = (*model_)[cell].after(known_[cell], response.isRight());
    }
    void night() override {}

  private:
    double at(int cell) const { return known_[static_cast<std::size_t>(cell)]; }

    const Bank& bank_;
    const std::shared_ptr<const BktModel> model_;
    std::vector<double> known_;  // by row
};

/// Passes choices on; what was seen reaches the child's model by its reader.
class Chooser final : public Policy {
  public:
    explicit Chooser(std::shared_ptr<BktChild> child) : child_(std::move(child)) {}
    int choose(const Moment& moment) override { return child_->choose(moment); }
    void saw(int, const practice::Response&) override {}

  private:
    std::shared_ptr<BktChild> child_;
};

class BktClassroom final : public Classroom {
  public:
    BktClassroom(const Bank& bank, std::shared_ptr<const BktModel> model)
        : bank_(bank), model_(std::move(model)) {}
    Seat seat(const Pupil&) override {
        auto child = std::make_shared<BktChild>(bank_, model_);
        return {std::make_shared<Chooser>(child), child};
    }

  private:
    const Bank& bank_;
    const std::shared_ptr<const BktModel> model_;
};

}  // namespace

double BktCell::after(double p_known, bool right) const {
    const double did = p_known * (right ? 1 - slip : slip);
    const double did_not = (1 - p_known) * (right ? guess : 1 - guess);
    const double now = did / (did + did_not);
    return now + (1 - now) * learn;
}

BktCell fitBkt(std::span<const Sequence> sequences, BktCell start) {
    BktCell cell = start;
    for (int round = 0; round < kRounds; ++round) {
        Sums sums;
        for (const Sequence& answers : sequences) addSequence(answers, cell, sums);
        const auto share = [](double of, double all, double before) {
            return (of + kInvented * before) / (all + kInvented);
        };
        cell.known = std::clamp(share(sums.known, sums.children, start.known), 0.01, 0.99);
        cell.learn = std::clamp(share(sums.learned, sums.could_learn, start.learn), 0.001, 0.6);
        cell.slip = std::clamp(share(sums.slipped, sums.knew, start.slip), 0.005, 0.3);
        cell.guess = std::clamp(share(sums.guessed, sums.knew_not, start.guess), 0.02, 0.6);
    }
    return cell;
}

BktModel fitBkt(const Bank& bank, const std::vector<std::vector<std::pair<int, bool>>>& answers) {
    std::vector<std::vector<Sequence>> by_row(bank.rows);
    for (const auto& child : answers) {
        std::vector<Sequence> own(bank.rows);
        for (const auto& [item, right] : child)
            own[static_cast<std::size_t>(bank.cellOf(static_cast<std::size_t>(item)))].push_back(
                right);
        for (std::size_t row = 0; row < bank.rows; ++row)
            if (!own[row].empty()) by_row[row].push_back(std::move(own[row]));
    }
    BktModel model;
    for (const auto& sequences : by_row) model.push_back(fitBkt(sequences));
    return model;
}

MakeClassroom makeBkt(BktModel model) {
    auto shared = std::make_shared<const BktModel>(std::move(model));
    return [shared](const Bank& bank) { return std::make_unique<BktClassroom>(bank, shared); };
}

}  // namespace wrenlet::simulator
