#include "game/start/call.hpp"

#include <charconv>
#include <cmath>
#include <cstdlib>

namespace wrenlet::game {
namespace {

std::optional<int> wholeWithin(const std::string& text, int least, int most) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return value >= least && value <= most ? std::optional(value) : std::nullopt;
}

constexpr int kLeastSide = 160, kMostSide = 8192;  // px

/// "1280x800"
bool readSize(const std::string& text, Call& call) {
    const std::size_t cross = text.find('x');
    if (cross == std::string::npos) return false;
    call.width = wholeWithin(text.substr(0, cross), kLeastSide, kMostSide);
    call.height = wholeWithin(text.substr(cross + 1), kLeastSide, kMostSide);
    return call.width && call.height;
}

std::optional<Millis> paceOf(const std::string& text) {
    char* end = nullptr;
    const double seconds = std::strtod(text.c_str(), &end);
    if (text.empty() || *end != '\0') return std::nullopt;
    if (!(seconds >= kQuickestScan / 1000.0 && seconds <= kSlowestScan / 1000.0))
        return std::nullopt;
    return std::llround(seconds * 1000);
}

/// True when `arg` is a switch, which is then on.
bool readFlag(const std::string& arg, Call& call) {
    struct Flag {
        const char* name;
        bool Call::*on;
    };
    static constexpr Flag kFlags[] = {
        {"--off-screen", &Call::off_screen},   {"--full-screen", &Call::full_screen},
        {"--first-frame", &Call::first_frame}, {"--announce", &Call::announce},
        {"--still", &Call::motion_off},        {"--touch-only", &Call::touch_only},
        {"--left-hand", &Call::left_hand},     {"--captions", &Call::captions}};
    for (const Flag& flag : kFlags)
        if (arg == flag.name) {
            call.*flag.on = true;
            return true;
        }
    return false;
}

/// False when there is no such option, or its value is none.
bool readOption(const std::string& arg, const std::string& value, Call& call) {
    if (arg == "--data")
        call.data = std::filesystem::u8path(value);
    else if (arg == "--child-script")
        call.script = std::filesystem::u8path(value);
    else if (arg == "--pictures")
        call.pictures = std::filesystem::u8path(value);
    else if (arg == "--try")
        call.tried = std::filesystem::u8path(value);
    else if (arg == "--item")
        call.item = value;
    else if (arg == "--draw")
        call.drawn = std::filesystem::u8path(value);
    else if (arg == "--size")
        return readSize(value, call);
    else if (arg == "--seed") {
        std::uint64_t seed = 0;
        const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), seed);
        if (error != std::errc() || end != value.data() + value.size()) return false;
        call.seed = seed;
    } else if (arg == "--volume") {
        call.volume_percent = wholeWithin(value, kLeastVolume, kMostVolume);
        return call.volume_percent.has_value();
    } else if (arg == "--minutes") {
        call.minutes = wholeWithin(value, kLeastMinutes, kMostMinutes);
        return call.minutes.has_value();
    } else if (arg == "--switch") {
        call.scan_pace = paceOf(value);
        return call.scan_pace.has_value();
    } else {
        return false;
    }
    return true;
}

}  // namespace

const char* const kUsage =
    "wrenlet CLASSROOM                the game, on the classroom in that folder\n"
    "  --data DIR                     where this tablet keeps its own (~/.local/share/wrenlet)\n"
    "  --full-screen                  F11 does the same\n"
    "for this time, over what the adult's page keeps for this tablet:\n"
    "  --volume PERCENT               the loudest it may be, 25 to 100\n"
    "  --still                        nothing moves by itself\n"
    "  --touch-only                   pieces are touched one after the other, never drawn\n"
    "  --left-hand                    the sides of the screen change places\n"
    "  --minutes N                    of a session, 5 to 8\n"
    "  --switch SECONDS               for one switch: how long the mark stands, 1 to 5\n"
    "  --captions                     what is said, written small for an adult\n"
    "wrenlet --try PACK.zip           one question of a pack, played once; nothing is kept of it\n"
    "  --item ID                      which one; the first when not said\n"
    "  --size WxH                     of the window or the picture, px\n"
    "  --draw PNG                     draws it as the child first sees it, and plays nothing\n"
    "for trying and testing:\n"
    "  --seed N                       of the first session's chances\n"
    "  --first-frame                  show one frame and end; tells how quick the start is\n"
    "  --announce                     write where the game stands, and what lies where\n"
    "  --off-screen --child-script FILE [--pictures DIR] [--announce]\n"
    "                                 a scripted child plays, as fast as the machine can\n";

TabletSettings Call::over(TabletSettings kept) const {
    kept.volume_percent = volume_percent.value_or(kept.volume_percent);
    kept.minutes = minutes.value_or(kept.minutes);
    kept.scan_pace = scan_pace.value_or(kept.scan_pace);
    kept.motion = kept.motion && !motion_off;
    kept.drags = kept.drags && !touch_only;
    kept.left_hand = kept.left_hand || left_hand;
    kept.captions = kept.captions || captions;
    return kept;
}

std::optional<Call> callOf(const std::vector<std::string>& args) {
    Call call;
    for (std::size_t i = 0; i < args.size(); ++i) {
        if (readFlag(args[i], call)) continue;
        if (args[i].empty()) return std::nullopt;
        if (args[i][0] == '-') {
            if (i + 1 >= args.size() || !readOption(args[i], args[i + 1], call))
                return std::nullopt;
            ++i;
        } else if (call.classroom.empty()) {
            call.classroom = std::filesystem::u8path(args[i]);
        } else {
            return std::nullopt;
        }
    }
    const bool tries = !call.tried.empty();
    if (tries == !call.classroom.empty() || (!tries && !call.drawn.empty())) return std::nullopt;
    if (call.off_screen != !call.script.empty()) return std::nullopt;
    return call;
}

}  // namespace wrenlet::game
