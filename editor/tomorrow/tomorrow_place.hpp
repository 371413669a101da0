// Where the teacher stands with tomorrow: the plan she works on and its saving, which table or the
// lesson is in hand, which line of it, and what is offered next. Every key and press becomes one of
// these calls; the windows only draw what it holds.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "editor/document/opened_class.hpp"
#include "editor/edits/saver.hpp"
#include "editor/paper/papers.hpp"
#include "editor/tomorrow/plan_at_work.hpp"
#include "editor/tomorrow/plan_file.hpp"

namespace wrenlet::desk {

/// A line of the sheet in hand.
struct SheetRow {
    enum class Kind : std::uint8_t { task, item, more, choice, more_tasks, task_choice };
    Kind kind = Kind::item;
    AskedAt at;             // the table or the task that it belongs to
    std::size_t index = 0;  // of an item, a choice or a task to choose
    bool operator==(const SheetRow&) const = default;
};

/// The one filled button, and the sentence before it.
struct TomorrowStep {
    enum class Kind : std::uint8_t { wait, plan, see_lesson, print };
    Kind kind = Kind::plan;
    std::string sentence, button;
};

class TomorrowPlace {
  public:
    struct Parts {
        Aside& saving;                // must outlive it
        Aside& planning;              // the same
        std::filesystem::path aside;  // on this machine, for what cannot be saved in its place
        std::function<void()> wake;   // something is done aside; called from there
        OpenOutside open = {};        // none: nothing is shown outside
    };
    TomorrowPlace(pack::Classroom classroom, Parts parts);
    ~TomorrowPlace();

    const TomorrowPlan& plan() const { return work_.plan(); }
    const PlanAtWork& work() const { return work_; }
    bool undo() { return changed(work_.undo()); }
    bool redo() { return changed(work_.redo()); }
    /// The pack that is handed out; null while it is read, and when none is or it is not good.
    const pack::Pack* pack() const { return pack_.get(); }
    std::string packName() const;

    /// She comes here: the pack that is handed out is read, unless it is at hand.
    void begin(const OpenedClass& opened);
    /// Makes tables and lesson of what the class has answered so far, aside.
    void planAnew(const OpenedClass& opened);
    bool isBusy() const { return newest_.isBusy() || wants_plan_; }
    /// Something was answered or handed out since it was planned. `answers`: the class's by now.
    bool isBehind(const OpenedClass& opened, std::int64_t answers) const;

    // Which sheet is in hand: a table by its id, or the lesson.
    const std::string& table() const { return table_; }  // empty: the lesson
    bool lessonSeen() const { return lesson_seen_; }
    void take(const std::string& table);
    void moveSheet(int by);  // the lesson, then the tables

    // The lines of the sheet in hand.
    std::vector<SheetRow> rows() const;
    std::size_t at() const { return at_; }
    bool onSheet() const { return on_sheet_; }  // else among the sheets
    void goToSheet(bool on);
    void takeRow(std::size_t at);
    void moveRow(int by);
    /// Enter: opens what else could be asked, or puts in what is chosen.
    void openRow(const OpenedClass& opened);
    /// Delete: takes an item or a task out.
    void takeRowOut();
    void askOthers(const OpenedClass& opened);  // at the table in hand
    const std::vector<LessonItem>& choices() const { return choices_; }
    const std::vector<std::string>& taskChoices() const { return task_choices_; }
    bool isChoosing() const { return !choices_.empty() || !task_choices_.empty(); }

    // A child who is to sit elsewhere.
    const std::string& child() const { return child_; }  // id; empty: none in hand
    void takeChild(const std::string& id);               // again: puts it back
    void moveChild(const std::string& table, const OpenedClass& opened);

    /// One step back: choosing, a child in hand, the sheet. False: there was none.
    bool back();

    TomorrowStep next(const OpenedClass& opened, std::int64_t answers) const;
    /// Writes the lesson or the tables, whichever is in hand, into papers/ and shows it.
    void print(const OpenedClass& opened);
    /// Where what was printed last lies; empty: nothing was.
    const std::filesystem::path& printed() const { return printed_; }
    void showPrinted();

    /// What went wrong last, what was found at opening, and with saving.
    std::vector<Problem> problems() const;
    bool isSaved() const { return saver_.isSaved() && asked_ == work_.changes(); }
    std::optional<std::int64_t> savedAt() const { return saver_.savedAt(); }
    void step(const OpenedClass& opened, std::int64_t now_ms);
    std::optional<std::int64_t> due() const { return saver_.due(); }
    void finish(std::int64_t now_ms);

  private:
    struct Made {
        std::string pack_file;
        std::shared_ptr<const pack::Pack> pack;
        std::vector<Problem> problems;
        std::optional<TomorrowPlan> plan;
    };
    bool changed(bool is_changed);
    void ask(const OpenedClass& opened, std::optional<std::int64_t> plan_at_ms);
    void keepInHand();
    void putChoiceIn(const SheetRow& row, const OpenedClass& opened);
    PlanSources sources(const OpenedClass& opened) const;

    TomorrowPlace(pack::Classroom classroom, Parts parts, OpenedPlan opened);

    pack::Classroom classroom_;
    Parts parts_;
    PlanAtWork work_;
    SaverOf<TomorrowPlan> saver_;
    std::uint64_t asked_ = 0;  // the change up to which the saver was told
    std::vector<Problem> opening_, trouble_, pack_trouble_;
    Newest<std::shared_ptr<Made>> newest_;
    std::shared_ptr<const pack::Pack> pack_;
    std::string pack_file_;    // that pack_ was read from, also when it is not good
    bool wants_plan_ = false;  // asked for and not begun
    std::string table_;
    bool lesson_seen_ = false, on_sheet_ = false;
    std::size_t at_ = 0;
    AskedAt choosing_;
    std::vector<LessonItem> choices_;
    std::vector<std::string> task_choices_;
    std::string child_;
    std::filesystem::path printed_;
};

}  // namespace wrenlet::desk
