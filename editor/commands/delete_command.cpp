// delete: a child and everything she did, for good, out of every file of the classroom folder.
#include <nlohmann/json.hpp>

#include "editor/classlist/delete_child.hpp"
#include "editor/commands/class_call.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

constexpr const char* kUse = "wrenlet-desk delete CLASSROOM --child NAME_OR_ID [--json]\n";

std::string asJson(const ChildDeleted& done, const std::string& id) {
    nlohmann::ordered_json json{{"child", id},
                                {"answers", done.answers},
                                {"files", nlohmann::ordered_json::array()},
                                {"tablets_to_open", done.tablets},
                                {"not_reached", nlohmann::ordered_json::array()},
                                {"receipt", done.receipt.filename().string()}};
    for (const FileCleared& file : done.files)
        json["files"].push_back(
            {{"name", file.name}, {"answers", file.answers}, {"removed", file.is_removed}});
    for (const Problem& problem : done.problems) json["not_reached"].push_back(sentence(problem));
    return json.dump(2) + "\n";
}

}  // namespace

int deleteCommand(std::span<const std::string> args, Console console) {
    const auto call = classCallOf(args, kUse, console.err);
    if (!call) return 2;
    if (call->child.empty()) {
        console.err << "Name the child.\nUse: " << kUse;
        return 2;
    }
    const pack::Classroom classroom{call->folder};
    const auto list = pack::openClassList(classroom);
    for (const Problem& problem : list.problems()) console.err << sentence(problem) << "\n";
    if (!list.ok()) return 1;
    const auto id = childNamed(list.value(), call->child, console.err);
    if (!id) return 1;
    const auto done = deleteChild(classroom, *id, console.today);
    for (const Problem& problem : done.ok() ? done.value().problems : done.problems())
        console.err << sentence(problem) << "\n";
    if (!done.ok()) return 1;
    if (call->json)
        console.out << asJson(done.value(), *id);
    else
        console.out << wording::counted(std::int64_t(done.value().answers), "answer")
                    << " deleted; the receipt is " << done.value().receipt.string() << "\n";
    return anyError(done.value().problems) ? 1 : 0;
}

}  // namespace wrenlet::desk
