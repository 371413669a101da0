// The class list that is open at the desk: the teacher's work on it and its saving, kept together
// as time goes on.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "editor/classlist/class_at_work.hpp"
#include "editor/classlist/class_file.hpp"

namespace wrenlet::desk {

class OpenClassList {
  public:
    struct Parts {
        Aside& saving;                // must outlive it
        std::filesystem::path aside;  // on this machine, for what cannot be saved in its place
        std::function<void()> wake;   // something is done aside; called from there
        std::uint64_t seed = 0;       // of ids and keys
    };
    /// `list` as it was read from the folder; an empty one where there is no class.json yet.
    OpenClassList(pack::Classroom classroom, pack::ClassList list, Parts parts);

    const pack::ClassList& list() const { return work_.list(); }
    const ClassAtWork& work() const { return work_; }
    ClassAtWork& change() { return work_; }

    /// The folder was read anew: where nothing is unsaved here, that is the list now.
    void readAnew(const pack::ClassList& list);

    bool isSaved() const { return saver_->isSaved() && asked_ == work_.changes(); }
    std::optional<std::int64_t> savedAt() const { return saver_->savedAt(); }
    /// What went wrong with saving it last, and a copy that was put aside before.
    std::vector<Problem> problems() const;

    /// Saves as is due, and takes in what somebody else wrote.
    void step(std::int64_t now_ms);
    std::optional<std::int64_t> due() const { return saver_->due(); }
    /// Saves what is not saved; at the end, and before somebody else writes the file.
    void finish(std::int64_t now_ms);

  private:
    void start(pack::ClassList saved);
    void takeFound(std::int64_t now_ms);

    pack::Classroom classroom_;
    Parts parts_;
    ClassAtWork work_;
    std::unique_ptr<SaverOf<pack::ClassList>> saver_;
    std::uint64_t asked_ = 0;  // the change up to which the saver was told
    std::vector<Problem> opening_;
};

}  // namespace wrenlet::desk
