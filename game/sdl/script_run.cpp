#include "game/sdl/script_run.hpp"

#include <cstdio>

#include "game/sdl/fingers.hpp"
#include "game/sdl/screenshot.hpp"

namespace wrenlet::game {
namespace {

constexpr int kSamplesPerFrame = kSampleRate / 60;
constexpr Millis kSettles = 450;  // after a place has come up, before its picture is taken

class Hash {
  public:
    void add(const void* bytes, std::size_t size) {
        const auto* from = static_cast<const unsigned char*>(bytes);
        for (std::size_t i = 0; i < size; ++i) value_ = (value_ ^ from[i]) * 0x100000001b3ull;
    }
    template <class T>
    void add(const T& value) {
        add(&value, sizeof value);
    }
    void add(const std::string& text) { add(text.data(), text.size()); }
    std::uint64_t value() const { return value_; }

  private:
    std::uint64_t value_ = 0xcbf29ce484222325ull;
};

void addFrame(Hash& hash, const Frame& frame) {
    for (const Blit& blit : frame) {
        const Sprite& sprite = blit.sprite;
        hash.add(sprite.kind);
        hash.add(sprite.name);
        for (const int number : {sprite.width, sprite.height, sprite.radius, sprite.part})
            hash.add(number);
        hash.add(blit.centre.x);
        hash.add(blit.centre.y);
        hash.add(blit.alpha);
    }
}

/// Takes a picture of each place once it has settled, or as it was last seen.
class Photographer {
  public:
    Photographer(Table& table, const ScriptRun& run, ScriptResult& result)
        : table_(table), run_(run), result_(result) {}

    void look(Millis now, const Frame& frame) {
        const std::string place = table_.app().place();
        if (place != place_) {
            if (!taken_ && !place_.empty()) take(last_);
            place_ = place;
            since_ = now;
            taken_ = false;
            result_.places.push_back(place);
        }
        if (!taken_ && now >= since_ + kSettles && !table_.app().isMoving(now)) take(frame);
        last_ = frame;
    }
    std::uint64_t hash() const { return hash_.value(); }

  private:
    void take(const Frame& frame) {
        taken_ = true;
        const bool known = !seen_.insert(place_).second;
        table_.canvas().draw(frame);
        const SurfacePtr picture = readBack(table_.renderer());
        if (!picture) return;
        for (int y = 0; y < picture->h; ++y)
            hash_.add(static_cast<const char*>(picture->pixels) + y * picture->pitch,
                      static_cast<std::size_t>(picture->w) * picture->format->BytesPerPixel);
        if (run_.pictures.empty() || (run_.each_place_once && known)) return;
        std::string name = place_;
        for (char& letter : name)
            if (letter == ':' || letter == ' ') letter = '-';
        if (const auto twice = name.find("--"); twice != name.npos) name.erase(twice, 1);
        char number[16] = "";
        if (!run_.each_place_once)
            std::snprintf(number, sizeof number, "%03d-", static_cast<int>(++count_));
        const auto path = run_.pictures / (run_.picture_prefix + number + name + ".png");
        const Result<Done> saved = savePng(picture.get(), path);
        if (saved.ok()) result_.files.push_back(path.string());
        for (const Problem& problem : saved.problems()) result_.problems.push_back(problem);
    }

    Table& table_;
    const ScriptRun& run_;
    ScriptResult& result_;
    Hash hash_;
    Frame last_;
    std::string place_;
    std::set<std::string> seen_;
    Millis since_ = 0;
    bool taken_ = false;
    int count_ = 0;
};

}  // namespace

ScriptResult runScript(Table& table, ScriptClock& clock, const Tape& tape, const ScriptRun& run) {
    ScriptResult result;
    ScriptedChild child(tape);
    Photographer photographer(table, run, result);
    Hash frames, sound;
    std::vector<std::int16_t> samples(2 * kSamplesPerFrame);
    if (run.announce) table.setHeardFirst([&] { run.announce(table.app().newestAnswer()); });

    const std::int64_t most_steps = std::int64_t{tape.most_minutes} * 60 * 60;
    for (; result.steps < most_steps; ++result.steps) {
        const Millis now = result.steps * 1000 / 60;
        clock.now = now;
        for (const Contact& contact : child.tick(table.app(), now))
            pushFinger(contact, table.screen());
        if (!table.handleAll(now)) break;
        table.app().step(now);
        const Frame frame = table.app().frame(now);
        addFrame(frames, frame);
        photographer.look(now, frame);
        table.mixer().mix(samples.data(), kSamplesPerFrame);
        sound.add(samples.data(), samples.size() * sizeof(std::int16_t));
        if (child.isDone(table.app())) {
            result.finished = true;
            break;
        }
    }
    table.setHeardFirst({});
    result.frames_hash = frames.value();
    result.pictures_hash = photographer.hash();
    result.sound_hash = sound.value();
    return result;
}

}  // namespace wrenlet::game
