#include "game/sdl/drawings.hpp"

#include <SDL_image.h>

#include <algorithm>
#include <cctype>
#include <cstring>
#include <iterator>

#include "game/sdl/handles.hpp"

namespace wrenlet::game {

namespace {

constexpr int kMostSide = 8192;  // px of a picture's side

std::optional<Image> toImage(SurfacePtr surface) {
    if (!surface || surface->w < 1 || surface->h < 1) return std::nullopt;
    const SurfacePtr plain(SDL_ConvertSurfaceFormat(surface.get(), SDL_PIXELFORMAT_RGBA32, 0));
    if (!plain) return std::nullopt;
    Image image = blankImage(plain->w, plain->h);
    for (int y = 0; y < image.h; ++y)
        std::memcpy(image.at(0, y),
                    static_cast<const std::uint8_t*>(plain->pixels) + y * plain->pitch,
                    4 * static_cast<std::size_t>(image.w));
    return image;
}

// Where the value of attribute `name` stands in a start tag, without its quotes.
struct Range {
    std::size_t from = 0, to = 0;              // the value
    std::size_t whole_from = 0, whole_to = 0;  // the attribute and the space before it
};
std::optional<Range> attribute(std::string_view tag, std::string_view name) {
    for (std::size_t at = tag.find(name); at != tag.npos; at = tag.find(name, at + 1)) {
        if (at == 0 || !std::isspace(static_cast<unsigned char>(tag[at - 1]))) continue;
        std::size_t next = at + name.size();
        while (next < tag.size() && std::isspace(static_cast<unsigned char>(tag[next]))) ++next;
        if (next >= tag.size() || tag[next] != '=') continue;
        ++next;
        while (next < tag.size() && std::isspace(static_cast<unsigned char>(tag[next]))) ++next;
        if (next >= tag.size() || (tag[next] != '"' && tag[next] != '\'')) continue;
        const std::size_t end = tag.find(tag[next], next + 1);
        if (end == tag.npos) return std::nullopt;
        return Range{next + 1, end, at - 1, end + 1};
    }
    return std::nullopt;
}

std::string takeAttribute(std::string& tag, std::string_view name) {
    const auto range = attribute(tag, name);
    if (!range) return {};
    std::string value = tag.substr(range->from, range->to - range->from);
    tag.erase(range->whole_from, range->whole_to - range->whole_from);
    return value;
}

bool looksLikeSvg(std::string_view bytes) {
    return bytes.substr(0, 4096).find("<svg") != bytes.npos;
}

// What SDL_image draws of an SVG; of one without any it forgets a few bytes.
bool hasShapes(std::string_view svg) {
    static constexpr std::string_view kShapes[] = {"<path",    "<rect", "<circle",
                                                   "<ellipse", "<line", "<poly"};
    return std::any_of(std::begin(kShapes), std::end(kShapes),
                       [svg](std::string_view shape) { return svg.find(shape) != svg.npos; });
}

std::optional<Image> loadSvg(std::string_view svg, int w, int h) {
    if (!hasShapes(svg)) return std::nullopt;
    SDL_RWops* from = SDL_RWFromConstMem(svg.data(), static_cast<int>(svg.size()));
    if (from == nullptr) return std::nullopt;
    SurfacePtr surface(IMG_LoadSizedSVG_RW(from, w, h));
    SDL_RWclose(from);
    return toImage(std::move(surface));
}

}  // namespace

std::string withRootSize(std::string_view svg, int w, int h) {
    const std::size_t open = svg.find("<svg");
    const std::size_t close = open == svg.npos ? svg.npos : svg.find('>', open);
    if (close == svg.npos) return std::string(svg);
    std::string tag(svg.substr(open, close - open));
    const std::string old_w = takeAttribute(tag, "width");
    const std::string old_h = takeAttribute(tag, "height");
    takeAttribute(tag, "preserveAspectRatio");
    if (!attribute(tag, "viewBox") && !old_w.empty() && !old_h.empty())
        tag.insert(4, " viewBox=\"0 0 " + old_w + " " + old_h + "\"");
    tag.insert(4, " width=\"" + std::to_string(w) + "\" height=\"" + std::to_string(h) +
                      "\" preserveAspectRatio=\"none\"");
    return std::string(svg.substr(0, open)) + tag + std::string(svg.substr(close));
}

std::optional<Image> drawSvgFilling(std::string_view svg, int w, int h) {
    if (w < 1 || h < 1 || w > kMostSide || h > kMostSide) return std::nullopt;
    return loadSvg(withRootSize(svg, w, h), w, h);
}

std::optional<Image> drawFitted(std::string_view bytes, int w, int h) {
    if (w < 1 || h < 1 || w > kMostSide || h > kMostSide) return std::nullopt;
    std::optional<Image> image;
    if (looksLikeSvg(bytes)) {
        image = loadSvg(bytes, w, h);
    } else {
        SDL_RWops* from = SDL_RWFromConstMem(bytes.data(), static_cast<int>(bytes.size()));
        if (from == nullptr) return std::nullopt;
        image = toImage(SurfacePtr(IMG_LoadTyped_RW(from, 1, "PNG")));
        if (image && (image->w > kMostSide || image->h > kMostSide)) return std::nullopt;
    }
    if (!image) return std::nullopt;
    const Fit fit = fitInto(image->w, image->h, w, h);
    Image out = resized(*image, fit.w, fit.h);
    out.left = (w - out.w) / 2;
    out.top = (h - out.h) / 2;
    out.size_w = w;
    out.size_h = h;
    return out;
}

}  // namespace wrenlet::game
