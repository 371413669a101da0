#include "content/exercise/foils.hpp"

#include <algorithm>
#include <set>

#include "content/exercise/skill_makers.hpp"
#include "content/exercise/together.hpp"

namespace wrenlet::exercise {

namespace {

using Foils = std::vector<const Foil*>;

bool fits(const Foil& foil, const Foil& other) {
    if (foil.id == other.id || (foil.group != 0 && foil.group == other.group)) return false;
    return foil.word == nullptr || other.word == nullptr ||
           mayStandTogether(*foil.word, *other.word);
}

bool fits(const Foil& foil, const Question& question, const Foils& chosen) {
    if (!fits(foil, question.right)) return false;
    for (const Word* word : question.beside)
        if (foil.word != nullptr && foil.word != word && !mayStandTogether(*foil.word, *word))
            return false;
    return std::all_of(chosen.begin(), chosen.end(),
                       [&foil](const Foil* other) { return fits(foil, *other); });
}

/// Picks foils for one question, beginning with another one each time.
class Picker {
  public:
    Picker(const Question& question, const std::vector<Foil>& foils)
        : question_(question),
          seed_(stableHash(question.subject + question.turns_on.sound) +
                stableHash(question.right.id)) {
        for (const Foil& foil : foils) {
            Grade& grade = grades_[static_cast<std::size_t>(nearnessOf(foil.distance))];
            (foil.kind != 0 ? grade.telling : grade.plain).push_back(&foil);
        }
    }

    /// The first of these grades that gives a foil; null if none does.
    const Foil* pick(std::initializer_list<Nearness> grades, const Foils& chosen) const {
        for (const Nearness nearness : grades) {
            const Grade& grade = grades_[static_cast<std::size_t>(nearness)];
            for (const Foils* from : {&grade.telling, &grade.plain})
                for (std::size_t i = 0; i < from->size(); ++i) {
                    const Foil* foil = (*from)[(start(chosen) + i) % from->size()];
                    if (fits(*foil, question_, chosen)) return foil;
                }
        }
        return nullptr;
    }

  private:
    struct Grade {
        Foils telling, plain;
    };

    /// Elsewhere for each further foil, lest they stand side by side in the alphabet too.
    std::size_t start(const Foils& chosen) const {
        constexpr std::size_t kApart = 37;
        return seed_ + kApart * chosen.size();
    }

    const Question& question_;
    std::size_t seed_;
    std::array<Grade, 3> grades_;
};

const Foil& nearest(const Foils& chosen) {
    return **std::min_element(chosen.begin(), chosen.end(), [](const Foil* a, const Foil* b) {
        return a->distance < b->distance;
    });
}

}  // namespace

Nearness nearnessOf(int distance) {
    return distance <= 1 ? Nearness::one_feature : distance <= 3 ? Nearness::near : Nearness::far;
}

void ItemList::add(const Question& question, const std::vector<Foil>& foils) {
    using N = Nearness;
    const Picker picker(question, foils);
    const std::initializer_list<N> kFar = {N::far, N::near, N::one_feature};
    const std::initializer_list<N> kNear = {N::near, N::one_feature, N::far};
    const std::initializer_list<N> kNearest = {N::one_feature, N::near, N::far};
    const std::array<std::array<std::initializer_list<N>, 2>, kLevels> kWanted = {
        {{kFar, kFar}, {kNear, kFar}, {kNearest, kNear}}};
    for (std::size_t level = 0; level < kLevels; ++level) {
        Foils chosen;
        for (const auto& grades : kWanted[level])
            if (const Foil* foil = picker.pick(grades, chosen)) chosen.push_back(foil);
        if (chosen.size() < kWanted[level].size()) return;
        Item item;
        item.skill = question.skill;
        item.subject = question.subject;
        item.parts = question.parts;
        item.turns_on = question.turns_by ? question.turns_by(nearest(chosen)) : question.turns_on;
        std::vector<Choice> choices{{std::string(question.right.id), ""}};
        for (const Foil* foil : chosen)
            choices.push_back({std::string(foil->id), question.means(*foil)});
        setChoices(item, std::move(choices), question.right.id);
        levels_[level].push_back(std::move(item));
    }
}

void ItemList::add(std::size_t level, Item item) {
    levels_[std::min(level, kLevels - 1)].push_back(std::move(item));
}

std::vector<Item> ItemList::take(std::size_t most) {
    std::vector<Item> items;
    std::set<std::string> ids;
    for (std::vector<Item>& level : levels_) {
        for (Item& item : level) {
            if (items.size() >= most) break;
            if (ids.insert(item.id).second) items.push_back(std::move(item));
        }
        level.clear();
    }
    return items;
}

void setChoices(Item& item, std::vector<Choice> choices, std::string_view right) {
    std::sort(choices.begin(), choices.end(),
              [](const Choice& a, const Choice& b) { return a.id < b.id; });
    item.choices = std::move(choices);
    const auto at = std::find_if(item.choices.begin(), item.choices.end(),
                                 [right](const Choice& choice) { return choice.id == right; });
    item.answer = static_cast<std::uint8_t>(at - item.choices.begin());
    item.id = itemId(item);
}

std::vector<const Word*> picturedWords(const Vocabulary& vocabulary) {
    std::vector<const Word*> words;
    for (const Word& word : vocabulary.words)
        if (!word.picture.empty() && !word.sounds.empty()) words.push_back(&word);
    return words;
}

Part partOf(const speech::Pronunciation& sounds) {
    if (sounds.size() == 1)
        return {soundClip(sounds[0].phoneme), std::string(speech::ipa(sounds[0].phoneme))};
    return {partClip(sounds), speech::ipa(sounds)};
}

Part partOf(const Word& word) {
    return {wordClip(word.id), word.text};
}

}  // namespace wrenlet::exercise
