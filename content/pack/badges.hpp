// The badges that are drawn: a picture on a ground of its own shape and colour, which a child
// touches in place of writing a name.
#pragma once

#include <array>
#include <string>
#include <string_view>

namespace wrenlet::pack {

struct Badge {
    std::string_view id;      // "badge-07", as in art/
    std::string_view name;    // "acorn"
    std::string_view ground;  // "egg"
};

inline constexpr std::array<Badge, 36> kBadges{{
    {"badge-01", "snail", "round"},       {"badge-02", "feather", "square"},
    {"badge-03", "boat", "diamond"},      {"badge-04", "kite", "six-sided"},
    {"badge-05", "moon", "arch"},         {"badge-06", "drum", "scalloped"},
    {"badge-07", "acorn", "egg"},         {"badge-08", "mitten", "leaf-shaped"},
    {"badge-09", "key", "round"},         {"badge-10", "bell", "square"},
    {"badge-11", "raincloud", "diamond"}, {"badge-12", "mushroom", "six-sided"},
    {"badge-13", "oak leaf", "arch"},     {"badge-14", "cockle shell", "scalloped"},
    {"badge-15", "fish", "egg"},          {"badge-16", "umbrella", "leaf-shaped"},
    {"badge-17", "cup", "round"},         {"badge-18", "hat", "square"},
    {"badge-19", "pear", "diamond"},      {"badge-20", "boot", "six-sided"},
    {"badge-21", "house", "arch"},        {"badge-22", "butterfly", "scalloped"},
    {"badge-23", "lantern", "egg"},       {"badge-24", "watering can", "leaf-shaped"},
    {"badge-25", "sun", "round"},         {"badge-26", "flag", "square"},
    {"badge-27", "carrot", "diamond"},    {"badge-28", "anchor", "six-sided"},
    {"badge-29", "candle", "arch"},       {"badge-30", "tulip", "scalloped"},
    {"badge-31", "ladybird", "egg"},      {"badge-32", "bucket", "leaf-shaped"},
    {"badge-33", "pencil", "round"},      {"badge-34", "button", "square"},
    {"badge-35", "basket", "diamond"},    {"badge-36", "ice lolly", "six-sided"},
}};

/// Null when no badge of that id is drawn.
constexpr const Badge* badge(std::string_view id) {
    for (const Badge& one : kBadges)
        if (one.id == id) return &one;
    return nullptr;
}

}  // namespace wrenlet::pack
