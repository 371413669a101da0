#include "editor/classlist/shield_choices.hpp"

namespace wrenlet::desk {

namespace {

constexpr ShieldChoice kChoices[] = {
    {"b/v", "berry, very", "b and v may sound alike, as where Spanish is spoken at home."},
    {"i/ɪ", "sheep, ship", "the vowels of sheep and ship may sound alike."},
    {"u/ʊ", "pool, pull", "the vowels of pool and pull may sound alike."},
    {"æ/ɛ", "bat, bet", "the vowels of bat and bet may sound alike."},
    {"ʃ/tʃ", "shop, chop", "sh and ch may sound alike."},
    {"s/z", "sip, zip", "s and z may sound alike."},
    {"θ/t", "thin, tin", "the th of thin may be said as t."},
    {"ð/d", "then, den", "the th of then may be said as d."},
    {"θ/f", "thin, fin", "the th of thin may be said as f, in some accents and before six."},
    {"ɹ/w", "ring, wing", "r may still be said as w."},
    {"pin-pen", "pin, pen", "pin and pen are one word to the ear."},
    {"cot-caught", "cot, caught", "cot and caught are one word to the ear."},
    {"merry-marry", "merry, marry", "merry and marry are one word to the ear."},
};

}  // namespace

std::span<const ShieldChoice> shieldChoices() {
    return kChoices;
}

const ShieldChoice* shieldChoice(std::string_view id) {
    for (const ShieldChoice& choice : kChoices)
        if (choice.id == id) return &choice;
    return nullptr;
}

const std::vector<ShieldSet>& shieldSets() {
    static const std::vector<ShieldSet> sets = {
        {"Spanish at home", {"b/v", "i/ɪ", "u/ʊ", "æ/ɛ", "ʃ/tʃ", "s/z", "θ/t", "ð/d"}},
        {"th and r not yet", {"θ/f", "ð/d", "ɹ/w"}},
    };
    return sets;
}

}  // namespace wrenlet::desk
