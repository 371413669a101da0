// Reads rows by their counts alone: a Beta posterior on the share of right answers, corrected for
// chance. What a teacher's tally could say, and the reader of policies that bring no model.
#pragma once

#include <map>
#include <tuple>
#include <vector>

#include "tests/simulator/classroom.hpp"

namespace wrenlet::simulator {

class CountsReader final : public Reader {
  public:
    /// Before any answer: three in four are right, as sure as after two answers.
    static constexpr double kRight = 1.5, kWrong = 0.5;
    static constexpr double kSlip = 0.05;  // wrong although known

    explicit CountsReader(const Bank& bank);
    double pRight(int item) const override;
    Reading row(int row) const override;
    void saw(int item, const practice::Response& response) override;

  private:
    struct Count {
        int seen = 0, right = 0;
    };
    const Bank& bank_;
    std::vector<Count> counts_;  // by row
    std::vector<double> guess_;  // by row: mean of 1 / (number of choices) over its items
    mutable std::map<std::tuple<int, int, double>, Reading> readings_;  // by right, seen, guess
};

}  // namespace wrenlet::simulator
