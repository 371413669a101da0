#include "tests/simulator/child.hpp"

#include <algorithm>

#include "tests/simulator/draw.hpp"

namespace wrenlet::simulator {

char letterOf(Generator generator) {
    return "GAC"[static_cast<std::size_t>(generator)];
}

const std::vector<std::string>& Child::shields() const {
    static const std::vector<std::string> kNone;
    return kNone;
}

int Child::choose(int item, double attention, Random& random) const {
    if (!chance(random, pRight(item, attention))) return anyFoil(item, random);
    return bank_.items[static_cast<std::size_t>(item)].item.answer;
}

int Child::anyFoil(int item, Random& random) const {
    const exercise::Item& asked = bank_.items[static_cast<std::size_t>(item)].item;
    const auto other =
        static_cast<int>(random.below(static_cast<std::uint32_t>(asked.choices.size() - 1)));
    return other < asked.answer ? other : other + 1;
}

Answer Child::answer(int item, int asked, Random& random) const {
    const double awake = attention(nature_, asked);
    Answer answer;
    answer.choice = choose(item, awake, random);
    answer.took_ms = static_cast<int>(
        std::max(500.0, medianMs(item, awake) * logNormal(random, nature_.tempo_spread)));
    answer.hearings = chance(random, 0.1 + 0.3 * (1 - known(item))) ? 2 : 1;
    return answer;
}

// Longer when it has to be guessed, with more choices, and when tired.
double Child::medianMs(int item, double attention) const {
    const auto choices = bank_.items[static_cast<std::size_t>(item)].item.choices.size();
    return nature_.median_ms *
           ((1 + 0.5 * (1 - known(item))) * (0.85 + 0.05 * static_cast<double>(choices)) *
            (1 + 0.8 * (1 - attention)));
}

double Child::knownOf(const Component& row) const {
    double sum = 0;
    for (const int item : row.items) sum += known(item);
    return sum / static_cast<double>(row.items.size());
}

std::unique_ptr<Child> makeChild(Generator generator, const Bank& bank, std::uint64_t seed) {
    Random random(seed);
    const Nature nature = drawNature(random);
    switch (generator) {
        case Generator::graded:
            return makeGradedChild(bank, nature, random);
        case Generator::all_or_none:
            return makeAllOrNoneChild(bank, nature, random);
        case Generator::confusions:
            return makeConfusedChild(bank, nature, random);
    }
    return nullptr;
}

}  // namespace wrenlet::simulator
