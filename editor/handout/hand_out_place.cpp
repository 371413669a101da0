#include "editor/handout/hand_out_place.hpp"

#include <algorithm>
#include <map>
#include <system_error>

namespace wrenlet::desk {

std::vector<TabletLine> tabletsOf(const OpenedClass& opened) {
    std::map<std::string, TabletLine> tablets;
    for (const practice::Response& response : opened.responses) {
        TabletLine& line = tablets[response.tablet];
        line.tablet = response.tablet;
        ++line.answers;
        if (response.at_ms < line.last_ms) continue;
        line.last_ms = response.at_ms;
        line.pack = response.pack;
    }
    std::vector<TabletLine> lines;
    for (auto& [name, line] : tablets) lines.push_back(std::move(line));
    std::stable_sort(lines.begin(), lines.end(), [](const TabletLine& a, const TabletLine& b) {
        return a.last_ms > b.last_ms;
    });
    return lines;
}

HandOutPlace::HandOutPlace(const OpenUnit& unit, pack::Classroom classroom, Parts parts)
    : unit_(unit),
      classroom_(std::move(classroom)),
      parts_(std::move(parts)),
      newest_(parts_.building, parts_.wake),
      packs_(packsOf(classroom_, unit.unit().id)) {
    lookAtFolder();
}

HandOutPlace::~HandOutPlace() {
    stop();
    newest_.wait();
}

void HandOutPlace::lookAtFolder() {
    std::error_code error;
    folder_ = {std::filesystem::is_directory(classroom_.folder, error), {}};
    if (folder_.is_here) folder_.free_bytes = parts_.free(classroom_.folder);
}

const BuiltPack* HandOutPlace::built() const {
    return built_ && built_changes_ == unit_.work().changes() ? &*built_ : nullptr;
}

void HandOutPlace::build() {
    if (isBuilding() || built() != nullptr || unit_.unit().words.empty()) return;
    problems_.clear();
    built_.reset();
    progress_ = std::make_shared<BuildProgress>();
    const Workbench& bench = unit_.bench();
    BuildCall call{unit_.unit(), UnitPlaces::beside(unit_.folder().file(), bench.pictures),
                   classroom_};
    newest_.ask([call = std::move(call), changes = unit_.work().changes(), &known = bench.known,
                 &blocked = bench.blocked, making = parts_.making, progress = progress_] {
        return std::make_shared<Made>(
            Made{changes, buildNext(call, known.lexicon(), blocked, making, *progress)});
    });
}

void HandOutPlace::stop() {
    if (progress_) progress_->stop = true;
}

bool HandOutPlace::wantsAhead() const {
    return parts_.making.shelf != nullptr && changed_ms_ && !isBuilding() && built() == nullptr;
}

std::optional<std::int64_t> HandOutPlace::due() const {
    if (!wantsAhead()) return {};
    return *changed_ms_ + kQuietMs;
}

void HandOutPlace::step(std::int64_t now_ms) {
    const std::uint64_t changes = unit_.work().changes();
    if (changes != seen_changes_) {
        seen_changes_ = changes;
        changed_ms_ = now_ms;
        stop();
    }
    if (const auto at = due(); at && now_ms >= *at) {
        changed_ms_.reset();
        build();
    }
    if (auto made = newest_.take()) {
        built_ = std::move((*made)->pack);
        built_changes_ = (*made)->changes;
        progress_.reset();
        lookAtFolder();
    }
}

void HandOutPlace::handOut() {
    if (built() == nullptr || !built()->isGood()) return;
    const Result<Done> done = desk::handOut(*built_, classroom_);
    problems_ = done.problems();
    if (done.ok()) {
        handed_out_ = built_->file;
        built_.reset();
    }
    packs_ = packsOf(classroom_, unit_.unit().id);
    lookAtFolder();
}

void HandOutPlace::goBackTo(const std::string& file) {
    const Result<Done> done = desk::goBackTo(file, classroom_);
    problems_ = done.problems();
    if (done.ok()) handed_out_ = file;
    lookAtFolder();
}

}  // namespace wrenlet::desk
