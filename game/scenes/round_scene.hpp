// A round with a child, whatever its mechanic: the question is put, an answer is kept before
// anything more is heard, a right one is said whole, a wrong one explained and asked again.
#pragma once

#include "game/rounds/question.hpp"
#include "game/scenes/prompts.hpp"
#include "game/scenes/scene.hpp"
#include "game/session/turn.hpp"

namespace wrenlet::game {

class RoundScene : public Scene {
  public:
    /// `first_time`: the child has not met this skill in this turn. `turn` must outlive it.
    RoundScene(Setting setting, const Layout& layout, Turn& turn, bool first_time);

    std::string place() const override;
    std::vector<Thing> things() const override;
    std::optional<std::string> rightTouch() const override;
    void enter(Millis now) override;
    void step(Millis now) override;
    bool isMoving(Millis now) const override;
    std::optional<Millis> nextDue(Millis now) const override;

    /// Takes the turn's new question into the same round; false when it needs a new scene.
    virtual bool goOn(Millis /*now*/) { return false; }

  protected:
    virtual std::string_view mechanic() const = 0;
    virtual const Question& question() const = 0;
    /// What the child has done to the pieces so far, in a word: "parted"; empty for nothing.
    virtual std::string_view soFar() const { return {}; }
    virtual Script askScript(Asking asking) const = 0;
    virtual Script togetherScript() const = 0;
    virtual Script explainScript() const = 0;
    virtual Script rightScript() const = 0;
    virtual void explained() = 0;
    /// Pieces that can be touched while the child may answer.
    virtual std::vector<Thing> pieces() const = 0;
    virtual std::optional<std::string> rightPiece() const = 0;
    virtual void tapPiece(const std::string& piece, Millis now) = 0;
    virtual void drawRound(Painter& painter, Millis now) const = 0;
    virtual void drawExplained(Painter& painter, Millis now) const = 0;
    /// The mechanic's own state after a question was put anew.
    virtual void askedAnew(Millis /*now*/) {}

    void tapped(const std::string& thing, Millis now) override;
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;

    /// Puts the question (its prompt is then heard for the first time).
    void ask(Asking asking, Millis now);
    /// Tells a prompt that answers are measured from.
    void prompt(const Script& script, Millis now);
    /// Keeps the answer, then lets it be heard.
    void answered(const Outcome& outcome, Millis now);
    /// One thing was said because it was touched; the question stands.
    void murmur(const Script& script, Millis now);

    bool isOpen() const;  // the child may touch pieces
    bool isExplaining() const { return question().phase() == Question::Phase::explain; }
    bool isTogether() const { return question().phase() == Question::Phase::together; }
    bool isRight() const { return question().phase() == Question::Phase::right; }
    /// An example comes first: she has not met this skill on any day.
    bool needsExample() const { return first_time_ && turn_.isNewSkill(); }
    /// The step of the example that is shown; nothing when the question is.
    std::optional<int> exampleStep(Millis now) const;
    /// How far the pieces have come to where the step has them, 0 to 1.
    float exampleMotion(Millis now) const;
    /// A ring on the water where an example is touched, while its pieces move.
    void drawTouched(Painter& painter, Point at, Millis now) const;
    /// 0 to 1 and back while a piece shows how it is to be touched.
    float hint(Millis now) const;
    /// The paper on which both are explained, and a row of it.
    Box explainPaper() const;
    Box explainRow(int pair) const;
    void drawPaper(Painter& painter) const;
    std::string pictureOf(std::string_view word) const;
    /// The card of the word that is asked about, above its pieces.
    void drawSubjectCard(Painter& painter, const Box& box, Stand stand, Millis now) const;
    /// The word at a place among the choices, and all of them as picture cards on stones.
    const std::string& wordAt(std::size_t place) const;
    void drawChoices(Painter& painter, Millis now) const;

    Prompts prompts_;
    Turn& turn_;
    bool first_time_;

  private:
    void hearAgain(Millis now);
    void seeExample(Millis now) { shows_example_ = exampleStep(now).has_value(); }
    void rest(Millis now);
    Millis settledAt() const;

    Asking asking_ = Asking::first;
    bool was_entered_ = false;
    bool shows_example_ = false;
    int hearings_ = 1;
    Millis prompt_end_ = 0;
    Millis right_at_ = 0;
    Millis hint_at_ = 0;  // when the next silent hint begins
    int hints_left_ = 0;
    Growth growth_;
};

/// The scene for the turn's present question. REQUIRES: !turn.isOver().
std::unique_ptr<RoundScene> makeRound(Setting setting, const Layout& layout, Turn& turn,
                                      bool first_time);

}  // namespace wrenlet::game
