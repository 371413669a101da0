#include "content/speech/word_parts.hpp"

#include <algorithm>

#include "content/speech/syllable.hpp"

namespace wrenlet::speech {

namespace {

/// Costs of turning the first i sounds of one word into the first j of another.
class Costs {
  public:
    Costs(const Pronunciation& a, const Pronunciation& b)
        : width_(b.size() + 1), costs_((a.size() + 1) * width_) {
        for (std::size_t i = 0; i <= a.size(); ++i)
            for (std::size_t j = 0; j <= b.size(); ++j)
                costs_[i * width_ + j] = cheapest(a, b, i, j);
    }
    int at(std::size_t i, std::size_t j) const { return costs_[i * width_ + j]; }
    int changed(const Pronunciation& a, const Pronunciation& b, std::size_t i,
                std::size_t j) const {
        return at(i - 1, j - 1) + distance(a[i - 1].phoneme, b[j - 1].phoneme);
    }

  private:
    int cheapest(const Pronunciation& a, const Pronunciation& b, std::size_t i,
                 std::size_t j) const {
        if (i == 0) return static_cast<int>(j) * kSoundAdded;
        if (j == 0) return static_cast<int>(i) * kSoundAdded;
        return std::min(
            {changed(a, b, i, j), at(i - 1, j) + kSoundAdded, at(i, j - 1) + kSoundAdded});
    }

    std::size_t width_;
    std::vector<int> costs_;
};

}  // namespace

std::optional<OnsetRime> onsetAndRime(const Pronunciation& word) {
    if (syllableCount(word) != 1) return std::nullopt;
    const auto vowel = std::find_if(word.begin(), word.end(),
                                    [](const Sound& sound) { return isVowel(sound.phoneme); });
    return OnsetRime{{word.begin(), vowel}, {vowel, word.end()}};
}

std::string shape(const Pronunciation& word) {
    std::string letters;
    for (const Sound& sound : word) letters += isVowel(sound.phoneme) ? 'V' : 'C';
    return letters;
}

int wordDistance(const Pronunciation& a, const Pronunciation& b) {
    return Costs(a, b).at(a.size(), b.size());
}

std::vector<Aligned> align(const Pronunciation& word, const Pronunciation& other) {
    const Costs costs(word, other);
    std::vector<Aligned> pairs;
    std::size_t i = word.size(), j = other.size();
    while (i > 0 || j > 0) {
        if (i > 0 && j > 0 && costs.at(i, j) == costs.changed(word, other, i, j))
            pairs.push_back({--i, --j});
        else if (j > 0 && (i == 0 || costs.at(i, j) == costs.at(i, j - 1) + kSoundAdded))
            pairs.push_back({std::nullopt, --j});
        else
            pairs.push_back({--i, std::nullopt});
    }
    std::reverse(pairs.begin(), pairs.end());
    return pairs;
}

std::vector<std::size_t> placesApart(const Pronunciation& word, const Pronunciation& other) {
    std::vector<std::size_t> places;
    for (const Aligned& pair : align(word, other)) {
        if (!pair.word) continue;
        if (!pair.other || word[*pair.word].phoneme != other[*pair.other].phoneme)
            places.push_back(*pair.word);
    }
    return places;
}

}  // namespace wrenlet::speech
