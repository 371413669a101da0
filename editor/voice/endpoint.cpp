#include "editor/voice/endpoint.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::desk {
namespace {

constexpr double kFrame = 0.01;          // s
constexpr double kBeginsAbove = 10;      // dB over the room
constexpr double kLastsAbove = 6;        // dB over the room
constexpr double kSoftestRoom = -72;     // dBFS: a room can't be read as quieter
constexpr std::size_t kFramesBegin = 3;  // loud in a row: shorter is a click
constexpr double kUnsteady = 12;         // dB between soft and loud while reading the room
constexpr double kMostReading = 3;       // s; then the softest tenth is the room

double percentile(std::vector<double> values, double part) {
    const auto at = static_cast<std::ptrdiff_t>(part * static_cast<double>(values.size() - 1));
    std::nth_element(values.begin(), values.begin() + at, values.end());
    return values[static_cast<std::size_t>(at)];
}

}  // namespace

Endpoint::Endpoint(int rate, EndpointRules rules)
    : rate_(rate),
      rules_(rules),
      filter_(SteepFilter::highPass(kHumBelow, rate)),
      frame_(static_cast<std::size_t>(std::lround(kFrame * rate))) {}

Endpoint::Endpoint(int rate, EndpointRules rules, double room_db) : Endpoint(rate, rules) {
    room_db_ = std::max(room_db, kSoftestRoom);
    state_ = State::waiting;
}

double Endpoint::seconds() const {
    return static_cast<double>(frames_ * frame_) / static_cast<double>(rate_);
}

Endpoint::State Endpoint::feed(std::span<const float> block) {
    for (const float sample : block) {
        const double heard = filter_.next(std::isfinite(sample) ? static_cast<double>(sample) : 0);
        power_ += heard * heard;
        if (++in_frame_ < frame_) continue;
        level_db_ = 10 * std::log10(power_ / static_cast<double>(frame_) + 1e-10);
        power_ = 0;
        in_frame_ = 0;
        ++frames_;
        hear(level_db_);
    }
    return state_;
}

void Endpoint::hear(double db) {
    if (state_ == State::ended) return;
    if (state_ == State::reading_room) return readRoom(db);
    if (state_ == State::waiting) {
        loud_ = db > room_db_ + kBeginsAbove ? loud_ + 1 : 0;
        if (loud_ == 0) follow(db);
        if (loud_ < kFramesBegin) return;
        state_ = State::speaking;
        began_at_ = seconds() - static_cast<double>(loud_) * kFrame;
        ended_at_ = seconds();
        quiet_ = 0;
        return;
    }
    if (db > room_db_ + kLastsAbove) {
        quiet_ = 0;
        ended_at_ = seconds();
    } else {
        ++quiet_;
    }
    if (static_cast<double>(quiet_) * kFrame >= rules_.quiet_ends_s ||
        seconds() - began_at_ >= rules_.most_s)
        state_ = State::ended;
}

void Endpoint::readRoom(double db) {
    room_.push_back(db);
    if (static_cast<double>(room_.size()) * kFrame < rules_.room_s) return;
    const bool steady = percentile(room_, 0.9) - percentile(room_, 0.1) < kUnsteady;
    if (!steady && seconds() < kMostReading) {
        room_.erase(room_.begin());
        return;
    }
    room_db_ = std::max(percentile(room_, steady ? 0.5 : 0.1), kSoftestRoom);
    state_ = State::waiting;
}

// Down at once, up slowly: a lorry that passes must not make the next word unheard.
void Endpoint::follow(double db) {
    room_db_ = std::max(room_db_ + (db < room_db_ ? 0.05 : 0.01) * (db - room_db_), kSoftestRoom);
}

}  // namespace wrenlet::desk
