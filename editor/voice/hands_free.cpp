#include "editor/voice/hands_free.hpp"

namespace wrenlet::desk {
namespace {

constexpr double kBefore = 0.4;   // s kept before speech, for the margin and for reading the room
constexpr double kNotRead = -99;  // dBFS

EndpointRules rulesFor(const pack::VoiceNeed& need) {
    using Kind = pack::VoiceNeed::Kind;
    return need.kind == Kind::sentence || need.kind == Kind::phrase ? kSentenceRules : kWordRules;
}

}  // namespace

HandsFree::HandsFree(int rate, const pack::VoiceNeed& need, double room_db)
    : endpoint_(room_db < kNotRead ? Endpoint(rate, rulesFor(need))
                                   : Endpoint(rate, rulesFor(need), room_db)),
      recording_(rate) {}

Endpoint::State HandsFree::feed(std::span<const float> block) {
    if (state() == Endpoint::State::ended) return state();
    recording_.add(block);
    const Endpoint::State now = endpoint_.feed(block);
    if (now == Endpoint::State::reading_room || now == Endpoint::State::waiting)
        recording_.keepLast(kBefore);
    return now;
}

}  // namespace wrenlet::desk
