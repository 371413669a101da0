// The desk's side of store.hpp: reading what tablets handed in. A file comes from outside, so it is
// read whole into memory, checked, and never asked to run anything.
#include <algorithm>
#include <map>
#include <string>
#include <tuple>
#include <utility>

#include <sqlite3.h>

#include "content/common/files.hpp"
#include "content/practice/response_row.hpp"
#include "content/practice/sqlite.hpp"
#include "content/practice/store.hpp"

namespace wrenlet::practice {
namespace {

// The file's header: https://www.sqlite.org/fileformat.html, section 1.3.
constexpr std::size_t kHeaderBytes = 100;
constexpr std::string_view kMagic("SQLite format 3\0", 16);

std::uint32_t bigEndian(std::string_view bytes, std::size_t at, std::size_t count) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < count; ++i)
        value = value << 8 | static_cast<unsigned char>(bytes[at + i]);
    return value;
}

Problem cutShort(std::string_view where) {
    return {std::string(where), "This file is cut short, so none of it is counted.",
            "Let the tablet play once more: it hands in the whole again."};
}

Problem damaged(std::string_view where) {
    return {std::string(where), "This file is damaged, so none of it is counted.",
            "Let the tablet play once more: it hands in the whole again."};
}

std::optional<Problem> whyNotASnapshot(std::string_view bytes, std::string_view where) {
    const std::string name(where);
    if (bytes.substr(0, kMagic.size()) != kMagic.substr(0, bytes.size()))
        return Problem{name, "This is not a tablet's answers.", "Take it out of this folder."};
    if (bytes.size() < kHeaderBytes) return cutShort(where);
    std::uint64_t page_bytes = bigEndian(bytes, 16, 2);
    if (page_bytes == 1) page_bytes = 65536;
    if (bigEndian(bytes, 28, 4) * page_bytes > bytes.size()) return cutShort(where);
    if (bigEndian(bytes, 68, 4) != kApplicationId)
        return Problem{name, "This is some other program's file.", "Take it out of this folder."};
    if (bigEndian(bytes, 60, 4) > kFormat)
        return Problem{name, "A newer Wrenlet wrote this file.",
                       "Install the newest Wrenlet on this computer."};
    const bool has_log = bytes[18] != 1 || bytes[19] != 1;
    if (has_log)
        return Problem{name, "This is a tablet's own store, copied by hand.",
                       "Take it out, and let the tablet hand in its answers."};
    return std::nullopt;
}

/// A budget of work rather than of time, so that a file gives the same result on every machine.
struct Budget {
    std::int64_t left;
    static constexpr int kStep = 1000;  // virtual machine instructions between two looks
    static int spend(void* budget) { return --static_cast<Budget*>(budget)->left < 0; }
};

