// What must not come out of a word game. Taking a sound away or changing one is computed, and what
// is left can be rude (clock without /l/), so every computed output is held against this list
// before a teacher or a child meets it. The words come from an npm package and are kept as hashes
// only, so that nobody reads them in passing.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

class BlockList {
  public:
    /// A list that blocks nothing.
    BlockList() = default;
    /// Errors: not there, not one of ours, cut short.
    static Result<BlockList> open(const std::filesystem::path& path);

    /// True iff the whole of `word` (any case) is written like a blocked one. A word that has one
    /// inside it is not blocked.
    bool blocks(std::string_view word) const;
    /// True iff the whole is said like a blocked word; stress does not matter.
    bool blocks(const Pronunciation& sounds) const;
    /// The same for sounds in IPA without stress marks: "kæt".
    bool blocksSaid(std::string_view ipa) const;

    std::size_t size() const { return hashes_.size(); }

  private:
    std::vector<std::uint64_t> hashes_;  // sorted
};

/// What the file holds of a word and of a pronunciation.
std::uint64_t blockHash(std::string_view word);
std::uint64_t blockHash(const Pronunciation& sounds);
std::uint64_t blockHashSaid(std::string_view ipa);

/// The file's bytes: a head, then the hashes, sorted, each once, eight bytes each, low byte first.
std::string writeBlockList(std::vector<std::uint64_t> hashes);

}  // namespace wrenlet::speech
