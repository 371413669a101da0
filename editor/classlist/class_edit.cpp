#include "editor/classlist/class_edit.hpp"

#include "editor/edits/put_row.hpp"

namespace wrenlet::desk {

namespace {

const std::string& childId(const pack::Child& child) {
    return child.id;
}

struct Applied {
    pack::ClassList& list;

    ClassEdit operator()(const PutChild& put) const {
        Was<pack::Child> was = putRow(list.children, put.id, put.child, put.at, childId);
        return PutChild{std::move(was.id), std::move(was.row), was.at};
    }
    ClassEdit operator()(const PutLeft& put) const {
        Was<pack::Child> was = putRow(list.left, put.id, put.child, put.at, childId);
        return PutLeft{std::move(was.id), std::move(was.row), was.at};
    }
    ClassEdit operator()(const PutClassTitle& put) const {
        return PutClassTitle{std::exchange(list.title, put.title)};
    }
};

}  // namespace

ClassEdit apply(pack::ClassList& list, const ClassEdit& edit) {
    return std::visit(Applied{list}, edit);
}

}  // namespace wrenlet::desk
