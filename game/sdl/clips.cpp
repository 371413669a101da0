#include "game/sdl/clips.hpp"

#include <SDL_mixer.h>

namespace wrenlet::game {

std::unique_ptr<Pcm> decodeClip(std::string_view bytes) {
    struct Free {
        void operator()(Mix_Chunk* chunk) const { Mix_FreeChunk(chunk); }
    };
    SDL_RWops* from = SDL_RWFromConstMem(bytes.data(), static_cast<int>(bytes.size()));
    if (from == nullptr) return nullptr;
    const std::unique_ptr<Mix_Chunk, Free> chunk(Mix_LoadWAV_RW(from, 1));
    if (!chunk || chunk->alen < 4) return nullptr;
    auto pcm = std::make_unique<Pcm>();
    const auto* stereo = reinterpret_cast<const std::int16_t*>(chunk->abuf);
    pcm->samples.resize(chunk->alen / (2 * sizeof(std::int16_t)));
    for (std::size_t i = 0; i < pcm->samples.size(); ++i)
        pcm->samples[i] = static_cast<std::int16_t>((stereo[2 * i] + stereo[2 * i + 1]) / 2);
    return pcm;
}

const Pcm* DecodedClips::clip(std::string_view id) {
    const auto held = held_.find(id);
    if (held != held_.end()) return held->second.get();
    const pack::Clip* clip = pack_.clip(id);
    return clip == nullptr ? nullptr : decode(*clip);
}

bool DecodedClips::decodeOne() {
    while (next_ < pack_.clips.size() && bytes_ < kMostIdleBytes) {
        const pack::Clip& clip = pack_.clips[next_++];
        if (held_.find(clip.id) != held_.end()) continue;
        decode(clip);
        return true;
    }
    return false;
}

const Pcm* DecodedClips::decode(const pack::Clip& clip) {
    ready_();
    auto pcm = decodeClip(clip.bytes);
    if (pcm) bytes_ += pcm->samples.size() * sizeof(std::int16_t);
    return held_.emplace(clip.id, std::move(pcm)).first->second.get();
}

}  // namespace wrenlet::game
