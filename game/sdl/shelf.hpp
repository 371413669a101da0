// The pixels of the first frame, kept from the last start: drawing a meadow from its SVG takes tens
// of milliseconds, reading it takes one. The shelf is one file on the tablet. It may be deleted at
// any time; a damaged one, or one of another program or other letters, is not used.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string_view>
#include <vector>

#include "content/common/mapped_file.hpp"
#include "content/common/result.hpp"

namespace wrenlet::game {

/// A drawn sprite without its empty edges, in the order of bytes that the screen copies fastest.
struct Pixels {
    int w = 0, h = 0;       // px
    int left = 0, top = 0;  // of the first pixel, from the top left corner of the sprite's size
    int size_w = 0, size_h = 0;  // the sprite's size
    bool opaque = false;         // no pixel lets anything through
    const std::uint32_t* argb = nullptr;

    std::size_t count() const { return static_cast<std::size_t>(w) * static_cast<std::size_t>(h); }
};

class Shelf {
  public:
    static constexpr std::size_t kMostBytes = 64u << 20;

    /// What `path` holds, if it was written with the same `stamp`; nothing to begin with if not.
    Shelf(std::filesystem::path path, std::uint64_t stamp);

    /// Null when there is none under `key`. What it points to stays as long as the shelf.
    const Pixels* find(std::uint64_t key);
    /// Lays a copy on the shelf.
    void put(std::uint64_t key, const Pixels& pixels);

    /// True iff what was asked for and put since the start is not what the file holds.
    bool isStale() const;
    /// Replaces the file by what was asked for and put. It is not flushed to the disk: what a power
    /// cut spoils is noticed and drawn again. Errors: cannot be written, more than kMostBytes.
    Result<Done> write() const;

  private:
    struct Slot {
        std::uint64_t key = 0;
        Pixels pixels;
        bool wanted = false;
    };
    bool readSlots(std::string_view file);

    std::filesystem::path path_;
    std::uint64_t stamp_;
    std::optional<MappedFile> file_;
    std::vector<Slot> slots_;
    std::vector<std::vector<std::uint32_t>> put_;
};

}  // namespace wrenlet::game
