// Andika in the desk's sizes and its marks, in one font atlas for one scale. Built between frames
// when the scale changes.
#pragma once

#include <imgui.h>

#include <array>
#include <filesystem>
#include <map>
#include <utility>
#include <vector>

#include "content/common/result.hpp"
#include "editor/look/type_scale.hpp"
#include "editor/windows/marks.hpp"

namespace wrenlet::desk {

struct Patch {
    ImVec2 from, to;  // texture coordinates
    int side = 0;     // pixels
};

/// A line of so many u: whole pixels, one at least, thinner rather than thicker.
int linePixels(float u, float scale);

inline constexpr float kRingRadius = 14;  // u
inline constexpr int kRingSteps = 16;

class TypeAtlas {
  public:
    /// Fills the current context's atlas. `fonts` is a folder with Andika-Regular.ttf and
    /// Andika-Bold.ttf; the system's own are used where it has none. Errors: neither is there.
    Result<Done> build(const std::filesystem::path& fonts, float scale);

    ImFont* font(Type type) const { return fonts_[static_cast<std::size_t>(type)]; }
    const Patch& mark(Mark mark, MarkSize size) const {
        return marks_[static_cast<std::size_t>(mark)][static_cast<std::size_t>(size)];
    }

    /// A ring of kRingRadius u of which a share is done, in steps of a sixteenth; the first step is
    /// seen as soon as anything is done, the last only when all is.
    const Patch& ring(double share) const;

    /// A disc (line 0) or ring of so many pixels; null when it was not baked: see kRadii in the
    /// source.
    const Patch* round(int radius, int line) const;

  private:
    std::array<ImFont*, kTypeCount> fonts_{};
    std::array<std::array<Patch, 2>, kMarkCount> marks_{};
    std::array<Patch, kRingSteps + 1> rings_{};
    std::map<std::pair<int, int>, Patch> rounds_;  // by radius and line
};

}  // namespace wrenlet::desk
