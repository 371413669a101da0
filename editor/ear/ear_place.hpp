// Asking one child aloud: ten items of a task, and a mark for each. Each mark is in the folder as
// soon as it is given, and can be taken back.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "content/pack/pack.hpp"
#include "editor/document/opened_class.hpp"
#include "editor/ear/ear_file.hpp"
#include "editor/ear/probe.hpp"
#include "editor/unit/open_unit.hpp"

namespace wrenlet::desk {

inline constexpr std::size_t kAskedAloud = 10;

/// What it asks from: words of the class's pack, or words that nobody here has practised.
enum class EarWords : std::uint8_t { practised, fresh };

class EarPlace {
  public:
    bool isOpen() const { return open_; }
    EarWords words() const { return words_; }
    const std::string& child() const { return child_; }  // id
    const std::string& skill() const { return skill_; }
    const std::vector<AskedAloud>& items() const { return items_; }
    /// The mark of an item; nothing: not given yet.
    std::optional<practice::HeardAs> markOf(std::size_t item) const { return marks_[item]; }
    std::size_t at() const { return at_; }
    std::size_t given() const { return order_.size(); }
    const std::vector<Problem>& problems() const { return problems_; }

    /// Items for that child: first of all what she misses. `seed` chooses the new words.
    void open(const OpenedClass& opened, std::size_t child, const std::string& skill,
              EarWords words, const Workbench& bench, std::uint64_t seed);
    void close() { open_ = false; }
    void moveTo(std::size_t item);
    /// Keeps the mark of the item in hand and goes on to the next; another mark takes the place of
    /// one given before. A mark that cannot be kept is not given, and a problem says so.
    void mark(practice::HeardAs mark, const pack::Classroom& classroom, std::int64_t day);
    /// Takes the newest mark back. False: there is none.
    bool undo(const pack::Classroom& classroom);

  private:
    struct Given {
        std::size_t item;
        practice::Heard heard;
        std::optional<practice::Heard> instead_of;
    };
    bool open_ = false;
    EarWords words_ = EarWords::practised;
    std::string child_, skill_;
    std::vector<AskedAloud> items_;
    std::vector<std::optional<practice::HeardAs>> marks_;
    std::vector<Given> order_;  // marks as given, newest last
    std::size_t at_ = 0;
    std::vector<Problem> problems_;
};

}  // namespace wrenlet::desk
