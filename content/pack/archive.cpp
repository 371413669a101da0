#include "content/pack/archive.hpp"

#include <zip.h>

#include <algorithm>
#include <cctype>
#include <set>

#include "content/pack/text_rules.hpp"

namespace wrenlet::pack {
namespace {

constexpr std::uint32_t kUnixKindMask = 0170000;
constexpr std::uint32_t kUnixFile = 0100000;
constexpr std::uint32_t kUnixFolder = 0040000;

struct CloseZip {
    void operator()(zip_t* zip) const { zip_discard(zip); }
};
struct CloseEntry {
    void operator()(zip_file_t* file) const { zip_fclose(file); }
};
using ZipHandle = std::unique_ptr<zip_t, CloseZip>;

std::string lowered(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

/// A folder's own entry ("voice/") holds nothing and is passed over.
bool isFolderName(std::string_view name) {
    return !name.empty() && name.back() == '/' && isPlainPath(name.substr(0, name.size() - 1));
}

std::string megabytes(std::uint64_t bytes) {
    return std::to_string(bytes >> 20) + " MB";
}

Problem bad(std::string_view where, std::string_view entry, std::string what) {
    return {std::string(where) + ", " + inQuotes(entry), std::move(what),
            "Do not use this pack; hand it out again from the desk."};
}

/// Links and devices could lead outside; only plain files and folders may be in a pack.
bool isPlainKind(zip_t* zip, zip_uint64_t index) {
    zip_uint8_t system = 0;
    zip_uint32_t attributes = 0;
    if (zip_file_get_external_attributes(zip, index, 0, &system, &attributes) != 0) return false;
    if (system != ZIP_OPSYS_UNIX) return true;
    const std::uint32_t kind = (attributes >> 16) & kUnixKindMask;
    return kind == 0 || kind == kUnixFile || kind == kUnixFolder;
}

}  // namespace

struct Archive::Zip {
    struct Entry {
        zip_uint64_t index;
        std::uint64_t size;
    };
    ZipHandle handle;
    std::string where;
    std::map<std::string, Entry, std::less<>> entries;

    /// What is wrong with entry `index`, or nothing; a good one is added to `entries`.
    std::vector<Problem> take(zip_uint64_t index, const ArchiveLimits& limits,
                              std::set<std::string>& seen);
};

std::vector<Problem> Archive::Zip::take(zip_uint64_t index, const ArchiveLimits& limits,
                                        std::set<std::string>& seen) {
    zip_t* zip = handle.get();
    const char* raw = zip_get_name(zip, index, ZIP_FL_ENC_RAW);
    const std::string name = raw ? raw : "";
    zip_stat_t stat;
    constexpr zip_uint64_t kNeeded =
        ZIP_STAT_SIZE | ZIP_STAT_COMP_METHOD | ZIP_STAT_ENCRYPTION_METHOD;
    if (!raw || zip_stat_index(zip, index, 0, &stat) != 0 || (stat.valid & kNeeded) != kNeeded)
        return {bad(where, name, "This entry of the pack is damaged.")};
    if (!isPlainPath(name) && !isFolderName(name))
        return {bad(where, name, "This path leads out of the pack or has strange signs.")};
    if (!isPlainKind(zip, index))
        return {bad(where, name, "This is a link to somewhere else, not a file.")};
    if (!seen.insert(lowered(name)).second)
        return {bad(where, name, "This name stands in the pack twice.")};
    if (stat.encryption_method != ZIP_EM_NONE)
        return {bad(where, name, "This file is locked with a password.")};
    if (stat.comp_method != ZIP_CM_STORE && stat.comp_method != ZIP_CM_DEFLATE)
        return {bad(where, name, "This file is packed in a way that packs never are.")};
    if (stat.size > limits.entry_bytes)
        return {bad(where, name,
                    "Unpacked this would be " + megabytes(stat.size) + ", more than the " +
                        megabytes(limits.entry_bytes) + " that one file may have.")};
    if (name.back() != '/') entries[name] = {index, stat.size};
    return {};
}

Archive::Archive(std::unique_ptr<Zip> zip) : zip_(std::move(zip)) {}
Archive::Archive(Archive&&) noexcept = default;
Archive& Archive::operator=(Archive&&) noexcept = default;
Archive::~Archive() = default;

Result<Archive> Archive::open(std::string_view bytes, std::string_view where,
                              const ArchiveLimits& limits) {
    const std::string name(where);
    if (bytes.size() > limits.file_bytes)
        return Problem{name,
                       "This file has " + megabytes(bytes.size()) + ", more than the " +
                           megabytes(limits.file_bytes) + " of the largest pack.",
                       "Choose another file."};
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error);
    zip_t* opened =
        source ? zip_open_from_source(source, ZIP_RDONLY | ZIP_CHECKCONS, &error) : nullptr;
    if (!opened && source) zip_source_free(source);
    zip_error_fini(&error);
    if (!opened)
        return Problem{name, "This is not a pack, or it was cut short or damaged on its way.",
                       "Copy it again, or hand it out again from the desk."};

