#include "content/speech/spelling.hpp"

#include <algorithm>
#include <array>
#include <limits>

#include "content/speech/letter.hpp"
#include "content/speech/lexicon_file.hpp"
#include "content/speech/spelling_table.hpp"

namespace wrenlet::speech {

namespace {

using P = Phoneme;

// Costs. Fewer and longer groups of letters are likelier, and so is what letters mostly say.
constexpr int kGroup = 4;
constexpr int kSilent = 6;   // a letter that says nothing
constexpr int kSilentE = 4;  // the one that mostly does
constexpr int kLowestRank = 6;
constexpr int kReduced = 2;
constexpr int kSyllabic = 6;  // a consonant letter that says a vowel too: the m of "prism"
constexpr int kNoWay = std::numeric_limits<int>::max() / 2;

struct Way {
    std::vector<P> sounds;
    int cost;
};

struct Group {
    std::string_view letters;
    std::vector<Way> ways;
};

std::vector<P> readSounds(std::string_view text) {
    std::vector<P> sounds;
    while (!text.empty() && text != "-") {
        const std::size_t plus = std::min(text.find('+'), text.size());
        sounds.push_back(*fromIpa(text.substr(0, plus)));
        text.remove_prefix(std::min(plus + 1, text.size()));
    }
    return sounds;
}

bool isSyllabic(std::string_view letters, const std::vector<P>& sounds) {
    return letters.find_first_of("aeiouy'") == std::string_view::npos && !sounds.empty() &&
           isVowel(sounds.front());
}

Group readGroup(const SpellingRow& row) {
    Group group{row.letters, {}};
    std::string_view says = row.says;
    for (int rank = 0; !says.empty(); ++rank) {
        const std::size_t space = std::min(says.find(' '), says.size());
        Way way{readSounds(says.substr(0, space)), kGroup + std::min(rank, kLowestRank)};
        if (isSyllabic(row.letters, way.sounds)) way.cost += kSyllabic;
        if (way.sounds.empty()) way.cost = row.letters == "e" ? kSilentE : kSilent;
        group.ways.push_back(std::move(way));
        says.remove_prefix(std::min(space + 1, says.size()));
    }
    return group;
}

/// The table by its groups' first letter.
class Groups {
  public:
    Groups() {
        for (const SpellingRow& row : spellingTable())
            groups_[static_cast<unsigned char>(row.letters.front())].push_back(readGroup(row));
    }
    const std::vector<Group>& from(char letter) const {
        return groups_[static_cast<unsigned char>(letter) & 0x7F];
    }

  private:
    std::array<std::vector<Group>, 128> groups_;
};

const Groups& groups() {
    static const Groups kGroups;
    return kGroups;
}

bool isReducedBy(const Sound& sound) {
    return sound.phoneme == P::ax || (sound.phoneme == P::ih && sound.stress == Stress::none);
}

/// The cheapest way from each place (so many letters and sounds used) to the end.
class Search {
  public:
    Search(std::string_view word, const Pronunciation& said)
        : word_(word), said_(said), width_(said.size() + 1), steps_((word.size() + 1) * width_) {
        at(word.size(), said.size()).cost = 0;
        for (std::size_t i = word.size(); i-- > 0;)
            for (std::size_t j = 0; j <= said.size(); ++j) take(i, j);
    }

    std::optional<std::vector<Spelled>> best() {
        if (at(0, 0).cost >= kNoWay) return std::nullopt;
        std::vector<Spelled> found;
        for (std::size_t i = 0, j = 0; i < word_.size();) {
            const Step& step = at(i, j);
            const auto from = said_.begin() + static_cast<std::ptrdiff_t>(j);
            const auto to = from + static_cast<std::ptrdiff_t>(step.sounds);
            const bool reduced = step.sounds == 1 && isReducedBy(*from);
            found.push_back({std::string(word_.substr(i, step.letters)), {from, to}, reduced});
            i += step.letters, j += step.sounds;
        }
        return found;
    }

  private:
    struct Step {
        int cost = kNoWay;
        std::size_t letters = 0, sounds = 0;
    };

    Step& at(std::size_t i, std::size_t j) { return steps_[i * width_ + j]; }

    bool isSaidHere(const Way& way, std::size_t j) const {
        return way.sounds.size() <= said_.size() - j &&
               std::equal(way.sounds.begin(), way.sounds.end(),
                          said_.begin() + static_cast<std::ptrdiff_t>(j),
                          [](P phoneme, const Sound& sound) { return phoneme == sound.phoneme; });
    }

