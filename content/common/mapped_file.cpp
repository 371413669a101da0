#include "content/common/mapped_file.hpp"

#include <utility>

#include "content/common/files.hpp"

#if (defined(__unix__) || defined(__APPLE__)) && !defined(__EMSCRIPTEN__)
#define WRENLET_CAN_MAP 1
#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <unistd.h>
#else
#define WRENLET_CAN_MAP 0
#endif

namespace wrenlet {

namespace {

Problem cannotUse(const std::filesystem::path& path, std::string what) {
    return {path.filename().string(), std::move(what), "Build or copy it again."};
}

}  // namespace

#if WRENLET_CAN_MAP

Result<MappedFile> MappedFile::open(const std::filesystem::path& path, std::size_t limit_bytes) {
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return cannotUse(path, "The file is not there or cannot be read.");
    struct stat about {};
    const bool plain = ::fstat(file, &about) == 0 && S_ISREG(about.st_mode);
    const auto size = plain ? static_cast<std::size_t>(about.st_size) : 0;
    if (size == 0 || size > limit_bytes) {
        ::close(file);
        return cannotUse(path, "The file is empty, too large, or not a file.");
    }
    void* const address = ::mmap(nullptr, size, PROT_READ, MAP_PRIVATE, file, 0);
    ::close(file);
    if (address == MAP_FAILED) return cannotUse(path, "The file cannot be mapped.");
    MappedFile mapped;
    mapped.address_ = address;
    mapped.size_ = size;
    return mapped;
}

void MappedFile::release() {
    if (address_ != nullptr) ::munmap(address_, size_);
    address_ = nullptr;
    size_ = 0;
}

#else

Result<MappedFile> MappedFile::open(const std::filesystem::path& path, std::size_t limit_bytes) {
    auto whole = readWhole(path, limit_bytes);
    if (!whole.ok()) return whole.problems();
    if (whole.value().empty()) return cannotUse(path, "The file is empty.");
    MappedFile mapped;
    mapped.read_ = std::move(whole.value());
    mapped.size_ = mapped.read_.size();
    return mapped;
}

void MappedFile::release() {
    read_.clear();
    size_ = 0;
}

#endif

std::string_view MappedFile::bytes() const {
    if (address_ == nullptr) return read_;
    return {static_cast<const char*>(address_), size_};
}

MappedFile::MappedFile(MappedFile&& other) noexcept
    : address_(std::exchange(other.address_, nullptr)),
      size_(std::exchange(other.size_, 0)),
      read_(std::move(other.read_)) {}

MappedFile& MappedFile::operator=(MappedFile&& other) noexcept {
    if (this == &other) return *this;
    release();
    address_ = std::exchange(other.address_, nullptr);
    size_ = std::exchange(other.size_, 0);
    read_ = std::move(other.read_);
    return *this;
}

MappedFile::~MappedFile() {
    release();
}

}  // namespace wrenlet
