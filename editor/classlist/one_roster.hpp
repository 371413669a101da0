// A school's own list of children, as its programs export it: the files of 1EdTech OneRoster 1.1
// and 1.2 in CSV. Of all that stands there only given name, id and class are taken in; a family
// name is looked at only where two children would be alike. No conformance is claimed.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "editor/classlist/names.hpp"

namespace wrenlet::desk {

/// The text of each file; empty: it is not there. 1.1 has the role in users.csv, 1.2 in roles.csv.
struct RosterFiles {
    std::string users, roles, classes, enrollments;
};

struct RosterClass {
    std::string title;
    std::vector<NewChild> children;  // in the order of users.csv
};

struct Roster {
    std::vector<NewChild> children;    // every student, whatever the class
    std::vector<RosterClass> classes;  // those that have students, by title; none: not told
};

inline constexpr std::uint64_t kMostRosterFileBytes = 16u << 20;
inline constexpr std::size_t kMostRosterRows = 200'000;

/// True iff the text begins with the head of a users.csv.
bool isRoster(std::string_view text);

/// Errors: users.csv has no sourcedId or no givenName. Warnings, each with file and line: a broken
/// line, one without a name or an id, an id twice, an encoding other than UTF-8; that nothing tells
/// students from others. Users whose status is tobedeleted and users of another role are passed
/// over.
Result<Roster> readRoster(const RosterFiles& files);

/// Reads a users.csv and what lies beside it, or a zip of them. Errors: not there, too large, no
/// users.csv in it.
Result<RosterFiles> openRoster(const std::filesystem::path& file);

}  // namespace wrenlet::desk
