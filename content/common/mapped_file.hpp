// A file's bytes without reading them first: mapped where the system can, read whole where not.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "content/common/result.hpp"

namespace wrenlet {

class MappedFile {
  public:
    /// Errors: not there, not a plain file, empty, larger than `limit_bytes`.
    static Result<MappedFile> open(const std::filesystem::path& path, std::size_t limit_bytes);

    /// Valid as long as this object is neither moved from nor destroyed.
    std::string_view bytes() const;

    MappedFile(MappedFile&& other) noexcept;
    MappedFile& operator=(MappedFile&& other) noexcept;
    ~MappedFile();

  private:
    MappedFile() = default;
    void release();

    void* address_ = nullptr;  // of the mapping; null when the bytes were read
    std::size_t size_ = 0;
    std::string read_;
};

}  // namespace wrenlet
