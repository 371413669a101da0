// Clips made before, kept on this machine: a voice and an encoder need tens of milliseconds for
// each, reading one takes a fraction of one. The folder may be deleted at any time; what is
// damaged, or of another build of the program, is made anew.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

#include "content/pack/pack.hpp"

namespace wrenlet::desk {

class ClipShelf {
  public:
    static constexpr std::uintmax_t kMostBytes = 256u << 20;

    /// `made_by` stands for the program's build: clips of another are let go, and the oldest of its
    /// own past `most_bytes`. A folder that cannot be made is a shelf that keeps nothing.
    ClipShelf(std::filesystem::path folder, const std::string& made_by,
              std::uintmax_t most_bytes = kMostBytes);

    /// The clip made of what `key` says in full; nothing when there is none. From any thread, as
    /// is put().
    std::optional<pack::Clip> find(const std::string& key) const;
    /// Not flushed to the disk: what a power cut spoils is noticed and made again.
    void put(const std::string& key, const pack::Clip& clip) const;

  private:
    std::filesystem::path fileOf(const std::string& key) const;
    std::string headOf(const std::string& key, const pack::Clip& clip) const;

    std::filesystem::path folder_;
    std::string made_by_;
};

}  // namespace wrenlet::desk
