// Clips made before: a voice and an encoder need tens of milliseconds for each, reading one takes a
// fraction of one. Those of the classroom list come with the program; what else was made is kept in
// a folder on this machine, which may be deleted at any time. What is damaged, or of another build
// of the program, is made anew.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "content/pack/pack.hpp"

namespace wrenlet::desk {

class ClipShelf {
  public:
    static constexpr std::uintmax_t kMostBytes = 256u << 20;
    /// Who made the clips that come with the program.
    static constexpr std::string_view kTheBuild = "the build";

    /// `made_by` stands for the program's build: clips of another are let go, and the oldest of its
    /// own past `most_bytes`. A folder that cannot be made is a shelf that keeps nothing.
    /// `shipped` holds the clips that came with the program, and is only read; empty: none did.
    ClipShelf(std::filesystem::path folder, std::string_view made_by,
              std::filesystem::path shipped = {}, std::uintmax_t most_bytes = kMostBytes);

    /// What came with the program alone; keeps nothing.
    static ClipShelf ofTheBuild(std::filesystem::path shipped);

    /// The clip made of what `key` says in full; nothing when there is none. From any thread, as
    /// is put().
    std::optional<pack::Clip> find(const std::string& key) const;
    /// Not flushed to the disk: what a power cut spoils is noticed and made again.
    void put(const std::string& key, const pack::Clip& clip) const;

  private:
    /// A folder of clips by one maker.
    struct Board {
        std::filesystem::path folder;  // empty: none
        std::string made_by;

        std::filesystem::path fileOf(const std::string& key) const;
        std::string headOf(const std::string& key, const pack::Clip& clip) const;
        std::optional<pack::Clip> find(const std::string& key) const;
    };

    explicit ClipShelf(std::filesystem::path shipped);

    Board own_, shipped_;
};

}  // namespace wrenlet::desk