    auto zip = std::make_unique<Zip>();
    zip->handle.reset(opened);
    zip->where = name;
    const auto count = static_cast<std::uint64_t>(zip_get_num_entries(opened, 0));
    if (count > limits.entries)
        return Problem{name,
                       "There are " + std::to_string(count) + " files in it, more than the " +
                           std::to_string(limits.entries) + " of the largest pack.",
                       "Choose another file."};
    std::vector<Problem> problems;
    std::set<std::string> seen;
    for (zip_uint64_t i = 0; i < count && problems.size() < 20; ++i)
        for (Problem& problem : zip->take(i, limits, seen)) problems.push_back(std::move(problem));
    std::uint64_t total = 0;
    for (const auto& entry : zip->entries) total += entry.second.size;
    if (total > limits.unpacked_bytes)
        problems.push_back({name,
                            "Unpacked this would be " + megabytes(total) + ", more than the " +
                                megabytes(limits.unpacked_bytes) + " of the largest pack.",
                            "Do not use this pack."});
    if (!problems.empty()) return problems;
    return Archive(std::move(zip));
}

bool Archive::has(std::string_view name) const {
    return zip_->entries.find(name) != zip_->entries.end();
}

std::vector<std::string> Archive::names() const {
    std::vector<std::string> out;
    for (const auto& entry : zip_->entries) out.push_back(entry.first);
    return out;
}

Result<std::string> Archive::read(std::string_view name) const {
    const auto it = zip_->entries.find(name);
    if (it == zip_->entries.end()) return bad(zip_->where, name, "This file is missing.");
    const std::uint64_t size = it->second.size;
    const std::unique_ptr<zip_file_t, CloseEntry> file(
        zip_fopen_index(zip_->handle.get(), it->second.index, 0));
    if (!file) return bad(zip_->where, name, "This file cannot be unpacked.");
    // One byte more is asked for than was declared: getting it means that the entry lies.
    std::string bytes(size + 1, '\0');
    std::uint64_t got = 0;
    while (got <= size) {
        const zip_int64_t n = zip_fread(file.get(), bytes.data() + got, size + 1 - got);
        if (n < 0) return bad(zip_->where, name, "This file is damaged.");
        if (n == 0) break;
        got += static_cast<std::uint64_t>(n);
    }
    if (got != size)
        return bad(zip_->where, name, "This file is not as large as the pack says it is.");
    bytes.resize(size);
    return bytes;
}

Result<std::string> writeArchive(const std::vector<ArchiveEntry>& entries) {
    const Problem failed{"", "The pack cannot be put together.", "Close other programs first."};
    constexpr zip_uint16_t kDay = (0 << 9) | (1 << 5) | 1;  // 1980-01-01 in a zip's own count
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* target = zip_source_buffer_create(nullptr, 0, 0, &error);
    if (!target) return failed;
    zip_source_keep(target);
    const std::unique_ptr<zip_source_t, decltype(&zip_source_free)> kept(target, zip_source_free);
    zip_t* zip = zip_open_from_source(target, ZIP_TRUNCATE, &error);
    if (!zip) {
        zip_source_free(target);
        return failed;
    }
    ZipHandle guard(zip);
    for (const ArchiveEntry& entry : entries) {
        zip_source_t* source = zip_source_buffer(zip, entry.bytes.data(), entry.bytes.size(), 0);
        if (!source) return failed;
        const zip_int64_t index = zip_file_add(zip, entry.name.c_str(), source, 0);
        if (index < 0) {
            zip_source_free(source);
            return failed;
        }
        const auto at = static_cast<zip_uint64_t>(index);
        zip_set_file_compression(zip, at, entry.deflate ? ZIP_CM_DEFLATE : ZIP_CM_STORE, 9);
        zip_file_set_dostime(zip, at, 0, kDay, 0);
        zip_file_set_external_attributes(zip, at, 0, ZIP_OPSYS_UNIX, (kUnixFile | 0644u) << 16);
    }
    if (zip_close(guard.get()) != 0) return failed;
    (void)guard.release();

    zip_stat_t stat;
    if (zip_source_stat(target, &stat) != 0 || zip_source_open(target) != 0) return failed;
    std::string bytes(stat.size, '\0');
    const zip_int64_t read = zip_source_read(target, bytes.data(), bytes.size());
    zip_source_close(target);
    if (read != static_cast<zip_int64_t>(bytes.size())) return failed;
    return bytes;
}

}  // namespace wrenlet::pack