    void take(std::size_t i, std::size_t j) {
        for (const Group& group : groups().from(word_[i])) {
            if (word_.compare(i, group.letters.size(), group.letters) != 0) continue;
            for (const Way& way : group.ways) {
                if (!isSaidHere(way, j)) continue;
                const std::size_t letters = group.letters.size(), sounds = way.sounds.size();
                const bool reduced = sounds == 1 && isReducedBy(said_[j]);
                const int own = reduced ? std::min(way.cost, kGroup + kReduced) : way.cost;
                const int cost = own + at(i + letters, j + sounds).cost;
                if (cost < at(i, j).cost) at(i, j) = {cost, letters, sounds};
            }
        }
    }

    std::string_view word_;
    const Pronunciation& said_;
    std::size_t width_;
    std::vector<Step> steps_;
};

bool isLongFor(char letter, const Pronunciation& sounds) {
    const auto is = [&sounds](std::initializer_list<P> wanted) {
        return std::equal(sounds.begin(), sounds.end(), wanted.begin(), wanted.end(),
                          [](const Sound& a, P b) { return a.phoneme == b; });
    };
    switch (letter) {
        case 'a':
            return is({P::ey});
        case 'e':
            return is({P::iy});
        case 'i':
        case 'y':
            return is({P::ay});
        case 'o':
            return is({P::ow});
        case 'u':
            return is({P::uw}) || is({P::y, P::uw});
        default:
            return false;
    }
}

bool isConsonantSpelling(const Spelled& part) {
    return !part.sounds.empty() &&
           std::none_of(part.sounds.begin(), part.sounds.end(),
                        [](const Sound& sound) { return isVowel(sound.phoneme); });
}

bool isVowelBefore(const Spelled& vowel, const Spelled& consonant) {
    return isConsonantSpelling(consonant) && vowel.letters.size() == 1 &&
           isLongFor(vowel.letters.front(), vowel.sounds);
}

bool isEnding(std::string_view letters) {
    return letters == "s" || letters == "d";
}

/// Takes the silent e of "cake" and "notebook" to its vowel. At the end of a word the e may have
/// come with its consonant ("ve", "se") or with the ending ("ed"): it is taken off that first.
void pairSplitDigraphs(std::vector<Spelled>& parts) {
    for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
        Spelled &vowel = parts[i], &consonant = parts[i + 1];
        if (!isVowelBefore(vowel, consonant)) continue;
        const bool ends =
            i + 2 == parts.size() || (i + 3 == parts.size() && isEnding(parts[i + 2].letters));
        Spelled* next = i + 2 < parts.size() ? &parts[i + 2] : nullptr;
        if (next != nullptr && next->letters == "e" && next->sounds.empty())
            parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(i + 2));
        else if (ends && consonant.letters.size() > 1 && consonant.letters.back() == 'e')
            consonant.letters.pop_back();
        else if (next != nullptr && i + 3 == parts.size() && next->letters == "ed")
            next->letters = "d";
        else
            continue;
        vowel.letters += "_e";
    }
}

}  // namespace

std::optional<std::vector<Spelled>> alignSpelling(std::string_view word,
                                                  const Pronunciation& said) {
    if (word.empty() || said.empty() || word.size() > kMostWordLetters) return std::nullopt;
    auto parts = Search(word, said).best();
    if (parts) pairSplitDigraphs(*parts);
    return parts;
}

bool isDecodable(std::string_view word, const Pronunciation& said,
                 std::span<const Correspondence> taught) {
    const auto parts = alignSpelling(word, said);
    if (!parts) return false;
    return std::all_of(parts->begin(), parts->end(), [taught](const Spelled& part) {
        return std::any_of(taught.begin(), taught.end(), [&part](const Correspondence& one) {
            return one.letters == part.letters &&
                   std::equal(one.sounds.begin(), one.sounds.end(), part.sounds.begin(),
                              part.sounds.end(),
                              [](P a, const Sound& b) { return a == b.phoneme; });
        });
    });
}

bool firstLetterMisleads(std::string_view word, const Pronunciation& said) {
    const TaughtLetter* letter = taughtLetter(word.substr(0, 1));
    if (letter == nullptr || said.empty()) return false;
    const auto begins = [&said](const Pronunciation& taught) {
        return taught.size() <= said.size() &&
               std::equal(taught.begin(), taught.end(), said.begin(),
                          [](const Sound& a, const Sound& b) { return a.phoneme == b.phoneme; });
    };
    // Of c and g the hard sound only; of vowels the long one too, if it is one sound ("unicorn").
    const bool is_vowel = std::string_view("aeiou").find(word.front()) != std::string_view::npos;
    const bool says_long = is_vowel && letter->sounds[1].size() == 1 && begins(letter->sounds[1]);
    return !begins(letter->sounds[0]) && !says_long;
}

}  // namespace wrenlet::speech
