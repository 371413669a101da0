#include "game/scenes/wrapped.hpp"

#include <algorithm>

#include "content/pack/text_rules.hpp"

namespace wrenlet::game {
namespace {

constexpr float kLetter = 0.32f;  // of the line's height

}  // namespace

std::size_t lettersIn(float width, float line) {
    return static_cast<std::size_t>(std::max(8.0f, width / (line * kLetter)));
}

std::vector<std::string> wrapped(std::string_view text, std::size_t most) {
    std::vector<std::string> lines(1);
    std::size_t filled = 0;
    const auto lettersOf = [](std::string_view word) {
        const auto all = pack::letters(word);
        return all ? all->size() : word.size();
    };
    while (!text.empty()) {
        std::string_view word = text.substr(0, text.find(' '));
        text = text.substr(std::min(word.size() + 1, text.size()));
        if (filled > 0 && filled + 1 + lettersOf(word) > most) {
            lines.emplace_back();
            filled = 0;
        }
        if (filled > 0) lines.back() += ' ', ++filled;
        while (!word.empty()) {
            if (filled == most) {
                lines.emplace_back();
                filled = 0;
            }
            const std::size_t bytes = std::max<std::size_t>(1, pack::letterSize(word));
            lines.back() += word.substr(0, bytes);
            word = word.substr(std::min(bytes, word.size()));
            ++filled;
        }
    }
    return lines;
}

}  // namespace wrenlet::game
