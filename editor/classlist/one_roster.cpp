#include "editor/classlist/one_roster.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/archive.hpp"
#include "content/pack/classroom.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/classlist/csv.hpp"
#include "editor/unit/outside_text.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::size_t kMostTold = 40;
constexpr const char* kStudent = "student";

/// One of the files as rows, whose columns are found by the names in its head.
class Table {
  public:
    Table(std::string_view outside, std::string name, std::vector<Problem>& problems)
        : name_(std::move(name)), problems_(problems) {
        const Result<std::string> text = outsideText(outside, name_, kMostRosterFileBytes);
        for (Problem problem : text.problems()) add(std::move(problem));
        if (!text.ok()) return;
        const char separator = csvSeparator(text.value());
        rows_ = csvRows(text.value(), separator, kMostRosterRows);
        if (rows_.empty()) return;
        head_ = std::move(rows_.front().fields);
        rows_.erase(rows_.begin());
        for (const CsvRow& row : rows_)
            if (!row.why_broken.empty())
                tell(row, "This line " + row.why_broken + ".", "It is left out; the rest is read.");
    }

    bool has(std::string_view column) const { return at(column).has_value(); }
    /// Empty where the row has no such field.
    std::string field(const CsvRow& row, std::string_view column) const {
        const auto place = at(column);
        return place && *place < row.fields.size() ? row.fields[*place] : std::string();
    }
    /// Calls `take` with each whole row that is not to be deleted.
    template <class Take>
    void each(Take take) const {
        for (const CsvRow& row : rows_)
            if (row.why_broken.empty() && field(row, "status") != "tobedeleted") take(row);
    }
    void tell(const CsvRow& row, std::string what, std::string way_out) const {
        add({name_ + ", line " + std::to_string(row.line), std::move(what), std::move(way_out),
             Problem::Weight::warning});
    }

  private:
    std::optional<std::size_t> at(std::string_view column) const {
        const auto found = std::find(head_.begin(), head_.end(), column);
        if (found == head_.end()) return std::nullopt;
        return static_cast<std::size_t>(found - head_.begin());
    }
    void add(Problem problem) const {
        problem.weight = Problem::Weight::warning;
        if (problems_.size() < kMostTold) problems_.push_back(std::move(problem));
    }

    std::string name_;
    std::vector<Problem>& problems_;
    std::vector<std::string> head_;
    std::vector<CsvRow> rows_;
};

/// Ids of those whom roles.csv of OneRoster 1.2 calls students; none: there is no such file.
std::optional<std::set<std::string>> studentsByRole(const std::string& text,
                                                    std::vector<Problem>& problems) {
    if (text.empty()) return std::nullopt;
    const Table roles(text, "roles.csv", problems);
    if (!roles.has("userSourcedId") || !roles.has("role")) return std::nullopt;
    std::set<std::string> students;
    roles.each([&](const CsvRow& row) {
        if (roles.field(row, "role") == kStudent)
            students.insert(roles.field(row, "userSourcedId"));
    });
    return students;
}

void takeUsers(const Table& users, const std::optional<std::set<std::string>>& by_role,
               Roster& roster) {
    std::set<std::string> ids;
    users.each([&](const CsvRow& row) {
        const std::string id = users.field(row, "sourcedId");
        if (users.has("role") ? users.field(row, "role") != kStudent
                              : by_role && by_role->count(id) == 0)
            return;
        std::string given = users.field(row, "preferredGivenName");
        if (given.empty()) given = users.field(row, "givenName");
        if (id.empty() || !pack::isLine(id, pack::kMostRosterLetters))
            return users.tell(row, "There is no id (sourcedId) on this line.",
                              "It is left out; type the name instead.");
        if (const std::string why = whyNoName(given); !why.empty())
            return users.tell(row,
                              given.empty() ? "There is no given name on this line."
                                            : pack::inQuotes(given) + " " + why + ".",
                              "It is left out; type the name instead.");
        if (!ids.insert(id).second)
            return users.tell(row, "The id " + pack::inQuotes(id) + " stands there twice.",
                              "It is taken once.");
        std::string family = users.field(row, "preferredFamilyName");
        if (family.empty()) family = users.field(row, "familyName");
        roster.children.push_back(
            {given, whyNoName(family).empty() ? family : std::string(), id, row.line});
    });
}

