#include "tests/simulator/bank.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <stdexcept>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "content/exercise/classroom_sentences.hpp"
#include "content/exercise/classroom_words.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/list_lines.hpp"

namespace wrenlet::simulator {

using namespace exercise;

namespace {

constexpr std::size_t kOfASkill = 16;  // items of a skill at least, where it has so many
constexpr std::size_t kOfASound = 4;   // of a sound in a place
constexpr std::size_t kOfALetter = 3;
constexpr std::size_t kOfAShield = 4;  // along each contrast that some children do not make
constexpr std::size_t kFewest = 3;     // under it a component is none

using CellKey = std::pair<std::string, Position>;

CellKey keyOf(const Item& item) {
    return {item.turns_on.sound, item.turns_on.position};
}

bool isSoundInPlace(const CellKey& key) {
    return (key.second == Position::first || key.second == Position::middle ||
            key.second == Position::last) &&
           speech::fromIpa(key.first).has_value();
}

bool isLetter(const CellKey& key) {
    return key.second == Position::letter;
}

template <class T>
T valueOf(Result<T> result, const char* what) {
    if (!result.ok()) throw std::runtime_error(std::string("cannot read ") + what);
    return std::move(result.value());
}

/// Every word has a picture, as if a teacher had drawn those that the list lacks.
Vocabulary wholeList(const std::filesystem::path& share) {
    const auto text = [&share](const char* name) {
        return valueOf(readWhole(share / "words" / name, kMostListBytes), name);
    };
    const auto lexicon = valueOf(speech::Lexicon::open(share / "lexicon.bin"), "lexicon.bin");
    const auto listed =
        valueOf(readClassroomWords(text("classroom.tsv"), "classroom.tsv"), "classroom.tsv");
    Vocabulary all;
    all.words = valueOf(saidAloud(listed, lexicon, "classroom.tsv"), "classroom.tsv");
    for (Word& word : all.words)
        if (word.picture.empty()) word.picture = "drawn-" + word.id;
    for (const ClassroomSentence& one :
         valueOf(readClassroomSentences(text("sentences.tsv"), "sentences.tsv"), "sentences.tsv"))
        all.sentences.push_back(one.sentence);
    return all;
}

/// Units of words that lie apart in the list: makers keep only so many items of a vocabulary, and
/// several small ones give more kinds than one large one.
std::vector<Vocabulary> unitsOf(const Vocabulary& all) {
    constexpr std::size_t kUnits = 6;
    std::vector<Vocabulary> units(kUnits);
    for (std::size_t i = 0; i < all.words.size(); ++i) {
        Vocabulary& unit = units[i % kUnits];
        const auto add = [&unit](const Word& word) {
            if (unit.word(word.id) == nullptr) unit.words.push_back(word);
        };
        add(all.words[i]);
        for (const std::string& part : all.words[i].compound) add(*all.word(part));
    }
    for (std::size_t i = 0; i < all.sentences.size(); ++i)
        units[i % kUnits].sentences.push_back(all.sentences[i]);
    units.push_back(all);
    return units;
}

/// An item with the place that a mix of its id gives it, so that choosing favours no word.
struct Candidate {
    std::uint64_t turn;
    Item item;
    bool taken = false;
};

std::uint64_t turnOf(const std::string& id) {
    std::uint64_t turn = 0;
    for (const char letter : id) turn = stepSeed(turn, static_cast<unsigned char>(letter));
    return turn;
}

std::vector<std::vector<Candidate>> candidatesBySkill(const Vocabulary& all) {
    std::vector<std::vector<Candidate>> by_skill;
    const auto units = unitsOf(all);
    for (const SkillRow& row : skillTable()) {
        std::map<std::string, Item> items;
        for (const Vocabulary& unit : units)
            for (Item& item : makeItems(unit, row.skill)) {
                std::string id = item.id;
                items.emplace(std::move(id), std::move(item));
            }
        auto& candidates = by_skill.emplace_back();
        for (auto& [id, item] : items) candidates.push_back({turnOf(id), std::move(item)});
        std::sort(candidates.begin(), candidates.end(),
                  [](const Candidate& a, const Candidate& b) { return a.turn < b.turn; });
    }
    return by_skill;
}

std::optional<speech::Phoneme> phonemeBetweenSlashes(std::string_view text, std::size_t at) {
    if (at >= text.size() || text[at] != '/') return std::nullopt;
    const std::size_t end = text.find('/', at + 1);
    if (end == text.npos) return std::nullopt;
    return speech::fromIpa(text.substr(at + 1, end - at - 1));
}

bool beforeNasal(const Item& item, speech::Phoneme vowel, const Vocabulary& all) {
    const Word* word = all.word(item.choices[item.answer].id);
    if (word == nullptr) word = all.word(item.subject);
    if (word == nullptr) return false;
    for (std::size_t i = 0; i + 1 < word->sounds.size(); ++i) {
        const auto next = word->sounds[i + 1].phoneme;
        if (word->sounds[i].phoneme == vowel &&
            (next == speech::Phoneme::m || next == speech::Phoneme::n ||
             next == speech::Phoneme::ng))
            return true;
    }
    return false;
}

/// What choosing it tells apart from the right choice, if it names sounds.
std::optional<Contrast> contrastOf(const Item& item, const Choice& choice, const Vocabulary& all) {
    const auto named = soundsNamed(choice.means);
    if (!named) return std::nullopt;
    return Contrast{named->asked, named->heard, item.turns_on.position,
                    beforeNasal(item, named->asked, all)};
}

bool hasFoilAlong(const Item& item, const Shield& shield, const Vocabulary& all) {
    return std::any_of(item.choices.begin(), item.choices.end(), [&](const Choice& choice) {
        const auto contrast = contrastOf(item, choice, all);
        return contrast && isAlong(*contrast, shield);
    });
}

class Choosing {
  public:
    explicit Choosing(std::vector<std::vector<Candidate>> by_skill)
        : by_skill_(std::move(by_skill)), taken_of_skill_(by_skill_.size()) {}

