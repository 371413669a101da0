// pack.json, the part of a pack that says what the rest is: words, sentences, items, and which file
// holds which clip or picture. Its format is "wrenlet pack", version 1; sounds are IPA symbols.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "content/common/result.hpp"
#include "content/pack/pack.hpp"

namespace wrenlet::pack {

inline constexpr std::string_view kPackJson = "pack.json";

/// The pack without the bytes of its clips and pictures, clips and pictures sorted by id. Errors
/// name the place: a field of the wrong kind, an unknown sound or skill, an id that stands twice,
/// an answer that is no choice, a file name that leaves the pack.
Result<Pack> readPackJson(std::string_view json, std::string_view where);

std::string writePackJson(const Pack& pack);

/// A sound as files hold it, a vowel's stress before it ("ˈæ"), and back.
std::string soundText(const speech::Sound& sound);
std::optional<speech::Sound> soundFromText(std::string_view text);

}  // namespace wrenlet::pack
