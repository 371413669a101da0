#include "editor/windows/renderer.hpp"

#include <algorithm>
#include <optional>

namespace wrenlet::desk {

namespace {

SDL_Rect clipOf(const ImVec4& clip, const ImDrawData& frame) {
    const int left = static_cast<int>(clip.x - frame.DisplayPos.x);
    const int top = static_cast<int>(clip.y - frame.DisplayPos.y);
    const int right = static_cast<int>(clip.z - frame.DisplayPos.x);
    const int bottom = static_cast<int>(clip.w - frame.DisplayPos.y);
    return {left, top, right - left, bottom - top};
}

/// What ImGui draws as six indices: two triangles over four corners, the first and the third of
/// which lie across from each other.
constexpr int kBoxIndices = 6;

bool isSame(ImVec2 a, ImVec2 b) {
    return a.x == b.x && a.y == b.y;
}

/// The box that six indices fill with one colour that nothing shines through; none when they don't.
std::optional<SDL_Rect> plainBox(const ImDrawVert* vertices, const ImDrawIdx* at, ImVec2 white) {
    if (at[3] != at[0] || at[4] != at[2]) return {};
    const ImDrawVert &first = vertices[at[0]], &across = vertices[at[2]];
    if ((first.col & IM_COL32_A_MASK) != IM_COL32_A_MASK) return {};
    for (const ImDrawIdx corner : {at[0], at[1], at[2], at[5]})
        if (vertices[corner].col != first.col || !isSame(vertices[corner].uv, white)) return {};
    const ImVec2 right_top = vertices[at[1]].pos, left_low = vertices[at[5]].pos;
    if (!isSame(right_top, {across.pos.x, first.pos.y}) ||
        !isSame(left_low, {first.pos.x, across.pos.y}))
        return {};
    const int left = static_cast<int>(first.pos.x), top = static_cast<int>(first.pos.y);
    const SDL_Rect box{left, top, static_cast<int>(across.pos.x) - left,
                       static_cast<int>(across.pos.y) - top};
    if (static_cast<float>(left) != first.pos.x || static_cast<float>(top) != first.pos.y ||
        static_cast<float>(left + box.w) != across.pos.x ||
        static_cast<float>(top + box.h) != across.pos.y)
        return {};
    return box;
}

const char* bytesAt(const ImDrawVert* vertices, std::size_t offset) {
    return reinterpret_cast<const char*>(vertices) + offset;
}

}  // namespace

bool Renderer::takeAtlas() {
    ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    unsigned char* pixels = nullptr;
    int width = 0, height = 0;
    atlas.GetTexDataAsRGBA32(&pixels, &width, &height);
    atlas_.reset(SDL_CreateTexture(target_, SDL_PIXELFORMAT_ABGR8888, SDL_TEXTUREACCESS_STATIC,
                                   width, height));
    if (!atlas_) return false;
    SDL_UpdateTexture(atlas_.get(), nullptr, pixels, width * 4);
    SDL_SetTextureBlendMode(atlas_.get(), SDL_BLENDMODE_BLEND);
    SDL_SetTextureScaleMode(atlas_.get(), SDL_ScaleModeLinear);
    atlas.SetTexID(reinterpret_cast<ImTextureID>(atlas_.get()));
    ImGui::GetIO().BackendFlags |= ImGuiBackendFlags_RendererHasVtxOffset;
    return true;
}

// SDL looks at every corner that it is given, also at those that no index names: it is given the
// stretch alone that these indices name.
void Renderer::triangles(const ImDrawList& list, const ImDrawCmd& command, int from, int count) {
    if (count == 0) return;
    const ImDrawIdx* const begin = list.IdxBuffer.Data + command.IdxOffset + from;
    const auto [least, most] = std::minmax_element(begin, begin + count);
    indices_.resize(static_cast<std::size_t>(count));
    std::transform(begin, begin + count, indices_.begin(),
                   [first = *least](ImDrawIdx at) { return static_cast<ImDrawIdx>(at - first); });
    const ImDrawVert* vertices = list.VtxBuffer.Data + command.VtxOffset + *least;
    const int stride = sizeof(ImDrawVert);
    SDL_RenderGeometryRaw(
        target_, reinterpret_cast<SDL_Texture*>(command.GetTexID()),
        reinterpret_cast<const float*>(bytesAt(vertices, offsetof(ImDrawVert, pos))), stride,
        reinterpret_cast<const SDL_Color*>(bytesAt(vertices, offsetof(ImDrawVert, col))), stride,
        reinterpret_cast<const float*>(bytesAt(vertices, offsetof(ImDrawVert, uv))), stride,
        *most - *least + 1, indices_.data(), count, sizeof(ImDrawIdx));
}

// SDL's software renderer mixes even a full colour with what is below, pixel by pixel; most of a
// page is boxes of one colour, which it can also just fill.
void Renderer::inBoxes(const ImDrawList& list, const ImDrawCmd& command) {
    const ImDrawVert* vertices = list.VtxBuffer.Data + command.VtxOffset;
    const ImDrawIdx* indices = list.IdxBuffer.Data + command.IdxOffset;
    const ImVec2 white = ImGui::GetIO().Fonts->TexUvWhitePixel;
    const int count = static_cast<int>(command.ElemCount);
    int drawn = 0;
    SDL_SetRenderDrawBlendMode(target_, SDL_BLENDMODE_NONE);
    for (int at = 0; at + kBoxIndices <= count;) {
        const auto box = plainBox(vertices, indices + at, white);
        if (!box) {
            at += 3;  // what is no box may be of any number of triangles
            continue;
        }
        triangles(list, command, drawn, at - drawn);
        const ImU32 colour = vertices[indices[at]].col;
        SDL_SetRenderDrawColor(target_, static_cast<Uint8>(colour >> IM_COL32_R_SHIFT),
                               static_cast<Uint8>(colour >> IM_COL32_G_SHIFT),
                               static_cast<Uint8>(colour >> IM_COL32_B_SHIFT), 255);
        SDL_RenderFillRect(target_, &*box);
        at += kBoxIndices;
        drawn = at;
    }
    triangles(list, command, drawn, count - drawn);
}

void Renderer::draw(const ImDrawData& frame) {
    SDL_RendererInfo info{};
    const bool is_software =
        SDL_GetRendererInfo(target_, &info) == 0 && (info.flags & SDL_RENDERER_SOFTWARE) != 0;
    for (int list_at = 0; list_at < frame.CmdListsCount; ++list_at) {
        const ImDrawList& list = *frame.CmdLists[list_at];
        for (const ImDrawCmd& command : list.CmdBuffer) {
            const SDL_Rect clip = clipOf(command.ClipRect, frame);
            if (clip.w <= 0 || clip.h <= 0 || command.ElemCount == 0) continue;
            SDL_RenderSetClipRect(target_, &clip);
            if (is_software && command.GetTexID() == ImGui::GetIO().Fonts->TexID)
                inBoxes(list, command);
            else
                triangles(list, command, 0, static_cast<int>(command.ElemCount));
        }
    }
    SDL_RenderSetClipRect(target_, nullptr);
}

}  // namespace wrenlet::desk
