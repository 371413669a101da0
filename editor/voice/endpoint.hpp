// When she begins to speak and when she is done, heard from the microphone block by block: what
// lets her record sixty words without touching a key. It reads the room's noise first.
#pragma once

#include <span>
#include <vector>

#include "editor/voice/filter.hpp"

namespace wrenlet::desk {

/// What has to be heard decides how long a pause is only a pause.
struct EndpointRules {
    double room_s = 0.5;        // reading the room, before she may speak
    double quiet_ends_s = 0.5;  // quiet this long after speech is its end
    double most_s = 6;          // of speech; then it is ended, come what may
};
inline constexpr EndpointRules kWordRules{};
inline constexpr EndpointRules kSentenceRules{0.5, 0.9, 20};

class Endpoint {
  public:
    enum class State { reading_room, waiting, speaking, ended };

    explicit Endpoint(int rate, EndpointRules rules = kWordRules);
    /// For the takes that follow: with the room as it was read before (roomDb()).
    Endpoint(int rate, EndpointRules rules, double room_db);

    /// Any number of samples; the state after them. Once ended it stays so.
    State feed(std::span<const float> block);

    State state() const { return state_; }
    /// dBFS of the last 10 ms, without hum: for the meter.
    double levelDb() const { return level_db_; }
    /// dBFS of the room; -100 before it is known. It follows a room that grows louder or quieter.
    double roomDb() const { return room_db_; }
    /// s since the first block at which speech began and ended; 0 before they are known.
    double beganAt() const { return began_at_; }
    double endedAt() const { return ended_at_; }

  private:
    void hear(double db);
    void readRoom(double db);
    void follow(double db);
    double seconds() const;

    int rate_;
    EndpointRules rules_;
    SteepFilter filter_;
    std::size_t frame_;  // samples in 10 ms
    State state_ = State::reading_room;
    double power_ = 0;
    std::size_t in_frame_ = 0, frames_ = 0, loud_ = 0, quiet_ = 0;
    std::vector<double> room_;
    double level_db_ = -100, room_db_ = -100, began_at_ = 0, ended_at_ = 0;
};

}  // namespace wrenlet::desk
