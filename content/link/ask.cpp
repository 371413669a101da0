#include <algorithm>
#include <utility>

#include "content/link/frame.hpp"
#include "content/link/message.hpp"
#include "content/link/response_json.hpp"
#include "content/link/talk.hpp"

namespace wrenlet::link {
namespace {

using pack::Json;
using pack::JsonReader;

constexpr std::int64_t kMostUnsent = 10'000'000;
constexpr std::size_t kRoomForResponses = kMostTalkBytes / 2;

Json written(const Hello& hello) {
    return {{"kind", "hello"},
            {"clock_ms", hello.clock_ms},
            {"unsent", hello.unsent},
            {"playing", hello.playing},
            {"pack", hello.pack}};
}

Json written(const WantPiece& want) {
    return {{"kind", "want"}, {"pack", want.pack}, {"from", want.from}};
}

Json written(const Responses& sent) {
    Json json{{"kind", "responses"}, {"responses", Json::array()}};
    for (const practice::Response& response : sent.responses)
        json["responses"].push_back(responseToJson(response));
    return json;
}

std::optional<Ask> askFrom(const Json& json, JsonReader& reader) {
    const std::string kind = reader.text(json, "kind", "", 20);
    if (kind == "hello") {
        Hello hello;
        hello.clock_ms = reader.whole(json, "clock_ms", "", -kLastMs, kLastMs, 0);
        hello.unsent = reader.whole(json, "unsent", "", 0, kMostUnsent, 0);
        hello.playing = reader.flag(json, "playing", "");
        hello.pack = hashFrom(json, "pack", reader);
        return hello;
    }
    if (kind == "want") {
        WantPiece want;
        want.pack = hashFrom(json, "pack", reader);
        want.from =
            static_cast<std::uint64_t>(reader.whole(json, "from", "", 0, kMostPackBytes, 0));
        if (want.pack.empty()) return std::nullopt;
        return want;
    }
    if (kind == "responses") {
        Responses sent;
        const Json& all = reader.list(json, "responses", kMostResponses, true);
        for (const Json& one : all) {
            if (auto response = responseFromJson(one)) {
                sent.responses.push_back(std::move(*response));
            } else if (reader.isObject(one, "responses")) {
                const auto sequence = reader.whole(one, "sequence", "", 1, kHighestSequence, 0);
                sent.senseless.push_back(sequence);
                if (sequence == 0) return std::nullopt;
            }
        }
        if (all.empty()) return std::nullopt;
        return sent;
    }
    return std::nullopt;
}

}  // namespace

std::string writeAsk(const Ask& ask) {
    return writeFrame(std::visit([](const auto& value) { return written(value); }, ask));
}

std::optional<Ask> readAsk(std::string_view plain) {
    const auto framed = readFrame(plain);
    if (!framed || !framed->attached.empty()) return std::nullopt;
    JsonReader reader("message");
    auto ask = askFrom(framed->json, reader);
    return reader.failed() ? std::nullopt : std::move(ask);
}

std::size_t fitting(const std::vector<practice::Response>& responses) {
    std::size_t bytes = 0, count = 0;
    for (const practice::Response& response : responses) {
        bytes +=
            responseToJson(response).dump(-1, ' ', false, Json::error_handler_t::replace).size() +
            1;
        if (count > 0 && (bytes > kRoomForResponses || count == kMostResponses)) break;
        ++count;
    }
    return count;
}

}  // namespace wrenlet::link
