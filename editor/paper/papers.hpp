// Papers in the classroom folder: pages and tables written into papers/, under names that say what
// they are, and shown with whatever the system opens such a file with.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>

#include "content/common/result.hpp"
#include "editor/document/opened_class.hpp"
#include "editor/tomorrow/plan.hpp"

namespace wrenlet::desk {

/// Shows a file with the system's own program for it; false when that cannot be done.
using OpenOutside = std::function<bool(const std::filesystem::path&)>;

enum class Paper : std::uint8_t { lesson, tables, family, specialist, answers, progress, xapi };

/// True when it is about one child.
bool isOfAChild(Paper paper);

/// "family-Maya-2026-10-09.html": with the day of the newest answer that it was made from, where
/// there is one. `child` is an index into opened.children and counts where it is about a child.
std::string paperName(Paper paper, const OpenedClass& opened, std::size_t child);

/// What is in it. `plan` is what lesson and tables are made from; `pack_name` is the name of its
/// pack. REQUIRES: child < opened.children.size() where it is about a child.
std::string paperOf(Paper paper, const OpenedClass& opened, std::size_t child,
                    const TomorrowPlan& plan, std::string_view pack_name);

/// Writes it into papers/ of the classroom folder. Errors: the folder is gone, full or read-only.
Result<std::filesystem::path> putPaper(const pack::Classroom& classroom, std::string_view name,
                                       std::string_view bytes);

/// The address of a file, by RFC 8089: "file:///home/ada/Room%204/papers/lesson.html".
/// REQUIRES: the path is absolute.
std::string fileAddress(const std::filesystem::path& path);

}  // namespace wrenlet::desk
