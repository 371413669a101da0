// One figure of a benchmark as one JSON line: what was measured, beside what it is held against in
// the same run. Machines are noisy: the ratio is what counts.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

namespace wrenlet::bench {

inline void figure(const char* name, double value, const char* unit, double baseline) {
    std::printf(
        "{\"name\": \"%s\", \"value\": %.6g, \"unit\": \"%s\", \"baseline\": %.6g, \"ratio\": "
        "%.4g}\n",
        name, value, unit, baseline, baseline > 0 ? value / baseline : 0.0);
    std::fflush(stdout);
}

inline double seconds() {
    const auto now = std::chrono::steady_clock::now().time_since_epoch();
    return std::chrono::duration<double>(now).count();
}

inline double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values.empty() ? 0 : values[values.size() / 2];
}

}  // namespace wrenlet::bench
