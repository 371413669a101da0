#include "editor/windows/ui.hpp"

#include <algorithm>
#include <cfloat>
#include <cmath>
#include <utility>

#include "editor/windows/input.hpp"

namespace wrenlet::desk {

namespace {

ImU32 paint(Colour colour) {
    return IM_COL32(colour.red, colour.green, colour.blue, colour.alpha);
}

std::string stepped(const std::vector<std::string>& stops, const std::string& held, bool back) {
    if (stops.empty()) return {};
    const auto at = std::find(stops.begin(), stops.end(), held);
    if (at == stops.end()) return back ? stops.back() : stops.front();
    const auto count = stops.size();
    const auto index = static_cast<std::size_t>(at - stops.begin());
    return stops[(index + (back ? count - 1 : 1)) % count];
}

}  // namespace

Ui::Ui(const TypeAtlas& atlas, float scale, Stage& stage)
    : atlas_(atlas), scale_(scale), stage_(stage), list_(ImGui::GetWindowDrawList()) {
    stage_.moved = std::exchange(stage_.focus_wanted, false);
    if (input::pressed(Key::tab)) {
        stage_.held = stepped(stage_.stops, stage_.held, input::shift());
        stage_.ring_shown = true;
        stage_.moved = true;
    }
    if (ImGui::IsMouseClicked(0)) stage_.ring_shown = false;
    activate_ = stage_.ring_shown && !input::ctrl() && !input::isTyping() &&
                (input::pressed(Key::enter) || input::pressed(Key::space));
    stage_.stops.clear();
    stage_.items.clear();
}

float Ui::px(float u) const {
    return std::floor(u * scale_ + 0.5f);
}

// Rounded boxes are put together from whole-pixel rectangles and baked corners: a software renderer
// makes the edges of triangles rough.
void Ui::fill(const Area& area, Colour colour, float radius, Corners corners) {
    const Box box = boxOf(area);
    const Patch* disc = radius > 0 ? roundFor(box, radius, 0) : nullptr;
    if (!disc) {
        list_->AddRectFilled({box.left, box.top}, {box.right, box.bottom}, paint(colour));
        return;
    }
    const float r = static_cast<float>(disc->side) / 2;
    const float in_left = box.left + (corners == Corners::right ? 0 : r);
    list_->AddRectFilled({in_left, box.top},
                         {box.right - (corners == Corners::left ? 0 : r), box.bottom},
                         paint(colour));
    const float upper = corners == Corners::below ? 0 : r;
    if (corners != Corners::right)
        list_->AddRectFilled({box.left, box.top + upper}, {box.left + r, box.bottom - r},
                             paint(colour));
    if (corners != Corners::left)
        list_->AddRectFilled({box.right - r, box.top + upper}, {box.right, box.bottom - r},
                             paint(colour));
    for (int corner = 0; corner < 4; ++corner) {
        const bool is_right = corner % 2 == 1, is_low = corner >= 2;
        if ((is_right && corners == Corners::left) || (!is_right && corners == Corners::right) ||
            (!is_low && corners == Corners::below))
            continue;
        drawCorner(*disc, box, is_right, is_low, colour);
    }
}

void Ui::edge(const Area& area, Colour colour, float radius, float thickness) {
    const Box box = boxOf(area);
    const int pixels = linePixels(thickness, scale_);
    const Patch* ring = radius > 0 ? roundFor(box, radius, pixels) : nullptr;
    const float line = static_cast<float>(pixels);
    const float r = ring ? static_cast<float>(ring->side) / 2 : line;
    const ImU32 ink = paint(colour);
    const float inset = ring ? r : 0;
    list_->AddRectFilled({box.left + inset, box.top}, {box.right - inset, box.top + line}, ink);
    list_->AddRectFilled({box.left + inset, box.bottom - line}, {box.right - inset, box.bottom},
                         ink);
    list_->AddRectFilled({box.left, box.top + r}, {box.left + line, box.bottom - r}, ink);
    list_->AddRectFilled({box.right - line, box.top + r}, {box.right, box.bottom - r}, ink);
    for (int corner = 0; ring && corner < 4; ++corner)
        drawCorner(*ring, box, corner % 2 == 1, corner >= 2, colour);
}

Ui::Box Ui::boxOf(const Area& area) const {
    return {px(area.x), px(area.y), px(area.right()), px(area.bottom())};
}

// The baked round of that radius, or of half the box where that is smaller and baked.
const Patch* Ui::roundFor(const Box& box, float radius, int line) const {
    const float most = std::floor(std::min(box.right - box.left, box.bottom - box.top) / 2);
    const auto wanted = static_cast<int>(std::lround(std::min(radius * scale_, most)));
    for (int pixels = wanted; pixels > 0; --pixels)
        if (const Patch* patch = atlas_.round(pixels, line)) return patch;
    return nullptr;
}

void Ui::drawCorner(const Patch& round, const Box& box, bool is_right, bool is_low, Colour colour) {
    const float r = static_cast<float>(round.side) / 2;
    const ImVec2 from{is_right ? box.right - r : box.left, is_low ? box.bottom - r : box.top};
    const ImVec2 middle{(round.from.x + round.to.x) / 2, (round.from.y + round.to.y) / 2};
    const ImVec2 uv_from{is_right ? middle.x : round.from.x, is_low ? middle.y : round.from.y};
    const ImVec2 uv_to{is_right ? round.to.x : middle.x, is_low ? round.to.y : middle.y};
    list_->AddImage(ImGui::GetIO().Fonts->TexID, from, {from.x + r, from.y + r}, uv_from, uv_to,
                    paint(colour));
}

void Ui::level(float x, float y, float width, Colour colour, float thickness) {
    const ImVec2 from = at(x, y);
    list_->AddRectFilled(from, {px(x + width), from.y + float(linePixels(thickness, scale_))},
                         paint(colour));
}

void Ui::upright(float x, float y, float height, Colour colour, float thickness) {
    const ImVec2 from = at(x, y);
    list_->AddRectFilled(from, {from.x + float(linePixels(thickness, scale_)), px(y + height)},
                         paint(colour));
}

void Ui::dashes(float x, float y, float width, Colour colour) {
    for (float from = 0; from < width; from += 7)
        level(x + from, y, std::min(4.f, width - from), colour, 2);
}

void Ui::dashesUpright(float x, float y, float height, Colour colour) {
    for (float from = 0; from < height; from += 4)
        upright(x, y + from, std::min(2.5f, height - from), colour, 2);
}

void Ui::segment(float x0, float y0, float x1, float y1, Colour colour, float thickness) {
    list_->AddLine({x0 * scale_, y0 * scale_}, {x1 * scale_, y1 * scale_}, paint(colour),
                   thickness * scale_);
}

void Ui::disc(float x, float y, float radius, Colour colour) {
    const Patch* patch = atlas_.round(static_cast<int>(std::lround(radius * scale_)), 0);
    if (patch) stamp(*patch, x, y, colour);
}

void Ui::stamp(const Patch& patch, float x, float y, Colour colour) {
    const float side = static_cast<float>(patch.side);
    const ImVec2 from{px(x) - side / 2, px(y) - side / 2};
    list_->AddImage(ImGui::GetIO().Fonts->TexID, from, {from.x + side, from.y + side}, patch.from,
                    patch.to, paint(colour));
}

void Ui::mark(Mark mark, float x, float y, Colour colour, MarkSize size) {
    if (mark == Mark::none) return;
    stamp(atlas_.mark(mark, size), x, y, colour);
}

void Ui::ring(double share, float x, float y) {
    stamp(atlas_.ring(1), x, y, colour::kLine);
    if (share > 0) stamp(atlas_.ring(share), x, y, colour::kDeep);
}

void Ui::picture(ImTextureID texture, const Area& area) {
    list_->AddImage(texture, at(area.x, area.y), at(area.right(), area.bottom()));
}

float Ui::width(Type type, std::string_view text) const {
    const ImFont* font = atlas_.font(type);
    return font->CalcTextSizeA(font->FontSize, FLT_MAX, 0, text.data(), text.data() + text.size())
               .x /
           scale_;
}

float Ui::text(Type type, float x, float y, Colour colour, std::string_view text, Align align) {
    const ImFont* font = atlas_.font(type);
    const float wide = width(type, text);
    const float shift = align == Align::left ? 0 : align == Align::right ? wide : wide / 2;
    const ImVec2 from{px(x - shift), px(y) - std::floor(font->FontSize / 2)};
    list_->AddText(font, font->FontSize, from, paint(colour), text.data(),
                   text.data() + text.size());
    return wide;
}

std::string Ui::fitted(Type type, std::string_view text, float room) const {
    if (width(type, text) <= room) return std::string(text);
    std::string cut(text);
    while (!cut.empty()) {
        while (!cut.empty() && (static_cast<unsigned char>(cut.back()) & 0xC0) == 0x80)
            cut.pop_back();
        if (!cut.empty()) cut.pop_back();
        if (width(type, cut + "\u2026") <= room) break;
    }
    return cut + "\u2026";
}

std::vector<std::string> Ui::lines(Type type, float room, std::string_view text) const {
    std::vector<std::string> all;
    std::string line;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t space = std::min(text.find(' ', from), text.size());
        const std::string word(text.substr(from, space - from));
        from = space + 1;
        const std::string longer = line.empty() ? word : line + " " + word;
        if (line.empty() || width(type, longer) <= room) {
            line = longer;
        } else {
            all.push_back(std::exchange(line, word));
        }
    }
    if (!line.empty()) all.push_back(line);
    return all;
}

