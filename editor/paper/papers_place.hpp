// Where the teacher stands with papers: which of them is in hand, what was written and where it
// lies. Writing goes aside, since every answer of a year is a long file.
#pragma once

#include <cstddef>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "editor/paper/papers.hpp"
#include "editor/unit/aside.hpp"

namespace wrenlet::desk {

/// What became of a paper.
struct PaperWritten {
    Paper paper = Paper::family;
    std::string child;           // id, where it is about one
    std::filesystem::path file;  // empty: it could not be written
    std::vector<Problem> problems;
};

class PapersPlace {
  public:
    struct Parts {
        Aside& writing;              // must outlive it
        std::function<void()> wake;  // something is done aside; called from there
        OpenOutside open = {};       // none: nothing is shown outside
    };
    explicit PapersPlace(Parts parts);
    ~PapersPlace();

    /// The papers offered: those of the child in hand, then those of the class.
    static std::vector<Paper> offered() {
        return {Paper::family, Paper::specialist, Paper::answers, Paper::progress, Paper::xapi};
    }
    std::size_t at() const { return at_; }  // into offered()
    void take(std::size_t at) { at_ = at; }
    void move(int by);

    /// Nothing is done while another is written, or before there is a child.
    void write(Paper paper, const OpenedClass& opened, std::size_t child);
    bool isBusy() const { return newest_.isBusy(); }
    /// What was written last of it here; null: nothing, or for another child.
    const PaperWritten* written(Paper paper, const std::string& child) const;
    /// Shows it with the system's program, where it was written.
    void show(Paper paper, const std::string& child);
    /// What went wrong last.
    const std::vector<Problem>& problems() const { return problems_; }

    void step();

  private:
    Parts parts_;
    Newest<std::shared_ptr<PaperWritten>> newest_;
    std::vector<PaperWritten> written_;
    std::vector<Problem> problems_;
    std::size_t at_ = 0;
};

}  // namespace wrenlet::desk
