#include "tests/simulator/elo.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "content/common/random.hpp"

namespace wrenlet::simulator {

namespace {

constexpr double kTarget = 0.85;
// How far an answer moves a rating: most at first (Pelánek's a / (1 + b n)).
constexpr double kFirstMove = 1.0, kSlowing = 0.05;
constexpr double kPriorSpread = 1.3;  // of a row's rating before any answer, for its range
constexpr double kSpreadSlowing = 0.6;

double logistic(double x) {
    return 1 / (1 + std::exp(-x));
}

double normalBelow(double x) {
    return 0.5 * std::erfc(-x / std::numbers::sqrt2);
}

struct Rating {
    double value = 0;
    int games = 0;

    void move(double by) {
        value += kFirstMove / (1 + kSlowing * games) * by;
        ++games;
    }
};

class EloChild final : public Reader {
  public:
    EloChild(const Bank& bank, std::shared_ptr<std::vector<Rating>> items)
        : bank_(bank), items_(std::move(items)), cells_(bank.rows) {
        own_.value = 1;
    }

    double pRight(int item) const override {
        const double n =
            static_cast<double>(bank_.items[static_cast<std::size_t>(item)].item.choices.size());
        return 1 / n + (1 - 1 / n) * logistic(lead(static_cast<std::size_t>(item)));
    }

    /// Elo knows no range: one that narrows with the games played in the row stands in for it.
    Reading row(int row) const override {
        const auto& items = bank_.components[static_cast<std::size_t>(row)].items;
        double sum = 0, games = 0;
        for (const int item : items) {
            const auto index = static_cast<std::size_t>(item);
            sum += lead(index);
            games += cells_[static_cast<std::size_t>(bank_.cellOf(index))].games;
        }
        const double mean = sum / static_cast<double>(items.size());
        const double spread = kPriorSpread / std::sqrt(1 + kSpreadSlowing * games /
                                                               static_cast<double>(items.size()));
        const double bar = std::log(kKnownShare / (1 - kKnownShare));
        return {normalBelow((bar - mean) / spread), logistic(mean - 1.2816 * spread),
                logistic(mean + 1.2816 * spread)};
    }

    void saw(int item, const practice::Response& response) override {
        const auto index = static_cast<std::size_t>(item);
        const double surprise = (response.isRight() ? 1 : 0) - pRight(item);
        own_.move(surprise);
        cells_[static_cast<std::size_t>(bank_.cellOf(index))].move(surprise);
        (*items_)[index].move(-surprise);
    }

  private:
    double lead(std::size_t item) const {
        return own_.value + cells_[static_cast<std::size_t>(bank_.cellOf(item))].value -
               (*items_)[item].value;
    }

    const Bank& bank_;
    const std::shared_ptr<std::vector<Rating>> items_;  // the class's
    Rating own_;
    std::vector<Rating> cells_;
};

class EloPolicy final : public Policy {
  public:
    EloPolicy(const Bank& bank, std::shared_ptr<EloChild> child)
        : bank_(bank), child_(std::move(child)) {}

    int choose(const Moment& moment) override {
        Random random(moment.seed);
        int best = -1;
        double best_apart = 2;
        for (std::size_t i = 0; i < bank_.items.size(); ++i) {
            if (moment.resting[i] != 0) continue;
            // A throw of the dice, so that like items take turns.
            const double apart =
                std::fabs(child_->pRight(static_cast<int>(i)) - kTarget) + 0.01 * random.unit();
            if (apart < best_apart) {
                best = static_cast<int>(i);
                best_apart = apart;
            }
        }
        return best;
    }
    void saw(int, const practice::Response&) override {}

  private:
    const Bank& bank_;
    const std::shared_ptr<EloChild> child_;
};

class EloClassroom final : public Classroom {
  public:
    explicit EloClassroom(const Bank& bank)
        : bank_(bank), items_(std::make_shared<std::vector<Rating>>(bank.items.size())) {}
    Seat seat(const Pupil&) override {
        auto child = std::make_shared<EloChild>(bank_, items_);
        return {std::make_shared<EloPolicy>(bank_, child), child};
    }

  private:
    const Bank& bank_;
    const std::shared_ptr<std::vector<Rating>> items_;
};

}  // namespace

double eloExpected(double rating, double opponent) {
    return 1 / (1 + std::pow(10, (opponent - rating) / 400));
}

double eloAfter(double rating, double k, double score, double expected) {
    return rating + k * (score - expected);
}

MakeClassroom makeElo() {
    return [](const Bank& bank) { return std::make_unique<EloClassroom>(bank); };
}

}  // namespace wrenlet::simulator
