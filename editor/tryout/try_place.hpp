// The Try out place: the skills of the unit, one question after another as a child meets it, heard
// and played, left out and put back. Pictures, sounds and play are made aside by the child's own
// program; what is shown may be of a moment ago, and says so.
#pragma once

#include <atomic>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "editor/booth/microphone.hpp"
#include "editor/tryout/child_game.hpp"
#include "editor/tryout/try_pack.hpp"
#include "editor/unit/open_unit.hpp"

namespace wrenlet::desk {

/// A question as the child first sees it.
struct ShownStill {
    std::string item;
    std::filesystem::path png;  // empty: it could not be drawn
    int width = 0, height = 0;  // px
    struct Line {
        pack::VoiceNeed need;
        int gap_ms = 0;
    };
    std::vector<Line> said;  // what puts the question
    std::vector<Problem> problems;
};

class TryPlace {
  public:
    struct Parts {
        Aside& drawing;
        Aside& playing;
        Aside& saying;
        ChildGame& game;
        ClipMaking making;
        Speaker* speaker = nullptr;    // none: nothing is heard
        std::filesystem::path folder;  // of its own, for files that pass
        std::function<void()> wake;
    };
    TryPlace(OpenUnit& unit, Parts parts);
    ~TryPlace();
    TryPlace(const TryPlace&) = delete;
    TryPlace& operator=(const TryPlace&) = delete;

    // ---- which skill, which question
    /// Into the look's skills; past the end when nothing was looked at yet.
    std::size_t skill() const { return skill_; }
    const SkillLook* skillLook() const;
    void chooseSkill(std::size_t index);
    /// Before or after; the ends stay.
    void moveSkill(int by);
    /// How many questions the skill has, those left out among them.
    std::size_t count() const;
    /// REQUIRES: index < count().
    const exercise::Item& at(std::size_t index) const;
    bool isLeftOut(const exercise::Item& item) const;
    std::size_t index() const { return index_; }
    /// Null when the skill gives none.
    const exercise::Item* item() const;
    void choose(std::size_t index);
    void move(int by);
    /// Of the next skill that was not tried and gives something; of this one about another word
    /// when all were.
    void another();

    // ---- what she does with it
    void leaveOut();  // or asks it again
    void turnSkill();
    bool isFocus(const std::string& sound) const;
    void turnFocus(const std::string& sound);
    void hear(std::optional<std::size_t> line = {});  // what puts the question, or one clip of it
    void play();
    bool isPlaying() const { return plays_.isBusy(); }
    bool upright() const { return upright_; }
    void setUpright(bool upright) { upright_ = upright; }
    /// In her own voice, and not recorded before it was changed.
    bool isHers(const pack::VoiceNeed& need) const;

    // ---- what was made aside
    /// Wants the picture of the present question, so many pixels large; once a frame.
    void wantStill(int width, int height);
    /// The newest picture; it may be of the question before. Null before the first.
    const ShownStill* still() const { return still_ ? &*still_ : nullptr; }
    bool isStillNow() const { return still_ && item() != nullptr && still_->item == item()->id; }
    const std::vector<Problem>& problems() const { return problems_; }

    std::size_t tried() const;  // skills of which a question was seen here
    std::size_t toTry() const;  // skills that give something
    bool isTried(const SkillLook& skill) const;

    void step();

  private:
    struct Wanted {
        std::string item;
        std::uint64_t changes = 0;  // of the unit that was looked at: a picture may be another
        int width = 0, height = 0;
        bool operator==(const Wanted&) const = default;
    };
    struct Played {
        std::vector<Problem> problems;
    };
    void clamp();
    UnitPlaces places() const;
    std::filesystem::path triedFile() const;
    void noteTried(const exercise::Skill& skill);

    OpenUnit& unit_;
    Parts parts_;
    std::shared_ptr<std::atomic<bool>> closing_ = std::make_shared<std::atomic<bool>>(false);
    Newest<std::shared_ptr<ShownStill>> stills_;
    Newest<std::shared_ptr<Played>> plays_;
    Newest<std::shared_ptr<Pcm>> sounds_;
    Newest<bool> keeping_;
    std::size_t skill_ = 0, index_ = 0;
    bool upright_ = false;
    std::optional<Wanted> wanted_, asked_;
    std::uint64_t drawn_ = 0;  // pictures so far
    std::optional<ShownStill> still_;
    std::set<std::string> tried_;  // ids of skills
    std::vector<Problem> problems_;
};

}  // namespace wrenlet::desk
