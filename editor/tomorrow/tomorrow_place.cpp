#include "editor/tomorrow/tomorrow_place.hpp"

#include <algorithm>
#include <set>
#include <string_view>

#include "content/pack/pack_file.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

using Kind = SheetRow::Kind;

constexpr std::size_t kMostChoices = 6;

SaverOf<TomorrowPlan>::Write writerFor(const pack::Classroom& classroom, std::string saved,
                                       const std::filesystem::path& aside) {
    auto writer = std::make_shared<PlanWriter>(classroom, std::move(saved), aside);
    return [writer](const TomorrowPlan& plan) { return writer->write(plan); };
}

std::vector<practice::ChildProgress> membersOf(const PlannedTable& table,
                                               const OpenedClass& opened) {
    std::vector<practice::ChildProgress> members;
    for (const practice::ChildProgress& child : opened.children)
        if (std::find(table.children.begin(), table.children.end(), child.child.id) !=
            table.children.end())
            members.push_back(child);
    return members;
}

}  // namespace

TomorrowPlace::TomorrowPlace(pack::Classroom classroom, Parts parts)
    : TomorrowPlace(classroom, parts, openPlan(classroom, parts.aside)) {}

TomorrowPlace::TomorrowPlace(pack::Classroom classroom, Parts parts, OpenedPlan opened)
    : classroom_(std::move(classroom)),
      parts_(std::move(parts)),
      work_(std::move(opened.plan)),
      saver_(writerFor(classroom_, std::move(opened.bytes), parts_.aside), parts_.saving,
             parts_.wake),
      asked_(work_.changes()),
      opening_(std::move(opened.problems)),
      newest_(parts_.planning, parts_.wake) {
    saver_.isSavedAs(asked_);
    keepInHand();
    if (!plan().tables.empty()) table_ = plan().tables.front().id;
}

TomorrowPlace::~TomorrowPlace() {
    newest_.wait();
}

std::string TomorrowPlace::packName() const {
    return pack_ ? pack_->name() : plan().pack.substr(0, plan().pack.rfind('.'));
}

PlanSources TomorrowPlace::sources(const OpenedClass& opened) const {
    return {opened.children, pack_.get()};
}

void TomorrowPlace::ask(const OpenedClass& opened, std::optional<std::int64_t> plan_at_ms) {
    const std::string file = opened.list.pack;
    const auto known = file == pack_file_ ? pack_ : nullptr;
    newest_.ask([file, known, path = classroom_.packFile(file), children = opened.children,
                 before = plan(), answers = gatheringOf(opened).answers, plan_at_ms] {
        auto made = std::make_shared<Made>();
        made->pack_file = file;
        made->pack = known;
        if (!known && !file.empty()) {
            Result<pack::Pack> read = pack::readPackFile(path);
            made->problems = read.problems();
            if (read.ok()) made->pack = std::make_shared<pack::Pack>(std::move(read.value()));
        }
        if (plan_at_ms)
            made->plan = planFor(children, made->pack.get(), file, before, *plan_at_ms, answers);
        return made;
    });
}

void TomorrowPlace::begin(const OpenedClass& opened) {
    if (pack_file_ != opened.list.pack && !newest_.isBusy()) ask(opened, {});
}

void TomorrowPlace::planAnew(const OpenedClass& opened) {
    if (opened.children.empty()) return;
    trouble_.clear();
    wants_plan_ = true;
}

bool TomorrowPlace::isBehind(const OpenedClass& opened, std::int64_t answers) const {
    return plan().isMade() && (answers != plan().answers || opened.list.pack != plan().pack);
}

bool TomorrowPlace::changed(bool is_changed) {
    if (is_changed) keepInHand();
    return is_changed;
}

// What is in hand may be gone after a change.
void TomorrowPlace::keepInHand() {
    choices_.clear();
    task_choices_.clear();
    if (plan().table(table_) == nullptr) table_.clear();
    const std::size_t count = rows().size();
    at_ = std::min(at_, count == 0 ? 0 : count - 1);
}

void TomorrowPlace::take(const std::string& table) {
    if (table != table_) at_ = 0;
    table_ = plan().table(table) == nullptr ? "" : table;
    lesson_seen_ = lesson_seen_ || table_.empty();
    on_sheet_ = false;
    keepInHand();
}

