#include <utility>

#include "content/link/frame.hpp"
#include "content/link/message.hpp"
#include "content/link/squeezed.hpp"
#include "content/pack/picture_key.hpp"
#include "content/pack/text_rules.hpp"

namespace wrenlet::link {
namespace {

using pack::Json;
using pack::JsonReader;

Json written(const Welcome& welcome) {
    Json json{{"kind", "welcome"},
              {"seats", Json::array()},
              {"deleted", welcome.deleted},
              {"session_minutes", welcome.settings.session_minutes},
              {"focus", welcome.settings.focus},
              {"pack", welcome.pack},
              {"pack_hash", welcome.pack_hash},
              {"pack_bytes", welcome.pack_bytes},
              {"clock_ms", welcome.clock_ms},
              {"utc_offset_min", welcome.utc_offset_min}};
    for (const Seat& seat : welcome.seats)
        json["seats"].push_back({{"child", seat.child},
                                 {"badge", seat.badge},
                                 {"shields", seat.shields},
                                 {"key", seat.key}});
    return json;
}

Json written(const Piece& piece) {
    return {{"kind", "piece"}, {"pack", piece.pack}, {"from", piece.from}};
}

Json written(const Kept& kept) {
    return {{"kind", "kept"}, {"kept", kept.kept}, {"refused", kept.refused}};
}

Json written(const Behind& behind) {
    return {{"kind", "behind"}, {"number", behind.number}};
}

Json written(const Busy&) {
    return {{"kind", "busy"}};
}

Json written(const Removed&) {
    return {{"kind", "removed"}};
}

Welcome welcomeFrom(const Json& json, JsonReader& reader) {
    Welcome welcome;
    for (const Json& one : reader.list(json, "seats", pack::kMostChildren, true)) {
        if (!reader.isObject(one, "seats")) break;
        Seat seat;
        seat.child = reader.text(one, "child", "", kMostIdLetters, true);
        seat.badge = reader.text(one, "badge", "", kMostIdLetters, true);
        seat.shields = reader.texts(one, "shields", "", 100, 40);
        seat.key = reader.texts(one, "key", "", pack::kKeyLength, kMostIdLetters);
        for (const std::string* id : {&seat.child, &seat.badge})
            if (!pack::isPlainId(*id)) reader.error("seats", "This is no id.", "");
        welcome.seats.push_back(std::move(seat));
    }
    welcome.deleted = reader.texts(json, "deleted", "", pack::kMostDeleted, kMostIdLetters);
    welcome.settings.session_minutes = static_cast<int>(
        reader.whole(json, "session_minutes", "", pack::kLeastMinutes, pack::kMostMinutes, 6));
    welcome.settings.focus = reader.texts(json, "focus", "", 20, kMostIdLetters);
    welcome.pack = reader.text(json, "pack", "", 120);
    if (!welcome.pack.empty() && !pack::isPlainFileName(welcome.pack))
        reader.error("pack", "This is no file's name.", "");
    welcome.pack_hash = hashFrom(json, "pack_hash", reader);
    welcome.pack_bytes =
        static_cast<std::uint64_t>(reader.whole(json, "pack_bytes", "", 0, kMostPackBytes, 0));
    welcome.clock_ms = reader.whole(json, "clock_ms", "", -kLastMs, kLastMs, 0);
    welcome.utc_offset_min =
        static_cast<int>(reader.whole(json, "utc_offset_min", "", -24 * 60, 24 * 60, 0));
    return welcome;
}

std::vector<std::int64_t> sequencesFrom(const Json& json, const char* key, JsonReader& reader) {
    std::vector<std::int64_t> sequences;
    for (const Json& one : reader.list(json, key, kMostResponses, true)) {
        if (!one.is_number_integer()) {
            reader.error(key, "Here should be numbers.", "");
            break;
        }
        sequences.push_back(one.get<std::int64_t>());
    }
    return sequences;
}

std::optional<Answer> answerFrom(const Frame& framed, JsonReader& reader) {
    const Json& json = framed.json;
    const std::string kind = reader.text(json, "kind", "", 20);
    if (kind == "welcome") return welcomeFrom(json, reader);
    if (kind == "piece") {
        Piece piece;
        piece.pack = hashFrom(json, "pack", reader);
        piece.from =
            static_cast<std::uint64_t>(reader.whole(json, "from", "", 0, kMostPackBytes, 0));
        auto bytes = unsqueezed(framed.attached, kPieceBytes);
        if (!bytes) return std::nullopt;
        piece.bytes = std::move(*bytes);
        return piece;
    }
    if (kind == "kept") {
        Kept kept;
        kept.kept = sequencesFrom(json, "kept", reader);
        kept.refused = sequencesFrom(json, "refused", reader);
        return kept;
    }
    if (kind == "behind")
        return Behind{static_cast<std::uint64_t>(
            reader.whole(json, "number", "", 0, std::int64_t{1} << 62, 0))};
    if (kind == "busy") return Busy{};
    if (kind == "removed") return Removed{};
    return std::nullopt;
}

}  // namespace

std::string writeAnswer(const Answer& answer) {
    const auto* const piece = std::get_if<Piece>(&answer);
    return writeFrame(std::visit([](const auto& value) { return written(value); }, answer),
                      piece != nullptr ? squeezed(piece->bytes) : std::string());
}

std::optional<Answer> readAnswer(std::string_view plain) {
    const auto framed = readFrame(plain);
    if (!framed) return std::nullopt;
    JsonReader reader("message");
    auto answer = answerFrom(*framed, reader);
    return reader.failed() ? std::nullopt : std::move(answer);
}

}  // namespace wrenlet::link
