#include "game/sdl/script_run.hpp"

#include <algorithm>

#include "game/script/hash.hpp"
#include "game/sdl/fingers.hpp"
#include "game/sdl/photographer.hpp"

namespace wrenlet::game {
namespace {

constexpr int kSamplesPerFrame = kSampleRate / 60;

void addColour(Hash& hash, Colour colour) {
    for (const std::uint8_t part : {colour.r, colour.g, colour.b, colour.a}) hash.add(part);
}

void addFrame(Hash& hash, const Frame& frame) {
    for (const Blit& blit : frame) {
        const Sprite& sprite = blit.sprite;
        hash.add(sprite.kind);
        hash.add(sprite.name);
        for (const int number :
             {sprite.width, sprite.height, sprite.radius, sprite.edge_px, sprite.shadow_px,
              sprite.part, int{sprite.bold}, int{sprite.flipped}, int{sprite.from_left}})
            hash.add(number);
        addColour(hash, sprite.colour);
        addColour(hash, sprite.edge_colour);
        hash.add(blit.centre.x);
        hash.add(blit.centre.y);
        hash.add(blit.alpha);
    }
}

bool isAnyMove(const std::vector<Contact>& contacts) {
    return std::any_of(contacts.begin(), contacts.end(),
                       [](const Contact& contact) { return contact.kind == Contact::Kind::move; });
}

}  // namespace

ScriptResult runScript(Table& table, ScriptClock& clock, const Tape& tape, const ScriptRun& run) {
    ScriptResult result;
    ScriptedChild child(tape);
    Photographer photographer(table, {run.pictures, run.picture_prefix, run.each_place_once});
    Hash frames, sound;
    std::vector<std::int16_t> samples(2 * kSamplesPerFrame);
    if (run.announce) table.setHeardFirst([&] { run.announce(table.app().newestAnswer()); });

    const std::int64_t most_steps = std::int64_t{tape.most_minutes} * 60 * 60;
    for (; result.steps < most_steps; ++result.steps) {
        const Millis now = result.steps * 1000 / 60;
        clock.now = now;
        const std::vector<Contact> contacts = child.tick(table.app(), now);
        for (const Contact& contact : contacts) pushFinger(contact, table.screen());
        if (!table.handleAll(now)) break;
        table.app().step(now);
        const Frame frame = table.app().frame(now);
        addFrame(frames, frame);
        if (run.each_frame) run.each_frame(now, frame);
        photographer.look(now, frame, isAnyMove(contacts));
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
    result.places = photographer.places();
    result.files = photographer.files();
    result.problems = photographer.problems();
    for (const std::string& name : table.baker().missing())
        result.problems.push_back({name, "This could not be drawn.", ""});
    result.sound_hash = sound.value();
    return result;
}

}  // namespace wrenlet::game
