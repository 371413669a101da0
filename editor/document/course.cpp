#include "editor/document/course.hpp"

#include <map>

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

Course courseOf(const OpenedClass& opened, const std::string& child, const std::string& skill,
                std::size_t most_days) {
    std::map<std::int64_t, CourseDay> days;
    double guesses = 0;
    int answers = 0;
    for (const practice::Response& response : opened.responses) {
        if (!response.isEvidence() || response.child != child || response.skill != skill) continue;
        if (!isCounted(opened, response)) continue;
        CourseDay& day = days[response.day];
        ++day.seen;
        day.right += response.isRight() ? 1 : 0;
        if (response.choices.empty()) continue;
        guesses += 1.0 / static_cast<double>(response.choices.size());
        ++answers;
    }
    while (days.size() > most_days) days.erase(days.begin());
    Course course;
    course.guess = answers > 0 ? guesses / answers : 0;
    for (auto& [number, day] : days) {
        day.day = number;
        day.label = wording::dayShort(number);
        day.range = likelyRange(day.right, day.seen);
        course.days.push_back(day);
    }
    return course;
}

}  // namespace wrenlet::desk
