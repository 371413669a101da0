#include "editor/windows/type_atlas.hpp"

#include <imgui_freetype.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace wrenlet::desk {

namespace {

namespace fs = std::filesystem;

// Latin and its accents, the letters of the International Phonetic Alphabet, beta and theta, dashes
// and quotes, arrows, minus.
constexpr ImWchar kRanges[] = {0x20,   0x17F,  0x250,  0x36F,  0x3B2,  0x3B2,  0x3B8, 0x3B8,
                               0x2010, 0x205E, 0x2190, 0x2193, 0x2212, 0x2212, 0};

fs::path fontFile(const fs::path& folder, const char* name) {
    std::error_code ignored;
    const fs::path ours = folder / name;
    if (fs::exists(ours, ignored)) return ours;
    return fs::path("/usr/share/fonts/truetype/andika") / name;
}

// Every radius that the desk rounds with, in u: boxes, dots, and focus rings around boxes.
constexpr float kRadii[] = {2, 3, 4, 5, 6, 8, 10, 11, 13, 15};

struct Shape {
    Patch* patch;
    int rectangle;  // the atlas's number for it
    std::vector<std::uint8_t> coverage;
};

void bake(ImFontAtlas& atlas, const Shape& shape) {
    unsigned char* pixels = nullptr;
    int width = 0, height = 0;
    atlas.GetTexDataAsRGBA32(&pixels, &width, &height);
    const ImFontAtlasCustomRect& rectangle = *atlas.GetCustomRectByIndex(shape.rectangle);
    shape.patch->side = rectangle.Width;
    atlas.CalcCustomRectUV(&rectangle, &shape.patch->from, &shape.patch->to);
    std::size_t from = 0;
    for (int row = 0; row < rectangle.Height; ++row) {
        unsigned char* at =
            pixels + (std::size_t(rectangle.Y + row) * std::size_t(width) + rectangle.X) * 4;
        for (int column = 0; column < rectangle.Width; ++column, at += 4) {
            at[0] = at[1] = at[2] = 255;
            at[3] = shape.coverage[from++];
        }
    }
}

}  // namespace

int linePixels(float u, float scale) {
    return std::max(1, static_cast<int>(std::floor(u * scale + 0.25f)));
}

Result<Done> TypeAtlas::build(const fs::path& folder, float scale) {
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    atlas.Clear();
    atlas.FontBuilderIO = ImGuiFreeType::GetBuilderForFreeType();
    atlas.FontBuilderFlags = ImGuiFreeTypeBuilderFlags_LightHinting;
    atlas.Flags |= ImFontAtlasFlags_NoMouseCursors;

    const fs::path regular = fontFile(folder, "Andika-Regular.ttf");
    const fs::path bold = fontFile(folder, "Andika-Bold.ttf");
    std::error_code ignored;
    for (const fs::path& file : {regular, bold})
        if (!fs::exists(file, ignored))
            return Problem{file.filename().string(), "The desk's typeface is not here.",
                           "Install the package fonts-sil-andika."};

    for (std::size_t at = 0; at < kTypeCount; ++at) {
        const TypeSize size = kTypeSizes[at];
        const float em = size.em * scale;
        ImFontConfig config;
        config.GlyphOffset.y = -std::round(kAndikaRaise * em);
        const std::string file = (size.bold ? bold : regular).string();
        fonts_[at] = atlas.AddFontFromFileTTF(file.c_str(), std::round(kAndikaHeight * em), &config,
                                              kRanges);
    }
    std::vector<Shape> shapes;
    for (int mark = 0; mark < kMarkCount; ++mark) {
        for (const MarkSize size : {MarkSize::small, MarkSize::large}) {
            const int side = markSide(size, scale);
            shapes.push_back({&marks_[std::size_t(mark)][std::size_t(size)],
                              atlas.AddCustomRectRegular(side, side),
                              markCoverage(static_cast<Mark>(mark), side)});
        }
    }
    rounds_.clear();
    for (const float in_u : kRadii) {
        const int radius = static_cast<int>(std::lround(in_u * scale));
        for (const int line : {0, linePixels(1, scale), linePixels(2, scale)}) {
            const auto [at, is_new] = rounds_.try_emplace({radius, line});
            if (is_new)
                shapes.push_back({&at->second, atlas.AddCustomRectRegular(2 * radius, 2 * radius),
                                  discCoverage(radius, line)});
        }
    }
    const int ring = static_cast<int>(std::lround(kRingRadius * scale));
    for (int step = 0; step <= kRingSteps; ++step)
        shapes.push_back({&rings_[std::size_t(step)],
                          atlas.AddCustomRectRegular(2 * ring, 2 * ring),
                          arcCoverage(ring, linePixels(4, scale), double(step) / kRingSteps)});
    if (!atlas.Build())
        return Problem{regular.filename().string(), "The desk's typeface cannot be read.",
                       "Install the package fonts-sil-andika again."};
    for (std::size_t at = 0; at < kTypeCount; ++at)
        fonts_[at]->FontSize = std::round(1.3f * kTypeSizes[at].em * scale);
    for (const Shape& shape : shapes) bake(atlas, shape);
    return Done{};
}

const Patch& TypeAtlas::ring(double share) const {
    const double step = share * kRingSteps;
    const auto rounded = static_cast<int>(share >= 1 ? step : std::floor(step));
    const int shown = share > 0 ? std::max(1, rounded) : 0;
    return rings_[static_cast<std::size_t>(std::clamp(shown, 0, kRingSteps))];
}

const Patch* TypeAtlas::round(int radius, int line) const {
    const auto at = rounds_.find({radius, line});
    return at == rounds_.end() ? nullptr : &at->second;
}

}  // namespace wrenlet::desk
