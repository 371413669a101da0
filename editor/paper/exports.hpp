// What leaves the desk for other programs: every answer as CSV or as xAPI statements, and what is
// said of each child as CSV. No child's name is in any of them: a child is an id of the class list,
// which says nothing outside of the classroom folder.
#pragma once

#include <span>
#include <string>

#include "content/practice/progress.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::desk::paper {

/// RFC 4180, with a head line, in UTF-8. A cell that a spreadsheet would run as a formula begins
/// with an apostrophe.
std::string responsesCsv(std::span<const practice::Response> responses);
std::string progressCsv(std::span<const practice::ChildProgress> children);

/// A JSON array of statements by xAPI 1.0.3 (its repository, "xAPI-Data.md"), one for each answer.
/// The same answer always gives the same statement, id and all, so that a store that takes it twice
/// keeps it once. Actors are accounts on a host that is nobody's.
std::string xapiStatements(std::span<const practice::Response> responses);

}  // namespace wrenlet::desk::paper
