// A classroom as the desk has it open: its list, every answer its tablets brought, what those say,
// and what could not be read. A value: gathering again makes a new one.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"
#include "content/practice/progress.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::desk {

inline constexpr std::size_t kMostExamples = 5;

struct OpenedClass {
    pack::Classroom classroom;
    bool listed = false;  // class.json was read
    pack::ClassList list;
    std::vector<practice::Response> responses;      // each (tablet, sequence) once
    std::vector<practice::Heard> heard;             // aloud, by her ear
    std::vector<practice::ChildProgress> children;  // in the list's order
    // up to kMostExamples words asked at a cell, in any child's answers, by the alphabet
    std::map<practice::Cell, std::vector<std::string>> examples;
    std::vector<Problem> problems;
    std::int64_t gathered_ms = 0;  // Unix milliseconds
};

/// What there is to show: nothing before a class with children has played.
enum class ClassState { no_folder, no_list, no_children, nobody_played, ready };
ClassState stateOf(const OpenedClass& opened);

/// Reads a classroom folder whole; never changes it. An empty `folder` gives `no_folder`.
OpenedClass openClass(const std::filesystem::path& folder, std::int64_t now_ms);

/// From answers already in hand, for a class that lies nowhere.
OpenedClass classOf(pack::ClassList list, std::vector<practice::Response> responses,
                    std::vector<Problem> problems, std::int64_t now_ms,
                    std::vector<practice::Heard> heard = {});

/// The same answers of another list of the same class: who is in it, and what shields they have.
OpenedClass withList(const OpenedClass& opened, pack::ClassList list);

/// False for a child's first try that was given without listening; figures leave it out.
bool isCounted(const OpenedClass& opened, const practice::Response& response);

/// How many tablets brought answers, the class's first tries, and the school days they fell on.
struct Gathering {
    int tablets = 0;
    std::int64_t answers = 0;
    int days = 0;
};
Gathering gatheringOf(const OpenedClass& opened);

/// The day of the newest answer; 0 when there is none.
std::int64_t lastDayOf(const OpenedClass& opened);

}  // namespace wrenlet::desk
