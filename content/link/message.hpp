// What a tablet asks and what the desk answers, as values, and both as bytes: JSON, behind its
// length, then the piece of a pack where there is one, made smaller (squeezed.hpp). A child's name
// is in none of them. Whatever is read is bounded and checked; what makes no sense gives nothing.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "content/pack/classroom.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::link {

inline constexpr std::size_t kMostResponses = 200;      // in one message
inline constexpr std::size_t kPieceBytes = 256 * 1024;  // of a pack; the last one is shorter
inline constexpr std::int64_t kHighestSequence = 1'000'000'000'000;

/// What the tablet is doing, for the desk's list: said every kHelloEveryMs, and after a Behind.
inline constexpr std::int64_t kHelloEveryMs = 10'000;
struct Hello {
    std::int64_t clock_ms = 0;  // the tablet's, Unix milliseconds; can be wrong
    std::int64_t unsent = 0;    // responses that the desk has not kept yet
    bool playing = false;       // a child's session is open
    std::string pack;           // hash of the pack it has; empty: none
    bool operator==(const Hello&) const = default;
};

/// The piece of a pack that begins at `from`.
struct WantPiece {
    std::string pack;  // its hash
    std::uint64_t from = 0;
    bool operator==(const WantPiece&) const = default;
};

/// Their tablet is the one that sends them, whatever they say. 1 to kMostResponses.
struct Responses {
    std::vector<practice::Response> responses;
    std::vector<std::int64_t> senseless{};  // sequences of those that were read and make no sense
    bool operator==(const Responses&) const = default;
};

using Ask = std::variant<Hello, WantPiece, Responses>;

/// A child as a tablet knows her: no name, and nothing of the school's list.
struct Seat {
    std::string child;                 // id
    std::string badge;                 // "badge-07"
    std::vector<std::string> shields;  // see pack::Child
    std::vector<std::string> key;      // see pack::Child
    bool operator==(const Seat&) const = default;
};

struct Welcome {
    std::vector<Seat> seats;           // in the class's order
    std::vector<std::string> deleted;  // ids: forget what these children did
    pack::ClassSettings settings;
    std::string pack;              // file name of the class's pack; empty: none is handed out
    std::string pack_hash;         // empty: none
    std::uint64_t pack_bytes = 0;  // its size
    std::int64_t clock_ms = 0;     // the desk's
    int utc_offset_min = 0;        // of the desk's local time
    bool operator==(const Welcome&) const = default;
};

struct Piece {
    std::string pack;  // its hash
    std::uint64_t from = 0;
    std::string bytes;  // empty: the desk has no such pack any more; say hello again
    bool operator==(const Piece&) const = default;
};

/// The sequences that were sent, each in one of the two. Kept: on the desk's disk, to be let go.
/// Refused: makes no sense, or another answer has that number; sending it again is of no use.
struct Kept {
    std::vector<std::int64_t> kept, refused;
    bool operator==(const Kept&) const = default;
};

/// The ask's number was not above `number`, so nothing of it was done: ask again from there.
struct Behind {
    std::uint64_t number = 0;
    bool operator==(const Behind&) const = default;
};

/// The desk could not do it now (its disk is full, say); nothing is lost: ask again later.
struct Busy {
    bool operator==(const Busy&) const = default;
};

/// The teacher took this tablet off her list. What it has not sent stays with it until it joins.
struct Removed {
    bool operator==(const Removed&) const = default;
};

using Answer = std::variant<Welcome, Piece, Kept, Behind, Busy, Removed>;

std::string writeAsk(const Ask& ask);
std::optional<Ask> readAsk(std::string_view plain);
std::string writeAnswer(const Answer& answer);
std::optional<Answer> readAnswer(std::string_view plain);

/// How many of these, from the first on, go into one message; at least 1.
std::size_t fitting(const std::vector<practice::Response>& responses);

/// A class as its tablets may know it; the pack's hash, size and the clock are left to be filled.
Welcome welcomeOf(const pack::ClassList& list);
/// And back, as a list that the game can play from: for her name each child has what her badge
/// shows.
pack::ClassList classOf(const Welcome& welcome);

}  // namespace wrenlet::link
