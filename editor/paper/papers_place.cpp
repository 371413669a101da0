#include "editor/paper/papers_place.hpp"

#include <algorithm>
#include <system_error>

namespace wrenlet::desk {

PapersPlace::PapersPlace(Parts parts)
    : parts_(std::move(parts)), newest_(parts_.writing, parts_.wake) {}

PapersPlace::~PapersPlace() {
    newest_.wait();
}

void PapersPlace::move(int by) {
    const auto last = static_cast<std::int64_t>(offered().size()) - 1;
    at_ = static_cast<std::size_t>(std::clamp<std::int64_t>(std::int64_t(at_) + by, 0, last));
}

void PapersPlace::write(Paper paper, const OpenedClass& opened, std::size_t child) {
    if (isBusy() || child >= opened.children.size()) return;
    problems_.clear();
    const std::string id = isOfAChild(paper) ? opened.children[child].child.id : "";
    newest_.ask([paper, id, child, opened] {
        auto written = std::make_shared<PaperWritten>(PaperWritten{paper, id, {}, {}});
        const auto file = putPaper(opened.classroom, paperName(paper, opened, child),
                                   paperOf(paper, opened, child, {}, ""));
        written->problems = file.problems();
        if (file.ok()) written->file = file.value();
        return written;
    });
    step();
}

const PaperWritten* PapersPlace::written(Paper paper, const std::string& child) const {
    const std::string id = isOfAChild(paper) ? child : "";
    for (const PaperWritten& one : written_)
        if (one.paper == paper && one.child == id) return &one;
    return nullptr;
}

void PapersPlace::show(Paper paper, const std::string& child) {
    const PaperWritten* one = written(paper, child);
    if (one == nullptr) return;
    const std::string name = one->file.filename().string();
    std::error_code error;
    if (!std::filesystem::exists(one->file, error)) {
        std::erase_if(written_, [&](const PaperWritten& each) { return &each == one; });
        problems_ = {
            {name, "It is not there any more.", "Write it anew.", Problem::Weight::warning}};
        return;
    }
    if (!parts_.open || parts_.open(one->file)) return;
    problems_ = {{name, "No program opened it.",
                  "It lies in papers of the classroom folder; open it from there.",
                  Problem::Weight::warning}};
}

void PapersPlace::step() {
    auto made = newest_.take();
    if (!made) return;
    problems_ = (*made)->problems;
    if ((*made)->file.empty()) return;
    std::erase_if(written_, [&](const PaperWritten& one) {
        return one.paper == (*made)->paper && one.child == (*made)->child;
    });
    written_.push_back(**made);
}

}  // namespace wrenlet::desk
