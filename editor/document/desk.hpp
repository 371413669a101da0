// Where the teacher stands in the Class place: which page, which child, which place on the map is
// pointed at, and what is offered next. Every key and press becomes one of these calls; the windows
// only draw what it holds.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "editor/document/child_story.hpp"
#include "editor/document/choices_taken.hpp"
#include "editor/document/class_map.hpp"
#include "editor/document/course.hpp"
#include "editor/document/map_filter.hpp"
#include "editor/document/opened_class.hpp"
#include "editor/document/stands_out.hpp"
#include "editor/document/why.hpp"

namespace wrenlet::desk {

enum class Page : std::uint8_t { map, child, tomorrow, papers, list };

/// The one filled button and the sentence before it.
struct NextStep {
    enum class Kind : std::uint8_t { see_child, see_map, tomorrow, gather };
    Kind kind = Kind::gather;
    std::string sentence;   // "Sol misses 7 places"
    std::string button;     // "See Sol"
    std::size_t child = 0;  // for see_child
};

/// A place on the map: indexes into its rows and columns.
struct MapPoint {
    std::size_t row = 0, column = 0;
    bool operator==(const MapPoint&) const = default;
};

class Desk {
  public:
    explicit Desk(OpenedClass opened);

    const OpenedClass& opened() const { return opened_; }
    const MapFilter& filter() const { return filter_; }
    /// What map and standouts are made of: the class, or what the filter leaves of it. The same
    /// children in the same order.
    const OpenedClass& shown() const { return narrowed_ ? *narrowed_ : opened_; }
    ClassState state() const { return stateOf(opened_); }
    Page page() const { return page_; }
    RowOrder order() const { return order_; }
    MapPoint point() const { return point_; }
    std::size_t child() const { return child_; }  // into opened().children
    const std::string& skill() const { return skill_; }

    const ClassMap& map() const { return map_; }
    const Gathering& gathering() const { return gathering_; }
    const std::vector<Standout>& standouts() const { return standouts_; }
    const ChildStory& story() const { return story_; }
    const ChoicesTaken& choices() const { return choices_; }
    const Course& course() const { return course_; }
    /// What stands behind the line that was asked about; nothing: none was.
    const std::optional<Why>& why() const { return why_; }

    /// The line pointed at; null for a place never asked or an empty map.
    const practice::SoundLine* pointedLine() const;
    /// Words asked at the place pointed at: "cat, hat".
    const std::string& pointedExamples() const { return pointed_examples_; }

    /// Another gathering of the same or another classroom; child, skill, order and page stay where
    /// they are still there.
    void replace(OpenedClass opened);

    void orderBy(RowOrder order);
    void filterBy(const MapFilter& filter);
    void pointAt(MapPoint point);
    void movePoint(int rows, int columns);  // stops at the map's edges
    void openPointed();                     // the child of that row, at that column's skill

    /// REQUIRES: child < opened().children.size().
    void openChild(std::size_t child);
    void chooseSkill(const std::string& skill);
    /// A cell of the child shown.
    void askWhy(const practice::Cell& cell);
    void closeWhy() { why_.reset(); }
    void showMap() { page_ = Page::map; }
    void showChild();
    void showTomorrow() { page_ = Page::tomorrow; }
    void showPapers() { page_ = Page::papers; }
    void showList() { page_ = Page::list; }
    /// Another child in hand, on whichever page. REQUIRES: as openChild().
    void takeChild(std::size_t child);
    /// The child before (-1) or after (1) in the map's order.
    std::optional<std::size_t> neighbour(int step) const;

    NextStep next() const;

  private:
    void narrow();
    void rebuildMap();
    void rebuildChild();
    void rebuildSkill();
    std::optional<std::size_t> rowOf(std::size_t child) const;

    OpenedClass opened_;
    MapFilter filter_;
    std::optional<OpenedClass> narrowed_;
    Gathering gathering_;
    Page page_ = Page::map;
    RowOrder order_ = RowOrder::most_missed;
    MapPoint point_;
    std::string pointed_examples_;
    std::size_t child_ = 0;
    std::string skill_;
    ClassMap map_;
    std::vector<Standout> standouts_;
    ChildStory story_;
    ChoicesTaken choices_;
    Course course_;
    std::optional<Why> why_;
};

}  // namespace wrenlet::desk
