#include "content/practice/response_row.hpp"

#include <utility>

#include <sqlite3.h>
#include <nlohmann/json.hpp>

namespace wrenlet::practice {

// AUTOINCREMENT: a number once given out is never given again, even if its row is deleted.
const char* const kSchema = R"sql(
CREATE TABLE tablet (
    only_one INTEGER PRIMARY KEY CHECK (only_one = 1),
    name TEXT NOT NULL
);
CREATE TABLE session (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    child TEXT NOT NULL,
    pack TEXT NOT NULL,
    seed INTEGER NOT NULL,
    day INTEGER NOT NULL,
    played_ms INTEGER NOT NULL,
    ended INTEGER NOT NULL CHECK (ended IN (0, 1))
);
CREATE INDEX session_by_child ON session (child, day);
CREATE TABLE response (
    sequence INTEGER PRIMARY KEY AUTOINCREMENT,
    tablet TEXT NOT NULL,
    child TEXT NOT NULL,
    session INTEGER NOT NULL REFERENCES session (id),
    pack TEXT NOT NULL,
    item TEXT NOT NULL,
    skill TEXT NOT NULL,
    asked TEXT NOT NULL,
    sound TEXT NOT NULL,
    position TEXT NOT NULL,
    chosen TEXT NOT NULL,
    right_choice TEXT NOT NULL,
    choices TEXT NOT NULL,
    means TEXT NOT NULL,
    try_number INTEGER NOT NULL,
    hearings INTEGER NOT NULL,
    took_ms INTEGER NOT NULL,
    at_ms INTEGER NOT NULL,
    day INTEGER NOT NULL
);
CREATE INDEX response_by_child ON response (child);
)sql";

const char* const kSelectResponses =
    "SELECT tablet, child, session, pack, item, skill, asked, sound, position, chosen, "
    "right_choice, choices, means, try_number, hearings, took_ms, at_ms, day, sequence "
    "FROM response";

const char* const kInsertResponse =
    "INSERT INTO response (tablet, child, session, pack, item, skill, asked, sound, position, "
    "chosen, right_choice, choices, means, try_number, hearings, took_ms, at_ms, day) "
    "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

const char* const kInsertNumbered =
    "INSERT INTO response (tablet, child, session, pack, item, skill, asked, sound, position, "
    "chosen, right_choice, choices, means, try_number, hearings, took_ms, at_ms, day, sequence) "
    "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

namespace {

/// Names a column's place in the statements above.
enum Column {
    kTablet,
    kChild,
    kSession,
    kPack,
    kItem,
    kSkill,
    kAsked,
    kSound,
    kPosition,
    kChosen,
    kRight,
    kChoices,
    kMeans,
    kTryNumber,
    kHearings,
    kTookMs,
    kAtMs,
    kDay,
    kSequence,
};

constexpr std::int64_t kHighestSequence = 1'000'000'000'000;
constexpr std::int64_t kHighestCount = 1'000'000;
constexpr std::int64_t kLastDay = 100'000;  // in the year 2243; a clock can be wrong both ways
constexpr std::int64_t kLastMs = kLastDay * 86'400'000;

using Json = nlohmann::json;

std::string listToText(const std::vector<std::string>& list) {
    return Json(list).dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::optional<TextList> listFromText(const std::string& text, TextPool& pool) {
    if (auto known = pool.list(text)) return known;
    const Json list = Json::parse(text, nullptr, false);
    if (!list.is_array() || list.empty() || list.size() > kMostChoices) return std::nullopt;
    std::vector<std::string> choices;
    choices.reserve(list.size());
    for (const Json& choice : list) {
        if (!choice.is_string()) return std::nullopt;
        choices.push_back(choice.get<std::string>());
    }
    return pool.keep(text, std::move(choices));
}

std::optional<exercise::Position> positionFromText(std::string_view text) {
    const exercise::Position position = exercise::positionFromId(text);
    if (exercise::positionId(position) != text) return std::nullopt;
    return position;
}

/// Reads fields one after another and remembers whether one was of the wrong kind.
class RowReader {
  public:
    explicit RowReader(const Statement& row) : row_(row) {}

    std::string text(Column column) {
        if (!row_.isText(column)) right_kinds_ = false;
        return row_.text(column);
    }
    std::int64_t number(Column column) {
        if (!row_.isNumber(column)) right_kinds_ = false;
        return row_.number(column);
    }
    int smallNumber(Column column) {
        const std::int64_t value = number(column);
        if (value < 0 || value > kHighestCount) right_kinds_ = false;
        return right_kinds_ ? static_cast<int>(value) : 0;
    }
    bool rightKinds() const { return right_kinds_; }

  private:
    const Statement& row_;
    bool right_kinds_ = true;
};

bool isBetween(std::int64_t value, std::int64_t low, std::int64_t high) {
    return value >= low && value <= high;
}

}  // namespace

bool isTabletName(std::string_view name) {
    const auto fits = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               c == '-' || c == '_';
    };
    if (name.empty() || name.size() > 40) return false;
    for (const char c : name)
        if (!fits(c)) return false;
    return true;
}