    /// Each skill's share, of the cells that are still least met.
    void fillSkills() {
        for (std::size_t skill = 0; skill < by_skill_.size(); ++skill)
            while (taken_of_skill_[skill] < kOfASkill) {
                Candidate* best = nullptr;
                std::size_t best_met = 0;
                for (Candidate& candidate : by_skill_[skill]) {
                    if (candidate.taken) continue;
                    const std::size_t met = met_[keyOf(candidate.item)];
                    if (best == nullptr || met < best_met) {
                        best = &candidate;
                        best_met = met;
                    }
                }
                if (best == nullptr) break;
                take(*best, skill);
            }
    }

    /// Items along the contrasts that some children do not make: few items have such foils.
    void fillShields(const Vocabulary& all) {
        for (const Shield& shield : kShields) {
            std::size_t taken = 0;
            for (std::size_t skill = 0; skill < by_skill_.size(); ++skill)
                for (Candidate& candidate : by_skill_[skill]) {
                    if (taken == kOfAShield) break;
                    if (candidate.taken || !hasFoilAlong(candidate.item, shield, all)) continue;
                    take(candidate, skill);
                    ++taken;
                }
        }
    }

    /// Sounds in a place and letters up to their share, each time from the skill that has the
    /// fewest items.
    void fillSounds() {
        std::set<CellKey> keys;
        for (const auto& candidates : by_skill_)
            for (const Candidate& candidate : candidates) {
                const CellKey key = keyOf(candidate.item);
                if (isSoundInPlace(key) || isLetter(key)) keys.insert(key);
            }
        for (const CellKey& key : keys)
            while (met_[key] < kOfASound && takeOneOf(key)) {
            }
    }

    std::vector<std::vector<Item>> taken() const {
        std::vector<std::vector<Item>> items(by_skill_.size());
        for (std::size_t skill = 0; skill < by_skill_.size(); ++skill)
            for (const Candidate& candidate : by_skill_[skill])
                if (candidate.taken) items[skill].push_back(candidate.item);
        return items;
    }

  private:
    void take(Candidate& candidate, std::size_t skill) {
        candidate.taken = true;
        ++taken_of_skill_[skill];
        ++met_[keyOf(candidate.item)];
    }

    bool takeOneOf(const CellKey& key) {
        Candidate* best = nullptr;
        std::size_t best_skill = 0;
        for (std::size_t skill = 0; skill < by_skill_.size(); ++skill)
            for (Candidate& candidate : by_skill_[skill]) {
                if (candidate.taken || keyOf(candidate.item) != key) continue;
                if (best == nullptr || taken_of_skill_[skill] < taken_of_skill_[best_skill]) {
                    best = &candidate;
                    best_skill = skill;
                }
                break;
            }
        if (best != nullptr) take(*best, best_skill);
        return best != nullptr;
    }

