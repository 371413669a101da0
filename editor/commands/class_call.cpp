#include "editor/commands/class_call.hpp"

#include <algorithm>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"

namespace wrenlet::desk {

std::optional<ClassCall> classCallOf(std::span<const std::string> args, std::string_view use,
                                     std::ostream& err) {
    ClassCall call;
    for (std::size_t i = 0; i < args.size(); ++i) {
        const std::string& arg = args[i];
        const bool has_value = i + 1 < args.size();
        if (arg == "--json") {
            call.json = true;
        } else if (arg == "--html" && has_value) {
            call.html = args[++i];
        } else if (arg == "--csv" && has_value) {
            call.csv = args[++i];
        } else if (arg == "--xapi" && has_value) {
            call.xapi = args[++i];
        } else if (arg == "--progress" && has_value) {
            call.progress = args[++i];
        } else if (arg == "--child" && has_value) {
            call.child = args[++i];
        } else if (arg == "--to" && has_value) {
            call.to = std::filesystem::u8path(args[++i]);
        } else if (arg == "--for" && has_value &&
                   (args[i + 1] == "family" || args[i + 1] == "specialist")) {
            call.for_specialist = args[++i] == "specialist";
        } else if (call.folder.empty() && arg.substr(0, 1) != "-") {
            call.folder = std::filesystem::u8path(arg);
        } else {
            err << "Not understood: " << arg << "\nUse: " << use;
            return std::nullopt;
        }
    }
    if (call.folder.empty()) {
        err << "Name the classroom folder.\nUse: " << use;
        return std::nullopt;
    }
    return call;
}

std::optional<std::string> childNamed(const pack::ClassList& list, const std::string& named,
                                      std::ostream& err) {
    std::vector<std::string> ids;
    for (const auto* side : {&list.children, &list.left})
        for (const pack::Child& child : *side)
            if (child.id == named || child.name == named) ids.push_back(child.id);
    if (list.isDeleted(named)) ids.push_back(named);
    if (ids.size() == 1) return ids.front();
    err << (ids.empty() ? "No child of this class has that name or id.\n"
                        : "Several children have that name; use one of these ids:");
    for (const std::string& id : ids) err << " " << id;
    if (!ids.empty()) err << "\n";
    return std::nullopt;
}

std::optional<OpenedClass> classAtHand(const ClassCall& call, std::ostream& err) {
    OpenedClass opened = openClass(call.folder, 0);
    for (const Problem& problem : opened.problems) err << sentence(problem) << "\n";
    if (!opened.listed) return std::nullopt;
    return opened;
}

std::optional<pack::Pack> packAtHand(const OpenedClass& opened, std::ostream& err) {
    if (opened.list.pack.empty()) {
        err << "No pack is handed out in this class.\n";
        return std::nullopt;
    }
    auto pack = pack::readPackFile(opened.classroom.packFile(opened.list.pack));
    for (const Problem& problem : pack.problems()) err << sentence(problem) << "\n";
    if (!pack.ok()) return std::nullopt;
    return std::move(pack.value());
}

bool writePaper(const std::string& file, const std::string& html, Console console) {
    const Result<Done> written = writeWhole(std::filesystem::u8path(file), html);
    for (const Problem& problem : written.problems()) console.err << sentence(problem) << "\n";
    if (written.ok()) console.out << file << "\n";
    return written.ok();
}

}  // namespace wrenlet::desk
