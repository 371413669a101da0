#include "tests/simulator/counts_reader.hpp"

#include "tests/simulator/beta.hpp"
#include "tests/simulator/draw.hpp"

namespace wrenlet::simulator {

CountsReader::CountsReader(const Bank& bank) : bank_(bank), counts_(bank.rows) {
    for (std::size_t row = 0; row < bank.rows; ++row) {
        double sum = 0;
        for (const int item : bank.components[row].items)
            sum += 1.0 / static_cast<double>(
                             bank.items[static_cast<std::size_t>(item)].item.choices.size());
        guess_.push_back(sum / static_cast<double>(bank.components[row].items.size()));
    }
}

double CountsReader::pRight(int item) const {
    const Count& count =
        counts_[static_cast<std::size_t>(bank_.cellOf(static_cast<std::size_t>(item)))];
    return (count.right + kRight) / (count.seen + kRight + kWrong);
}

Reading CountsReader::row(int row) const {
    const auto index = static_cast<std::size_t>(row);
    const Count& count = counts_[index];
    const double guess = guess_[index];
    const auto [found, is_new] = readings_.try_emplace({count.right, count.seen, guess});
    if (!is_new) return found->second;
    const double a = count.right + kRight, b = count.seen - count.right + kWrong;
    const double span = 1 - guess - kSlip;
    const auto known = [&](double right) { return clamp01((right - guess) / span); };
    return found->second = {betaBelow(guess + kKnownShare * span, a, b),
                            known(betaQuantile(0.1, a, b)), known(betaQuantile(0.9, a, b))};
}

void CountsReader::saw(int item, const practice::Response& response) {
    const BankItem& asked = bank_.items[static_cast<std::size_t>(item)];
    for (const int row : {asked.skill, asked.sound}) {
        if (!bank_.isRow(row)) continue;
        Count& count = counts_[static_cast<std::size_t>(row)];
        ++count.seen;
        count.right += response.isRight();
    }
}

}  // namespace wrenlet::simulator
