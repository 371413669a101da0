// Tomorrow's plan on disk: tomorrow.json of a classroom folder, with ids and no child's name in it.
// It is also the memory from which the next day's groups start.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"
#include "editor/edits/saver.hpp"
#include "editor/tomorrow/plan.hpp"

namespace wrenlet::desk {

inline constexpr std::uint64_t kMostPlanBytes = 1 << 20;
inline constexpr std::size_t kMostTables = 100;
inline constexpr std::size_t kMostItems = 60;  // of a table or a task

std::filesystem::path planFile(const pack::Classroom& classroom);

/// Errors: not JSON, another format, a value out of bounds, two tables of one id, a child at two
/// tables.
Result<TomorrowPlan> readPlan(std::string_view json, std::string_view where);
std::string writePlan(const TomorrowPlan& plan);

struct OpenedPlan {
    TomorrowPlan plan;  // nothing planned, where there is none that can be read
    std::string bytes;  // of the file, as read; empty: there is none
    std::vector<Problem> problems;
};

/// Reads the plan of a classroom folder. One that cannot be read is put aside under another name
/// beside it, so that the next one is not written over it.
OpenedPlan openPlan(const pack::Classroom& classroom, const std::filesystem::path& aside);

/// Writes the plan. Used from one thread at a time.
class PlanWriter {
  public:
    using Outcome = SaveOutcome<TomorrowPlan>;

    /// `saved` are the bytes that the file holds, as they were read. `aside` is a folder on this
    /// machine for a copy while the classroom folder cannot be written; empty: none is kept.
    PlanWriter(pack::Classroom classroom, std::string saved, std::filesystem::path aside)
        : classroom_(std::move(classroom)), saved_(std::move(saved)), aside_(std::move(aside)) {}

    /// What somebody else wrote in between is kept beside under another name.
    Outcome write(const TomorrowPlan& plan);

    static std::filesystem::path asideFile(const std::filesystem::path& aside,
                                           const pack::Classroom& classroom);

  private:
    Outcome writeInPlace(const TomorrowPlan& plan, const std::string& bytes);

    pack::Classroom classroom_;
    std::string saved_;
    std::filesystem::path aside_;
};

}  // namespace wrenlet::desk
