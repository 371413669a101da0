#include "game/sdl/shelf.hpp"

#include <algorithm>
#include <cstring>
#include <fstream>
#include <system_error>

namespace wrenlet::game {

namespace {

// The file: this header, a row for each sprite, then their pixels one after another. It never
// leaves the machine that wrote it, so its numbers are as they lie in memory.
constexpr std::uint64_t kMagic = 0x57524e53'484c4631ull;
constexpr std::uint64_t kMostSlots = 4096;
constexpr std::int32_t kMostSide = 8192;  // px

struct Header {
    std::uint64_t magic, stamp, slots, check;
};

struct Row {
    std::uint64_t key;
    std::int32_t w, h, left, top, size_w, size_h, opaque, unused;
};

// FNV-1a by words of eight bytes, four sums side by side: it costs less than reading does.
std::uint64_t checkOf(std::string_view bytes) {
    std::uint64_t sums[4] = {1, 2, 3, 4};
    for (std::size_t at = 0; at < bytes.size(); at += 32) {
        std::uint64_t words[4] = {};
        std::memcpy(words, bytes.data() + at, std::min<std::size_t>(32, bytes.size() - at));
        for (int i = 0; i < 4; ++i) sums[i] = (sums[i] ^ words[i]) * 1099511628211ull;
    }
    std::uint64_t check = bytes.size();
    for (const std::uint64_t sum : sums) check = (check ^ sum ^ sum >> 32) * 1099511628211ull;
    return check;
}

bool isPlausible(const Row& row) {
    const auto side = [](std::int32_t px) { return px >= 1 && px <= kMostSide; };
    const auto offset = [](std::int32_t px) { return px >= -kMostSide && px <= kMostSide; };
    return side(row.w) && side(row.h) && offset(row.left) && offset(row.top) &&
           offset(row.size_w) && offset(row.size_h);
}

}  // namespace

Shelf::Shelf(std::filesystem::path path, std::uint64_t stamp)
    : path_(std::move(path)), stamp_(stamp) {
    Result<MappedFile> file = MappedFile::open(path_, kMostBytes);
    if (!file.ok()) return;
    file_ = std::move(file.value());
    if (!readSlots(file_->bytes())) slots_.clear();
}

bool Shelf::readSlots(std::string_view file) {
    Header header{};
    if (file.size() < sizeof header) return false;
    std::memcpy(&header, file.data(), sizeof header);
    if (header.magic != kMagic || header.stamp != stamp_ || header.slots > kMostSlots) return false;
    if (checkOf(file.substr(sizeof header)) != header.check) return false;

    std::size_t pixels = sizeof header + header.slots * sizeof(Row);
    if (file.size() < pixels) return false;
    for (std::size_t i = 0; i < header.slots; ++i) {
        Row row{};
        std::memcpy(&row, file.data() + sizeof header + i * sizeof row, sizeof row);
        if (!isPlausible(row)) return false;
        Pixels it{row.w,           row.h,
                  row.left,        row.top,
                  row.size_w,      row.size_h,
                  row.opaque != 0, reinterpret_cast<const std::uint32_t*>(file.data() + pixels)};
        const std::size_t size = 4 * it.count();
        if (file.size() - pixels < size) return false;
        pixels += size;
        slots_.push_back({row.key, it});
    }
    return pixels == file.size();
}

const Pixels* Shelf::find(std::uint64_t key) {
    for (Slot& slot : slots_) {
        if (slot.key != key) continue;
        slot.wanted = true;
        return &slot.pixels;
    }
    return nullptr;
}

void Shelf::put(std::uint64_t key, const Pixels& pixels) {
    put_.emplace_back(pixels.argb, pixels.argb + pixels.count());
    Slot slot{key, pixels, true};
    slot.pixels.argb = put_.back().data();
    slots_.push_back(slot);
}

bool Shelf::isStale() const {
    return !put_.empty() ||
           std::any_of(slots_.begin(), slots_.end(), [](const Slot& slot) { return !slot.wanted; });
}

Result<Done> Shelf::write() const {
    std::string rows, pixels;
    std::uint64_t count = 0;
    for (const Slot& slot : slots_) {
        if (!slot.wanted) continue;
        const Pixels& it = slot.pixels;
        const Row row{slot.key,          it.w, it.h, it.left, it.top, it.size_w, it.size_h,
                      it.opaque ? 1 : 0, 0};
        rows.append(reinterpret_cast<const char*>(&row), sizeof row);
        pixels.append(reinterpret_cast<const char*>(it.argb), 4 * it.count());
        ++count;
    }
    const std::string name = path_.filename().string();
    rows += pixels;
    const Header header{kMagic, stamp_, count, checkOf(rows)};
    if (rows.size() + sizeof header > kMostBytes || count > kMostSlots)
        return Problem{name, "The first frame is too large to be kept.", ""};

    std::filesystem::path aside = path_;
    aside += ".new";
    std::ofstream out(aside, std::ios::binary);
    out.write(reinterpret_cast<const char*>(&header), sizeof header);
    out.write(rows.data(), static_cast<std::streamsize>(rows.size()));
    out.close();
    std::error_code error;
    if (out) std::filesystem::rename(aside, path_, error);
    if (out && !error) return Done{};
    std::filesystem::remove(aside, error);
    return Problem{name, "The first frame cannot be kept for the next start.",
                   "Check that the folder may be written to."};
}

}  // namespace wrenlet::game
