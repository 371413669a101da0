#include "editor/voice/wave_picture.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::desk {

WavePicture wavePicture(const CheckedTake& checked, std::size_t columns) {
    WavePicture picture;
    picture.columns.resize(columns);
    const std::vector<float>& samples = checked.take.samples;
    float top = 0;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        WavePicture::Column& column = picture.columns[i * columns / samples.size()];
        column.low = std::min(column.low, samples[i]);
        column.high = std::max(column.high, samples[i]);
        top = std::max(top, std::fabs(samples[i]));
    }
    for (WavePicture::Column& column : picture.columns) {
        if (top <= 0) break;
        column.low /= top;
        column.high /= top;
    }
    if (samples.empty()) return picture;
    const auto size = static_cast<double>(samples.size());
    picture.kept_begin = static_cast<double>(checked.kept.begin) / size;
    picture.kept_end = static_cast<double>(checked.kept.end) / size;
    for (std::size_t i = 0; i < checked.findings.size(); ++i) {
        const Finding& finding = checked.findings[i];
        if (finding.end_s <= finding.begin_s) continue;
        picture.marks.push_back({finding.begin_s / checked.take.seconds(),
                                 std::min(1.0, finding.end_s / checked.take.seconds()), i});
    }
    return picture;
}

std::size_t sampleAt(const CheckedTake& checked, double part) {
    const auto size = static_cast<double>(checked.take.samples.size());
    return static_cast<std::size_t>(std::clamp(part, 0.0, 1.0) * size);
}

}  // namespace wrenlet::desk
