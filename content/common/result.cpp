#include "content/common/result.hpp"

#include <algorithm>

namespace wrenlet {

std::string sentence(const Problem& problem) {
    std::string text = problem.where.empty() ? problem.what : problem.where + ": " + problem.what;
    if (!problem.way_out.empty()) text += " " + problem.way_out;
    return text;
}

bool anyError(const std::vector<Problem>& problems) {
    return std::any_of(problems.begin(), problems.end(), [](const Problem& problem) {
        return problem.weight == Problem::Weight::error;
    });
}

}  // namespace wrenlet
