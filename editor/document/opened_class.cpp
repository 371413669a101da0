#include "editor/document/opened_class.hpp"

#include <algorithm>
#include <set>
#include <span>
#include <utility>

#include "content/practice/store.hpp"
#include "editor/ear/ear_file.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

// The word that was asked about; where a sound was, the word that has it; empty for letters.
std::string exampleIn(const practice::Response& response) {
    const auto isWord = [](const std::string& id) { return id.find(':') == std::string::npos; };
    if (isWord(response.asked)) return wording::word(response.asked);
    return isWord(response.right) ? wording::word(response.right) : std::string();
}

/// The first kMostExamples words of each cell by the alphabet.
std::map<practice::Cell, std::vector<std::string>> examplesIn(
    std::span<const practice::Response> responses) {
    std::map<practice::Cell, std::vector<std::string>> examples;
    for (const practice::Response& response : responses) {
        if (response.turns_on.position == exercise::Position::word_count) continue;
        const std::string word = exampleIn(response);
        if (word.empty()) continue;
        std::vector<std::string>& words = examples[practice::cellOf(response)];
        const auto at = std::lower_bound(words.begin(), words.end(), word);
        if ((at != words.end() && *at == word) ||
            (at == words.end() && words.size() == kMostExamples))
            continue;
        words.insert(at, word);
        if (words.size() > kMostExamples) words.pop_back();
    }
    return examples;
}

}  // namespace

OpenedClass classOf(pack::ClassList list, std::vector<practice::Response> responses,
                    std::vector<Problem> problems, std::int64_t now_ms,
                    std::vector<practice::Heard> heard) {
    OpenedClass opened;
    opened.listed = true;
    opened.children = practice::progressOf(list, responses, heard);
    opened.heard = std::move(heard);
    opened.list = std::move(list);
    opened.examples = examplesIn(responses);
    opened.responses = std::move(responses);
    opened.problems = std::move(problems);
    opened.gathered_ms = now_ms;
    return opened;
}

OpenedClass openClass(const std::filesystem::path& folder, std::int64_t now_ms) {
    OpenedClass opened;
    opened.gathered_ms = now_ms;
    if (folder.empty()) return opened;

    const pack::Classroom classroom{folder};
    auto list = pack::openClassList(classroom);
    if (!list.ok()) {
        opened.classroom = classroom;
        opened.problems = list.problems();
        return opened;
    }
    auto gathered = practice::gather(classroom.tablets());
    std::erase_if(gathered.responses, [&](const practice::Response& response) {
        return list.value().isDeleted(response.child);
    });
    std::vector<Problem> problems = list.problems();
    problems.insert(problems.end(), gathered.problems.begin(), gathered.problems.end());
    auto heard = openEar(classroom);
    problems.insert(problems.end(), heard.problems().begin(), heard.problems().end());
    std::vector<practice::Heard> marks;
    if (heard.ok()) marks = std::move(heard.value());
    std::erase_if(marks,
                  [&](const practice::Heard& one) { return list.value().isDeleted(one.child); });
    opened = classOf(std::move(list.value()), std::move(gathered.responses), std::move(problems),
                     now_ms, std::move(marks));
    opened.classroom = classroom;
    return opened;
}

OpenedClass withList(const OpenedClass& opened, pack::ClassList list) {
    OpenedClass made = classOf(std::move(list), opened.responses, opened.problems,
                               opened.gathered_ms, opened.heard);
    made.classroom = opened.classroom;
    return made;
}

ClassState stateOf(const OpenedClass& opened) {
    if (!opened.listed)
        return opened.classroom.folder.empty() ? ClassState::no_folder : ClassState::no_list;
    if (opened.list.children.empty()) return ClassState::no_children;
    for (const practice::ChildProgress& child : opened.children)
        if (child.answers > 0) return ClassState::ready;
    return ClassState::nobody_played;
}

bool isCounted(const OpenedClass& opened, const practice::Response& response) {
    for (const practice::ChildProgress& child : opened.children)
        if (child.child.id == response.child)
            return !practice::isAmong(response, child.not_counted);
    return true;
}

Gathering gatheringOf(const OpenedClass& opened) {
    Gathering gathering;
    std::set<std::string_view> tablets;
    std::set<std::int64_t> days;
    for (const practice::Response& response : opened.responses) {
        tablets.insert(response.tablet);
        if (!response.isEvidence()) continue;
        ++gathering.answers;
        days.insert(response.day);
    }
    gathering.tablets = static_cast<int>(tablets.size());
    gathering.days = static_cast<int>(days.size());
    return gathering;
}

std::int64_t lastDayOf(const OpenedClass& opened) {
    std::int64_t day = 0;
    for (const practice::Response& response : opened.responses) day = std::max(day, response.day);
    return day;
}

}  // namespace wrenlet::desk
