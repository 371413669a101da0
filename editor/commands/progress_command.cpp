#include <algorithm>
#include <iomanip>

#include "content/practice/progress.hpp"
#include "content/practice/store.hpp"
#include "editor/commands/command.hpp"
#include "editor/document/child_story.hpp"
#include "editor/document/opened_class.hpp"
#include "editor/look/said.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

constexpr const char* kUse = "wrenlet-desk progress CLASSROOM [--json]\n";

// Columns of the printed table; text is padded by letters, not bytes.
std::string padded(std::string text, std::size_t width) {
    const auto letters =
        static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
            return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
        }));
    if (letters < width) text.append(width - letters, ' ');
    return text;
}

void printChild(const practice::ChildProgress& child, std::ostream& out) {
    out << "\n" << child.child.name << ": ";
    if (child.answers == 0) {
        out << "not played yet\n";
        return;
    }
    out << wording::counted(child.answers, "answer") << " on "
        << wording::counted(child.days, "day") << "\n";
    if (!child.not_counted.empty()) out << "  " << notCountedSentence(child) << "\n";
    std::string skill;
    for (const practice::SoundLine& line : child.lines) {
        const practice::Evidence& evidence = line.evidence;
        if (line.cell.skill != skill) out << "  " << wording::skill(line.cell.skill) << "\n";
        skill = line.cell.skill;
        out << "    " << padded(wording::place(line.cell.turns_on), 20)
            << padded(std::string(wordOf(saidOf(line))), 20) << std::setw(3) << evidence.right
            << " of " << std::setw(3) << evidence.seen;
        std::string separator = "   ";
        for (const auto& [means, times] : evidence.taken) {
            out << separator << means << " " << wording::times(times);
            separator = "; ";
        }
        out << "\n";
    }
}

}  // namespace

int progressCommand(std::span<const std::string> args, Console console) {
    bool json = false;
    std::string folder;
    for (const std::string& arg : args) {
        if (arg == "--json") {
            json = true;
        } else if (folder.empty() && arg.substr(0, 1) != "-") {
            folder = arg;
        } else {
            console.err << "Not understood: " << arg << "\nUse: " << kUse;
            return 2;
        }
    }
    if (folder.empty()) {
        console.err << "Name the classroom folder.\nUse: " << kUse;
        return 2;
    }

    const OpenedClass opened = openClass(std::filesystem::u8path(folder), 0);
    for (const Problem& problem : opened.problems) console.err << sentence(problem) << "\n";
    if (!opened.listed) return 1;
    if (json) {
        console.out << practice::progressJson(opened.list, opened.children, opened.problems)
                    << "\n";
    } else {
        const Gathering gathering = gatheringOf(opened);
        console.out << opened.list.title << ": "
                    << wording::counted(std::int64_t(opened.children.size()), "child", "children")
                    << ", " << wording::counted(gathering.answers, "answer") << " from "
                    << wording::counted(gathering.tablets, "tablet") << "\n"
                    << kCaution << "\n";
        for (const auto& child : opened.children) printChild(child, console.out);
    }
    return anyError(opened.problems) ? 1 : 0;
}

}  // namespace wrenlet::desk
