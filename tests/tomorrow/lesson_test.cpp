#include "editor/tomorrow/lesson.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "content/exercise/in_accents.hpp"
#include "content/pack/pack_file.hpp"

namespace wrenlet::desk {
namespace {

using practice::ChildProgress;
using practice::Standing;

const pack::Pack& starter() {
    static const pack::Pack pack = [] {
        auto read = pack::readPackFile(WRENLET_TEST_STARTER "/packs/by-the-pond-1.zip");
        REQUIRE(read.ok());
        return std::move(read.value());
    }();
    return pack;
}

ChildProgress missing(const std::string& id, const std::string& skill, const std::string& sound,
                      exercise::Position position, Standing said = Standing::missed) {
    ChildProgress child;
    child.child.id = id;
    practice::SoundLine line;
    line.cell = {skill, {sound, position}};
    line.said = said;
    line.evidence.reading.p_missed = .9;
    child.lines.push_back(line);
    return child;
}

std::vector<ChildProgress> room() {
    using exercise::Position;
    return {missing("a", "phoneme.last", "t", Position::last),
            missing("b", "phoneme.last", "t", Position::last),
            missing("c", "phoneme.last", "n", Position::last),
            missing("d", "onset-rime.rhyme-sort", "æt", Position::rime),
            missing("e", "onset-rime.rhyme-sort", "æt", Position::rime),
            missing("f", "compound.delete", "bow", Position::last_part),
            missing("g", "phoneme.first", "k", Position::first, Standing::growing)};
}

}  // namespace

TEST_CASE("Lesson: the tasks in which most is missed, larger units first") {
    const Lesson lesson = lessonFor(starter(), room());
    CHECK(lesson.pack == "by-the-pond 1");
    REQUIRE(lesson.tasks.size() == kLessonTasks);
    std::vector<std::string> skills;
    for (const LessonTask& task : lesson.tasks) skills.push_back(task.skill);
    for (const char* wanted : {"phoneme.last", "onset-rime.rhyme-sort", "compound.delete"})
        CHECK(std::count(skills.begin(), skills.end(), wanted) == 1);
    const auto at = [&](const char* skill) {
        return std::find(skills.begin(), skills.end(), skill) - skills.begin();
    };
    CHECK(at("onset-rime.rhyme-sort") < at("compound.delete"));
    CHECK(at("compound.delete") < at("phoneme.last"));
}

TEST_CASE("Lesson: items turn on what is missed, say whom to listen to, and grow harder") {
    const Lesson lesson = lessonFor(starter(), room());
    for (const LessonTask& task : lesson.tasks) {
        CHECK(task.items.size() <= kLessonItems);
        CHECK(std::is_sorted(
            task.items.begin(), task.items.end(),
            [](const LessonItem& a, const LessonItem& b) { return a.expected > b.expected; }));
        std::set<std::string> asked;
        for (const LessonItem& one : task.items) {
            const exercise::Item* item = starter().item(one.item);
            REQUIRE(item != nullptr);
            CHECK(one.said == asking(*item, starter().vocabulary).aloud);
            CHECK(asked.insert(one.said.ask).second);
        }
    }
    const auto last = std::find_if(lesson.tasks.begin(), lesson.tasks.end(),
                                   [](const auto& task) { return task.skill == "phoneme.last"; });
    REQUIRE(last != lesson.tasks.end());
    CHECK(last->missed_by == 3);
    int on_t = 0, on_n = 0;
    for (const LessonItem& one : last->items) {
        const exercise::Item* item = starter().item(one.item);
        if (item->turns_on.sound == "t") CHECK(one.listen_to == std::vector<std::string>{"a", "b"});
        if (item->turns_on.sound == "n") CHECK(one.listen_to == std::vector<std::string>{"c"});
        on_t += item->turns_on.sound == "t";
        on_n += item->turns_on.sound == "n";
    }
    CHECK(on_t > 0);
    CHECK(on_n > 0);
}

TEST_CASE("Lesson: no item hangs on an accent, though the pack has such") {
    std::vector<ChildProgress> all;
    for (const exercise::SkillRow& row : exercise::skillTable())
        for (const exercise::Item& item : starter().items)
            if (exercise::rowOf(item.skill).id == row.id)
                all.push_back(missing("c" + std::to_string(all.size()), std::string(row.id),
                                      item.turns_on.sound, item.turns_on.position));
    std::size_t hanging = 0;
    for (const exercise::Item& item : starter().items)
        hanging += !exercise::holdsIn(speech::allAccents(), item, starter().vocabulary);
    CHECK(hanging > 50);
    for (const LessonTask& task : lessonFor(starter(), all).tasks)
        for (const LessonItem& one : task.items)
            for (const speech::Accent accent : speech::allAccents())
                CHECK(exercise::holdsIn(std::span(&accent, 1), *starter().item(one.item),
                                        starter().vocabulary));
}

TEST_CASE("Lesson: of a class that has shown nothing yet, the beginning of the table") {
    const Lesson lesson = lessonFor(starter(), {});
    REQUIRE(lesson.tasks.size() == kLessonTasks);
    CHECK(lesson.tasks.front().skill == "sentence.count");
    for (const LessonTask& task : lesson.tasks) {
        CHECK(task.missed_by == 0);
        for (const LessonItem& one : task.items) CHECK(one.listen_to.empty());
    }
    CHECK(lessonFor(pack::Pack{}, room()).tasks.empty());
}

TEST_CASE("Lesson: a small table's ten minutes are on what its children share") {
    const auto children = room();
    const std::vector<std::string> ids = {"a", "b", "c"};
    const practice::SmallGroup group = practice::groupFor("phoneme.last", ids, children);
    const LessonTask task = tableTaskFor(group, starter(), children);
    CHECK(task.skill == "phoneme.last");
    CHECK(task.items.size() == 8);
    std::size_t heard = 0;
    for (const LessonItem& one : task.items) heard += !one.listen_to.empty();
    CHECK(heard >= 3);
}

}  // namespace wrenlet::desk