void bindRow(Statement& insert, const Response& response) {
    insert.bind(kTablet, response.tablet);
    insert.bind(kChild, response.child);
    insert.bind(kSession, response.session);
    insert.bind(kPack, response.pack);
    insert.bind(kItem, response.item);
    insert.bind(kSkill, response.skill);
    insert.bind(kAsked, response.asked);
    insert.bind(kSound, response.turns_on.sound);
    insert.bind(kPosition, exercise::positionId(response.turns_on.position));
    insert.bind(kChosen, response.chosen);
    insert.bind(kRight, response.right);
    insert.bind(kChoices, listToText(response.choices));
    insert.bind(kMeans, response.means);
    insert.bind(kTryNumber, std::int64_t{response.try_number});
    insert.bind(kHearings, std::int64_t{response.hearings});
    insert.bind(kTookMs, response.took_ms);
    insert.bind(kAtMs, response.at_ms);
    insert.bind(kDay, response.day);
}

void bindNumbered(Statement& insert, const Response& response) {
    bindRow(insert, response);
    insert.bind(kSequence, response.sequence);
}

bool isInBounds(const Response& response) {
    for (const Text* text :
         {&response.child, &response.item, &response.skill, &response.chosen, &response.right})
        if (text->empty() || text->size() > kLongestText) return false;
    for (const Text* text : {&response.pack, &response.asked, &response.means})
        if (text->size() > kLongestText) return false;
    if (response.turns_on.sound.size() > kLongestText) return false;
    if (response.choices.empty() || response.choices.size() > kMostChoices) return false;
    for (const std::string& choice : response.choices)
        if (choice.empty() || choice.size() > kLongestText) return false;
    return isBetween(response.session, 1, kHighestSequence) &&
           isBetween(response.try_number, 1, kHighestCount) &&
           isBetween(response.hearings, 0, kHighestCount) &&
           isBetween(response.took_ms, 0, kLongestAnswerMs) &&
           isBetween(response.at_ms, -kLastMs, kLastMs) &&
           isBetween(response.day, -kLastDay, kLastDay);
}

std::optional<Response> readRow(const Statement& select, TextPool& pool) {
    RowReader row(select);
    Response response;
    response.tablet = pool.text(row.text(kTablet));
    response.sequence = row.number(kSequence);
    response.child = pool.text(row.text(kChild));
    response.session = row.number(kSession);
    response.pack = pool.text(row.text(kPack));
    response.item = pool.text(row.text(kItem));
    response.skill = pool.text(row.text(kSkill));
    response.asked = pool.text(row.text(kAsked));
    response.turns_on.sound = row.text(kSound);
    response.chosen = pool.text(row.text(kChosen));
    response.right = pool.text(row.text(kRight));
    response.means = pool.text(row.text(kMeans));
    response.try_number = row.smallNumber(kTryNumber);
    response.hearings = row.smallNumber(kHearings);
    response.took_ms = row.number(kTookMs);
    response.at_ms = row.number(kAtMs);
    response.day = row.number(kDay);

    const auto position = positionFromText(row.text(kPosition));
    auto choices = listFromText(row.text(kChoices), pool);
    if (!row.rightKinds() || !position || !choices) return std::nullopt;
    response.turns_on.position = *position;
    response.choices = std::move(*choices);
    if (!isTabletName(response.tablet) || !isBetween(response.sequence, 1, kHighestSequence) ||
        !isInBounds(response))
        return std::nullopt;
    return response;
}

std::optional<Removed> removeChildren(sqlite3* connection, std::span<const std::string> children) {
    // What is deleted is overwritten with zeros:
    // https://www.sqlite.org/pragma.html#pragma_secure_delete
    if (execute(connection, "PRAGMA secure_delete=ON") != SQLITE_OK) return std::nullopt;
    Removed removed;
    Statement responses(connection, "DELETE FROM response WHERE child = ?");
    Statement sessions(connection, "DELETE FROM session WHERE child = ?");
    for (const std::string& child : children) {
        responses.bind(0, child);
        sessions.bind(0, child);
        if (!responses.run()) return std::nullopt;
        removed.answers += static_cast<std::size_t>(sqlite3_changes(connection));
        if (!sessions.run()) return std::nullopt;
        removed.sessions += static_cast<std::size_t>(sqlite3_changes(connection));
    }
    return removed;
}

}  // namespace wrenlet::practice
