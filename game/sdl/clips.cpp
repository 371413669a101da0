#include "game/sdl/clips.hpp"

#include <SDL_mixer.h>

#include <algorithm>

namespace wrenlet::game {

std::unique_ptr<Pcm> decodeClip(std::string_view bytes) {
    struct Free {
        void operator()(Mix_Chunk* chunk) const { Mix_FreeChunk(chunk); }
    };
    SDL_RWops* from = SDL_RWFromConstMem(bytes.data(), static_cast<int>(bytes.size()));
    if (from == nullptr) return nullptr;
    const std::unique_ptr<Mix_Chunk, Free> chunk(Mix_LoadWAV_RW(from, 0));
    SDL_RWclose(from);  // SDL_mixer forgets to where it is no sound
    if (!chunk || chunk->alen < 4) return nullptr;
    auto pcm = std::make_unique<Pcm>();
    const auto* stereo = reinterpret_cast<const std::int16_t*>(chunk->abuf);
    pcm->samples.resize(chunk->alen / (2 * sizeof(std::int16_t)));
    for (std::size_t i = 0; i < pcm->samples.size(); ++i)
        pcm->samples[i] = static_cast<std::int16_t>((stereo[2 * i] + stereo[2 * i + 1]) / 2);
    return pcm;
}

std::shared_ptr<const Pcm> DecodedClips::clip(std::string_view id) {
    if (const auto held = held_.find(id); held != held_.end()) {
        held->second.wanted = ++wanted_;
        return held->second.pcm;
    }
    const pack::Clip* clip = pack_.clip(id);
    return clip == nullptr ? nullptr : decode(*clip);
}

bool DecodedClips::decodeOne() {
    while (next_ < pack_.clips.size() && bytes_ < most_bytes_) {
        const pack::Clip& clip = pack_.clips[next_++];
        if (held_.find(clip.id) != held_.end()) continue;
        decode(clip);
        return true;
    }
    return false;
}

std::shared_ptr<const Pcm> DecodedClips::decode(const pack::Clip& clip) {
    ready_();
    const Held held{decodeClip(clip.bytes), ++wanted_};
    bytes_ += held.bytes();
    held_.emplace(clip.id, held);
    makeRoom();
    return held.pcm;
}

void DecodedClips::makeRoom() {
    while (bytes_ > most_bytes_ && held_.size() > 1) {
        const auto oldest = std::min_element(held_.begin(), held_.end(), [](auto& a, auto& b) {
            return a.second.wanted < b.second.wanted;
        });
        bytes_ -= oldest->second.bytes();
        held_.erase(oldest);
    }
}

}  // namespace wrenlet::game
