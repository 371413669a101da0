#include <algorithm>
#include <array>
#include <set>

#include "content/exercise/changes.hpp"
#include "content/exercise/foils.hpp"
#include "content/speech/compound.hpp"

namespace wrenlet::exercise {

namespace {

constexpr std::size_t kFewestLinks = 3;
constexpr std::size_t kMostLinks = 6;

struct Compound {
    const Word* word;
    std::array<const Word*, 2> parts;
};

/// Approved compounds of two parts that still sound like them.
std::vector<Compound> compounds(const Vocabulary& vocabulary) {
    std::vector<Compound> found;
    for (const Word& word : vocabulary.words) {
        if (word.compound.size() != 2) continue;
        const std::array<const Word*, 2> parts = {vocabulary.word(word.compound[0]),
                                                  vocabulary.word(word.compound[1])};
        if (parts[0] == nullptr || parts[1] == nullptr || parts[0] == parts[1]) continue;
        const std::array<speech::Pronunciation, 2> sounds = {parts[0]->sounds, parts[1]->sounds};
        if (speech::joinsTo(sounds, word.sounds)) found.push_back({&word, parts});
    }
    return found;
}

/// Where a single part differs: 0 or 1; nothing when both do or none.
std::optional<std::size_t> changedPart(const Compound& a, const Compound& b) {
    const bool first = a.parts[0] != b.parts[0], last = a.parts[1] != b.parts[1];
    if (first == last) return std::nullopt;
    return first ? 0 : 1;
}

TurnsOn turnsOn(const Word& part, std::size_t place) {
    return {part.text, place == 0 ? Position::first_part : Position::last_part};
}

/// Looks for the shortest way round from each compound, and for one that changes parts in turns.
class ChainSearch {
  public:
    explicit ChainSearch(const std::vector<Compound>& nodes) : nodes_(nodes) {
        for (std::size_t a = 0; a < nodes.size(); ++a) {
            links_.emplace_back();
            for (std::size_t b = 0; b < nodes.size(); ++b)
                if (const auto part = changedPart(nodes[a], nodes[b]))
                    links_[a].push_back({b, *part});
        }
    }

    /// Compounds in order from `start`, without it at the end; empty if there is no such way.
    std::vector<std::size_t> round(std::size_t start, bool in_turns) {
        for (std::size_t length = kFewestLinks; length <= kMostLinks; ++length) {
            way_ = {start};
            steps_ = 0;
            if (goOn(start, length, 2, 2, in_turns)) return way_;
        }
        return {};
    }

  private:
    struct Link {
        std::size_t to;
        std::size_t part;  // that it changes
    };

    bool goOn(std::size_t at, std::size_t left, std::size_t last, std::size_t first,
              bool in_turns) {
        if (++steps_ > kMostSteps) return false;
        for (const Link& link : links_[at]) {
            if (in_turns && link.part == last) continue;
            if (left == 1) {
                // The last link closes the ring, so it takes its turn with the first one too.
                if (link.to == way_.front() && !(in_turns && link.part == first)) return true;
                continue;
            }
            if (std::find(way_.begin(), way_.end(), link.to) != way_.end()) continue;
            way_.push_back(link.to);
            if (goOn(link.to, left - 1, link.part, way_.size() == 2 ? link.part : first, in_turns))
                return true;
            way_.pop_back();
        }
        return false;
    }

    static constexpr std::size_t kMostSteps = 20'000;  // in hundreds of compounds, still at once
    const std::vector<Compound>& nodes_;
    std::vector<std::vector<Link>> links_;
    std::vector<std::size_t> way_;
    std::size_t steps_ = 0;
};

using Chain = std::vector<const Compound*>;

std::vector<Chain> chainsOf(const std::vector<Compound>& all) {
    std::vector<Compound> shown;
    for (const Compound& compound : all)
        if (!compound.word->picture.empty()) shown.push_back(compound);
    ChainSearch search(shown);
    std::vector<Chain> chains;
    std::set<std::vector<std::size_t>> seen;
    for (const bool in_turns : {true, false})
        for (std::size_t start = 0; start < shown.size(); ++start) {
            const std::vector<std::size_t> way = search.round(start, in_turns);
            std::vector<std::size_t> words = way;
            std::sort(words.begin(), words.end());
            if (way.empty() || !seen.insert(words).second) continue;
            Chain chain;
            for (const std::size_t at : way)
                for (const Compound& compound : all)
                    if (compound.word == shown[at].word) chain.push_back(&compound);
            chains.push_back(std::move(chain));
        }
    return chains;
}

Change swap(const Compound& from, const Compound& to, std::size_t place) {
    return {from.word,
            to.word,
            {partOf(*from.parts[place]), partOf(*to.parts[place])},
            turnsOn(*to.parts[place], place),
            {}};
}

void addSwaps(std::vector<Change>& changes, const std::vector<Compound>& all) {
    for (const Chain& chain : chainsOf(all))
        for (std::size_t i = 0; i < chain.size(); ++i) {
            const Compound &from = *chain[i], &to = *chain[(i + 1) % chain.size()];
            changes.push_back(swap(from, to, *changedPart(from, to)));
        }
    for (const Compound& from : all)
        for (const Compound& to : all)
            if (const auto place = changedPart(from, to); place && !to.word->picture.empty())
                changes.push_back(swap(from, to, *place));
}

}  // namespace

std::vector<Change> compoundChanges(const Vocabulary& vocabulary, Task task) {
    const std::vector<Compound> all = compounds(vocabulary);
    std::vector<Change> changes;
    if (task == Task::substitute) {
        addSwaps(changes, all);
        return changes;
    }
    for (const Compound& compound : all)
        for (const std::size_t place : {std::size_t{0}, std::size_t{1}}) {
            const Word &part = *compound.parts[place], &rest = *compound.parts[1 - place];
            if (task == Task::remove && !rest.picture.empty())
                changes.push_back(
                    {compound.word, &rest, {partOf(part)}, turnsOn(part, place), {&part}});
            if (task == Task::add && !compound.word->picture.empty())
                changes.push_back({&rest, compound.word, {partOf(part)}, turnsOn(part, place), {}});
        }
    return changes;
}

std::vector<std::vector<const Word*>> compoundChains(const Vocabulary& vocabulary) {
    const std::vector<Compound> all = compounds(vocabulary);
    std::vector<std::vector<const Word*>> chains;
    for (const Chain& chain : chainsOf(all)) {
        chains.emplace_back();
        for (const Compound* compound : chain) chains.back().push_back(compound->word);
    }
    return chains;
}

}  // namespace wrenlet::exercise
