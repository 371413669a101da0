#include "editor/voice/another_word.hpp"

#include <algorithm>
#include <vector>

#include "editor/voice/added_vowel.hpp"

namespace wrenlet::desk {

std::optional<Finding> anotherWord(const Pcm& spoken, const pack::VoiceNeed& need, WordEar* ear,
                                   std::span<const SaidWord> others) {
    if (ear == nullptr || need.sounds.size() < 2 || isWithoutVowel(need)) return std::nullopt;
    std::vector<SaidWord> compared;
    std::copy_if(others.begin(), others.end(), std::back_inserter(compared),
                 [&](const SaidWord& other) {
                     return !other.sounds.empty() && !speech::sameSounds(other.sounds, need.sounds);
                 });
    const auto judged = ear->judge(spoken, need.sounds, compared);
    if (!judged || judged->margin > kAnotherBelow) return std::nullopt;
    return Finding{Trouble::another_word, 0, 0, 0, compared[judged->likeliest].text};
}

}  // namespace wrenlet::desk
