#include "game/scenes/telling.hpp"

#include <algorithm>

namespace wrenlet::game {

void Telling::begin(Voice& voice, const Script& script, Millis now) {
    script_ = script;
    Utterance words;
    for (const auto& line : script) words.push_back({line.clip, line.gap_before});
    speech_ = words.empty() ? Speech{} : voice.say(words, now);
    speech_.end = std::max(speech_.end, now);
}

void Telling::stop(Voice& voice, Millis now) {
    voice.hush();
    speech_.end = std::min(speech_.end, now);
    for (auto& timing : speech_.clips) {
        timing.begin = std::min(timing.begin, now);
        timing.end = std::min(timing.end, now);
    }
}

std::size_t Telling::reached(Millis now) const {
    std::size_t last = 0;
    for (std::size_t i = 0; i < speech_.clips.size() && i < script_.size(); ++i)
        if (now >= speech_.clips[i].begin) last = i;
    return last;
}

const Line* Telling::line(Millis now) const {
    if (isOver(now) || speech_.clips.empty() || now < speech_.clips.front().begin) return nullptr;
    return &script_[reached(now)];
}

Show Telling::show(Millis now) const {
    const Line* last = line(now);
    return last != nullptr ? last->show : Show{};
}

Millis Telling::shownSince(Millis now) const {
    Millis since = now;
    for (const auto& timing : speech_.clips)
        if (now >= timing.begin) since = timing.begin;
    return since;
}

std::optional<Millis> Telling::nextChange(Millis now) const {
    std::optional<Millis> next;
    const auto consider = [&](Millis moment) {
        if (moment > now && (!next || moment < *next)) next = moment;
    };
    for (const auto& timing : speech_.clips) {
        consider(timing.begin);
        consider(timing.end);
    }
    consider(speech_.end);
    return next;
}

}  // namespace wrenlet::game
