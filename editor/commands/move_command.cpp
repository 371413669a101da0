// move: a child into another class, with everything she did.
#include <nlohmann/json.hpp>

#include "editor/classlist/move_child.hpp"
#include "editor/commands/class_call.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

constexpr const char* kUse = "wrenlet-desk move CLASSROOM --child NAME_OR_ID --to CLASSROOM\n";

}  // namespace

int moveCommand(std::span<const std::string> args, Console console) {
    const auto call = classCallOf(args, kUse, console.err);
    if (!call) return 2;
    if (call->child.empty() || call->to.empty()) {
        console.err << "Name the child, and the classroom folder to move to.\nUse: " << kUse;
        return 2;
    }
    const pack::Classroom from{call->folder}, to{call->to};
    const auto list = pack::openClassList(from);
    for (const Problem& problem : list.problems()) console.err << sentence(problem) << "\n";
    if (!list.ok()) return 1;
    const auto id = childNamed(list.value(), call->child, console.err);
    if (!id) return 1;
    const auto moved = moveChild(from, *id, to);
    for (const Problem& problem : moved.problems()) console.err << sentence(problem) << "\n";
    if (!moved.ok()) return 1;
    if (call->json)
        console.out << nlohmann::ordered_json{{"child", *id},
                                              {"answers", moved.value().answers},
                                              {"marks", moved.value().marks},
                                              {"badge", moved.value().badge}}
                           .dump(2)
                    << "\n";
    else
        console.out << wording::counted(std::int64_t(moved.value().answers), "answer") << " and "
                    << wording::counted(std::int64_t(moved.value().marks), "mark")
                    << " copied; the badge there is " << moved.value().badge << "\n";
    return 0;
}

}  // namespace wrenlet::desk
