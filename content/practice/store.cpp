#include "content/practice/store.hpp"

#include <algorithm>
#include <cstdio>
#include <string>
#include <system_error>
#include <utility>

#include <sqlite3.h>

#include "content/common/files.hpp"
#include "content/practice/response_row.hpp"
#include "content/practice/sqlite.hpp"

namespace wrenlet::practice {
namespace {

constexpr int kBusyMs = 1000;  // a program that is just ending lets go within this
constexpr std::int64_t kPageBytes = 4096;

Session sessionFrom(const Statement& row) {
    Session session;
    session.id = row.number(0);
    session.child = row.text(1);
    session.pack = row.text(2);
    session.seed = static_cast<std::uint64_t>(row.number(3));
    session.day = row.number(4);
    session.played_ms = row.number(5);
    session.ended = row.number(6) != 0;
    return session;
}

/// Empty when the file is a store of ours in this format, or an empty one to make.
std::optional<Problem> whyNotOurs(sqlite3* connection, std::string_view where) {
    Statement count(connection, "SELECT count(*) FROM sqlite_schema");
    if (!count.row()) return problemOf(count.code(), where);
    const bool is_empty = count.number(0) == 0;
    count.reset();
    const std::int64_t owner = numberFrom(connection, "PRAGMA application_id", 0);
    const std::int64_t format = numberFrom(connection, "PRAGMA user_version", 0);
    if (is_empty && owner == 0 && format == 0) return std::nullopt;
    if (owner != kApplicationId)
        return Problem{std::string(where), "This is some other program's file.",
                       "Choose another folder for this tablet's answers."};
    if (format > kFormat)
        return Problem{std::string(where), "A newer Wrenlet wrote this store of answers.",
                       "Install the newest Wrenlet on this tablet."};
    if (format < 1) return problemOf(SQLITE_CORRUPT, where);
    return std::nullopt;
}

}  // namespace

struct Store::Database {
    std::filesystem::path path;
    std::string where;  // in problems
    std::string tablet;
    Journal* journal = nullptr;
    Connection connection;
    Statement insert, set_played, begin, commit, roll_back;

    Problem problem() const { return problemOf(sqlite3_extended_errcode(connection.get()), where); }

    std::optional<Problem> configure(std::int64_t most_bytes);
    std::optional<Problem> makeTables(std::string_view name);
    std::optional<Problem> prepare();

