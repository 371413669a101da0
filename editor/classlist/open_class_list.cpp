#include "editor/classlist/open_class_list.hpp"

#include <system_error>

#include "editor/classlist/class_merge.hpp"

namespace wrenlet::desk {

OpenClassList::OpenClassList(pack::Classroom classroom, pack::ClassList list, Parts parts)
    : classroom_(std::move(classroom)), parts_(std::move(parts)), work_(list, parts_.seed) {
    std::error_code error;
    const auto copy = ClassWriter::asideFile(parts_.aside, classroom_);
    if (!parts_.aside.empty() && std::filesystem::exists(copy, error))
        opening_.push_back({"class.json",
                            "A copy of this class list was put aside when it could not be saved.",
                            "It is " + copy.string() + "; look there for what is missing here.",
                            Problem::Weight::warning});
    start(std::move(list));
}

void OpenClassList::start(pack::ClassList saved) {
    auto writer = std::make_shared<ClassWriter>(classroom_, std::move(saved), parts_.aside);
    saver_ = std::make_unique<SaverOf<pack::ClassList>>(
        [writer](const pack::ClassList& list) { return writer->write(list); }, parts_.saving,
        parts_.wake);
    asked_ = work_.changes();
    saver_->isSavedAs(asked_);
}

void OpenClassList::readAnew(const pack::ClassList& list) {
    if (!isSaved() || list == work_.list()) return;
    work_.replace(list);
    start(list);
}

std::vector<Problem> OpenClassList::problems() const {
    std::vector<Problem> all = opening_;
    all.insert(all.end(), saver_->problems().begin(), saver_->problems().end());
    return all;
}

void OpenClassList::takeFound(std::int64_t now_ms) {
    const auto both = saver_->takeFound();
    if (!both) return;
    // she may have gone on meanwhile
    pack::ClassList list = mergeClassLists(both->tried, work_.list(), both->found);
    const bool is_saved = list == both->found;
    work_.replace(std::move(list));
    asked_ = work_.changes();
    if (is_saved)
        saver_->isSavedAs(asked_);
    else
        saver_->changed(asked_, now_ms);
}

void OpenClassList::step(std::int64_t now_ms) {
    asked_ = work_.changes();
    saver_->changed(asked_, now_ms);
    saver_->step(work_.list(), now_ms);
    takeFound(now_ms);
}

void OpenClassList::finish(std::int64_t now_ms) {
    asked_ = work_.changes();
    saver_->changed(asked_, now_ms);
    saver_->finish(work_.list(), now_ms);
    takeFound(now_ms);
}

}  // namespace wrenlet::desk