/// An honest file needs some 0.1 steps a byte for the check and the reading together.
Budget budgetFor(const std::string& bytes) {
    return {10'000 + static_cast<std::int64_t>(bytes.size()) / Budget::kStep * 4};
}

/// `bytes` must outlive it, unless it is to be `changed`: then it has its own copy of them.
Connection openCopy(std::string& bytes, Budget& budget, bool changed = false) {
    sqlite3* opened = nullptr;
    const int code = sqlite3_open_v2(":memory:", &opened, SQLITE_OPEN_READWRITE, nullptr);
    Connection connection(opened);
    if (code != SQLITE_OK) return nullptr;
    sqlite3_db_config(opened, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(opened, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    sqlite3_db_config(opened, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_db_config(opened, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr);
    sqlite3_limit(opened, SQLITE_LIMIT_LENGTH, 1 << 20);
    sqlite3_progress_handler(opened, Budget::kStep, &Budget::spend, &budget);
    const auto size = static_cast<sqlite3_int64>(bytes.size());
    auto* held = reinterpret_cast<unsigned char*>(bytes.data());
    unsigned flags = SQLITE_DESERIALIZE_READONLY;
    if (changed) {
        held = static_cast<unsigned char*>(sqlite3_malloc64(bytes.size()));
        if (held == nullptr) return nullptr;
        std::copy(bytes.begin(), bytes.end(), held);
        flags = SQLITE_DESERIALIZE_FREEONCLOSE | SQLITE_DESERIALIZE_RESIZEABLE;
    }
    if (sqlite3_deserialize(opened, "main", held, size, size, flags) != SQLITE_OK ||
        execute(opened, "PRAGMA cell_size_check=ON") != SQLITE_OK)
        return nullptr;
    return connection;
}

bool isWhole(sqlite3* connection) {
    Statement check(connection, "PRAGMA quick_check(1)");
    return check.row() && check.text(0) == "ok";
}

/// What one file brought, all of it one tablet's, in the order of its numbers.
struct Brought {
    std::vector<Response> responses;
    std::string file;
    bool is_owner = false;  // the file is named after the tablet
};

/// How many of a file's answers are not those that another file has under their numbers: by the
/// file left out and the file kept.
using Differing = std::map<std::pair<std::string, std::string>, int>;

/// One tablet's answers to the end of `all`, each number once: as its own file has it, else as the
/// first of `files` has it. Gives their memory back.
void mergeInto(std::vector<Response>& all, std::vector<Brought> files, Differing& differing) {
    struct Row {
        Response* response;
        const Brought* file;
    };
    std::stable_sort(files.begin(), files.end(),
                     [](const Brought& a, const Brought& b) { return a.is_owner > b.is_owner; });
    std::vector<Row> rows;
    for (Brought& file : files)
        for (Response& response : file.responses) rows.push_back({&response, &file});
    std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) {
        return a.response->sequence < b.response->sequence;
    });
    const Row* kept = nullptr;
    for (const Row& row : rows) {
        if (kept == nullptr || kept->response->sequence != row.response->sequence) {
            all.push_back(*row.response);
            kept = &row;
        } else if (!(*kept->response == *row.response)) {
            ++differing[{row.file->file, kept->file->file}];
        }
    }
}

/// Texts come from `pool`, so that files share them.
Result<std::vector<Response>> readWith(const std::filesystem::path& path, TextPool& pool) {
    const std::string where = path.filename().string();
    auto file = readWhole(path, kMostSnapshotBytes);
    if (!file.ok()) return file.problems();
    std::string& bytes = file.value();
    if (auto problem = whyNotASnapshot(bytes, where)) return *problem;

    Budget budget = budgetFor(bytes);
    const Connection connection = openCopy(bytes, budget);
    if (!connection || !isWhole(connection.get())) return damaged(where);

    Statement named(connection.get(), "SELECT name FROM tablet");
    const std::string tablet = named.row() ? named.text(0) : "";
    named.reset();
    Statement select(connection.get(), std::string(kSelectResponses) + " ORDER BY sequence");
    if (!select.ok() || !isTabletName(tablet)) return damaged(where);

    std::vector<Response> responses;
    std::size_t left_out = 0;
    while (select.row()) {
        auto response = readRow(select, pool);
        if (response && response->tablet == tablet)
            responses.push_back(std::move(*response));
        else
            ++left_out;
    }
    if (select.code() != SQLITE_OK) return damaged(where);
    std::vector<Problem> warnings;
    if (left_out > 0)
        warnings.push_back({where,
                            std::to_string(left_out) + " of the answers in it make no sense and "
                                                       "are left out.",
                            "", Problem::Weight::warning});
    return Result<std::vector<Response>>(std::move(responses), std::move(warnings));
}

}  // namespace

Result<std::vector<Response>> readSnapshot(const std::filesystem::path& path) {
    TextPool pool;
    return readWith(path, pool);
}

Result<Without> snapshotWithout(const std::filesystem::path& path,
                                std::span<const std::string> children) {
    const std::string where = path.filename().string();
    auto file = readWhole(path, kMostSnapshotBytes);
    if (!file.ok()) return file.problems();
    std::string& bytes = file.value();
    if (auto problem = whyNotASnapshot(bytes, where)) return *problem;
    Budget budget = budgetFor(bytes);
    const Connection connection = openCopy(bytes, budget, true);
    if (!connection || !isWhole(connection.get())) return damaged(where);
    const auto removed = removeChildren(connection.get(), children);
    if (!removed) return damaged(where);
    Without without{{}, removed->answers, removed->sessions};
    if (removed->answers + removed->sessions > 0 &&
        execute(connection.get(), "VACUUM") != SQLITE_OK)
        return damaged(where);
    sqlite3_int64 size = 0;
    unsigned char* const left = sqlite3_serialize(connection.get(), "main", &size, 0);
    if (left == nullptr) return damaged(where);
    without.bytes.assign(reinterpret_cast<const char*>(left), static_cast<std::size_t>(size));
    sqlite3_free(left);
    return without;
}

Gathered gather(const std::filesystem::path& tablets_folder) {
    Gathered gathered;
    TextPool pool;
    std::map<std::string, std::vector<Brought>> tablets;
    std::size_t rows = 0;
    for (const auto& path : listFiles(tablets_folder, ".db")) {
        auto snapshot = readWith(path, pool);
        gathered.problems.insert(gathered.problems.end(), snapshot.problems().begin(),
                                 snapshot.problems().end());
        if (!snapshot.ok() || snapshot.value().empty()) continue;
        rows += snapshot.value().size();
        const std::string tablet = snapshot.value().front().tablet;
        tablets[tablet].push_back({std::move(snapshot.value()), path.filename().string(),
                                   tablet == path.stem().string()});
    }
    Differing differing;
    gathered.responses.reserve(rows);
    for (auto& [tablet, files] : tablets)
        mergeInto(gathered.responses, std::move(files), differing);
    for (const auto& [files, count] : differing)
        gathered.problems.push_back(
            {files.first,
             std::to_string(count) +
                 " of the answers in it differ from those of the same number "
                 "in " +
                 files.second + ", which are kept.",
             "Check whether two tablets go by one name.", Problem::Weight::warning});
    return gathered;
}

}  // namespace wrenlet::practice
