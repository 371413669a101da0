#include "game/scenes/captions.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

#include "game/scenes/prompts.hpp"
#include "game/scenes/shows.hpp"
#include "game/scenes/wrapped.hpp"

namespace wrenlet::game {
namespace {

constexpr float kPadding = 8;

std::string_view textOf(const pack::Pack& pack, const Line& line) {
    const pack::Clip* clip = pack.clip(line.clip);
    return clip != nullptr ? std::string_view(clip->text) : std::string_view();
}

bool isSound(std::string_view text) {
    return !text.empty() && text.front() == '/';
}

bool endsASentence(std::string_view text) {
    return !text.empty() && std::string_view(".?!").find(text.back()) != std::string_view::npos;
}

}  // namespace

Caption captionOf(const Telling& telling, const pack::Pack& pack, Millis now) {
    const Script& script = telling.script();
    Caption caption;
    if (script.empty()) return caption;
    const std::size_t reached = telling.reached(now);
    const auto partsFrom = [&](std::size_t line) {
        return script[line].gap_before >= kRest || endsASentence(textOf(pack, script[line - 1]));
    };
    std::size_t first = reached, last = reached + 1;
    while (first > 0 && !partsFrom(first)) --first;
    while (last < script.size() && !partsFrom(last)) ++last;
    for (std::size_t i = first; i < last; ++i) {
        const std::string_view text = textOf(pack, script[i]);
        if (!caption.text.empty()) {
            const bool both_sounds = isSound(text) && isSound(textOf(pack, script[i - 1]));
            caption.text += script[i].gap_before >= kApart && !both_sounds ? " · " : " ";
        }
        caption.text += text;
        if (i <= reached) caption.so_far = caption.text.size();
    }
    return caption;
}

void drawCaption(Painter& painter, const Layout& layout, const Caption& caption) {
    if (caption.text.empty()) return;
    const Box room = layout.captions();
    const float padding = layout.px(kPadding), line = layout.captionLine();
    const float w = room.w - 2 * padding;
    const auto fits = static_cast<std::size_t>(std::max(1.0f, (room.h - 2 * padding) / line));
    const std::size_t most = lettersIn(w, line);
    auto lines = wrapped(caption.text, most);
    if (lines.size() > fits) {
        const std::size_t told = wrapped(caption.text.substr(0, caption.so_far), most).size();
        const std::size_t first = std::min(told > fits ? told - fits : 0, lines.size() - fits);
        lines.erase(lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(first));
        lines.resize(fits);
    }
    const float h = line * static_cast<float>(lines.size());
    painter.panel({room.x, room.y, room.w, h + 2 * padding}, palette::kPaper, palette::kPaper, 12);
    for (std::size_t i = 0; i < lines.size(); ++i)
        painter.textFromLeft(
            lines[i], {room.x + padding, room.y + padding + line * static_cast<float>(i), w, line});
}

}  // namespace wrenlet::game
