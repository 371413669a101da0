#include "editor/paper/tomorrow_pages.hpp"

#include "editor/look/wording.hpp"
#include "editor/paper/html.hpp"

namespace wrenlet::desk::paper {

namespace {

std::string called(const std::string& id, const Names& names) {
    const auto found = names.find(id);
    return found == names.end() ? id : found->second;
}

std::string listOf(std::span<const std::string> ids, const Names& names, std::size_t most) {
    std::vector<std::string> all;
    for (const std::string& id : ids) all.push_back(called(id, names));
    return wording::names(all, most);
}

/// "Say it. <b>answer</b> listen to Leo and Maya"
std::string itemLine(const LessonItem& item, const Names& names) {
    std::string line = "<li>" + escaped(item.said.ask) + " <span class=\"answer\">" +
                       escaped(item.said.answer) + "</span>";
    if (!item.listen_to.empty())
        line +=
            " <span class=\"who\">" + escaped("← " + listOf(item.listen_to, names, 4)) + "</span>";
    return line + "</li>\n";
}

std::string itemLines(const LessonTask& task, const Names& names) {
    std::string lines = "<ol>\n";
    for (const LessonItem& item : task.items) lines += itemLine(item, names);
    return lines + "</ol>\n";
}

std::string rest(std::string_view why, std::span<const std::string> ids, const Names& names) {
    if (ids.empty()) return {};
    return element("p", std::string(why) + listOf(ids, names, 40) + ".");
}

}  // namespace

Names namesOf(std::span<const practice::ChildProgress> children) {
    std::map<std::string, int> times;
    for (const auto& child : children) ++times[child.child.name];
    Names names;
    for (const auto& child : children) {
        const std::string& badge = child.child.badge;
        const std::string number = badge.substr(badge.find_last_of('-') + 1);
        names[child.child.id] = times[child.child.name] == 1
                                    ? child.child.name
                                    : child.child.name + " (badge " + number + ")";
    }
    return names;
}

std::string lessonPage(const Lesson& lesson, const Names& names) {
    std::string body = element("h1", "Ten minutes aloud");
    if (lesson.tasks.empty()) {
        body += element("p",
                        "The pack that is handed out gives nothing to ask that holds in every "
                        "accent. Hand out a pack with more words.");
        return page("Ten minutes aloud", body);
    }
    body += element("p",
                    "For the whole class, about two minutes a task; made from what was missed, "
                    "on the words of " +
                        lesson.pack +
                        ". The harder ones come last. An arrow names whom to listen to: all "
                        "answer at once, and theirs is the voice to catch.",
                    "soft");
    body += "<div class=\"columns\">\n";
    for (const LessonTask& task : lesson.tasks) {
        body += "<section>\n" + element("h2", wording::skill(task.skill));
        body += element("p",
                        task.missed_by == 0
                            ? "Nobody is said to miss this yet."
                            : wording::counted(std::int64_t(task.missed_by), "child", "children") +
                                  (task.missed_by == 1 ? " misses" : " miss") + " something here.",
                        "soft");
        body += itemLines(task, names) + "</section>\n";
    }
    body += "</div>\n" + element("p", kCaution, "caution");
    return page("Ten minutes aloud", body);
}

std::string groupsPage(const practice::Grouping& grouping, std::span<const LessonTask> plans,
                       const Names& names) {
    std::string body = element("h1", "Small tables");
    body += element("p",
                    "Three or four children who share a gap, and ten minutes for each table. In "
                    "brackets: how many of them miss it.",
                    "soft");
    body += "<div class=\"columns\">\n";
    for (std::size_t i = 0; i < grouping.groups.size(); ++i) {
        const practice::SmallGroup& group = grouping.groups[i];
        body += "<section>\n" + element("h2", listOf(group.children, names, 6));
        body += element("p", wording::skill(group.skill) + ": " + sharedIn(group) + ".");
        if (i < plans.size() && !plans[i].items.empty())
            body += itemLines(plans[i], names);
        else
            body += element("p", "The pack that is handed out has nothing for this.", "soft");
        body += "</section>\n";
    }
    body += "</div>\n";
    body += rest("Miss something, and sit at no table: ", grouping.alone, names);
    body += rest("Nothing is said to be missed: ", grouping.nothing, names);
    body += rest("Too few answers to say: ", grouping.not_sure, names);
    body += element("p", kCaution, "caution");
    return page("Small tables", body);
}

}  // namespace wrenlet::desk::paper
