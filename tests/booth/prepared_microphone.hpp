// A microphone in a quiet room that plays prepared takes, a fiftieth of a second at each asking.
#pragma once

#include <deque>
#include <vector>

#include "content/common/random.hpp"
#include "editor/booth/microphone.hpp"
#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

inline constexpr std::size_t kHeardInAStep = kClipRate / 50;

class PreparedMicrophone final : public Microphone {
  public:
    Result<int> start() override {
        ++starts;
        if (is_missing) return Problem{"Microphone", "No microphone found.", "Plug one in."};
        return kClipRate;
    }
    void stop() override { ++stops; }
    std::vector<float> heard() override {
        std::vector<float> samples;
        for (std::size_t i = 0; i < kHeardInAStep; ++i) {
            const float noise = (float(random_.below(2001)) - 1000) / 1000 * 0.0004f;
            float sample = noise;
            if (!to_come.empty()) {
                sample += to_come.front();
                to_come.pop_front();
            }
            samples.push_back(sample);
        }
        return samples;
    }
    void say(const Pcm& sound, double gain = 1) {
        for (const float sample : sound.samples) to_come.push_back(sample * float(gain));
    }
    void wait(double seconds) {
        to_come.insert(to_come.end(), std::size_t(seconds * kClipRate), 0.f);
    }

    std::deque<float> to_come;
    bool is_missing = false;
    int starts = 0, stops = 0;

  private:
    Random random_{3};
};

}  // namespace wrenlet::desk
