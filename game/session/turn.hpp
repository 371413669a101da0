// A child's turn at the tablet: which question comes, what was answered, when it ends. Every
// answer is committed to the store before anything of it is heard or seen, and a turn that was
// cut short goes on where it stood.
#pragma once

#include <string>
#include <vector>

#include "content/common/clock.hpp"
#include "content/common/result.hpp"
#include "content/pack/pack.hpp"
#include "content/practice/focus.hpp"
#include "content/practice/learner.hpp"
#include "content/practice/scheduler.hpp"
#include "content/practice/session_plan.hpp"
#include "content/practice/store.hpp"
#include "game/rounds/question.hpp"
#include "game/session/growth.hpp"
#include "game/stage/voice.hpp"

namespace wrenlet::game {

/// What a turn is handed. All must outlive it.
struct TurnParts {
    const pack::Pack& pack;
    practice::Store& store;
    const practice::Scheduler& scheduler;
    const Clock& clock;
    practice::SessionPlan plan;
    std::vector<std::string> pinned;  // skill ids
};

/// An answer as it was given.
struct Given {
    std::uint8_t choice = 0;
    int hearings = 1;    // how often the prompt was heard
    Millis took_ms = 0;  // from the end of the prompt's first hearing
};

class Turn {
  public:
    /// Begins a session with this seed, or resumes the one the child left open today.
    Turn(TurnParts parts, std::string child, std::uint64_t seed);

    const std::string& child() const { return child_; }
    bool isOver() const { return !question_; }
    /// The present question as it is first put. REQUIRES: !isOver().
    const Question& question() const { return *question_; }
    /// True iff the child has answered no question that is of the present one's skill and played
    /// like it, on any day.
    bool isNewSkill() const;
    /// True when it is in doubt whether the child listens: "listen again" is said before it is
    /// asked.
    bool remindsToListen() const { return reminds_; }
    /// Subjects sorted earlier in the round the question belongs to, by place; else empty.
    std::vector<std::vector<std::string>> sorted() const;

    /// Words that came out one of another earlier in the round the question belongs to, oldest
    /// first; empty when it begins a round.
    std::vector<std::string> chain() const;

    /// Writes the answer to the store. When it can't be written it is kept and tried again with
    /// the next one, and problems() says so. REQUIRES: !isOver().
    void record(const Given& given);
    /// The next question, after one was answered right; or the end, which comes sooner when the
    /// child is tired or does not listen.
    void goOn();

    /// Tells that the child was heard or spoken to: time up to 30 s from one such moment to the
    /// next was spent playing, a longer pause was not.
    void beat(Millis now);
    /// The child is not there for a while: what goes by until the next moment is not counted.
    void rest() { last_beat_.reset(); }
    /// From now on the session ends by this plan.
    void setPlan(const practice::SessionPlan& plan) { parts_.plan = plan; }
    Millis playedMs() const { return played_ms_; }

    int roundsToday() const;
    /// Of all days; `with_this` counts this session as ended.
    Growth growth(bool with_this) const;
    /// Tries once more to write what could not be written; before the turn is left.
    void keep() { flush(); }
    /// Ends the session in the store.
    void end();

    const std::vector<Problem>& problems() const { return problems_; }

  private:
    void resume();
    void askAgain(const practice::Response& last);
    void learn(const practice::Response& response);
    void flush();
    void note(const std::vector<Problem>& problems);
    std::span<const practice::Response> today() const;

    TurnParts parts_;
    std::string child_;
    practice::QuestionBank bank_;
    practice::Session session_;
    std::vector<practice::Response> history_;  // the child's, this session's at the end
    std::size_t earlier_ = 0;                  // responses in history_ before this session
    std::size_t unwritten_ = 0;                // responses at the end of history_ not yet stored
    practice::Learner learner_;
    int asked_ = 0;                   // first tries in this session
    std::optional<int> enough_at_;    // of them, when she had had enough
    bool reminds_ = false;            // the present question
    std::vector<std::string> focus_;  // skill ids: today's
    std::optional<Question> question_;
    Millis played_ms_ = 0;
    std::optional<Millis> last_beat_;
    std::vector<Problem> problems_;
};

}  // namespace wrenlet::game
