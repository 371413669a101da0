#include "editor/unit/open_unit.hpp"

#include <system_error>

namespace wrenlet::desk {

OpenUnit::OpenUnit(UnitFolder folder, OpenedUnitFile opened, std::unique_ptr<UnitInUse> in_use,
                   const Workbench& bench)
    : folder_(folder),
      bench_(bench),
      in_use_(std::move(in_use)),
      opening_(std::move(opened.problems)),
      work_(std::move(opened.unit)),
      saver_(UnitWriter(std::move(folder), std::move(opened.bytes), bench.aside, !opening_.empty()),
             bench.saving, bench.wake),
      looks_(bench.looking, bench.wake),
      look_(std::make_shared<const UnitLook>()) {}

Result<std::unique_ptr<OpenUnit>> OpenUnit::open(const UnitFolder& folder, const Workbench& bench) {
    Result<OpenedUnitFile> opened = openUnitFile(folder, bench.aside);
    if (!opened.ok()) return opened.problems();
    auto in_use = UnitInUse::take(folder, bench.who);
    std::unique_ptr<OpenUnit> unit(new OpenUnit(folder, std::move(opened.value()),
                                                in_use.ok() ? std::move(in_use.value()) : nullptr,
                                                bench));
    for (const Problem& problem : in_use.problems()) unit->opening_.push_back(problem);
    return unit;
}

Result<std::unique_ptr<OpenUnit>> OpenUnit::make(const std::filesystem::path& classroom,
                                                 const std::string& title, const Workbench& bench) {
    Result<std::unique_ptr<OpenUnit>> made = open(newUnitFolder(classroom, title), bench);
    if (made.ok()) made.value()->change([&](UnitAtWork& work) { work.rename(title); });
    return made;
}

void OpenUnit::change(const std::function<void(UnitAtWork&)>& what) {
    if (canChange()) what(work_);
}

std::vector<Problem> OpenUnit::problems() const {
    std::vector<Problem> all = opening_;
    all.insert(all.end(), saver_.problems().begin(), saver_.problems().end());
    return all;
}

void OpenUnit::step(std::int64_t now_ms) {
    saver_.changed(work_.changes(), now_ms);
    saver_.step(work_.unit(), now_ms);
    if (asked_ != work_.changes()) {
        asked_ = work_.changes();
        pack::Unit unheard = work_.unit();
        unheard.recordings.clear();
        if (looked_at_ != unheard) lookAgain(std::move(unheard));
    }
    if (auto newest = looks_.take()) {
        look_ = std::move(*newest);
        has_looked_ = true;
    }
}

void OpenUnit::lookAgain(pack::Unit unit) {
    looked_at_ = unit;
    looks_.ask([unit = std::move(unit), changes = work_.changes(), &known = bench_.known,
                &blocked = bench_.blocked, set = bench_.pictures, own = folder_.pictures()] {
        const auto has_picture = [&](const std::string& name) {
            std::error_code error;
            return std::filesystem::exists(set / (name + ".svg"), error) ||
                   std::filesystem::exists(own / (name + ".png"), error) ||
                   std::filesystem::exists(own / (name + ".svg"), error);
        };
        auto look = std::make_shared<UnitLook>(lookAt(unit, {known, blocked, has_picture}));
        look->changes = changes;
        return std::shared_ptr<const UnitLook>(std::move(look));
    });
}

}  // namespace wrenlet::desk
