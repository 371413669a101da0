// How words are said: the pronouncing dictionary, compiled at build time into one file that is
// mapped and searched in place, and the few repairs a child's words need.
#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

class Lexicon {
  public:
    /// Maps a compiled dictionary. Errors: not there, not one of ours, cut short.
    static Result<Lexicon> open(const std::filesystem::path& path);

    /// Every pronunciation listed for `word` (any case), the likeliest first, repairs applied;
    /// empty for a word it does not have.
    std::vector<Pronunciation> lookUp(std::string_view word) const;

    std::size_t wordCount() const;

    /// Calls `visit` for every word in alphabetical order (that of bytes), with its pronunciations
    /// as lookUp gives them. What a damaged block holds is left out.
    void forEach(const std::function<void(std::string_view word,
                                          const std::vector<Pronunciation>& said)>& visit) const;

    Lexicon(Lexicon&&) noexcept;
    Lexicon& operator=(Lexicon&&) noexcept;
    ~Lexicon();

  private:
    struct Mapping;
    explicit Lexicon(std::unique_ptr<Mapping> mapping);
    std::unique_ptr<Mapping> mapping_;
};

}  // namespace wrenlet::speech