    /// Carries out `work` in one transaction; nothing of it stays when it or the commit fails.
    template <class Work>
    std::optional<Problem> inTransaction(const Work& work) {
        if (!begin.run()) return problem();
        if (work() && commit.run()) return std::nullopt;
        Problem what_failed = problem();
        if (sqlite3_get_autocommit(connection.get()) == 0) roll_back.run();
        return what_failed;
    }
};

std::optional<Problem> Store::Database::configure(std::int64_t most_bytes) {
    const std::string pages = "PRAGMA max_page_count=" + std::to_string(most_bytes / kPageBytes);
    for (const char* const sql :
         {"PRAGMA page_size=4096", "PRAGMA journal_mode=WAL", "PRAGMA synchronous=FULL",
          "PRAGMA foreign_keys=ON", "BEGIN EXCLUSIVE; COMMIT", pages.c_str()})
        if (execute(connection.get(), sql) != SQLITE_OK) return problem();
    return std::nullopt;
}

std::optional<Problem> Store::Database::makeTables(std::string_view name) {
    if (!isTabletName(name))
        return Problem{where, "A tablet's name is made of letters, digits and hyphens.",
                       "Give this tablet another name."};
    const std::string marks = "PRAGMA application_id=" + std::to_string(kApplicationId) +
                              "; PRAGMA user_version=" + std::to_string(kFormat) + ";";
    return inTransaction([&] {
        if (execute(connection.get(), kSchema) != SQLITE_OK) return false;
        Statement insert_name(connection.get(), "INSERT INTO tablet VALUES (1, ?)");
        insert_name.bind(0, name);
        return insert_name.run() && execute(connection.get(), marks.c_str()) == SQLITE_OK;
    });
}

std::optional<Problem> Store::Database::prepare() {
    insert = Statement(connection.get(), kInsertResponse);
    set_played = Statement(connection.get(),
                           "UPDATE session SET played_ms = max(played_ms, ?) WHERE id = ?");
    if (!insert.ok() || !set_played.ok()) return problemOf(SQLITE_CORRUPT, where);
    Statement named(connection.get(), "SELECT name FROM tablet");
    if (!named.row()) return problemOf(SQLITE_CORRUPT, where);
    tablet = named.text(0);
    if (!isTabletName(tablet)) return problemOf(SQLITE_CORRUPT, where);
    return std::nullopt;
}

Result<Store> Store::open(const std::filesystem::path& path, std::string_view tablet,
                          StoreOptions options) {
    auto database = std::make_unique<Database>();
    database->path = path;
    database->where = path.filename().string();
    std::error_code ignored;  // if the folder cannot be made, opening says so
    if (path.has_parent_path()) std::filesystem::create_directories(path.parent_path(), ignored);

    sqlite3* opened = nullptr;
    const int code = sqlite3_open_v2(utf8(path).c_str(), &opened,
                                     SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
    database->connection.reset(opened);
    if (code != SQLITE_OK) return problemOf(code, database->where);
    sqlite3* const connection = database->connection.get();

    // The lock is taken with the first look and kept until the store is closed: a second program
    // is told so, instead of both giving out the same sequence.
    sqlite3_busy_timeout(connection, kBusyMs);
    execute(connection, "PRAGMA locking_mode=EXCLUSIVE");
    // Before anything is written: a file that is not ours stays as it is.
    if (auto problem = whyNotOurs(connection, database->where)) return *problem;
    if (auto problem = database->configure(options.most_bytes)) return *problem;
    database->begin = Statement(connection, "BEGIN IMMEDIATE");
    database->commit = Statement(connection, "COMMIT");
    database->roll_back = Statement(connection, "ROLLBACK");
    if (numberFrom(connection, "PRAGMA user_version", 0) == 0)
        if (auto problem = database->makeTables(tablet)) return *problem;
    if (auto problem = database->prepare()) return *problem;
    return Store(std::move(database));
}

const std::string& Store::tablet() const {
    return database_->tablet;
}

void Store::setJournal(Journal* journal) {
    database_->journal = journal;
}

Result<Done> Store::refill(std::span<const Session> sessions, std::span<const Response> responses) {
    Database& database = *database_;
    const auto put = [&database](const Session& session) {
        Statement insert(database.connection.get(),
                         "INSERT INTO session (id, child, pack, seed, day, played_ms, ended) "
                         "VALUES (?, ?, ?, ?, ?, ?, ?)");
        insert.bind(0, session.id);
        insert.bind(1, session.child);
        insert.bind(2, session.pack);
        insert.bind(3, static_cast<std::int64_t>(session.seed));
        insert.bind(4, session.day);
        insert.bind(5, session.played_ms);
        insert.bind(6, std::int64_t{session.ended});
        return insert.run();
    };
    Statement number(database.connection.get(),
                     "UPDATE response SET sequence = ? WHERE sequence = last_insert_rowid()");
    auto problem = database.inTransaction([&] {
        for (const Session& session : sessions)
            if (!put(session)) return false;
        for (Response response : responses) {
            response.tablet = database.tablet;
            if (!isInBounds(response)) continue;
            bindRow(database.insert, response);
            number.bind(0, response.sequence);
            if (!database.insert.run() || !number.run()) return false;
        }
        return true;
    });
    if (problem) return *problem;
    return Done{};
}

Result<Session> Store::beginSession(std::string_view child, std::string_view pack,
                                    std::uint64_t seed, std::int64_t day) {
    Session session{0, std::string(child), std::string(pack), seed, day, 0, false};
    auto problem = database_->inTransaction([&] {
        Statement insert(database_->connection.get(),
                         "INSERT INTO session (child, pack, seed, day, played_ms, ended) "
                         "VALUES (?, ?, ?, ?, 0, 0)");
        insert.bind(0, child);
        insert.bind(1, pack);
        insert.bind(2, static_cast<std::int64_t>(seed));
        insert.bind(3, day);
        if (!insert.run()) return false;
        session.id = sqlite3_last_insert_rowid(database_->connection.get());
        return true;
    });
    if (problem) return *problem;
    if (database_->journal) database_->journal->began(session);
    return session;
}

std::optional<Session> Store::openSession(std::string_view child, std::string_view pack,
                                          std::int64_t day) const {
    Statement select(database_->connection.get(),
                     "SELECT id, child, pack, seed, day, played_ms, ended FROM session "
                     "WHERE child = ? AND pack = ? AND day = ? AND ended = 0 "
                     "ORDER BY id DESC LIMIT 1");
    select.bind(0, child);
    select.bind(1, pack);
    select.bind(2, day);
    if (!select.row()) return std::nullopt;
    return sessionFrom(select);
}

Result<Done> Store::endSession(std::int64_t session, std::int64_t played_ms) {
    auto problem = database_->inTransaction([&] {
        Statement update(
            database_->connection.get(),
            "UPDATE session SET ended = 1, played_ms = max(played_ms, ?) WHERE id = ?");
        update.bind(0, played_ms);
        update.bind(1, session);
        return update.run();
    });
    if (problem) return *problem;
    if (database_->journal) database_->journal->ended(session, played_ms);
    return Done{};
}

Result<Response> Store::append(Response response, std::int64_t played_ms) {
    response.tablet = database_->tablet;
    response.took_ms = std::clamp<std::int64_t>(response.took_ms, 0, kLongestAnswerMs);
    if (!isInBounds(response))
        return Problem{database_->where,
                       "An answer to " + response.item.string() + " makes no sense.",
                       "Tell whoever looks after Wrenlet; the game goes on."};
    Database& database = *database_;
    auto problem = database.inTransaction([&] {
        bindRow(database.insert, response);
        if (!database.insert.run()) return false;
        response.sequence = sqlite3_last_insert_rowid(database.connection.get());
        database.set_played.bind(0, played_ms);
        database.set_played.bind(1, response.session);
        return database.set_played.run();
    });
    if (problem) return *problem;
    if (database.journal) database.journal->kept(response, played_ms);
    return response;
}

Result<Store::Taken> Store::take(std::span<const Response> responses) {
    sqlite3* const connection = database_->connection.get();
    Statement known(connection, std::string(kSelectResponses) + " WHERE sequence = ?");
    Statement owner(connection, "SELECT child FROM session WHERE id = ?");
    Statement insert(connection, kInsertNumbered);
    // The session was begun on the page, which tells no more of it than this.
    Statement begun(connection,
                    "INSERT OR IGNORE INTO session (id, child, pack, seed, day, played_ms, ended) "
                    "VALUES (?, ?, ?, 0, ?, 0, 0)");
    Taken taken;
    TextPool pool;
    const auto put = [&](Response response) {
        response.tablet = database_->tablet;
        if (response.sequence < 1 || !isInBounds(response)) {
            taken.refused.push_back(response.sequence);
            return true;
        }
        known.bind(0, response.sequence);
        if (known.row()) {
            const auto here = readRow(known, pool);
            known.reset();
            (here && *here == response ? taken.kept : taken.refused).push_back(response.sequence);
            return true;
        }
        owner.bind(0, response.session);
        const bool is_anothers = owner.row() && owner.text(0) != response.child.string();
        owner.reset();
        if (is_anothers) {
            taken.refused.push_back(response.sequence);
            return true;
        }
        begun.bind(0, response.session);
        begun.bind(1, response.child);
        begun.bind(2, response.pack);
        begun.bind(3, response.day);
        bindNumbered(insert, response);
        taken.kept.push_back(response.sequence);
        return begun.run() && insert.run();
    };
    auto problem = database_->inTransaction([&] {
        return known.ok() && owner.ok() && insert.ok() && begun.ok() &&
               std::all_of(responses.begin(), responses.end(), put);
    });
    if (problem) return *problem;
    return taken;
}

std::vector<Response> Store::history(std::string_view child) const {
    Statement select(database_->connection.get(),
                     std::string(kSelectResponses) + " WHERE child = ? ORDER BY sequence");
    select.bind(0, child);
    std::vector<Response> responses;
    TextPool pool;
    while (select.row())
        if (auto response = readRow(select, pool)) responses.push_back(std::move(*response));
    return responses;
}

std::int64_t Store::newest() const {
    Statement select(database_->connection.get(), "SELECT max(sequence) FROM response");
    return select.row() ? select.number(0) : 0;
}

std::vector<Response> Store::all() const {
    Statement select(database_->connection.get(),
                     std::string(kSelectResponses) + " ORDER BY sequence");
    std::vector<Response> responses;
    TextPool pool;
    while (select.row())
        if (auto response = readRow(select, pool)) responses.push_back(std::move(*response));
    return responses;
}

int Store::endedSessions(std::string_view child) const {
    Statement count(database_->connection.get(),
                    "SELECT count(*) FROM session WHERE child = ? AND ended = 1");
    count.bind(0, child);
    return count.row() ? static_cast<int>(count.number(0)) : 0;
}

Result<std::size_t> Store::forget(std::span<const std::string> children) {
    sqlite3* const connection = database_->connection.get();
    // What was forgotten and not yet written over, because the power went, is written over now.
    const bool was_cut_short = numberFrom(connection, "PRAGMA freelist_count", 0) > 0;
    Removed removed;
    auto problem = database_->inTransaction([&] {
        const auto done = removeChildren(connection, children);
        if (done) removed = *done;
        return done.has_value();
    });
    if (problem) return *problem;
    if (removed.answers + removed.sessions == 0 && !was_cut_short) return std::size_t{0};
    for (const char* const sql : {"VACUUM", "PRAGMA wal_checkpoint(TRUNCATE)"})
        if (execute(connection, sql) != SQLITE_OK) return database_->problem();
    return removed.answers;
}

Result<std::string> Store::snapshotBytes() const {
    // Copied beside the store first: the classroom folder may lie on a slow or odd disk, which
    // then only ever sees one file written from beginning to end.
    std::filesystem::path copy = database_->path;
    copy += ".copy";
    std::error_code ignored;
    std::filesystem::remove(copy, ignored);
    Statement vacuum(database_->connection.get(), "VACUUM INTO ?");
    vacuum.bind(0, utf8(copy));
    if (!vacuum.run()) {
        Problem problem = database_->problem();
        std::filesystem::remove(copy, ignored);
        return problem;
    }
    auto bytes = readWhole(copy, kMostSnapshotBytes);
    std::filesystem::remove(copy, ignored);
    return bytes;
}

Result<Done> Store::snapshot(const std::filesystem::path& path) const {
    const auto bytes = snapshotBytes();
    if (!bytes.ok()) return bytes.problems();
    std::error_code ignored;
    std::filesystem::create_directories(path.parent_path(), ignored);
    return writeWhole(path, bytes.value());
}

Store::Store(std::unique_ptr<Database> database) : database_(std::move(database)) {}
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;
Store::~Store() = default;

}  // namespace wrenlet::practice
