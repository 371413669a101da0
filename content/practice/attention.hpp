// Whether a child listens, guesses or is tired, told apart from missing: after each first answer of
// a session it weighs what was answered against what was believed of her before (a child who misses
// much is expected to miss), how long she took against her own usual (timing.hpp), and where she
// touched against where she touched before.
//
// Five ways to answer stand against each other (a hidden Markov model, read forward: Baum et al.
// 1970; Rabiner 1989; with two ways and no way back it is Shiryaev's rule of 1963 for the quickest
// detection of a change):
//
//   listening  right with p as believed; in her own times;
//   quick      right with p as believed; in a tapper's times (a child may be quick from the start
//              of a session, and hardly ever becomes so within it);
//   tired      right with g + (p - g) x a, g = 1 / choices; slower than her own times;
//   fast       touches by habit; in a tapper's times;
//   own pace   touches by habit; in her own times.
//
// With k = (p - g) / (1 - g), the share she is believed to know, and h the chance of that place by
// habit, the answer itself is as likely as
//
//   listening:  k + (1 - k) h when right, (1 - k) h when wrong;     by habit:  h.
//
// What she does not know she may answer by the same habit. So a wrong answer speaks for guessing by
// -ln(1 - k), whatever the habit: by nothing at all where she was not believed to know, and a child
// who misses all she is believed to miss is never called guessing. A right answer speaks against it
// the more, the less the habit would have led there. Of k only so much is held to be known as her
// answers kept of it in earlier sessions, and in this one until a dozen answers ago: with some
// children beliefs promise too much.
//
// Whether she tires in the course of the session is asked apart, of all its answers together
// (tiredness.hpp); among the five ways tired only keeps tiredness from being taken for guessing.
//
// Constants: kAttending in policy.hpp. The same answers in the same order give the same state to
// the last bit.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

#include "content/practice/response.hpp"
#include "content/practice/timing.hpp"
#include "content/practice/tiredness.hpp"

namespace wrenlet::practice {

/// A first answer, as attention looks at it.
struct Glance {
    double expected = 0.5;  // P(right) as believed before it
    bool right = false;
    bool tells = true;        // false: wrong along a shielded contrast, which tells of neither
    std::size_t choices = 2;  // 2 or more
    std::size_t place = 0;    // touched, from the left, below choices
    std::size_t kind = Timing::kNoKind;
    double log_ms = 0;      // logTime()
    bool replayed = false;  // the prompt was heard more than once
};
Glance glanceAt(const Response& response, double expected, bool tells);

/// How far the answer to a question tells a child who guesses from one who listens, in nats: the
/// mean log-likelihood ratio over the answers of one who guesses (Kullback & Leibler 1951). The
/// surer she is to know it and the more choices there are, the further.
double tellsListening(double expected, std::size_t choices);

/// How likely she touches a place when she goes by habit: any place, the same as before, or another
/// than before, weighed by how she touched until now in this session.
class Habit {
  public:
    double likely(std::size_t place, std::size_t choices) const;
    void touched(std::size_t place, std::size_t choices);
    bool operator==(const Habit&) const = default;

  private:
    static constexpr std::size_t kHabits = 3;
    double of(std::size_t habit, std::size_t place, std::size_t choices) const;

    std::array<double, kHabits> weights_{0.6, 0.2, 0.2};
    std::size_t last_ = 0;
    bool has_last_ = false;
};

class Attention {
  public:
    enum class State : std::uint8_t {
        listening,
        unsure,    // ask what she surely knows: her answer soon decides
        guessing,  // answers without listening: not counted
        tired,     // slower and less right than is usual with her
    };
    enum Way : std::uint8_t { kListening, kQuick, kTired, kFast, kOwnPace };
    static constexpr std::size_t kWays = 5;

    Attention();

    void beginSession();
    void add(const Glance& glance);

    State state() const { return state_; }
    /// True when the next question should be one that she surely knows: while it is in doubt
    /// whether she listens, and as long as she guesses, so that she is heard as soon as she listens
    /// again.
    bool wantsSureOne() const { return state_ == State::unsure || state_ == State::guessing; }
    /// True when the session had better end soon.
    bool hadEnough() const { return state_ == State::guessing || state_ == State::tired; }
    double chanceOf(Way way) const { return chances_[way]; }
    double guessing() const { return chances_[kFast] + chances_[kOwnPace]; }
    const Tiredness& tiredness() const { return tiredness_; }
    /// First answers at the end of this session, of those added, that she is likeliest to have
    /// given without listening (the change point of greatest likelihood: Page 1954). At least 1
    /// while guessing.
    std::size_t guessed() const;
    /// True when it is likely enough that she guesses to say "listen again": after the first such
    /// answer running, and after every third that follows.
    bool reminds() const { return doubtful_ % 3 == 1; }
    const Timing& timing() const { return timing_; }

    /// What it takes in memory.
    std::size_t bytes() const { return sizeof(*this) + heard_.capacity() * sizeof(Heard); }

    bool operator==(const Attention&) const = default;

  private:
    /// What one answer said, kept until the session ends.
    struct Heard {
        std::array<double, 2> for_guessing;  // log-likelihood ratio of fast, own pace
        std::size_t kind;
        double unsure, log_ms;
        bool replayed;
        double sure;   // share that she was believed to know, where that was most; else 0
        double shown;  // what the answer showed of it, chance taken away
        void teach(Timing& timing) const { timing.learn(kind, unsure, log_ms, replayed); }
        bool operator==(const Heard&) const = default;
    };
    void decide();
    /// What she keeps of what is believed of her.
    double keeps() const;
    void keep(std::size_t answers, double& sure, double& shown) const;

    Timing timing_;   // by all answers that she is held to have listened to
    Timing settled_;  // without those in heard_
    // Of earlier sessions: what she surely knew by belief, and what of it her answers showed.
    double sure_, shown_;
    Habit habit_;
    std::array<double, kWays> chances_{};
    Tiredness tiredness_;
    std::vector<Heard> heard_;  // since the session began or she was found listening again
    State state_ = State::listening;
    int doubtful_ = 0;  // answers running, up to now, after which it was as likely as that
};

std::string_view attentionWord(Attention::State state);  // "listening" ...

}  // namespace wrenlet::practice
