// A hands-free take: hears the end of speech and keeps what was said, with the moment before it.
// The booth makes one for each text, feeds it the microphone's blocks, and checks what it took.
#pragma once

#include "content/pack/pack_builder.hpp"
#include "editor/voice/endpoint.hpp"
#include "editor/voice/recording.hpp"

namespace wrenlet::desk {

class HandsFree {
  public:
    /// `room_db`: as an earlier one left it (roomDb()); below -99 the room is read first.
    HandsFree(int rate, const pack::VoiceNeed& need, double room_db = -100);

    Endpoint::State feed(std::span<const float> block);
    /// She pressed a key: what was heard so far is the take.
    void stop() { stopped_ = true; }

    Endpoint::State state() const { return stopped_ ? Endpoint::State::ended : endpoint_.state(); }
    double levelDb() const { return endpoint_.levelDb(); }
    double roomDb() const { return endpoint_.roomDb(); }
    /// What was heard, from 0.4 s before she began; complete once ended.
    const Pcm& take() const { return recording_.sound(); }

  private:
    Endpoint endpoint_;
    Recording recording_;
    bool stopped_ = false;
};

}  // namespace wrenlet::desk
