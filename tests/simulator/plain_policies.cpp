#include "tests/simulator/plain_policies.hpp"

#include <algorithm>

#include "content/common/random.hpp"
#include "tests/simulator/counts_reader.hpp"
#include "tests/simulator/draw.hpp"

namespace wrenlet::simulator {

namespace {

using practice::Response;

/// One of the items that are not resting and that `fits`, or -1.
template <class Fits>
int anyOf(const Moment& moment, Random& random, Fits fits) {
    std::uint32_t count = 0;
    int chosen = -1;
    for (std::size_t i = 0; i < moment.resting.size(); ++i)
        if (moment.resting[i] == 0 && fits(i) && random.below(++count) == 0)
            chosen = static_cast<int>(i);
    return chosen;
}

class Fixed final : public Policy {
  public:
    explicit Fixed(const Bank& bank) : items_(bank.items.size()) {}
    int choose(const Moment& moment) override {
        const auto asked = static_cast<std::size_t>(moment.session * kItems + moment.asked_today);
        std::size_t item = asked * items_ / (kSessions * kItems) % items_;
        while (moment.resting[item] != 0) item = (item + 1) % items_;
        return static_cast<int>(item);
    }
    void saw(int, const Response&) override {}

  private:
    const std::size_t items_;  // the bank's items stand in teaching order
};

class AtRandom final : public Policy {
  public:
    int choose(const Moment& moment) override {
        Random random(moment.seed);
        return anyOf(moment, random, [](std::size_t) { return true; });
    }
    void saw(int, const Response&) override {}
};

class Leitner final : public Policy {
  public:
    explicit Leitner(const Bank& bank) : bank_(bank), cards_(bank.rows) {}

    int choose(const Moment& moment) override {
        Random random(moment.seed);
        for (int box = 1; box <= kBoxes; ++box) {
            const int item = anyOf(moment, random, [&](std::size_t i) {
                const Card& card = cardOf(i);
                return card.box == box && moment.day >= card.day + kDaysUntilDue[box];
            });
            if (item >= 0) return item;
        }
        for (std::size_t i = 0; i < bank_.items.size(); ++i)
            if (moment.resting[i] == 0 && cardOf(i).box == 0) return static_cast<int>(i);
        return anyOf(moment, random, [](std::size_t) { return true; });
    }

    void saw(int item, const Response& response) override {
        Card& card = cards_[static_cast<std::size_t>(bank_.cellOf(static_cast<std::size_t>(item)))];
        card.box = response.isRight() ? std::min(kBoxes, std::max(1, card.box) + 1) : 1;
        card.day = response.day;
    }

  private:
    static constexpr int kBoxes = 5;
    static constexpr std::int64_t kDaysUntilDue[kBoxes + 1] = {0, 0, 1, 2, 4, 8};
    struct Card {
        int box = 0;  // 0: new
        std::int64_t day = 0;
    };
    const Card& cardOf(std::size_t item) const {
        return cards_[static_cast<std::size_t>(bank_.cellOf(item))];
    }

    const Bank& bank_;
    std::vector<Card> cards_;
};

class Thompson final : public Policy {
  public:
    explicit Thompson(const Bank& bank) : bank_(bank), cells_(bank.rows) {}

    int choose(const Moment& moment) override {
        Random random(moment.seed);
        std::vector<double> promise;
        for (const Cell& cell : cells_) {
            const double success = drawBeta(random, cell.right, cell.wrong);
            promise.push_back(success * (1 - success));
        }
        double best = -1;
        for (std::size_t i = 0; i < bank_.items.size(); ++i)
            if (moment.resting[i] == 0) best = std::max(best, promise[cellAt(i)]);
        return anyOf(moment, random, [&](std::size_t i) { return promise[cellAt(i)] == best; });
    }

    void saw(int item, const Response& response) override {
        Cell& cell = cells_[cellAt(static_cast<std::size_t>(item))];
        (response.isRight() ? cell.right : cell.wrong) += 1;
    }

  private:
    struct Cell {
        double right = CountsReader::kRight, wrong = CountsReader::kWrong;
    };
    std::size_t cellAt(std::size_t item) const {
        return static_cast<std::size_t>(bank_.cellOf(item));
    }

    const Bank& bank_;
    std::vector<Cell> cells_;
};

class CountsClassroom final : public Classroom {
  public:
    using Make = std::function<std::shared_ptr<Policy>(const Bank&, const Pupil&)>;
    CountsClassroom(const Bank& bank, Make make) : bank_(bank), make_(std::move(make)) {}
    Seat seat(const Pupil& pupil) override {
        return {make_(bank_, pupil), std::make_shared<CountsReader>(bank_)};
    }

  private:
    const Bank& bank_;
    const Make make_;
};

}  // namespace

MakeClassroom withCounts(std::function<std::shared_ptr<Policy>(const Bank&, const Pupil&)> make) {
    return [make = std::move(make)](const Bank& bank) {
        return std::make_unique<CountsClassroom>(bank, make);
    };
}

MakeClassroom makeFixed() {
    return withCounts([](const Bank& bank, const Pupil&) { return std::make_shared<Fixed>(bank); });
}

MakeClassroom makeRandom() {
    return withCounts([](const Bank&, const Pupil&) { return std::make_shared<AtRandom>(); });
}

MakeClassroom makeLeitner() {
    return withCounts(
        [](const Bank& bank, const Pupil&) { return std::make_shared<Leitner>(bank); });
}

MakeClassroom makeThompson() {
    return withCounts(
        [](const Bank& bank, const Pupil&) { return std::make_shared<Thompson>(bank); });
}

}  // namespace wrenlet::simulator