    std::vector<std::vector<Candidate>> by_skill_;
    std::vector<std::size_t> taken_of_skill_;
    std::map<CellKey, std::size_t> met_;
};

void addContrasts(Bank& bank, BankItem& made, const Vocabulary& all) {
    for (const Choice& choice : made.item.choices) {
        const auto contrast = contrastOf(made.item, choice, all);
        if (!contrast) {
            made.contrasts.push_back(-1);
            continue;
        }
        const auto found = std::find(bank.contrasts.begin(), bank.contrasts.end(), *contrast);
        made.contrasts.push_back(static_cast<int>(found - bank.contrasts.begin()));
        if (found == bank.contrasts.end()) bank.contrasts.push_back(*contrast);
        if (!contrast->heard) continue;
        const int distance = speech::distance(contrast->asked, *contrast->heard);
        if (made.nearest == 0 || distance < made.nearest) made.nearest = distance;
    }
}

}  // namespace

std::optional<NamedSounds> soundsNamed(std::string_view means) {
    for (const std::string_view begin : {"heard ", "took "}) {
        if (means.substr(0, begin.size()) != begin) continue;
        const std::size_t middle = means.find("/ for /");
        const auto heard = phonemeBetweenSlashes(means, begin.size());
        if (!heard || middle == means.npos) return std::nullopt;
        const auto asked = phonemeBetweenSlashes(means, middle + 6);
        if (!asked || *asked == *heard) return std::nullopt;
        return NamedSounds{*asked, heard};
    }
    constexpr std::string_view kNotHeard = "did not hear ";
    if (means.substr(0, kNotHeard.size()) == kNotHeard)
        if (const auto asked = phonemeBetweenSlashes(means, kNotHeard.size()))
            return NamedSounds{*asked, std::nullopt};
    return std::nullopt;
}

bool isAlong(const Contrast& contrast, const Shield& shield) {
    if (!contrast.heard || (shield.before_nasal_only && !contrast.before_nasal)) return false;
    return (contrast.asked == shield.a && *contrast.heard == shield.b) ||
           (contrast.asked == shield.b && *contrast.heard == shield.a);
}

Bank makeBank(const std::filesystem::path& share) {
    const Vocabulary all = wholeList(share);
    Choosing choosing(candidatesBySkill(all));
    choosing.fillShields(all);
    choosing.fillSkills();
    choosing.fillSounds();

    Bank bank;
    std::map<CellKey, std::vector<int>> cells;
    const auto by_skill = choosing.taken();
    for (std::size_t skill = 0; skill < by_skill.size(); ++skill) {
        Component row;
        row.skill = skillTable()[skill].skill;
        row.label = skillTable()[skill].id;
        for (const Item& item : by_skill[skill]) {
            const int index = static_cast<int>(bank.items.size());
            BankItem made{item, static_cast<int>(skill), -1, 0, {}};
            addContrasts(bank, made, all);
            bank.items.push_back(std::move(made));
            row.items.push_back(index);
            cells[keyOf(item)].push_back(index);
        }
        bank.components.push_back(std::move(row));
    }
    const auto add = [&](const CellKey& key, const std::vector<int>& items) {
        Component cell;
        cell.kind = isSoundInPlace(key) ? Component::Kind::sound : Component::Kind::hidden;
        cell.label = key.first + " " + std::string(positionId(key.second));
        cell.turns_on = {key.first, key.second};
        if (cell.kind == Component::Kind::sound) cell.phoneme = speech::fromIpa(key.first);
        cell.items = items;
        for (const int item : items)
            bank.items[static_cast<std::size_t>(item)].sound =
                static_cast<int>(bank.components.size());
        bank.components.push_back(std::move(cell));
    };
    for (const auto& [key, items] : cells)
        if (isSoundInPlace(key) && items.size() >= kFewest) add(key, items);
    bank.rows = bank.components.size();
    for (const auto& [key, items] : cells)
        if (isLetter(key) && items.size() >= kFewest) add(key, items);
    return bank;
}

}  // namespace wrenlet::simulator
