// The desk on a screen, and the desk as a picture without one.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <ostream>
#include <string>

#include "editor/document/desk.hpp"
#include "editor/windows/desk_window.hpp"

namespace wrenlet::desk {

struct DeskOptions {
    std::filesystem::path classroom;  // empty: none given
    std::filesystem::path assets;     // share/wrenlet
    std::filesystem::path game;       // the child's program
    std::filesystem::path picture;    // not empty: draw into this PNG and end
    Page page = Page::map;
    std::string child;  // id or name; empty: the neediest
    std::string skill;  // id; empty: where the child misses most
    std::string unit;   // id of a unit to open at the Words place; empty: none
    int width = 1280;   // pixels
    int height = 720;
    std::optional<float> scale;  // pixels to a u; none: chosen for the size
};

/// Opens the window and stays until it is closed. 0, or 1 with the reason on `err`.
int runDesk(const DeskOptions& options, std::ostream& err);

/// Draws one page off screen and writes it as PNG. 0, or 1 with the reason on `err`; a classroom
/// that cannot be read gives 1 and the page that says so.
int pictureDesk(const DeskOptions& options, std::ostream& err);

/// A picture of the desk with a class already in hand, once `prepare` has brought the window where
/// it should be; it says itself why not. Units are worked on where there is a bench.
int pictureWith(const OpenedClass& opened, const DeskOptions& options, std::int64_t now_ms,
                const Workbench* bench, const std::function<bool(DeskWindow&)>& prepare,
                std::ostream& err, const BoothSound& sound = {}, const Packing& packing = {},
                const Trying& trying = {}, const SettingsHome& settings = {},
                const std::optional<ServePlace::Parts>& serving = {});

/// The same of the Class place; `now_ms` is when it is looked at.
int pictureOf(const OpenedClass& opened, const DeskOptions& options, std::int64_t now_ms,
              std::ostream& err);

}  // namespace wrenlet::desk
