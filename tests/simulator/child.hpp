// A simulated child: answers items, learns from them, forgets overnight, and, unlike a real one,
// says what it knows. Three generators make them, none of the form of a model under test; each
// one's file says why it is shaped so. Simulated children are no evidence about children.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "tests/simulator/nature.hpp"

namespace wrenlet::simulator {

enum class Generator : std::uint8_t { graded, all_or_none, confusions };  // G, A, C
inline constexpr Generator kGenerators[] = {Generator::graded, Generator::all_or_none,
                                            Generator::confusions};
char letterOf(Generator generator);

struct Answer {
    int choice = 0;  // index into the item's choices
    int took_ms = 0;
    int hearings = 1;
};

class Child {
  public:
    Child(const Bank& bank, const Nature& nature) : bank_(bank), nature_(nature) {}
    virtual ~Child() = default;

    /// Share of the item that is known now, 0 to 1: what is left when guessing and slips are taken
    /// away. What the child misses by a shielded contrast alone counts as known.
    virtual double known(int item) const = 0;
    /// Chance of a right answer now, with that share of attention.
    virtual double pRight(int item, double attention) const = 0;
    /// Heard the item and its explanation.
    virtual void practise(int item, Random& random) = 0;
    virtual void night(Random& random) = 0;
    /// As content/practice/shield.hpp takes them; a program knows them.
    virtual const std::vector<std::string>& shields() const;

    /// An honest first answer, `asked` items into the session. Learns nothing yet.
    Answer answer(int item, int asked, Random& random) const;
    /// Of honest answers now, with that share of attention: the median of their times.
    double medianMs(int item, double attention) const;
    /// Mean of known() over the row's items.
    double knownOf(const Component& row) const;
    const Nature& nature() const { return nature_; }

  protected:
    virtual int choose(int item, double attention, Random& random) const;
    int anyFoil(int item, Random& random) const;

    const Bank& bank_;
    const Nature nature_;
};

/// The same seed gives the same child.
std::unique_ptr<Child> makeChild(Generator generator, const Bank& bank, std::uint64_t seed);

std::unique_ptr<Child> makeGradedChild(const Bank& bank, const Nature& nature, Random& random);
std::unique_ptr<Child> makeAllOrNoneChild(const Bank& bank, const Nature& nature, Random& random);
std::unique_ptr<Child> makeConfusedChild(const Bank& bank, const Nature& nature, Random& random);

}  // namespace wrenlet::simulator
