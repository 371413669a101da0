#include "content/speech/block_list.hpp"

#include <algorithm>

#include "content/common/files.hpp"

namespace wrenlet::speech {

namespace {

constexpr std::string_view kMagic = "WRENBLK\n";
constexpr std::uint64_t kMostBytes = 1u << 20;

std::uint64_t mixed(std::uint64_t hash, unsigned char byte) {
    return (hash ^ byte) * 1099511628211ull;  // FNV-1a
}

constexpr std::uint64_t kWordSeed = 14695981039346656037ull;
constexpr std::uint64_t kSoundSeed = kWordSeed ^ 0x5A5A5A5A5A5A5A5Aull;

}  // namespace

std::uint64_t blockHash(std::string_view word) {
    std::uint64_t hash = kWordSeed;
    for (const char letter : word) {
        const bool upper = letter >= 'A' && letter <= 'Z';
        hash = mixed(hash, static_cast<unsigned char>(upper ? letter - 'A' + 'a' : letter));
    }
    return hash;
}

std::uint64_t blockHash(const Pronunciation& sounds) {
    return blockHashSaid(ipa(sounds));
}

std::uint64_t blockHashSaid(std::string_view ipa) {
    std::uint64_t hash = kSoundSeed;
    for (const char byte : ipa) hash = mixed(hash, static_cast<unsigned char>(byte));
    return hash;
}

std::string writeBlockList(std::vector<std::uint64_t> hashes) {
    std::sort(hashes.begin(), hashes.end());
    hashes.erase(std::unique(hashes.begin(), hashes.end()), hashes.end());
    std::string bytes(kMagic);
    for (const std::uint64_t hash : hashes)
        for (int shift = 0; shift < 64; shift += 8)
            bytes += static_cast<char>((hash >> shift) & 0xFF);
    return bytes;
}

Result<BlockList> BlockList::open(const std::filesystem::path& path) {
    const Result<std::string> bytes = readWhole(path, kMostBytes);
    if (!bytes.ok()) return bytes.problems();
    const std::string& file = bytes.value();
    BlockList list;
    for (std::size_t at = kMagic.size(); at + 8 <= file.size(); at += 8) {
        std::uint64_t hash = 0;
        for (std::size_t i = 0; i < 8; ++i)
            hash |= static_cast<std::uint64_t>(static_cast<unsigned char>(file[at + i])) << (8 * i);
        list.hashes_.push_back(hash);
    }
    const bool is_ours = file.compare(0, kMagic.size(), kMagic) == 0 &&
                         (file.size() - kMagic.size()) % 8 == 0 && !list.hashes_.empty() &&
                         std::is_sorted(list.hashes_.begin(), list.hashes_.end());
    if (!is_ours)
        return Problem{path.filename().string(), "The list of words to keep out is damaged.",
                       "Install Wrenlet anew."};
    return list;
}

bool BlockList::blocks(std::string_view word) const {
    return std::binary_search(hashes_.begin(), hashes_.end(), blockHash(word));
}

bool BlockList::blocks(const Pronunciation& sounds) const {
    return std::binary_search(hashes_.begin(), hashes_.end(), blockHash(sounds));
}

bool BlockList::blocksSaid(std::string_view ipa) const {
    return std::binary_search(hashes_.begin(), hashes_.end(), blockHashSaid(ipa));
}

}  // namespace wrenlet::speech
