// The desk's sizes of type. Three weights of meaning: regular says, bold names, soft explains.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace wrenlet::desk {

enum class Type : std::uint8_t { note, figure, body, strong, title, place, in_hand, prompt };
inline constexpr std::size_t kTypeCount = 8;

struct TypeSize {
    float em = 0;  // in u
    bool bold = false;
    float line() const { return em * 1.3f; }
};

inline constexpr std::array<TypeSize, kTypeCount> kTypeSizes{{
    {13, false},  // note, column head, key
    {13, true},   // a count that matters
    {15, false},  // body
    {15, true},   // button, name
    {18, true},   // card title, rail
    {24, true},   // title of a place
    {36, true},   // the word in hand
    {76, true},   // what is to be said in the booth
}};

constexpr TypeSize sizeOf(Type type) {
    return kTypeSizes[static_cast<std::size_t>(type)];
}

/// Andika's ascent and descent together, in em: what a font builder calls the size in pixels.
inline constexpr float kAndikaHeight = 1.611f;
/// How far glyphs are raised so that Andika's tall line becomes one of 1.3 em.
inline constexpr float kAndikaRaise = 0.27f;

}  // namespace wrenlet::desk
