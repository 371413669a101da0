#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/uuid_io.hpp>
#include <chrono>
#include <cstdio>
#include <nlohmann/json.hpp>

#include "editor/paper/exports.hpp"

namespace wrenlet::desk::paper {

namespace {

using nlohmann::ordered_json;

// ".invalid" is promised to be nobody's (RFC 2606).
constexpr const char* kHome = "https://wrenlet.invalid/";

/// As a part of an IRI: all but unreserved characters in percent (RFC 3986).
std::string inAddress(std::string_view text) {
    std::string out;
    for (const char c : text) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                           (c >= '0' && c <= '9') || c == '-' || c == '.' || c == '_' || c == '~';
        char hex[4];
        std::snprintf(hex, sizeof hex, "%%%02X", static_cast<unsigned char>(c));
        out += plain ? std::string(1, c) : hex;
    }
    return out;
}

/// ISO 8601, UTC, to the millisecond.
std::string moment(std::int64_t unix_ms) {
    using namespace std::chrono;
    const sys_time<milliseconds> at{milliseconds(unix_ms)};
    const auto midnight = floor<days>(at);
    const year_month_day date{midnight};
    const hh_mm_ss time{at - midnight};
    char text[64];
    std::snprintf(
        text, sizeof text, "%04d-%02u-%02uT%02d:%02d:%02d.%03dZ", static_cast<int>(date.year()),
        static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
        static_cast<int>(time.hours().count()), static_cast<int>(time.minutes().count()),
        static_cast<int>(time.seconds().count()), static_cast<int>(time.subseconds().count()));
    return text;
}

std::string duration(std::int64_t ms) {
    char text[48];
    std::snprintf(text, sizeof text, "PT%lld.%02lldS", static_cast<long long>(ms / 1000),
                  static_cast<long long>(ms % 1000 / 10));
    return text;
}

/// Of its tablet and number alone, which name an answer for ever (RFC 4122, version 5).
std::string idOf(const practice::Response& response) {
    static const boost::uuids::name_generator_sha1 names(boost::uuids::ns::url());
    return boost::uuids::to_string(
        names(kHome + response.tablet.string() + "/" + std::to_string(response.sequence)));
}

ordered_json statement(const practice::Response& response) {
    ordered_json json;
    json["id"] = idOf(response);
    json["actor"] = {{"objectType", "Agent"},
                     {"account", {{"homePage", kHome}, {"name", response.child.string()}}}};
    json["verb"] = {{"id", "http://adlnet.gov/expapi/verbs/answered"},
                    {"display", {{"en-US", "answered"}}}};
    ordered_json choices = ordered_json::array();
    for (const std::string& choice : response.choices)
        choices.push_back({{"id", inAddress(choice)}, {"description", {{"en-US", choice}}}});
    json["object"] = {
        {"objectType", "Activity"},
        {"id", kHome + std::string("item/") + inAddress(response.item.string())},
        {"definition",
         {{"type", "http://adlnet.gov/expapi/activities/cmi.interaction"},
          {"name", {{"en-US", response.skill.string() + ": " + response.asked.string()}}},
          {"interactionType", "choice"},
          {"correctResponsesPattern", {inAddress(response.right.string())}},
          {"choices", choices}}}};
    json["result"] = {{"success", response.isRight()},
                      {"response", inAddress(response.chosen.string())},
                      {"duration", duration(response.took_ms)}};
    const std::string ours = kHome + std::string("x/");
    json["context"] = {{"platform", "Wrenlet"},
                       {"extensions",
                        {{ours + "pack", response.pack.string()},
                         {ours + "skill", response.skill.string()},
                         {ours + "sound", response.turns_on.sound},
                         {ours + "position", exercise::positionId(response.turns_on.position)},
                         {ours + "try", response.try_number},
                         {ours + "hearings", response.hearings}}}};
    json["timestamp"] = moment(response.at_ms);
    return json;
}

}  // namespace

std::string xapiStatements(std::span<const practice::Response> responses) {
    std::string text = "[";
    for (const practice::Response& response : responses) {
        text += text.size() > 1 ? ",\n" : "\n";
        text += statement(response).dump(-1, ' ', false, ordered_json::error_handler_t::replace);
    }
    return text + "\n]\n";
}

}  // namespace wrenlet::desk::paper
