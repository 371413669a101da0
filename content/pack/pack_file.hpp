// The pack as a file: a zip with pack.json, voice/*.ogg and pictures/*.svg. Reading bounds and
// checks everything, for a pack may come from anywhere; nothing in it is run or followed outside.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "content/common/result.hpp"
#include "content/pack/pack.hpp"

namespace wrenlet::pack {

inline constexpr std::uint64_t kMostPackBytes = 256ull << 20;  // the file
inline constexpr std::uint64_t kMostEntryBytes = 16ull << 20;  // one file in it, unpacked
inline constexpr std::uint64_t kMostUnpackedBytes = 512ull << 20;
inline constexpr std::uint64_t kMostSharedBytes = 64ull << 20;  // of clips in a file named before
inline constexpr std::size_t kMostEntries = 20'000;

/// Reads a whole pack from bytes; `where` names it in problems. Errors, each naming the file in the
/// pack and the place: not a zip, broken JSON, a path that leaves the pack, more than the limits
/// above, a clip or picture that is missing or is no clip or picture, an item that is unfair.
Result<Pack> readPack(std::string_view bytes, std::string_view where);
/// The same for bytes that readPack() found good before, at a fraction of its time: the zip and
/// pack.json are bounded and checked again, clips, pictures and items are taken as they are.
Result<Pack> readKnownPack(std::string_view bytes, std::string_view where);
Result<Pack> readPackFile(const std::filesystem::path& path);

/// The bytes of the file. The same pack gives the same bytes.
Result<std::string> writePack(const Pack& pack);

}  // namespace wrenlet::pack
