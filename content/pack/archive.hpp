// A zip file in memory, read with every limit kept and written so that the same entries give the
// same bytes. A pack may come from anywhere: its names are looked at before anything is unpacked,
// nothing is unpacked to disk, and an entry that is larger than it says is refused.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"

namespace wrenlet::pack {

struct ArchiveLimits {
    std::uint64_t file_bytes;      // the archive itself
    std::uint64_t entry_bytes;     // one entry, unpacked
    std::uint64_t unpacked_bytes;  // all entries together, as declared
    std::size_t entries;
};

class Archive {
  public:
    /// Looks at every entry's name, kind and declared size; unpacks nothing. `bytes` must outlive
    /// the archive; `where` names it in problems. Errors: not a zip, cut short, a path that leaves
    /// it, a link, two entries of one name, encrypted, more than the limits.
    static Result<Archive> open(std::string_view bytes, std::string_view where,
                                const ArchiveLimits& limits);

    bool has(std::string_view name) const;
    std::vector<std::string> names() const;
    /// The entry unpacked. Errors: not there, damaged, larger than it says.
    Result<std::string> read(std::string_view name) const;

    Archive(Archive&&) noexcept;
    Archive& operator=(Archive&&) noexcept;
    ~Archive();

  private:
    struct Zip;
    explicit Archive(std::unique_ptr<Zip> zip);
    std::unique_ptr<Zip> zip_;
};

struct ArchiveEntry {
    std::string name;
    std::string_view bytes;
    bool deflate = true;  // false for what is packed already
};

/// The bytes of a zip with these entries in this order, dated 1980-01-01. Errors: out of memory.
Result<std::string> writeArchive(const std::vector<ArchiveEntry>& entries);

}  // namespace wrenlet::pack