void TomorrowPlace::moveSheet(int by) {
    const auto& tables = plan().tables;
    std::int64_t here = 0;  // the lesson
    for (std::size_t i = 0; i < tables.size(); ++i)
        if (tables[i].id == table_) here = std::int64_t(i) + 1;
    const std::int64_t to = std::clamp<std::int64_t>(here + by, 0, std::int64_t(tables.size()));
    take(to == 0 ? "" : tables[std::size_t(to) - 1].id);
}

std::vector<SheetRow> TomorrowPlace::rows() const {
    std::vector<SheetRow> all;
    const auto add = [&](const AskedAt& at, std::size_t items) {
        for (std::size_t i = 0; i < items; ++i) all.push_back({Kind::item, at, i});
        all.push_back({Kind::more, at, 0});
        for (std::size_t i = 0; at == choosing_ && i < choices_.size(); ++i)
            all.push_back({Kind::choice, at, i});
    };
    if (!plan().isMade()) return all;
    if (const PlannedTable* table = plan().table(table_)) {
        add({table->id, table->skill}, table->items.size());
        return all;
    }
    for (const LessonTask& task : plan().lesson) {
        all.push_back({Kind::task, {"", task.skill}, 0});
        add({"", task.skill}, task.items.size());
    }
    all.push_back({Kind::more_tasks, {}, 0});
    for (std::size_t i = 0; i < task_choices_.size(); ++i)
        all.push_back({Kind::task_choice, {}, i});
    return all;
}

void TomorrowPlace::goToSheet(bool on) {
    on_sheet_ = on && plan().isMade();
}

void TomorrowPlace::takeRow(std::size_t at) {
    on_sheet_ = true;
    at_ = at;
}

void TomorrowPlace::moveRow(int by) {
    const std::size_t count = rows().size();
    if (count == 0) return;
    at_ = static_cast<std::size_t>(
        std::clamp<std::int64_t>(std::int64_t(at_) + by, 0, std::int64_t(count) - 1));
}

void TomorrowPlace::openRow(const OpenedClass& opened) {
    const std::vector<SheetRow> all = rows();
    if (at_ >= all.size()) return;
    const SheetRow row = all[at_];
    if (row.kind == Kind::choice || row.kind == Kind::task_choice) return putChoiceIn(row, opened);
    const bool was_open = choosing_ == row.at && isChoosing();
    choices_.clear();
    task_choices_.clear();
    choosing_ = row.at;
    trouble_.clear();
    if (!was_open && pack_ == nullptr) {
        trouble_ = {{"Class", "The pack that is handed out is not at hand.",
                     "Hand out a pack; then there is more to choose from.",
                     Problem::Weight::warning}};
    } else if (!was_open && row.kind == Kind::more_tasks) {
        for (std::string& skill : skillsAsked(*pack_))
            if (work_.itemsAt({"", skill}).empty()) task_choices_.push_back(std::move(skill));
    } else if (!was_open) {
        const PlannedTable* table = plan().table(row.at.table);
        const auto children = table == nullptr ? opened.children : membersOf(*table, opened);
        choices_ =
            moreItemsFor(row.at.skill, *pack_, children, work_.itemsAt(row.at), kMostChoices);
    }
    if (!was_open && pack_ != nullptr && !isChoosing())
        trouble_ = {{pack_->name(), "The pack has nothing else to ask here.",
                     "Add words to the unit and hand out a new pack.", Problem::Weight::warning}};
}

void TomorrowPlace::putChoiceIn(const SheetRow& row, const OpenedClass& opened) {
    if (row.kind == Kind::choice) {
        LessonItem item = choices_[row.index];
        choices_.clear();
        work_.putItemIn(row.at, std::move(item));
        return keepInHand();
    }
    const std::string skill = task_choices_[row.index];
    task_choices_.clear();
    std::size_t missed_by = 0;
    for (const practice::ChildProgress& child : opened.children)
        missed_by += std::any_of(child.lines.begin(), child.lines.end(), [&](const auto& line) {
            return line.cell.skill == skill && line.said == practice::Standing::missed;
        });
    if (pack_)
        work_.putTaskIn(
            {skill, missed_by, moreItemsFor(skill, *pack_, opened.children, {}, kLessonItems)});
    keepInHand();
}

void TomorrowPlace::takeRowOut() {
    const std::vector<SheetRow> all = rows();
    if (at_ >= all.size()) return;
    if (all[at_].kind == Kind::item) work_.takeItemOut(all[at_].at, all[at_].index);
    if (all[at_].kind == Kind::task) work_.takeTaskOut(all[at_].at.skill);
    keepInHand();
}

