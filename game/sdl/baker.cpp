#include "game/sdl/baker.hpp"

#include <algorithm>

#include "content/common/files.hpp"
#include "game/sdl/drawings.hpp"
#include "game/sdl/shapes.hpp"

namespace wrenlet::game {

namespace {

constexpr std::uint64_t kMostArtBytes = 4u << 20;

// FNV-1a over the parts that tell sprites apart.
class Mark {
  public:
    void add(std::uint64_t value) {
        for (int i = 0; i < 8; ++i) {
            value_ = (value_ ^ (value & 0xFF)) * 1099511628211ull;
            value >>= 8;
        }
    }
    void add(std::string_view text) {
        for (const char c : text)
            value_ = (value_ ^ static_cast<unsigned char>(c)) * 1099511628211ull;
    }
    std::uint64_t value() const { return value_; }

  private:
    std::uint64_t value_ = 14695981039346656037ull;
};

std::uint64_t number(Colour c) {
    return static_cast<std::uint64_t>(c.r) << 24 | static_cast<std::uint64_t>(c.g) << 16 |
           static_cast<std::uint64_t>(c.b) << 8 | c.a;
}

std::uint64_t number(int high, int low) {
    return static_cast<std::uint64_t>(static_cast<std::uint32_t>(high)) << 32 |
           static_cast<std::uint32_t>(low);
}

Mark markOf(const Sprite& sprite) {
    Mark mark;
    mark.add(sprite.name);
    mark.add(number(sprite.width, sprite.height));
    mark.add(number(sprite.colour) << 32 | number(sprite.edge_colour));
    mark.add(number(sprite.radius, sprite.edge_px));
    mark.add(number(sprite.shadow_px, sprite.part));
    mark.add(static_cast<std::uint64_t>(sprite.kind) << 3 | (sprite.from_left ? 4u : 0u) |
             (sprite.flipped ? 2u : 0u) | (sprite.bold ? 1u : 0u));
    return mark;
}

}  // namespace

std::size_t SpriteHash::operator()(const Sprite& sprite) const {
    return static_cast<std::size_t>(markOf(sprite).value());
}

Baker::Baker(SDL_Renderer* renderer, std::filesystem::path assets, PictureSource pictures,
             std::size_t most_bytes)
    : renderer_(renderer),
      assets_(std::move(assets)),
      pictures_(std::move(pictures)),
      most_bytes_(most_bytes),
      letters_(assets_ / "fonts") {}

const Baked& Baker::get(const Sprite& sprite) {
    const auto found = kept_.find(sprite);
    if (found != kept_.end()) {
        found->second.used = frame_;
        return found->second.baked;
    }
    Kept kept;
    kept.used = frame_;
    if (std::optional<Baked> baked = bake(sprite)) {
        kept.baked = std::move(*baked);
        kept.bytes =
            4 * static_cast<std::size_t>(kept.baked.w) * static_cast<std::size_t>(kept.baked.h);
    } else if (!sprite.name.empty() &&
               std::find(missing_.begin(), missing_.end(), sprite.name) == missing_.end()) {
        missing_.push_back(sprite.name);
    }
    bytes_ += kept.bytes;
    makeRoom();
    return kept_.emplace(sprite, std::move(kept)).first->second.baked;
}

std::optional<Image> Baker::draw(const Sprite& sprite) {
    if (sprite.height < 1) return std::nullopt;
    if (sprite.kind == Sprite::Kind::text) return letters_.draw(sprite);
    if (sprite.width < 1) return std::nullopt;
    switch (sprite.kind) {
        case Sprite::Kind::art: {
            auto image = drawSvgFilling(art(sprite.name), sprite.width, sprite.height);
            return image && sprite.flipped ? flipped(*image) : std::move(image);
        }
        case Sprite::Kind::picture:
            return drawFitted(pictures_(sprite.name), sprite.width, sprite.height);
        case Sprite::Kind::card:
            return drawCard(sprite);
        case Sprite::Kind::ring:
            return drawRing(sprite);
        case Sprite::Kind::text:
        case Sprite::Kind::fill:
            break;
    }
    return std::nullopt;
}

const std::string& Baker::art(const std::string& name) {
    const auto found = art_.find(name);
    if (found != art_.end()) return found->second;
    auto svg = readWhole(assets_ / "art" / (name + ".svg"), kMostArtBytes);
    return art_.emplace(name, svg.ok() ? std::move(svg.value()) : std::string()).first->second;
}

// Equal keys mean equal pixels: all that a sprite is drawn from is in it, but for the letters and
// the program itself, which the shelf's stamp stands for.
std::uint64_t Baker::shelfKey(const Sprite& sprite) {
    Mark mark = markOf(sprite);
    if (sprite.kind == Sprite::Kind::art) mark.add(std::string_view(art(sprite.name)));
    if (sprite.kind == Sprite::Kind::picture) mark.add(pictures_(sprite.name));
    return mark.value();
}

std::optional<Baked> Baker::bake(const Sprite& sprite) {
    const std::uint64_t key = shelf_ != nullptr ? shelfKey(sprite) : 0;
    if (shelf_ != nullptr)
        if (const Pixels* pixels = shelf_->find(key)) return upload(*pixels);

    const std::optional<Image> whole = draw(sprite);
    if (!whole) return std::nullopt;
    const Image image = trimmed(*whole);
    std::vector<std::uint32_t> argb(image.rgba.size() / 4);
    SDL_ConvertPixels(image.w, image.h, SDL_PIXELFORMAT_RGBA32, image.rgba.data(), 4 * image.w,
                      SDL_PIXELFORMAT_ARGB8888, argb.data(), 4 * image.w);
    const Pixels pixels{image.w,      image.h,      image.left,      image.top,
                        image.size_w, image.size_h, isOpaque(image), argb.data()};
    if (shelf_ != nullptr) shelf_->put(key, pixels);
    return upload(pixels);
}

Baked Baker::upload(const Pixels& pixels) {
    Baked baked;
    baked.w = pixels.w;
    baked.h = pixels.h;
    baked.left = pixels.left;
    baked.top = pixels.top;
    baked.size_w = pixels.size_w;
    baked.size_h = pixels.size_h;
    baked.texture.reset(SDL_CreateTexture(renderer_, SDL_PIXELFORMAT_ARGB8888,
                                          SDL_TEXTUREACCESS_STATIC, pixels.w, pixels.h));
    if (!baked.texture) return baked;
    SDL_UpdateTexture(baked.texture.get(), nullptr, pixels.argb, 4 * pixels.w);
    SDL_SetTextureBlendMode(baked.texture.get(),
                            pixels.opaque ? SDL_BLENDMODE_NONE : SDL_BLENDMODE_BLEND);
    return baked;
}

void Baker::makeRoom() {
    while (bytes_ > most_bytes_) {
        auto oldest = kept_.end();
        for (auto at = kept_.begin(); at != kept_.end(); ++at)
            if (at->second.used != frame_ && at->second.bytes > 0 &&
                (oldest == kept_.end() || at->second.used < oldest->second.used))
                oldest = at;
        if (oldest == kept_.end()) return;
        bytes_ -= oldest->second.bytes;
        kept_.erase(oldest);
    }
}

void Baker::forget() {
    kept_.clear();
    bytes_ = 0;
}

}  // namespace wrenlet::game
