#include "editor/voice/another_word.hpp"

#include <algorithm>
#include <vector>

#include "editor/voice/added_vowel.hpp"

namespace wrenlet::desk {

namespace {

bool canBeTold(const pack::VoiceNeed& need) {
    return need.sounds.size() >= 2 && !isWithoutVowel(need);
}

}  // namespace

std::optional<Finding> anotherWord(const Pcm& spoken, const pack::VoiceNeed& need, WordEar* ear,
                                   std::span<const SaidWord> others) {
    if (ear == nullptr || !canBeTold(need)) return std::nullopt;
    std::vector<SaidWord> compared;
    std::copy_if(others.begin(), others.end(), std::back_inserter(compared),
                 [&](const SaidWord& other) {
                     return !other.sounds.empty() && !speech::sameSounds(other.sounds, need.sounds);
                 });
    const auto judged = ear->judge(spoken, need.sounds, compared);
    if (!judged || judged->margin > kAnotherBelow) return std::nullopt;
    return Finding{Trouble::another_word, 0, 0, 0, compared[judged->likeliest].text};
}

std::vector<SaidWord> othersAround(std::span<const pack::VoiceNeed> queue, std::size_t at) {
    std::vector<SaidWord> others;
    const auto add = [&](const pack::VoiceNeed& need) {
        const auto same = [&](const SaidWord& other) {
            return speech::sameSounds(other.sounds, need.sounds);
        };
        if (others.size() < kMostOthers && canBeTold(need) &&
            !speech::sameSounds(need.sounds, queue[at].sounds) &&
            std::none_of(others.begin(), others.end(), same))
            others.push_back({need.text, need.sounds});
    };
    for (std::size_t away = 1; away < queue.size(); ++away) {
        if (at + away < queue.size()) add(queue[at + away]);
        if (away <= at) add(queue[at - away]);
    }
    return others;
}

}  // namespace wrenlet::desk
