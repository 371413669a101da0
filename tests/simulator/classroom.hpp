// What the simulator asks of a program: a policy that chooses items for one child, a reader that
// says what the child knows, and a classroom that makes both for each child of a class and may
// learn from all of them between days. Another program is another Classroom: one file, and a line
// in policies.cpp.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "content/practice/evidence.hpp"
#include "content/practice/response.hpp"
#include "tests/simulator/bank.hpp"

namespace wrenlet::simulator {

inline constexpr int kSessions = 10;        // one a day
inline constexpr int kItems = 40;           // in a session
inline constexpr int kApart = 60;           // answers between an item and itself
inline constexpr double kKnownShare = 0.6;  // under it a row is missed

/// When an item is to be chosen.
struct Moment {
    int session = 0;                        // 0 to kSessions - 1
    int asked_today = 0;                    // answers in this session
    std::int64_t day = 0;                   // as Response::day
    std::uint64_t seed = 0;                 // this choice's own; the same whatever was answered
    std::span<const std::uint8_t> resting;  // by item: 1 where it was asked too shortly ago
};

class Policy {
  public:
    virtual ~Policy() = default;
    /// A bank index that is not resting.
    virtual int choose(const Moment& moment) = 0;
    virtual void saw(int item, const practice::Response& response) = 0;
    virtual void night() {}
};

/// What is said of a row, in chances and shares from 0 to 1.
struct Reading {
    double p_missed = 0.5;     // that the share known lies under kKnownShare
    double low = 0, high = 1;  // the share known, 80 % range
};

/// One line of what the desk would say of a child: a sound or skill that was asked, in its task.
struct SaidLine {
    practice::Cell cell;
    int seen = 0;                // first answers that count
    bool missed = false;         // the word that is said
    bool only_shielded = false;  // wrong answers, and all of them along a shield
    practice::Range range80, range90;
};

/// What is held of a child's way to answer, after each of them.
enum class Held : std::uint8_t { listening, tired, tapping };

class Reader {
  public:
    virtual ~Reader() = default;
    /// Chance of a right first answer to the item, if it were asked now.
    virtual double pRight(int item) const = 0;
    /// REQUIRES: Bank::isRow(row).
    virtual Reading row(int row) const = 0;
    virtual void saw(int item, const practice::Response& response) = 0;
    virtual void night() {}
    /// Asked after each answer; an alarm that outlives a night counts against the next session too.
    virtual Held held() const { return Held::listening; }
};

/// One child's place. Both see every answer and every night, the policy first; where they are one
/// object, one of them is a thin hull that passes nothing on.
struct Seat {
    std::shared_ptr<Policy> policy;
    std::shared_ptr<Reader> reader;
};

struct Pupil {
    int number = 0;  // in the class, from 0
    std::string id;
    std::vector<std::string> shields;
    std::uint64_t seed = 0;
};

class Classroom {
  public:
    virtual ~Classroom() = default;
    virtual Seat seat(const Pupil& pupil) = 0;
    /// After every child's session and before the night: a class fits its priors here. Rows are
    /// read after it.
    virtual void dayEnded() {}
    /// By pupil, what a report says now; empty where there is none.
    virtual std::vector<std::vector<SaidLine>> said() const { return {}; }
    /// True when its readers look for tapping: then they are put to that test.
    virtual bool watchesTapping() const { return false; }
};

using MakeClassroom = std::function<std::unique_ptr<Classroom>(const Bank&)>;

}  // namespace wrenlet::simulator
