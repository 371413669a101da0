#include "tests/ear/tongue.hpp"

#include <algorithm>
#include <span>

namespace wrenlet::ear {
namespace {

using speech::Phoneme;

struct Named {
    Phoneme phoneme;
    std::string_view name;
};

// Names as the voices' own phone sets give them (festival's italian_phoneset.scm, czech.scm and
// finnish_phones.scm).
constexpr Named kItalian[] = {{Phoneme::aa, "a1"}, {Phoneme::ah, "a"},  {Phoneme::ax, "e"},
                              {Phoneme::p, "p"},   {Phoneme::b, "b"},   {Phoneme::t, "t"},
                              {Phoneme::d, "d"},   {Phoneme::k, "k"},   {Phoneme::g, "g"},
                              {Phoneme::ch, "tS"}, {Phoneme::jh, "dZ"}, {Phoneme::f, "f"},
                              {Phoneme::v, "v"},   {Phoneme::s, "s"},   {Phoneme::z, "z"},
                              {Phoneme::sh, "S"},  {Phoneme::m, "m"},   {Phoneme::n, "n"}};
constexpr Named kCzech[] = {{Phoneme::aa, "a"},  {Phoneme::ah, "a"},   {Phoneme::ax, "e"},
                            {Phoneme::p, "p"},   {Phoneme::b, "b"},    {Phoneme::t, "t"},
                            {Phoneme::d, "d"},   {Phoneme::k, "k"},    {Phoneme::g, "g"},
                            {Phoneme::ch, "c~"}, {Phoneme::jh, "dz~"}, {Phoneme::f, "f"},
                            {Phoneme::v, "v"},   {Phoneme::s, "s"},    {Phoneme::z, "z"},
                            {Phoneme::sh, "s~"}, {Phoneme::m, "m"},    {Phoneme::n, "n"}};
constexpr Named kFinnish[] = {{Phoneme::aa, "a"}, {Phoneme::ah, "a"}, {Phoneme::ax, "@"},
                              {Phoneme::p, "p"},  {Phoneme::b, "b"},  {Phoneme::t, "t"},
                              {Phoneme::d, "d"},  {Phoneme::k, "k"},  {Phoneme::g, "g"},
                              {Phoneme::f, "f"},  {Phoneme::v, "v"},  {Phoneme::s, "s"},
                              {Phoneme::m, "m"},  {Phoneme::n, "n"}};

std::string inEnglish(Phoneme phoneme) {
    if (phoneme == Phoneme::ax) return "ax";
    std::string out(speech::arpabet(phoneme));
    for (char& letter : out)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter + 32);
    return out;
}

}  // namespace

std::string Tongue::nameOf(Phoneme phoneme) const {
    if (name == Name::english) return inEnglish(phoneme);
    const std::span<const Named> all = name == Name::italian ? std::span<const Named>(kItalian)
                                       : name == Name::czech ? std::span<const Named>(kCzech)
                                                             : std::span<const Named>(kFinnish);
    const auto at = std::find_if(all.begin(), all.end(),
                                 [&](const Named& named) { return named.phoneme == phoneme; });
    return at == all.end() ? std::string() : std::string(at->name);
}

Tongue tongueOf(std::string_view voice) {
    if (voice == "lp_diphone" || voice == "pc_diphone") return {Tongue::Name::italian, "#"};
    if (voice.starts_with("czech_")) return {Tongue::Name::czech, "#"};
    if (voice.find("_fi_") != voice.npos) return {Tongue::Name::finnish, "#"};
    return {Tongue::Name::english, "pau"};
}

}  // namespace wrenlet::ear
