// The page's half of the link to the desk, for talk.js: seals what is asked and opens what is
// answered by content/link, which the desk has too. Bytes come in as an address and a length, and
// go out as a Bytes that the script reads and lets go of.
#include <emscripten.h>

#include <cstdlib>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>

#include "content/link/join.hpp"
#include "content/link/join_code.hpp"
#include "content/link/message.hpp"
#include "content/link/response_json.hpp"
#include "content/link/talk.hpp"
#include "content/pack/classroom.hpp"

using namespace wrenlet;
using Json = nlohmann::json;
using Bytes = std::string;

namespace {

Bytes* given(std::string bytes) {
    return new Bytes(std::move(bytes));
}

/// {"tablet": name, "key": hexadecimal}, as the script keeps it.
std::optional<link::TabletIdentity> identityFrom(const char* text) {
    const Json json = Json::parse(text, nullptr, false);
    if (!json.is_object() || !json.contains("tablet") || !json["tablet"].is_string() ||
        !json.contains("key") || !json["key"].is_string())
        return std::nullopt;
    const auto key = link::keyFromHex(json["key"].get<std::string>());
    if (!key) return std::nullopt;
    return link::TabletIdentity{json["tablet"].get<std::string>(), *key};
}

std::uint64_t numberFrom(const char* digits) {
    return std::strtoull(digits, nullptr, 10);
}

Bytes* sealed(const char* identity, const char* number, const link::Ask& ask) {
    const auto tablet = identityFrom(identity);
    if (!tablet) return given("");
    link::SystemEntropy entropy;
    return given(link::sealAsk(*tablet, numberFrom(number), link::writeAsk(ask), entropy));
}

Json told(const link::Welcome& welcome) {
    return {{"kind", "welcome"},
            {"class", pack::writeClassList(link::classOf(welcome))},
            {"deleted", welcome.deleted},
            {"pack", welcome.pack},
            {"pack_hash", welcome.pack_hash},
            {"pack_bytes", welcome.pack_bytes},
            {"clock_ms", welcome.clock_ms}};
}
Json told(const link::Piece& piece) {
    return {{"kind", "piece"}, {"pack", piece.pack}, {"from", piece.from}};
}
Json told(const link::Kept& kept) {
    return {{"kind", "kept"}, {"kept", kept.kept}, {"refused", kept.refused}};
}
Json told(const link::Behind& behind) {
    return {{"kind", "behind"}, {"number", behind.number}};
}
Json told(const link::Busy&) {
    return {{"kind", "busy"}};
}
Json told(const link::Removed&) {
    return {{"kind", "removed"}};
}

}  // namespace

extern "C" {

EMSCRIPTEN_KEEPALIVE const char* bytes_begin(const Bytes* bytes) {
    return bytes->data();
}
EMSCRIPTEN_KEEPALIVE std::size_t bytes_size(const Bytes* bytes) {
    return bytes->size();
}
EMSCRIPTEN_KEEPALIVE void bytes_free(Bytes* bytes) {
    delete bytes;
}

/// The code as it is meant, or nothing.
EMSCRIPTEN_KEEPALIVE Bytes* link_code(const char* typed) {
    return given(link::codeFromTyped(typed).value_or(""));
}

/// Null when the offer makes no sense.
EMSCRIPTEN_KEEPALIVE link::JoiningTablet* link_join(const char* code, const char* offer,
                                                    std::size_t size) {
    link::SystemEntropy entropy;
    auto joining = link::JoiningTablet::begin(code, {offer, size}, entropy);
    return joining ? new link::JoiningTablet(std::move(*joining)) : nullptr;
}
EMSCRIPTEN_KEEPALIVE Bytes* link_request(const link::JoiningTablet* joining) {
    return given(joining->request());
}
/// The identity, or nothing when the desk does not know the code.
EMSCRIPTEN_KEEPALIVE Bytes* link_joined(const link::JoiningTablet* joining, const char* answer,
                                        std::size_t size) {
    const auto tablet = joining->finish({answer, size});
    if (!tablet) return given("");
    return given(Json{{"tablet", tablet->tablet}, {"key", link::hexOf(tablet->key)}}.dump());
}
EMSCRIPTEN_KEEPALIVE void link_join_over(link::JoiningTablet* joining) {
    delete joining;
}

EMSCRIPTEN_KEEPALIVE Bytes* link_hello(const char* identity, const char* number, double clock_ms,
                                       double unsent, int playing, const char* pack_hash) {
    return sealed(identity, number,
                  link::Hello{static_cast<std::int64_t>(clock_ms),
                              static_cast<std::int64_t>(unsent), playing != 0, pack_hash});
}
EMSCRIPTEN_KEEPALIVE Bytes* link_want(const char* identity, const char* number,
                                      const char* pack_hash, double from) {
    return sealed(identity, number, link::WantPiece{pack_hash, static_cast<std::uint64_t>(from)});
}
/// `rows`: [[sequence, session, text], …]. As many of them, from the first on, as one message
/// holds; those that cannot be read go by themselves, so that the desk can refuse them.
EMSCRIPTEN_KEEPALIVE Bytes* link_responses(const char* identity, const char* number,
                                           const char* rows) {
    const Json all = Json::parse(rows, nullptr, false);
    link::Responses ask;
    if (all.is_array())
        for (const Json& row : all) {
            Json json = Json::parse(row.at(2).get<std::string>(), nullptr, false);
            if (json.is_object()) {
                json["sequence"] = row.at(0);
                json["session"] = row.at(1);
            }
            if (auto response = link::responseFromJson(json))
                ask.responses.push_back(std::move(*response));
        }
    if (ask.responses.empty()) return given("");
    ask.responses.resize(link::fitting(ask.responses));
    return sealed(identity, number, ask);
}

/// What the desk answered: a line of JSON, then a piece's bytes; nothing when it is not the desk's
/// answer to that number.
EMSCRIPTEN_KEEPALIVE Bytes* link_answer(const char* identity, const char* number, const char* bytes,
                                        std::size_t size) {
    const auto tablet = identityFrom(identity);
    if (!tablet) return given("");
    const auto plain = link::openAnswer(*tablet, numberFrom(number), {bytes, size});
    const auto answer = plain ? link::readAnswer(*plain) : std::nullopt;
    if (!answer) return given("");
    std::string line = std::visit([](const auto& one) { return told(one); }, *answer).dump() + "\n";
    if (const auto* piece = std::get_if<link::Piece>(&*answer)) line += piece->bytes;
    return given(std::move(line));
}

EMSCRIPTEN_KEEPALIVE Bytes* link_hash(const char* bytes, std::size_t size) {
    return given(link::hashOf({bytes, size}));
}
}
