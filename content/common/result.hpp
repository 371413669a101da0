// What a call gives back when its input comes from outside: a value, every problem found, or both.
// A problem is written for the teacher: where it is, what happened, what to do.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace wrenlet {

struct Problem {
    enum class Weight { warning, error };

    std::string where;    // file and place, such as "farm.zip, pack.json, word 12"
    std::string what;     // one plain sentence
    std::string way_out;  // one plain sentence, or empty
    Weight weight = Weight::error;
};

/// "where: what way_out", for a console or a log.
std::string sentence(const Problem& problem);

/// True iff one of the problems is an error.
bool anyError(const std::vector<Problem>& problems);

/// A value, with warnings at most; or no value, with one error at least.
template <class T>
class Result {
  public:
    Result(T value, std::vector<Problem> warnings = {})
        : value_(std::move(value)), problems_(std::move(warnings)) {}
    Result(Problem problem) { problems_.push_back(std::move(problem)); }
    Result(std::vector<Problem> problems) : problems_(std::move(problems)) {}

    bool ok() const { return value_.has_value(); }
    /// REQUIRES: ok().
    T& value() { return *value_; }
    const T& value() const { return *value_; }
    const std::vector<Problem>& problems() const { return problems_; }

  private:
    std::optional<T> value_;
    std::vector<Problem> problems_;
};

/// A result with nothing to give but success.
struct Done {};

}  // namespace wrenlet
