// The words with which the desk's window is called.
#pragma once

#include <span>
#include <string>

#include "content/common/result.hpp"
#include "editor/windows/program.hpp"

namespace wrenlet::desk {

inline constexpr std::string_view kWindowUsage =
    "wrenlet-desk [CLASSROOM] [--unit ID]                        open the desk\n"
    "wrenlet-desk CLASSROOM --picture FILE.png [--page map|child] [--child NAME]\n"
    "             [--skill ID] [--size WxH] [--scale S]          draw a page without a screen\n";

/// Errors: a word it does not know, a value out of range (size 320x240 to 7680x4320 pixels, scale
/// 0.5 to 4), more than one classroom.
Result<DeskOptions> readOptions(std::span<const std::string> words);

}  // namespace wrenlet::desk