void TomorrowPlace::askOthers(const OpenedClass& opened) {
    const PlannedTable* table = plan().table(table_);
    if (table == nullptr || pack_ == nullptr) return;
    std::vector<LessonItem> others =
        moreItemsFor(table->skill, *pack_, membersOf(*table, opened), table->items, kTableItems);
    if (others.empty())
        trouble_ = {{pack_->name(), "The pack has no other words for this.",
                     "Add words to the unit and hand out a new pack.", Problem::Weight::warning}};
    work_.askOthers({table->id, table->skill}, std::move(others));
    keepInHand();
}

void TomorrowPlace::takeChild(const std::string& id) {
    child_ = child_ == id ? std::string() : id;
}

void TomorrowPlace::moveChild(const std::string& table, const OpenedClass& opened) {
    const std::string id = std::exchange(child_, {});
    for (const practice::ChildProgress& child : opened.children)
        if (child.child.id == id) work_.moveChild(id, child.child.name, table, sources(opened));
    keepInHand();
}

bool TomorrowPlace::back() {
    if (isChoosing()) {
        keepInHand();
        return true;
    }
    if (!child_.empty()) {
        child_.clear();
        return true;
    }
    return std::exchange(on_sheet_, false);
}

TomorrowStep TomorrowPlace::next(const OpenedClass& opened, std::int64_t answers) const {
    using Step = TomorrowStep::Kind;
    if (isBusy()) return {Step::wait, "tables and lesson are being made", "One moment"};
    if (!plan().isMade()) return {Step::plan, "who sits together, what to ask", "Plan tomorrow"};
    if (isBehind(opened, answers)) {
        const std::int64_t fresh = answers - plan().answers;
        return {Step::plan,
                fresh > 0 ? wording::counted(fresh, "new answer") : "another pack is handed out",
                "Plan anew"};
    }
    if (!table_.empty() && !lesson_seen_)
        return {Step::see_lesson, "ten minutes with the whole class", "See the lesson"};
    return table_.empty() ? TomorrowStep{Step::print, "one page to read from", "Print the lesson"}
                          : TomorrowStep{Step::print, "a page with all tables", "Print the tables"};
}

void TomorrowPlace::print(const OpenedClass& opened) {
    if (!plan().isMade()) return;
    const Paper paper = table_.empty() ? Paper::lesson : Paper::tables;
    const auto file = putPaper(classroom_, paperName(paper, opened, 0),
                               paperOf(paper, opened, 0, plan(), packName()));
    trouble_ = file.problems();
    if (!file.ok()) return;
    printed_ = file.value();
    showPrinted();
}

void TomorrowPlace::showPrinted() {
    if (printed_.empty() || !parts_.open || parts_.open(printed_)) return;
    trouble_ = {{printed_.filename().string(), "No program opened it.",
                 "It lies in papers of the classroom folder; open it from there.",
                 Problem::Weight::warning}};
}

std::vector<Problem> TomorrowPlace::problems() const {
    std::vector<Problem> all = trouble_;
    for (const auto* more : {&pack_trouble_, &opening_, &saver_.problems()})
        all.insert(all.end(), more->begin(), more->end());
    return all;
}

void TomorrowPlace::step(const OpenedClass& opened, std::int64_t now_ms) {
    if (opened.listed) {
        std::set<std::string_view> known;
        for (const auto* side : {&opened.list.children, &opened.list.left})
            for (const pack::Child& child : *side) known.insert(child.id);
        changed(work_.keepOnly(known));
    }
    if (wants_plan_ && !newest_.isBusy()) {
        wants_plan_ = false;
        ask(opened, now_ms);
    }
    if (auto made = newest_.take()) {
        pack_ = (*made)->pack;
        pack_file_ = (*made)->pack_file;
        pack_trouble_ = std::move((*made)->problems);
        if ((*made)->plan) {
            work_.planAnew(std::move(*(*made)->plan));
            opening_.clear();
            lesson_seen_ = false;
            table_ = plan().tables.empty() ? "" : plan().tables.front().id;
            at_ = 0;
            keepInHand();
        }
    }
    asked_ = work_.changes();
    saver_.changed(asked_, now_ms);
    saver_.step(plan(), now_ms);
}

void TomorrowPlace::finish(std::int64_t now_ms) {
    asked_ = work_.changes();
    saver_.changed(asked_, now_ms);
    saver_.finish(plan(), now_ms);
}

}  // namespace wrenlet::desk
