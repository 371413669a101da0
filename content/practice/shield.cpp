#include "content/practice/shield.hpp"

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

namespace wrenlet::practice {

namespace {

using Contrast = std::pair<std::string, std::string>;

constexpr std::pair<std::string_view, std::pair<std::string_view, std::string_view>> kMergers[] = {
    {"pin-pen", {"ɪ", "ɛ"}}, {"cot-caught", {"ɑ", "ɔ"}}, {"merry-marry", {"ɛ", "æ"}}};

std::string ipaOf(std::string_view typed) {
    const auto phoneme = speech::fromIpa(typed);
    return std::string(phoneme ? speech::ipa(*phoneme) : typed);
}

std::optional<Contrast> contrastOf(std::string_view shield) {
    for (const auto& [name, sides] : kMergers)
        if (name == shield) return Contrast(sides.first, sides.second);
    const auto slash = shield.find('/');
    if (slash == std::string_view::npos || slash == 0 || slash + 1 == shield.size())
        return std::nullopt;
    return Contrast(ipaOf(shield.substr(0, slash)), ipaOf(shield.substr(slash + 1)));
}

// The sound or rime as the other side of the contrast has it: "ɛn" for "ɪn". Empty when it holds
// neither side.
std::vector<std::string> othersOf(const std::string& sound, const Contrast& contrast) {
    std::vector<std::string> others;
    const auto swap = [&](const std::string& from, const std::string& to) {
        const auto at = sound.find(from);
        if (at == std::string::npos) return;
        others.push_back(std::string(sound).replace(at, from.size(), to));
    };
    swap(contrast.first, contrast.second);
    swap(contrast.second, contrast.first);
    return others;
}

}  // namespace

bool isShielded(const exercise::TurnsOn& turns_on, std::string_view means,
                std::span<const std::string> shields) {
    for (const std::string& shield : shields)
        if (const auto contrast = contrastOf(shield))
            for (const std::string& other : othersOf(turns_on.sound, *contrast))
                if (means.find("/" + other + "/") != std::string_view::npos) return true;
    return false;
}

}  // namespace wrenlet::practice
