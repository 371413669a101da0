#include "tests/simulator/run.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <sstream>

#include "tests/simulator/plain_policies.hpp"
#include "tests/simulator/simulate.hpp"

using namespace wrenlet;
using namespace wrenlet::simulator;

TEST_CASE("Simulator: the number of threads makes no difference, seeds do") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    Simulation simulation;
    simulation.children = 25;
    simulation.generators = {Generator::confusions};
    simulation.policies = {"random", "bkt"};
    const auto text = [&](int threads) {
        std::ostringstream out;
        printJson(out, simulate(bank, simulation, threads));
        return out.str();
    };
    const std::string alone = text(1);
    CHECK(alone == text(3));
    CHECK(alone.find("\"policy\": \"random\"") != std::string::npos);
    simulation.seeds = Seeds::judge;
    CHECK(alone != text(2));
}

TEST_CASE("Simulator: no item within 60 answers, no answer place three times running") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    std::map<int, std::map<int, int>> last;  // by child, item: its answer's number
    std::map<int, int> asked, running, place_before;
    bool learned_ids = true;
    runClass(bank, {Generator::graded, Seeds::tune, 0, 3}, makeThompson(), {},
             [&](int child, int item, const practice::Response& response) {
                 const int now = ++asked[child];
                 CHECK(response.sequence == now);
                 if (const auto before = last[child].find(item); before != last[child].end())
                     CHECK(now - before->second > kApart);
                 last[child][item] = now;
                 const exercise::Item& question = bank.items[static_cast<std::size_t>(item)].item;
                 learned_ids = learned_ids && response.item == question.id &&
                               response.choices.size() == question.choices.size();
                 if (exercise::keepsOrder(question) || now % kItems == 1) {
                     running[child] = 0;
                     return;
                 }
                 const auto at =
                     std::find(response.choices.begin(), response.choices.end(), response.right) -
                     response.choices.begin();
                 running[child] = at == place_before[child] ? running[child] + 1 : 1;
                 place_before[child] = static_cast<int>(at);
                 CHECK(running[child] <= 2);
             });
    CHECK(learned_ids);
    for (const auto& [child, count] : asked) CHECK(count == kSessions * kItems);
}

namespace {

/// Knows nothing of the child; sounds its alarm always or never.
class Watcher final : public Reader {
  public:
    explicit Watcher(bool alarm) : alarm_(alarm) {}
    double pRight(int) const override { return 0.5; }
    Reading row(int) const override { return {}; }
    void saw(int, const practice::Response&) override {}
    Held held() const override { return alarm_ ? Held::tapping : Held::listening; }

  private:
    const bool alarm_;
};

class Watch final : public Classroom {
  public:
    Watch(const Bank& bank, bool alarm) : plain_(makeRandom()(bank)), alarm_(alarm) {}
    Seat seat(const Pupil& pupil) override {
        return {plain_->seat(pupil).policy, std::make_shared<Watcher>(alarm_)};
    }
    bool watchesTapping() const override { return true; }

  private:
    const std::unique_ptr<Classroom> plain_;
    const bool alarm_;
};

}  // namespace

TEST_CASE("Simulator: alarms are counted for tappers and against honest children") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    for (const bool alarm : {true, false}) {
        const Tally tally =
            runClass(bank, {Generator::graded, Seeds::tune, 0, 6},
                     [alarm](const Bank& of) { return std::make_unique<Watch>(of, alarm); });
        CHECK(tally.value(Measure::tap_found) == (alarm ? 1 : 0));
        CHECK(tally.value(Measure::tap_false) == (alarm ? 1 : 0));
        CHECK(tally.value(Measure::log_loss) == doctest::Approx(0.693147));
        CHECK(tally.value(Measure::coverage80) == 1);
    }
    const Tally plain = runClass(bank, {Generator::graded, Seeds::tune, 0, 2}, makeRandom());
    CHECK(std::isnan(plain.value(Measure::tap_found)));
}
