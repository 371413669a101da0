#include "content/link/response_json.hpp"

#include <limits>
#include <string>
#include <utility>
#include <vector>

#include "content/link/message.hpp"
#include "content/practice/response_row.hpp"

namespace wrenlet::link {
namespace {

using pack::Json;

/// Reads fields one after another and remembers whether one was missing or of the wrong kind.
class Fields {
  public:
    explicit Fields(const Json& json) : json_(json), all_well_(json.is_object()) {}

    Text text(const char* key) {
        const Json* value = field(key);
        if (value == nullptr || !value->is_string()) return wrong(Text());
        return Text(value->get_ref<const std::string&>());
    }
    std::int64_t number(const char* key) {
        const Json* value = field(key);
        if (value == nullptr || !value->is_number_integer() ||
            (value->is_number_unsigned() &&
             value->get<std::uint64_t>() > std::uint64_t(std::numeric_limits<std::int64_t>::max())))
            return wrong(std::int64_t{0});
        return value->get<std::int64_t>();
    }
    int smallNumber(const char* key) {
        const std::int64_t value = number(key);
        if (value < 0 || value > std::numeric_limits<int>::max()) return wrong(0);
        return static_cast<int>(value);
    }
    TextList texts(const char* key) {
        const Json* value = field(key);
        if (value == nullptr || !value->is_array() || value->size() > practice::kMostChoices)
            return wrong(TextList());
        std::vector<std::string> texts;
        for (const Json& entry : *value) {
            if (!entry.is_string()) return wrong(TextList());
            texts.push_back(entry.get<std::string>());
        }
        return texts;
    }
    void check(bool holds) { all_well_ = all_well_ && holds; }
    bool allWell() const { return all_well_; }

  private:
    const Json* field(const char* key) const {
        if (!all_well_) return nullptr;
        const auto found = json_.find(key);
        return found == json_.end() ? nullptr : &*found;
    }
    template <class T>
    T wrong(T otherwise) {
        all_well_ = false;
        return otherwise;
    }

    const Json& json_;
    bool all_well_;
};

}  // namespace

Json responseToJson(const practice::Response& response) {
    Json json;
    json["sequence"] = response.sequence;
    json["child"] = response.child.string();
    json["session"] = response.session;
    json["pack"] = response.pack.string();
    json["item"] = response.item.string();
    json["skill"] = response.skill.string();
    json["asked"] = response.asked.string();
    json["sound"] = response.turns_on.sound;
    json["position"] = std::string(exercise::positionId(response.turns_on.position));
    json["chosen"] = response.chosen.string();
    json["right"] = response.right.string();
    json["choices"] = response.choices.vector();
    json["means"] = response.means.string();
    json["try"] = response.try_number;
    json["hearings"] = response.hearings;
    json["took_ms"] = response.took_ms;
    json["at_ms"] = response.at_ms;
    json["day"] = response.day;
    return json;
}

std::optional<practice::Response> responseFromJson(const Json& json) {
    Fields fields(json);
    practice::Response response;
    response.sequence = fields.number("sequence");
    response.child = fields.text("child");
    response.session = fields.number("session");
    response.pack = fields.text("pack");
    response.item = fields.text("item");
    response.skill = fields.text("skill");
    response.asked = fields.text("asked");
    response.turns_on.sound = fields.text("sound").string();
    const std::string position = fields.text("position");
    response.turns_on.position = exercise::positionFromId(position);
    fields.check(exercise::positionId(response.turns_on.position) == position);
    response.chosen = fields.text("chosen");
    response.right = fields.text("right");
    response.choices = fields.texts("choices");
    response.means = fields.text("means");
    response.try_number = fields.smallNumber("try");
    response.hearings = fields.smallNumber("hearings");
    response.took_ms = fields.number("took_ms");
    response.at_ms = fields.number("at_ms");
    response.day = fields.number("day");
    fields.check(response.sequence >= 1 && response.sequence <= kHighestSequence);
    if (!fields.allWell() || !practice::isInBounds(response)) return std::nullopt;
    return response;
}

}  // namespace wrenlet::link