void takeClasses(const RosterFiles& files, Roster& roster, std::vector<Problem>& problems) {
    if (files.classes.empty() || files.enrollments.empty()) return;
    const Table classes(files.classes, "classes.csv", problems);
    std::map<std::string, std::string> titles;
    classes.each([&](const CsvRow& row) {
        titles.emplace(classes.field(row, "sourcedId"), classes.field(row, "title"));
    });
    const Table enrolled(files.enrollments, "enrollments.csv", problems);
    std::map<std::string, std::set<std::string>> children_of;
    enrolled.each([&](const CsvRow& row) {
        const std::string role = enrolled.field(row, "role");
        if (role.empty() || role == kStudent)
            children_of[enrolled.field(row, "classSourcedId")].insert(
                enrolled.field(row, "userSourcedId"));
    });
    for (const auto& [id, ids] : children_of) {
        RosterClass made;
        const auto title = titles.find(id);
        made.title = title == titles.end() || title->second.empty() ? id : title->second;
        for (const NewChild& child : roster.children)
            if (ids.count(child.roster) > 0) made.children.push_back(child);
        if (!made.children.empty()) roster.classes.push_back(std::move(made));
    }
    std::stable_sort(roster.classes.begin(), roster.classes.end(),
                     [](const auto& a, const auto& b) { return a.title < b.title; });
}

}  // namespace

bool isRoster(std::string_view text) {
    constexpr std::string_view kMark = "\xEF\xBB\xBF";
    if (text.substr(0, kMark.size()) == kMark) text.remove_prefix(kMark.size());
    const auto rows = csvRows(text.substr(0, 4096), csvSeparator(text), 1);
    if (rows.empty()) return false;
    const auto& head = rows.front().fields;
    const auto has = [&](std::string_view name) {
        return std::find(head.begin(), head.end(), name) != head.end();
    };
    return has("sourcedId") && (has("givenName") || has("familyName") || has("username"));
}

Result<Roster> readRoster(const RosterFiles& files) {
    std::vector<Problem> problems;
    const Table users(files.users, "users.csv", problems);
    for (const char* column : {"sourcedId", "givenName"})
        if (!users.has(column))
            return Problem{"users.csv, line 1",
                           std::string("There is no column called ") + column + ".",
                           "Export the list again as OneRoster CSV, or paste the names."};
    Roster roster;
    const auto by_role = studentsByRole(files.roles, problems);
    takeUsers(users, by_role, roster);
    if (!users.has("role") && !by_role)
        problems.push_back({"users.csv", "Nothing here tells children from grown-ups.",
                            "Put roles.csv beside it, or take out who is no child.",
                            Problem::Weight::warning});
    takeClasses(files, roster, problems);
    return {std::move(roster), std::move(problems)};
}

Result<RosterFiles> openRoster(const std::filesystem::path& file) {
    RosterFiles files;
    const std::pair<const char*, std::string*> parts[] = {{"users.csv", &files.users},
                                                          {"roles.csv", &files.roles},
                                                          {"classes.csv", &files.classes},
                                                          {"enrollments.csv", &files.enrollments}};
    const std::string name = file.filename().string();
    if (file.extension() == ".zip") {
        const auto bytes = readWhole(file, kMostRosterFileBytes);
        if (!bytes.ok()) return bytes.problems();
        const auto archive = pack::Archive::open(
            bytes.value(), name,
            {kMostRosterFileBytes, kMostRosterFileBytes, 4 * kMostRosterFileBytes, 200});
        if (!archive.ok()) return archive.problems();
        for (const auto& [part, text] : parts) {
            if (!archive.value().has(part)) continue;
            Result<std::string> read = archive.value().read(part);
            if (!read.ok()) return read.problems();
            *text = std::move(read.value());
        }
        if (files.users.empty())
            return Problem{name, "There is no users.csv in it.",
                           "Choose the OneRoster export of the school's program."};
        return files;
    }
    Result<std::string> users = readWhole(file, kMostRosterFileBytes);
    if (!users.ok()) return users.problems();
    files.users = std::move(users.value());
    for (const auto& [part, text] : parts) {
        std::error_code error;
        const auto beside = file.parent_path() / part;
        if (text == &files.users || !std::filesystem::exists(beside, error)) continue;
        if (auto read = readWhole(beside, kMostRosterFileBytes); read.ok())
            *text = std::move(read.value());
    }
    return files;
}

}  // namespace wrenlet::desk
