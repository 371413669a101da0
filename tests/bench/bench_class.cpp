// Figures of a whole class's answers at the desk, printed by ./check --bench; nothing here passes
// or fails. 30 children, 180 days, 60 answers each, from 8 tablets: 324,000 rows.
#include <sqlite3.h>
#include <sys/resource.h>

#include <filesystem>

#include "content/common/random.hpp"
#include "content/pack/pack_file.hpp"
#include "content/practice/response_row.hpp"
#include "content/practice/store.hpp"
#include "editor/document/desk.hpp"
#include "editor/tomorrow/lesson.hpp"
#include "tests/bench/figure.hpp"

namespace {

using namespace wrenlet;
using bench::figure;
using bench::seconds;

constexpr int kChildren = 30, kDays = 180, kAnswers = 60, kTablets = 8;
const std::filesystem::path kFolder =
    std::filesystem::temp_directory_path() / "wrenlet-bench-class";

std::string childId(int child) {
    return "c-" + std::to_string(child);
}

practice::Response answer(const exercise::Item& item, int child, int day, Random& random) {
    practice::Response response;
    response.child = childId(child);
    response.session = 1;
    response.pack = "by-the-pond 1";
    response.item = item.id;
    response.skill = exercise::rowOf(item.skill).id;
    response.asked = item.subject;
    response.turns_on = item.turns_on;
    response.right = item.choices[item.answer].id;
    std::vector<std::string> listed;
    for (const exercise::Choice& choice : item.choices) listed.push_back(choice.id);
    response.choices = std::move(listed);
    const bool knows = random.below(100) < static_cast<std::uint32_t>(40 + 2 * child);
    const auto chosen = knows ? item.answer : random.below(std::uint32_t(item.choices.size()));
    response.chosen = item.choices[chosen].id;
    response.means = item.choices[chosen].means;
    response.took_ms = 1500 + random.below(4000);
    response.day = 20'000 + day;
    response.at_ms = response.day * 86'400'000 + 32'400'000;
    return response;
}

/// One tablet's file, written in one go: committing each answer would take minutes.
bool writeTablet(int tablet, const pack::Pack& pack, const pack::Classroom& classroom) {
    const std::string name = "t-" + std::to_string(tablet);
    const auto own = kFolder / (name + "-own.db");
    {
        auto store = practice::Store::open(own, name);
        if (!store.ok() || !store.value().beginSession("c-0", "by-the-pond 1", 1, 20'000).ok())
            return false;
    }
    {
        sqlite3* opened = nullptr;
        if (sqlite3_open(own.string().c_str(), &opened) != SQLITE_OK) return false;
        const practice::Connection connection(opened);
        Random random(static_cast<std::uint64_t>(tablet) + 1);
        if (practice::execute(opened, "BEGIN") != SQLITE_OK) return false;
        practice::Statement insert(opened, practice::kInsertResponse);
        for (int day = 0; day < kDays; ++day)
            for (int child = tablet; child < kChildren; child += kTablets)
                for (int i = 0; i < kAnswers; ++i) {
                    const auto& item = pack.items[random.below(std::uint32_t(pack.items.size()))];
                    practice::Response response = answer(item, child, day, random);
                    response.tablet = name;
                    practice::bindRow(insert, response);
                    if (!insert.run()) return false;
                }
        if (practice::execute(opened, "COMMIT") != SQLITE_OK) return false;
    }
    auto store = practice::Store::open(own, name);
    return store.ok() && store.value().snapshot(classroom.snapshot(name)).ok();
}

double megabytes() {
    rusage use{};
    getrusage(RUSAGE_SELF, &use);
    return static_cast<double>(use.ru_maxrss) / 1024;
}

}  // namespace

int main() {
    std::filesystem::remove_all(kFolder);
    const pack::Classroom classroom{kFolder / "classroom"};
    std::filesystem::create_directories(classroom.tablets());
    const auto pack =
        pack::readPackFile(std::filesystem::path(WRENLET_TEST_STARTER) / "packs/by-the-pond-1.zip");
    if (!pack.ok()) return 1;
    pack::ClassList list;
    list.title = "Three hundred thousand";
    for (int child = 0; child < kChildren; ++child)
        list.children.push_back({childId(child), "Child", "badge-01", {}});
    for (int tablet = 0; tablet < kTablets; ++tablet)
        if (!writeTablet(tablet, pack.value(), classroom)) return 1;
    const double before = megabytes();

    double begin = seconds();
    practice::Gathered gathered = practice::gather(classroom.tablets());
    const double merge = seconds() - begin;
    const std::size_t rows = gathered.responses.size();
    for (const Problem& problem : gathered.problems)
        std::fprintf(stderr, "%s\n", sentence(problem).c_str());
    if (rows == 0) return 1;
    figure("answers gathered from 8 tablets, against 324000", static_cast<double>(rows), "answers",
           324'000);
    figure("gathering them, against 5 s", merge, "s", 5);
    figure("memory more than before, against 200 MB", megabytes() - before, "MB", 200);

    begin = seconds();
    desk::OpenedClass opened = desk::classOf(std::move(list), std::move(gathered.responses), {}, 0);
    figure("every child read anew of them, against gathering them", seconds() - begin, "s", merge);
    begin = seconds();
    const desk::ClassMap map = desk::mapOf(opened, desk::RowOrder::most_missed);
    figure("the class map, against 200 ms", (seconds() - begin) * 1e3, "ms", 200);
    desk::Desk desk(std::move(opened));
    std::vector<double> pages;
    for (std::size_t child = 0; child < kChildren; child += 3) {
        begin = seconds();
        desk.openChild(child);
        pages.push_back((seconds() - begin) * 1e3);
    }
    figure("a child's page, the slowest, against 50 ms",
           *std::max_element(pages.begin(), pages.end()), "ms", 50);
    begin = seconds();
    const practice::Grouping grouping = practice::groupsOf(desk.opened().children);
    figure("small tables of the class, against the map's bound", (seconds() - begin) * 1e3, "ms",
           200);
    begin = seconds();
    const desk::Lesson lesson = desk::lessonFor(pack.value(), desk.opened().children);
    figure("a lesson aloud, against the map's bound", (seconds() - begin) * 1e3, "ms", 200);
    figure("memory more than before, at the end, against 200 MB", megabytes() - before, "MB", 200);
    std::filesystem::remove_all(kFolder);
    return map.rows.size() == kChildren && !lesson.tasks.empty() ? 0 : 1;
}
