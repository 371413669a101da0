#include "tests/simulator/tally.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "content/common/random.hpp"

namespace wrenlet::simulator {

namespace {

constexpr int kResamples = 2000;
constexpr std::uint64_t kResampleSeed = 1979;  // any; fixed so that figures repeat
constexpr double kSure = 0.9;

}  // namespace

std::string_view nameOf(Measure measure) {
    constexpr std::string_view kNames[kMeasures] = {"weak_gain",
                                                    "total_gain",
                                                    "very_low_total_gain",
                                                    "bad_sessions",
                                                    "very_low_bad_sessions",
                                                    "top8_precision",
                                                    "missed_at_90",
                                                    "coverage80",
                                                    "log_loss",
                                                    "log_loss_child",
                                                    "log_loss_bkt",
                                                    "tap_found",
                                                    "tap_found_slow",
                                                    "tap_false",
                                                    "missed_at_first",
                                                    "right"};
    return kNames[static_cast<std::size_t>(measure)];
}

void Tally::addReading(const Reading& reading, double known) {
    const bool missed = known < kKnownShare;
    const auto bin = std::min(kBins - 1, static_cast<std::size_t>(reading.p_missed * kBins));
    bins_[bin].rows += 1;
    bins_[bin].chance += reading.p_missed;
    bins_[bin].missed += missed;
    if (reading.p_missed >= kSure) of(Measure::missed_at_90).add(missed);
    of(Measure::coverage80).add(reading.low <= known && known <= reading.high);
}

void Tally::addSaid(const SaidLine& line, double known) {
    only_shielded_ += line.only_shielded;
    shielded_missed_ += line.only_shielded && line.missed;
    std::size_t step = kSaidSteps;
    while (step > 0 && line.seen < kSaidFrom[step - 1]) --step;
    if (step == 0) return;
    Said& said = said_[step - 1];
    const bool missed = known < kKnownShare;
    const auto holds = [known](const practice::Range& range) {
        return range.low <= known && known <= range.high;
    };
    said.lines += 1;
    said.missed += missed;
    said.said += line.missed;
    said.both += missed && line.missed;
    said.in80 += holds(line.range80);
    said.in90 += holds(line.range90);
}

void Tally::add(const Tally& other) {
    only_shielded_ += other.only_shielded_;
    shielded_missed_ += other.shielded_missed_;
    for (std::size_t i = 0; i < kSaidSteps; ++i) {
        const auto sum = [&](double Said::*field) { said_[i].*field += other.said_[i].*field; };
        for (const auto field :
             {&Said::lines, &Said::missed, &Said::said, &Said::both, &Said::in80, &Said::in90})
            sum(field);
    }
    for (std::size_t truly = 0; truly < kWaysTruly; ++truly)
        for (std::size_t held = 0; held < kWaysHeld; ++held)
            sessions_[truly][held] += other.sessions_[truly][held];
    for (std::size_t truly = 0; truly < kWaysTruly; ++truly)
        tells_[truly].insert(tells_[truly].end(), other.tells_[truly].begin(),
                             other.tells_[truly].end());
    for (std::size_t i = 0; i < kMeasures; ++i) {
        shares_[i].sum += other.shares_[i].sum;
        shares_[i].count += other.shares_[i].count;
    }
    for (std::size_t i = 0; i < kBins; ++i) {
        bins_[i].rows += other.bins_[i].rows;
        bins_[i].chance += other.bins_[i].chance;
        bins_[i].missed += other.bins_[i].missed;
    }
}

double Tally::value(Measure measure) const {
    const Share& share = shares_[static_cast<std::size_t>(measure)];
    return share.count > 0 ? share.sum / share.count : std::numeric_limits<double>::quiet_NaN();
}

double Tally::tiredAtBest(double false_alarms) const {
    std::vector<double> fresh = tells_[static_cast<std::size_t>(Truly::fresh)];
    const std::vector<double>& tired = tells_[static_cast<std::size_t>(Truly::tired)];
    if (fresh.empty() || tired.empty()) return std::numeric_limits<double>::quiet_NaN();
    std::sort(fresh.begin(), fresh.end(), std::greater<>());
    const auto taken = static_cast<std::size_t>(false_alarms * static_cast<double>(fresh.size()));
    const double from = fresh[std::min(taken, fresh.size() - 1)];
    const auto told =
        std::count_if(tired.begin(), tired.end(), [from](double nats) { return nats > from; });
    return static_cast<double>(told) / static_cast<double>(tired.size());
}

double Tally::calibrationError() const {
    double apart = 0, rows = 0;
    for (const Bin& bin : bins_) {
        apart += std::fabs(bin.chance - bin.missed);
        rows += bin.rows;
    }
    return rows > 0 ? apart / rows : std::numeric_limits<double>::quiet_NaN();
}

Bounded bounded(std::span<const Tally> own, std::span<const Tally> other, const Figure& figure,
                Better better, double middle) {
    const auto sum = [](std::span<const Tally> tallies) {
        Tally all;
        for (const Tally& tally : tallies) all.add(tally);
        return all;
    };
    Bounded result;
    result.value = figure(sum(own), sum(other));
    const bool alone = own.data() == other.data();
    Random random(kResampleSeed);
    std::vector<double> drawn;
    for (int i = 0; i < kResamples; ++i) {
        Tally a, b;
        for (std::size_t n = 0; n < own.size(); ++n) {
            const std::size_t one = random.below(static_cast<std::uint32_t>(own.size()));
            a.add(own[one]);
            if (!alone) b.add(other[one]);
        }
        if (const double value = figure(a, alone ? a : b); !std::isnan(value))
            drawn.push_back(value);
    }
    if (drawn.empty()) {
        result.bound = std::numeric_limits<double>::quiet_NaN();
        return result;
    }
    std::sort(drawn.begin(), drawn.end());
    const double low = drawn[drawn.size() / 20], high = drawn[drawn.size() - 1 - drawn.size() / 20];
    if (better == Better::within)
        result.bound = std::fabs(low - middle) > std::fabs(high - middle) ? low : high;
    else
        result.bound = better == Better::higher ? low : high;
    return result;
}

}  // namespace wrenlet::simulator
