// The class list that a teacher works on: who is in it, what she did to it, and each thing she can
// do, in her words. Nothing here waits for the disk.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/random.hpp"
#include "content/common/result.hpp"
#include "editor/classlist/class_edit.hpp"
#include "editor/classlist/names.hpp"
#include "editor/edits/history.hpp"

namespace wrenlet::desk {

using ClassHistory = HistoryOf<pack::ClassList, ClassEdit>;

class ClassAtWork {
  public:
    /// `seed` decides which ids children get, and keys that are given by chance.
    ClassAtWork(pack::ClassList list, std::uint64_t seed) : list_(std::move(list)), random_(seed) {}

    const pack::ClassList& list() const { return list_; }
    const ClassHistory& history() const { return history_; }
    std::uint64_t changes() const { return history_.changes(); }
    const pack::Child* child(std::string_view id) const { return list_.child(id); }
    const pack::Child* leftChild(std::string_view id) const;

    bool undo() { return history_.undo(list_); }
    bool redo() { return history_.redo(list_); }
    /// Another list stands in its place, such as one that was brought together with somebody
    /// else's. Where the children are others, what was done before cannot be taken back any more.
    void replace(pack::ClassList list);

    /// Children who are new to the class, each with a badge that nobody has. One whom the school's
    /// list names and who has left comes back. Of two who would be alike both get letters of the
    /// family name, where those are known; else the second is not taken. Returns what was not
    /// taken, and why; `first` gets the id of the first one added.
    std::vector<Problem> add(const std::vector<NewChild>& children, std::string_view where,
                             std::string* first = nullptr);
    /// Keeps of each of these names what stands before the first blank, where nobody else has that.
    void keepGivenNames(const std::vector<std::string>& ids);
    /// False, and nothing is done, when it is no name or another child's.
    bool rename(const std::string& id, std::string_view name);
    /// A badge that another child has changes places with hers.
    void giveBadge(const std::string& id, std::string_view badge);
    /// Two pictures of pack::kKeyPictures, or none.
    void giveKey(const std::string& id, const std::vector<std::string>& key);
    /// One that no other child has, by chance.
    void giveKeyByChance(const std::string& id);
    void setShields(const std::string& id, const std::vector<std::string>& shields, bool on,
                    std::string_view said);
    void leave(const std::string& id);
    /// With her old badge, or another one where that is taken meanwhile. False: no badge is free.
    bool comeBack(const std::string& id);

    /// A badge that no child in the class has; empty: all are given.
    std::string freeBadge() const;
    /// Another child of the class with the same badge; null: none.
    const pack::Child* sharesBadge(const pack::Child& child) const;

  private:
    template <class Change>
    void changeChild(const std::string& id, std::string said, Change change);
    std::size_t placeOf(std::string_view id) const;
    std::string newId();
    void act(std::string said, std::vector<ClassEdit> edits);

    pack::ClassList list_;
    ClassHistory history_;
    Random random_;
};

}  // namespace wrenlet::desk
