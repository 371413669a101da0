#include "editor/windows/renderer.hpp"

namespace wrenlet::desk {

namespace {

SDL_Rect clipOf(const ImVec4& clip, const ImDrawData& frame) {
    const int left = static_cast<int>(clip.x - frame.DisplayPos.x);
    const int top = static_cast<int>(clip.y - frame.DisplayPos.y);
    const int right = static_cast<int>(clip.z - frame.DisplayPos.x);
    const int bottom = static_cast<int>(clip.w - frame.DisplayPos.y);
    return {left, top, right - left, bottom - top};
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

void Renderer::draw(const ImDrawData& frame) {
    for (int list_at = 0; list_at < frame.CmdListsCount; ++list_at) {
        const ImDrawList& list = *frame.CmdLists[list_at];
        for (const ImDrawCmd& command : list.CmdBuffer) {
            const SDL_Rect clip = clipOf(command.ClipRect, frame);
            if (clip.w <= 0 || clip.h <= 0 || command.ElemCount == 0) continue;
            SDL_RenderSetClipRect(target_, &clip);
            const ImDrawVert* vertices = list.VtxBuffer.Data + command.VtxOffset;
            const int stride = sizeof(ImDrawVert);
            SDL_RenderGeometryRaw(
                target_, reinterpret_cast<SDL_Texture*>(command.GetTexID()),
                reinterpret_cast<const float*>(bytesAt(vertices, offsetof(ImDrawVert, pos))),
                stride,
                reinterpret_cast<const SDL_Color*>(bytesAt(vertices, offsetof(ImDrawVert, col))),
                stride, reinterpret_cast<const float*>(bytesAt(vertices, offsetof(ImDrawVert, uv))),
                stride, list.VtxBuffer.Size - static_cast<int>(command.VtxOffset),
                list.IdxBuffer.Data + command.IdxOffset, static_cast<int>(command.ElemCount),
                sizeof(ImDrawIdx));
        }
    }
    SDL_RenderSetClipRect(target_, nullptr);
}

}  // namespace wrenlet::desk
