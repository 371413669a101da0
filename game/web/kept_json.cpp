#include "game/web/kept_json.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>

#include "content/link/response_json.hpp"

namespace wrenlet::web {
namespace {

using Json = nlohmann::json;

std::string text(const Json& json) {
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

/// JSON's numbers are doubles to a browser, and a seed has 64 bits: it goes as text.
std::optional<std::uint64_t> seedFrom(const Json& json) {
    const std::string& digits = json.get_ref<const std::string&>();
    if (digits.empty() || digits.size() > 20) return std::nullopt;
    std::uint64_t seed = 0;
    for (const char digit : digits) {
        if (digit < '0' || digit > '9') return std::nullopt;
        seed = seed * 10 + static_cast<std::uint64_t>(digit - '0');
    }
    return seed;
}

std::optional<practice::Session> sessionFrom(const Json& row) {
    if (!row.is_array() || row.size() != 2 || !row[0].is_number_integer() || !row[1].is_string())
        return std::nullopt;
    const Json json = Json::parse(row[1].get_ref<const std::string&>(), nullptr, false);
    if (!json.is_object()) return std::nullopt;
    for (const char* key : {"child", "pack", "seed"})
        if (!json.contains(key) || !json[key].is_string()) return std::nullopt;
    for (const char* key : {"day", "played_ms"})
        if (!json.contains(key) || !json[key].is_number_integer()) return std::nullopt;
    const auto seed = seedFrom(json["seed"]);
    if (!seed) return std::nullopt;
    return practice::Session{row[0].get<std::int64_t>(),
                             json["child"].get<std::string>(),
                             json["pack"].get<std::string>(),
                             *seed,
                             json["day"].get<std::int64_t>(),
                             json["played_ms"].get<std::int64_t>(),
                             json.value("ended", Json(false)) == Json(true)};
}

std::optional<practice::Response> responseFrom(const Json& row) {
    if (!row.is_array() || row.size() != 3 || !row[0].is_number_integer() ||
        !row[1].is_number_integer() || !row[2].is_string())
        return std::nullopt;
    Json json = Json::parse(row[2].get_ref<const std::string&>(), nullptr, false);
    if (!json.is_object()) return std::nullopt;
    json["sequence"] = row[0];
    json["session"] = row[1];
    return link::responseFromJson(json);
}

template <class T>
void read(const Json& rows, std::optional<T> (*from)(const Json&), std::vector<T>& into,
          std::size_t& unreadable) {
    for (const Json& row : rows) {
        auto one = from(row);
        if (one)
            into.push_back(std::move(*one));
        else
            ++unreadable;
    }
}

}  // namespace

std::string sessionText(const practice::Session& session) {
    return text({{"child", session.child},
                 {"pack", session.pack},
                 {"seed", std::to_string(session.seed)},
                 {"day", session.day},
                 {"played_ms", session.played_ms},
                 {"ended", session.ended}});
}

std::string responseText(const practice::Response& response) {
    return text(link::responseToJson(response));
}

Result<Kept> readKept(std::string_view json) {
    const Json all = Json::parse(json, nullptr, false);
    if (!all.is_object() || !all.contains("sessions") || !all["sessions"].is_array() ||
        !all.contains("responses") || !all["responses"].is_array())
        return Problem{"", "What this browser kept of the answers cannot be read.",
                       "Close the page and open it again."};
    Kept kept;
    read(all["sessions"], sessionFrom, kept.sessions, kept.unreadable);
    read(all["responses"], responseFrom, kept.responses, kept.unreadable);
    std::set<std::int64_t> sessions;
    for (const auto& session : kept.sessions) sessions.insert(session.id);
    kept.unreadable += std::erase_if(kept.responses, [&](const practice::Response& response) {
        return sessions.count(response.session) == 0;
    });
    return kept;
}

}  // namespace wrenlet::web
