#include "editor/unit/unit_folder.hpp"

#include <algorithm>
#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/edits/beside.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::size_t kMostWhoBytes = 200;

std::string idFrom(std::string_view title) {
    std::string id;
    for (const char letter : title) {
        const bool upper = letter >= 'A' && letter <= 'Z';
        const char low = upper ? static_cast<char>(letter - 'A' + 'a') : letter;
        const bool plain = (low >= 'a' && low <= 'z') || (low >= '0' && low <= '9');
        if (plain) id += low;
        if (!plain && !id.empty() && id.back() != '-') id += '-';
        if (id.size() >= 40) break;
    }
    while (!id.empty() && id.back() == '-') id.pop_back();
    return id.empty() ? "unit" : id;
}

std::filesystem::path asideFile(const std::filesystem::path& aside, const UnitFolder& folder) {
    return aside / std::filesystem::u8path(folder.folder.filename().string() + ".json");
}

}  // namespace

std::vector<UnitFolder> unitsIn(const std::filesystem::path& classroom) {
    std::vector<UnitFolder> units;
    std::error_code error;
    for (std::filesystem::directory_iterator it(classroom / "units", error), end;
         !error && it != end; it.increment(error)) {
        const UnitFolder unit{it->path()};
        std::error_code none;
        if (std::filesystem::is_regular_file(unit.file(), none)) units.push_back(unit);
    }
    std::sort(units.begin(), units.end(),
              [](const UnitFolder& a, const UnitFolder& b) { return a.folder < b.folder; });
    return units;
}

UnitFolder newUnitFolder(const std::filesystem::path& classroom, std::string_view title) {
    const std::string id = idFrom(title);
    std::error_code error;
    for (int number = 1;; ++number) {
        const std::string name = number == 1 ? id : id + "-" + std::to_string(number);
        if (!std::filesystem::exists(classroom / "units" / name, error))
            return {classroom / "units" / name};
    }
}

Result<std::unique_ptr<UnitInUse>> UnitInUse::take(const UnitFolder& folder, std::string_view who) {
    std::error_code error;
    std::filesystem::create_directories(folder.folder, error);
    std::optional<HeldFile> held = HeldFile::take(folder.inUse());
    if (!held) {
        const Result<std::string> holder = readWhole(folder.inUse(), kMostWhoBytes);
        const bool is_told =
            holder.ok() && pack::isLine(holder.value(), kMostWhoBytes) && !holder.value().empty();
        if (!holder.ok())
            return Problem{folder.folder.string(), "This unit cannot be opened for writing.",
                           "Look whether the folder or stick is still there and not locked."};
        return Problem{
            folder.folder.filename().string(),
            "This unit is open already" + (is_told ? ", " + holder.value() : std::string()) + ".",
            "Close it there first; here it can be looked at."};
    }
    held->say(who.substr(0, kMostWhoBytes));
    return std::unique_ptr<UnitInUse>(new UnitInUse(std::move(*held)));
}

UnitWriter::Outcome UnitWriter::write(const pack::Unit& unit) {
    const std::string bytes = pack::writeUnit(unit);
    const Result<Done> written = writeBytes(bytes);
    Outcome outcome{written.ok(), written.problems(), {}};
    std::error_code error;
    if (written.ok()) {
        saved_ = bytes;
        keeps_found_ = false;
        if (!aside_.empty()) std::filesystem::remove(asideFile(aside_, folder_), error);
    } else if (!aside_.empty()) {
        std::filesystem::create_directories(aside_, error);
        const auto copy = asideFile(aside_, folder_);
        if (writeWhole(copy, bytes).ok())
            outcome.problems.push_back({folder_.folder.filename().string(),
                                        "Your work is kept on this machine meanwhile, as " +
                                            copy.filename().string() + ".",
                                        "It is saved in its place as soon as that can be "
                                        "written."});
    }
    return outcome;
}

Result<Done> UnitWriter::writeBytes(const std::string& bytes) {
    std::error_code error;
    // A classroom folder that is gone is not made anew under the same name: it may be a stick.
    const auto classroom = folder_.folder.parent_path().parent_path();
    if (!std::filesystem::is_directory(classroom, error))
        return Problem{classroom.string(), "The classroom folder is not there.",
                       "Plug the stick in again, or look whether the share can be reached."};
    std::filesystem::create_directories(folder_.folder, error);
    std::vector<Problem> warnings;
    const Result<std::string> there = readWhole(folder_.file(), pack::kMostUnitBytes);
    if (there.ok() && there.value() != saved_ && there.value() != bytes) {
        const std::filesystem::path other = freeBeside(folder_.folder, "unit-other");
        const Result<Done> kept = writeWhole(other, there.value());
        if (!kept.ok()) return kept.problems();
        warnings.push_back({folder_.folder.filename().string(),
                            "Somebody else changed this unit meanwhile. Theirs is kept as " +
                                other.filename().string() + ".",
                            "Open both and bring them together.", Problem::Weight::warning});
    }
    if (keeps_found_ && there.ok()) {
        const Result<Done> kept =
            writeWhole(freeBeside(folder_.folder, "unit-as-found"), there.value());
        if (!kept.ok()) return kept.problems();
    }
    const Result<Done> written = writeWhole(folder_.file(), bytes);
    if (!written.ok()) return written.problems();
    return {Done{}, std::move(warnings)};
}

Result<OpenedUnitFile> openUnitFile(const UnitFolder& folder, const std::filesystem::path& aside) {
    OpenedUnitFile opened;
    std::error_code error;
    std::vector<Problem> told;
    if (!aside.empty() && std::filesystem::exists(asideFile(aside, folder), error))
        told.push_back({folder.folder.filename().string(),
                        "A copy of this unit was put aside when it could not be saved.",
                        "It is " + asideFile(aside, folder).string() +
                            "; open that to see what the unit lacks.",
                        Problem::Weight::warning});
    if (!std::filesystem::exists(folder.file(), error)) {
        opened.unit.id = folder.folder.filename().string();
        opened.unit.title = opened.unit.id;
        opened.unit.where = "unit.json";
        opened.problems = std::move(told);
        return opened;
    }
    Result<std::string> bytes = readWhole(folder.file(), pack::kMostUnitBytes);
    if (!bytes.ok()) return bytes.problems();
    Result<pack::Unit> unit =
        pack::readUnit(bytes.value(), folder.folder.filename().string() + "/unit.json");
    if (!unit.ok()) return unit.problems();
    opened.problems = unit.problems();
    opened.problems.insert(opened.problems.end(), told.begin(), told.end());
    opened.unit = std::move(unit.value());
    opened.bytes = std::move(bytes.value());
    return opened;
}

}  // namespace wrenlet::desk