float Ui::paragraph(Type type, float x, float y, float room, Colour colour, std::string_view text_,
                    Align align) {
    const float line = sizeOf(type).line();
    const float from = align == Align::left ? x : align == Align::right ? x + room : x + room / 2;
    float middle = y + line / 2;
    for (const std::string& one : lines(type, room, text_)) {
        text(type, from, middle, colour, one, align);
        middle += line;
    }
    return middle - line / 2 - y;
}

float Ui::paragraphHeight(Type type, float room, std::string_view text) const {
    return static_cast<float>(lines(type, room, text).size()) * sizeOf(type).line();
}

Ui::Press Ui::press(const std::string& label, const Area& area, bool is_stop) {
    note(label, area);
    if (is_stop) stage_.stops.push_back(label);
    Press press;
    ImGui::SetCursorScreenPos(at(area.x, area.y));
    press.pressed = ImGui::InvisibleButton(
        label.c_str(), {std::max(1.f, px(area.width)), std::max(1.f, px(area.height))});
    press.hovered = ImGui::IsItemHovered();
    if (press.pressed) stage_.held = label;
    press.held = is_stop && stage_.ring_shown && stage_.held == label;
    if (press.held && activate_) press.pressed = true;
    return press;
}

void Ui::note(const std::string& label, const Area& area) {
    stage_.items[label] = {px(area.x), px(area.y), px(area.width), px(area.height)};
}

std::optional<Area> Ui::cameTo() const {
    const auto at = stage_.moved ? stage_.items.find(stage_.held) : stage_.items.end();
    if (at == stage_.items.end()) return {};
    const Area& pixels = at->second;
    return Area{pixels.x / scale_, pixels.y / scale_, pixels.width / scale_,
                pixels.height / scale_};
}

void Ui::focusRing(const Area& area, float radius) {
    edge(area.inset(-5), colour::kFocus, radius + 5, 2);
}

}  // namespace wrenlet::desk
