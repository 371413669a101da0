#include "game/start/opening.hpp"

#include <cstdio>
#include <optional>
#include <string>
#include <system_error>
#include <utility>

#include "content/common/files.hpp"
#include "content/common/mapped_file.hpp"
#include "content/pack/pack_file.hpp"

namespace wrenlet::game {
namespace {

constexpr std::uint64_t kMostListBytes = 4ull << 20;

/// What came from the folder or was kept, and what has to be said about it.
template <class T>
struct Found {
    std::optional<T> value;
    std::vector<Problem> problems;
};

void append(std::vector<Problem>& to, const std::vector<Problem>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

/// How a file is read from its bytes: the first time, and when the same bytes were found good
/// before.
template <class T>
struct Reading {
    Result<T> (*anew)(std::string_view bytes, std::string_view where);
    Result<T> (*again)(std::string_view bytes, std::string_view where);
};

/// Keeps a good file's bytes on the tablet; that it can't be kept is worth a word, no more.
void keep(const std::filesystem::path& path, std::string_view bytes,
          std::vector<Problem>& problems) {
    const Result<Done> kept = writeWhole(path, bytes);
    for (Problem problem : kept.problems()) {
        problem.weight = Problem::Weight::warning;
        problems.push_back(std::move(problem));
    }
}

/// Reads a file of the classroom and keeps it if it is good; else what was kept before.
template <class T>
Found<T> readOrKept(const std::filesystem::path& path, const std::filesystem::path& kept_path,
                    std::uint64_t limit, const char* kept_is_used, Reading<T> reading) {
    Found<T> found;
    const std::string name = path.filename().string();
    const Result<std::string> bytes = readWhole(path, limit);
    const Result<MappedFile> kept = MappedFile::open(kept_path, limit);
    append(found.problems, bytes.problems());
    if (bytes.ok()) {
        const bool is_kept = kept.ok() && kept.value().bytes() == bytes.value();
        Result<T> value = (is_kept ? reading.again : reading.anew)(bytes.value(), name);
        append(found.problems, value.problems());
        if (value.ok()) {
            if (!is_kept) keep(kept_path, bytes.value(), found.problems);
            found.value = std::move(value.value());
            return found;
        }
    }
    if (!kept.ok()) return found;
    Result<T> value = reading.again(kept.value().bytes(), name);
    if (!value.ok()) return found;
    found.value = std::move(value.value());
    found.problems.push_back({name, kept_is_used, "", Problem::Weight::warning});
    return found;
}

std::string tabletName(std::uint64_t random) {
    char name[16];
    std::snprintf(name, sizeof name, "t-%08x", static_cast<unsigned>(random >> 32));
    return name;
}

}  // namespace

Result<OpenedList> openList(const pack::Classroom& classroom, const TabletFolder& tablet) {
    std::error_code error;
    std::filesystem::create_directories(tablet.folder, error);
    Found<pack::ClassList> list = readOrKept<pack::ClassList>(
        classroom.classFile(), tablet.keptList(), kMostListBytes,
        "The class list kept on this tablet is used.", {pack::readClassList, pack::readClassList});
    if (!list.value) return list.problems;
    const Result<TabletSettings> settings = openTabletSettings(tablet.settings());
    append(list.problems, settings.problems());
    return OpenedList{std::move(*list.value), std::move(list.problems), settings.value()};
}

Result<Opened> openClassroom(const pack::Classroom& classroom, const TabletFolder& tablet,
                             std::uint64_t random) {
    Result<OpenedList> list = openList(classroom, tablet);
    if (!list.ok()) return list.problems();
    return openRest(std::move(list.value()), classroom, tablet, random);
}

Result<Opened> openRest(OpenedList list, const pack::Classroom& classroom,
                        const TabletFolder& tablet, std::uint64_t random) {
    std::vector<Problem> problems = std::move(list.problems);
    Found<pack::Pack> pack = readOrKept<pack::Pack>(
        classroom.packFile(list.list.pack), tablet.keptPack(), pack::kMostPackBytes,
        "The last good pack, kept on this tablet, is played.",
        {pack::readPack, pack::readKnownPack});
    append(problems, pack.problems);
    if (!pack.value) return problems;

    Result<practice::Store> store = practice::Store::open(tablet.store(), tabletName(random));
    append(problems, store.problems());
    if (!store.ok()) return problems;
    append(problems, store.value().forget(list.list.deleted).problems());

    std::error_code error;
    std::filesystem::create_directories(classroom.tablets(), error);
    std::filesystem::path snapshot = classroom.snapshot(store.value().tablet());
    return Opened{std::move(list.list), std::move(*pack.value), std::move(store.value()),
                  std::move(snapshot),  std::move(problems),    list.settings,
                  tablet.settings()};
}

}  // namespace wrenlet::game
