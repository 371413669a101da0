// A tablet's own memory: every response, in SQLite with a write-ahead log, each committed to disk
// before the child hears the next prompt. A snapshot of it is what the desk gathers.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/practice/journal.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::practice {

/// A child's turn at the tablet. Open until it is ended, across crashes and restarts.
struct Session {
    std::int64_t id = 0;  // its sequence on this tablet
    std::string child;
    std::string pack;
    std::uint64_t seed = 0;  // everything random in it follows from this
    std::int64_t day = 0;
    std::int64_t played_ms = 0;  // time spent so far; pauses left out
    bool ended = false;
    bool operator==(const Session&) const = default;
};

/// The largest snapshot that is read, and so the largest store that is written: more than half a
/// million answers on one tablet.
inline constexpr std::uint64_t kMostSnapshotBytes = 256ull << 20;

struct StoreOptions {
    std::int64_t most_bytes = static_cast<std::int64_t>(kMostSnapshotBytes);
};

class Store {
  public:
    /// Opens or makes the store, and its folder. `tablet` names a new one (letters, digits and
    /// hyphens) and is ignored for one that has a name. The store is locked until it is closed.
    /// Errors: not a store of ours, a newer format, the disk is full or read-only, another program
    /// has it open. A file that is refused is left as it is.
    static Result<Store> open(const std::filesystem::path& path, std::string_view tablet,
                              StoreOptions options = {});

    const std::string& tablet() const;

    /// Who is told of every session and response from now on; null: nobody. It must outlive the
    /// store, or be taken back.
    void setJournal(Journal* journal);
    /// Puts back what a journal was told, under the numbers that it had; all of it or nothing.
    /// REQUIRES: an empty store; each response's session among `sessions`, responses by sequence.
    Result<Done> refill(std::span<const Session> sessions, std::span<const Response> responses);

    Result<Session> beginSession(std::string_view child, std::string_view pack, std::uint64_t seed,
                                 std::int64_t day);
    /// The child's open session of that day and pack, if there is one.
    std::optional<Session> openSession(std::string_view child, std::string_view pack,
                                       std::int64_t day) const;
    Result<Done> endSession(std::int64_t session, std::int64_t played_ms);

    /// Gives the response its tablet and sequence and commits it (synchronous FULL): when this
    /// returns, the row outlives a power cut. `played_ms` is the session's time so far. When it
    /// fails nothing is kept of the response, and its sequence goes to the next one.
    Result<Response> append(Response response, std::int64_t played_ms);

    /// Keeps responses that were numbered where they were given: a page on this tablet sent them.
    /// One commit, as durable as append(); the same one twice is kept once. `refused` names those
    /// that make no sense, those whose number another response has, and those in a session of
    /// another child. When it fails nothing of them is kept.
    struct Taken {
        std::vector<std::int64_t> kept, refused;  // sequences
    };
    Result<Taken> take(std::span<const Response> responses);

    /// Everything the child did, oldest first.
    std::vector<Response> history(std::string_view child) const;
    std::vector<Response> all() const;
    /// The sequence of the newest response; 0 when there is none.
    std::int64_t newest() const;

    /// How many sessions the child has ended on this tablet: the pond-side grows by it.
    int endedSessions(std::string_view child) const;

    /// Takes everything these children did out of the store for good, in one commit, and writes its
    /// file anew, so that no byte of it stays. Gives how many answers went. The numbers they had
    /// are not given out again. Once these children are gone it changes nothing.
    Result<std::size_t> forget(std::span<const std::string> children);

    /// A copy of the whole store, written aside and renamed to `path`.
    Result<Done> snapshot(const std::filesystem::path& path) const;
    /// What snapshot() writes.
    Result<std::string> snapshotBytes() const;

    Store(Store&&) noexcept;
    Store& operator=(Store&&) noexcept;
    ~Store();

  private:
    struct Database;
    explicit Store(std::unique_ptr<Database> database);
    std::unique_ptr<Database> database_;
};

/// Reads a snapshot that another tablet wrote, without changing it. Errors name the file: cut
/// short, not a store, a newer format.
Result<std::vector<Response>> readSnapshot(const std::filesystem::path& path);

/// A snapshot's bytes without what these children did, and how many answers that were; the file is
/// not changed. Errors as those of readSnapshot().
struct Without {
    std::string bytes;
    std::size_t answers = 0, sessions = 0;
};
Result<Without> snapshotWithout(const std::filesystem::path& path,
                                std::span<const std::string> children);

/// Every response in a classroom's tablets/, each (tablet, sequence) once, in that order, whatever
/// the order and number of the files. Problems name the files that could not be read.
struct Gathered {
    std::vector<Response> responses;
    std::vector<Problem> problems;
};
Gathered gather(const std::filesystem::path& tablets_folder);

}  // namespace wrenlet::practice
